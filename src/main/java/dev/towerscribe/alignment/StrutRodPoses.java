package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.StrutRodReach;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which ways the strut rod points: over the slot, from full droop to full bump, from lock to lock,
 * and over the range of the knuckle's camber bolt.
 */
public final class StrutRodPoses {
  /**
   * Places looked at from one end of each range to the other. Between two of five the strut rod's
   * way bends by far less than a tenth of a millimetre in the tower plane.
   */
  private static final double[] ALONG = {0.0, 0.25, 0.5, 0.75, 1.0};

  private StrutRodPoses() {}

  /**
   * The ways of one side's strut rod.
   *
   * @param job a side
   * @return the ways; empty without strut points, and where the points put the strut's lower end
   *     above the tower top or cannot close the linkage
   */
  public static Optional<StrutRodReach> of(SideJob job) {
    if (job.strut().isEmpty() || !PointFault.in(job).isEmpty()) {
      return Optional.empty();
    }
    StrutPoints strut = job.strut().get();
    StrutPoints.Limits limits = strut.limits();
    Bay bay = Bay.of(job);
    Plate.Slot slot = job.plate().slot();
    List<StrutRodReach.Ray> rays = new ArrayList<>();
    for (double s : slot.fromMm() == slot.toMm() ? new double[] {0.0} : ALONG) {
      double setting = between(slot.fromMm(), slot.toMm(), s);
      Vec3 top = bay.top(job.bearing(setting));
      for (Bay bolted : bay.overKnuckleBolt()) {
        for (double travel : ALONG) {
          double z = bay.rideZMm() + between(-limits.droopMm(), limits.bumpMm(), travel);
          for (double steer : ALONG) {
            double lock = limits.steer().radians();
            Angle toe = new Angle(strut.toe().radians() + between(-lock, lock, steer));
            perMm(job, bolted.mechanism(), z, top, toe)
                .ifPresent(v -> rays.add(new StrutRodReach.Ray(setting, v)));
          }
        }
      }
    }
    return rays.isEmpty() ? Optional.empty() : Optional.of(new StrutRodReach(rays));
  }

  private static double between(double from, double to, double t) {
    return from + t * (to - from);
  }

  /** Empty where the linkage does not reach, or the strut's lower end is not below the tower. */
  private static Optional<Vec2> perMm(
      SideJob job, Mechanism mechanism, double wheelZMm, Vec3 top, Angle toe) {
    Lean lean = job.tower().lean();
    double least = Math.max(0.0, job.bearingOverRimMm());
    return NotReached.ifReached(() -> mechanism.headedAtHeight(wheelZMm, top, toe))
        .map(pose -> pose.strutLower().minus(pose.top()))
        .filter(down -> -down.dot(lean.normal(Side.LEFT)) > least)
        .map(
            down -> {
              double depth = -down.dot(lean.normal(Side.LEFT));
              return new Vec2(
                  down.dot(lean.fore(Side.LEFT)) / depth, down.dot(lean.in(Side.LEFT)) / depth);
            });
  }
}
