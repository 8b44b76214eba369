package dev.towerscribe.alignment;

import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import java.util.Optional;

/**
 * The wheel's travel that the damper leaves after the work. Its stops belong to the damper: its
 * greatest and least lengths are those before the work at full droop and full bump, and the new
 * linkage meets the same lengths elsewhere.
 *
 * @param bumpMm travel up from ride height until the damper is as short as it was at full bump
 * @param droopMm travel down from ride height until it is as long as it was at full droop; 0 or
 *     less where it is drawn out at ride height already
 */
public record DamperTravel(double bumpMm, double droopMm) {
  /** Steps in which an end of travel is looked for, mm. */
  private static final double STRIDE_MM = 5.0;

  /** No wheel goes farther, mm. */
  private static final double FAR_MM = 400.0;

  /** Halvings of a stride; the rest is far below what is printed. */
  private static final int HALVINGS = 40;

  /**
   * Works it out.
   *
   * @param bay a side's bay
   * @param before at ride height before the work
   * @param at at ride height with the bearing at the chosen setting
   * @return the travel; empty where the linkage did not reach its stops before the work, or meets
   *     neither length after it
   */
  static Optional<DamperTravel> of(Bay bay, Pose before, Pose at) {
    StrutPoints.Limits limits = bay.mechanism().points().limits();
    Optional<Double> longest = damper(bay, before, -limits.droopMm());
    Optional<Double> shortest = damper(bay, before, limits.bumpMm());
    if (longest.isEmpty() || shortest.isEmpty()) {
      return Optional.empty();
    }
    return meets(bay, at, longest.get())
        .flatMap(down -> meets(bay, at, shortest.get()).map(up -> new DamperTravel(up, -down)));
  }

  /**
   * The damper's greatest length, as it was before the work at full droop.
   *
   * @param job a side with strut points
   * @return mm; empty where the linkage does not get there
   */
  public static Optional<Double> longestMm(SideJob job) {
    Bay bay = Bay.of(job);
    double down = -bay.mechanism().points().limits().droopMm();
    return NotReached.ifReached(bay::before).flatMap(before -> damper(bay, before, down));
  }

  /** The damper's length at a travel from ride height; it shortens as the wheel goes up. */
  private static Optional<Double> damper(Bay bay, Pose set, double travelMm) {
    return Optional.ofNullable(bay.travel(set, travelMm).pose()).map(Pose::damperMm);
  }

  /** The travel at which the damper has a length. */
  private static Optional<Double> meets(Bay bay, Pose set, double lengthMm) {
    double way = set.damperMm() < lengthMm ? -1.0 : 1.0;
    for (double near = 0; near < FAR_MM; near += STRIDE_MM) {
      double far = near + STRIDE_MM;
      Optional<Double> there = damper(bay, set, way * far);
      if (there.isEmpty()) {
        return Optional.empty();
      }
      if (way * (there.get() - lengthMm) <= 0) {
        return between(bay, set, lengthMm, way, near, far);
      }
    }
    return Optional.empty();
  }

  private static Optional<Double> between(
      Bay bay, Pose set, double lengthMm, double way, double from, double to) {
    double near = from;
    double far = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (near + far) / 2;
      Optional<Double> there = damper(bay, set, way * middle);
      if (there.isEmpty()) {
        return Optional.empty();
      }
      if (way * (there.get() - lengthMm) <= 0) {
        far = middle;
      } else {
        near = middle;
      }
    }
    return Optional.of(way * (near + far) / 2);
  }
}
