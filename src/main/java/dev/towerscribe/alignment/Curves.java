package dev.towerscribe.alignment;

import dev.towerscribe.model.StrutPoints;
import java.util.List;

/**
 * What the wheel does over travel and steer, from one pose at ride height.
 *
 * @param set the pose at ride height, toe set
 * @param travel over wheel travel, tie rod as set; droop negative
 * @param steer over the wheel's own heading at ride height; to the left positive
 * @param bumpSteer what travel does to toe
 */
public record Curves(Pose set, List<Bay.Point> travel, List<Bay.Point> steer, BumpSteer bumpSteer) {
  /** Wheel travel that the curves go to, each way, mm. */
  public static final double TRAVEL_MM = 80;

  /** Step of the travel curve, mm. */
  public static final double TRAVEL_STEP_MM = 10;

  /** Steer that the curves go to, each way, degrees. */
  public static final double STEER_DEGREES = 35;

  /** Step of the steer curve, degrees. */
  public static final double STEER_STEP_DEGREES = 5;

  /** Farthest step between the travels at which bump steer is looked at, mm. */
  private static final double BUMP_STEP_MM = 5;

  /** Half the travel over which a slope is taken: its error is that squared times toe's third. */
  private static final double SLOPE_HALF_MM = 0.1;

  /**
   * What travel does to toe, from the job's full droop to its full bump. Toe-in positive, bump
   * positive.
   *
   * @param slopeRadPerMm change of toe per mm of travel at ride height
   * @param steepestRadPerMm the slope where it is steepest within that travel
   * @param steepestAtMm travel there
   * @param peakRad the greatest departure of toe from that at ride height, with its sign
   * @param peakAtMm travel there
   * @param droopMm how far down was looked, not negative
   * @param bumpMm how far up, not negative
   */
  public record BumpSteer(
      double slopeRadPerMm,
      double steepestRadPerMm,
      double steepestAtMm,
      double peakRad,
      double peakAtMm,
      double droopMm,
      double bumpMm) {}

  /** Copies the lists. */
  public Curves {
    travel = List.copyOf(travel);
    steer = List.copyOf(steer);
  }

  /**
   * Works the curves out.
   *
   * @param bay the side
   * @param set the pose at ride height, toe set
   * @return its curves
   */
  public static Curves of(Bay bay, Pose set) {
    return new Curves(
        set,
        bay.travel(set, -TRAVEL_MM, TRAVEL_MM, TRAVEL_STEP_MM),
        bay.steer(set, -STEER_DEGREES, STEER_DEGREES, STEER_STEP_DEGREES),
        bumpSteer(bay, set));
  }

  private static BumpSteer bumpSteer(Bay bay, Pose set) {
    StrutPoints.Limits limits = bay.mechanism().points().limits();
    double steepest = 0;
    double steepestAt = 0;
    double peak = 0;
    double peakAt = 0;
    for (double end : new double[] {-limits.droopMm(), limits.bumpMm()}) {
      int steps = (int) Math.ceil(Math.abs(end) / BUMP_STEP_MM);
      for (int i = 0; i <= steps; i++) {
        double travel = i == 0 ? 0.0 : end * i / steps;
        Bay.Point there = bay.travel(set, travel);
        double away = there.reached() ? there.pose().toe() - set.toe() : 0.0;
        if (Math.abs(away) > Math.abs(peak)) {
          peak = away;
          peakAt = travel;
        }
        double slope = there.reached() ? slope(bay, set, travel) : 0.0;
        if (Math.abs(slope) > Math.abs(steepest)) {
          steepest = slope;
          steepestAt = travel;
        }
      }
    }
    return new BumpSteer(
        slope(bay, set, 0), steepest, steepestAt, peak, peakAt, limits.droopMm(), limits.bumpMm());
  }

  /** Central difference; where only one side of it is reached, the slope is not known: zero. */
  private static double slope(Bay bay, Pose set, double travelMm) {
    List<Bay.Point> ends =
        bay.travel(set, travelMm - SLOPE_HALF_MM, travelMm + SLOPE_HALF_MM, 2 * SLOPE_HALF_MM);
    return ends.stream().allMatch(Bay.Point::reached)
        ? (ends.get(1).pose().toe() - ends.get(0).pose().toe()) / (2 * SLOPE_HALF_MM)
        : 0.0;
  }
}
