package dev.towerscribe.alignment;

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

  /** Half the travel over which a slope is taken: its error is that squared times toe's third. */
  private static final double SLOPE_HALF_MM = 0.1;

  /**
   * What travel does to toe. Toe-in positive, bump positive.
   *
   * @param slopeRadPerMm change of toe per mm of travel at ride height
   * @param steepestRadPerMm the slope where it is steepest within the curve's travel
   * @param steepestAtMm travel there
   * @param peakRad the greatest departure of toe from that at ride height, with its sign
   * @param peakAtMm travel there
   */
  public record BumpSteer(
      double slopeRadPerMm,
      double steepestRadPerMm,
      double steepestAtMm,
      double peakRad,
      double peakAtMm) {}

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
    List<Bay.Point> travel = bay.travel(set, -TRAVEL_MM, TRAVEL_MM, TRAVEL_STEP_MM);
    return new Curves(
        set,
        travel,
        bay.steer(set, -STEER_DEGREES, STEER_DEGREES, STEER_STEP_DEGREES),
        bumpSteer(bay, set, travel));
  }

  private static BumpSteer bumpSteer(Bay bay, Pose set, List<Bay.Point> travel) {
    double steepest = 0;
    double steepestAt = 0;
    double peak = 0;
    double peakAt = 0;
    double atRest = slope(bay, set, 0);
    for (Bay.Point point : travel) {
      if (!point.reached()) {
        continue;
      }
      double away = point.pose().toe() - set.toe();
      if (Math.abs(away) > Math.abs(peak)) {
        peak = away;
        peakAt = point.input();
      }
      double slope = slope(bay, set, point.input());
      if (Math.abs(slope) > Math.abs(steepest)) {
        steepest = slope;
        steepestAt = point.input();
      }
    }
    return new BumpSteer(atRest, steepest, steepestAt, peak, peakAt);
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
