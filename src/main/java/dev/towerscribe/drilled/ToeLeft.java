package dev.towerscribe.drilled;

import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The toe that a wheel has at ride height when its strut's top was moved and nobody touched the tie
 * rod yet: the linkage closed with the tie rod as long as it was before the work, when the wheel
 * had its toe as measured.
 */
final class ToeLeft {
  /** Move of a point by which a derivative is reckoned, mm. */
  private static final double POINT_STEP = 1e-2;

  /** Change of the camber by which one is reckoned, radians. */
  private static final double CAMBER_STEP = 1e-5;

  private static final int POINTS = 8;

  private ToeLeft() {}

  /** This wheel's toe, radians, positive for toe-in; NaN where the linkage does not get there. */
  static double at(SideJob job) {
    try {
      Bay bay = Bay.of(job);
      Pose before = bay.before();
      double tie = before.tieOuter().minus(before.tieInner()).norm();
      Vec3 top = bay.top(job.bearing(job.mount().settingMm()));
      return bay.mechanism().tiedAtHeight(bay.rideZMm(), top, before.tieInner(), tie).toe();
    } catch (NotReached e) {
      return Double.NaN;
    }
  }

  /** As planned and as drilled; empty where either is not reached. */
  static Optional<DrilledAngles.Figure> figure(SideJob planned, SideJob now, MountCovariance sure) {
    double then = at(planned);
    double drilled = at(now);
    if (Double.isNaN(then) || Double.isNaN(drilled)) {
      return Optional.empty();
    }
    return Optional.of(
        new DrilledAngles.Figure(new Angle(then), new Angle(drilled), doubt(planned, now, sure)));
  }

  private static Optional<DrilledAngles.Doubt> doubt(
      SideJob planned, SideJob now, MountCovariance sure) {
    DrilledAngles.Slope slope =
        DrilledAngles.slope(now.mount(), (Mount mount) -> at(now.with(mount)));
    double drilledSquares = 0;
    double changeSquares = 0;
    for (Change change : changes(now.strut().orElseThrow().plusMinus())) {
      double drilled = change.by(now);
      double then = change.by(planned);
      drilledSquares += drilled * drilled;
      changeSquares += (drilled - then) * (drilled - then);
    }
    boolean known =
        Double.isFinite(slope.perRadian() + slope.perRearwardMm() + slope.perInboardMm())
            && Double.isFinite(drilledSquares + changeSquares);
    return known
        ? Optional.of(
            new DrilledAngles.Doubt(
                slope,
                slope.plusMinus(sure),
                Optional.of(new Angle(Math.sqrt(drilledSquares))),
                Optional.of(new Angle(Math.sqrt(changeSquares)))))
        : Optional.empty();
  }

  /** One independent figure of the strut: a coordinate of a point, or the camber. */
  private record Change(int point, Vec3 way, double angle, double deviation) {
    /** What one standard deviation of it does to the toe, radians. */
    double by(SideJob job) {
      StrutPoints strut = job.strut().orElseThrow();
      double step = angle == 0 ? POINT_STEP : CAMBER_STEP;
      double up = at(job.withStrut(Optional.of(moved(strut, 1))));
      double down = at(job.withStrut(Optional.of(moved(strut, -1))));
      return (up - down) / (2 * step) * deviation;
    }

    private StrutPoints moved(StrutPoints s, double sign) {
      if (angle != 0) {
        return s.withCamber(new Angle(s.camber().radians() + sign * angle));
      }
      StrutPoint which = StrutPoint.values()[point];
      return s.with(which, s.points().get(point).plus(way.times(sign)));
    }
  }

  private static List<Change> changes(PlusMinus sure) {
    List<Change> all = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      Vec3 p = sure.points().get(i);
      all.add(new Change(i, new Vec3(POINT_STEP, 0, 0), 0, p.x()));
      all.add(new Change(i, new Vec3(0, POINT_STEP, 0), 0, p.y()));
      all.add(new Change(i, new Vec3(0, 0, POINT_STEP), 0, p.z()));
    }
    all.add(new Change(-1, new Vec3(0, 0, 0), CAMBER_STEP, sure.camber().radians()));
    return all;
  }
}
