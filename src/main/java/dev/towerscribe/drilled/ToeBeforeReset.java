package dev.towerscribe.drilled;

import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * The toe that a wheel has at ride height when its strut's top was moved and nobody touched the tie
 * rod yet: the linkage closed with the tie rod as long as it was before the work, when the wheel
 * had its toe as measured.
 */
final class ToeBeforeReset {
  /** Move of a point by which a derivative is taken, mm. */
  private static final double STEP = 1e-2;

  /** The camber is changed by a thousandth as many radians. */
  private static final double RADIANS_PER_STEP = 1e-3;

  private static final int POINTS = 8;

  private ToeBeforeReset() {}

  /** This wheel's toe, radians, positive for toe-in; NaN where the linkage does not get there. */
  static double at(SideJob job) {
    Bay bay = Bay.of(job);
    Vec3 top = bay.top(job.bearing(job.mount().settingMm()));
    NotReached.Ask<Pose> untouched =
        () -> {
          Pose old = bay.before();
          return bay.mechanism().tiedAtHeight(bay.rideZMm(), top, old.tieInner(), old.tieRodMm());
        };
    return NotReached.ifReached(untouched).map(Pose::toe).orElse(Double.NaN);
  }

  /**
   * What one standard deviation of each measured figure of the strut does to the toe: three
   * coordinates of each point, then the camber, all independent of each other.
   *
   * @param job the side
   * @param sure the standard deviations
   * @return radians each; NaN where the linkage does not get there
   */
  static double[] effects(SideJob job, PlusMinus sure) {
    StrutPoints strut = job.strut().orElseThrow();
    double[] effects = new double[3 * POINTS + 1];
    for (int i = 0; i < POINTS; i++) {
      StrutPoint which = StrutPoint.values()[i];
      Vec3 at = strut.points().get(i);
      Vec3 sd = sure.points().get(i);
      effects[3 * i] = slope(job, s -> strut.with(which, at.plus(new Vec3(s, 0, 0)))) * sd.x();
      effects[3 * i + 1] = slope(job, s -> strut.with(which, at.plus(new Vec3(0, s, 0)))) * sd.y();
      effects[3 * i + 2] = slope(job, s -> strut.with(which, at.plus(new Vec3(0, 0, s)))) * sd.z();
    }
    double perStep =
        slope(
            job, s -> strut.withCamber(new Angle(strut.camber().radians() + s * RADIANS_PER_STEP)));
    effects[3 * POINTS] = perStep / RADIANS_PER_STEP * sure.camber().radians();
    return effects;
  }

  /** Change of the toe by a step of something, from differences to both sides. */
  private static double slope(SideJob job, DoubleFunction<StrutPoints> moved) {
    double up = at(job.withStrut(Optional.of(moved.apply(STEP))));
    double down = at(job.withStrut(Optional.of(moved.apply(-STEP))));
    return (up - down) / (2 * STEP);
  }
}
