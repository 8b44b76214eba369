package dev.towerscribe.drilled;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import java.util.List;
import java.util.Optional;

/**
 * The drilled holes of one tower as caliper readings have them. Landmarks count as seen at their
 * places in the job, with their uncertainty; they tie the holes to the tower. What the readings
 * leave open is settled by the plan, where the search begins: which of two mirror images a hole is,
 * and, where nothing ties the holes to the tower, where the pattern lies and how it is turned. The
 * latter then means nothing: only distances between the holes do.
 *
 * @param holes those that the readings fix, in the plate's order
 * @param hanging those that they do not, in the plate's order
 * @param covariance of the fixed holes' fore0, in0, fore1, in1 ... and then their diameters, mm2
 * @param loose ways in which the pattern as a whole could still move: 0 tied to the tower
 * @param contradictions readings that do not agree with the rest, worst first
 * @param unchecked readings of which an error would show nowhere, in words
 * @param spare readings beyond those needed
 * @param scatter residuals over uncertainties, all readings together; 1 is as expected, 0 without
 *     spares
 * @param widened whether every +/- was widened by {@code scatter}, as that is no chance
 */
public record HoleNetwork(
    List<Found> holes,
    List<Hanging> hanging,
    double[][] covariance,
    int loose,
    List<Contradiction> contradictions,
    List<String> unchecked,
    int spare,
    double scatter,
    boolean widened) {
  /** Copies the lists. */
  public HoleNetwork {
    holes = List.copyOf(holes);
    hanging = List.copyOf(hanging);
    contradictions = List.copyOf(contradictions);
    unchecked = List.copyOf(unchecked);
  }

  /**
   * A hole that the readings fix.
   *
   * @param planned as it was to be drilled
   * @param at its centre, plan
   * @param diameterMm its size
   * @param foreSdMm +/- of its centre, forward
   * @param inSdMm +/- of its centre, inboard
   * @param worstSdMm +/- of its centre, in the direction in which it is known worst
   * @param diameterSdMm +/- of its size
   */
  public record Found(
      PlacedHole planned,
      Vec2 at,
      double diameterMm,
      double foreSdMm,
      double inSdMm,
      double worstSdMm,
      double diameterSdMm) {
    /**
     * The name printed beside it.
     *
     * @return the bolt's name
     */
    public String name() {
      return planned.name();
    }

    /** The hole where it is and as wide as it is. */
    PlacedHole asDrilled() {
      return new PlacedHole(planned.bolt(), at, diameterMm, planned.drillsMm());
    }
  }

  /**
   * A hole that the readings do not fix.
   *
   * @param planned as it was to be drilled
   * @param readings how many spans there are with it
   */
  public record Hanging(PlacedHole planned, int readings) {}

  /**
   * A disagreement.
   *
   * @param readings the reading that is off; several where it cannot be told which of them is
   * @param offMm read minus expected from the rest, of the first
   * @param deviations how many of its standard deviations that is, not negative
   * @param limit past how many of them a reading is off
   * @param leftOut whether the holes were found without it
   */
  public record Contradiction(
      List<String> readings, double offMm, double deviations, double limit, boolean leftOut) {
    /** Copies the list. */
    public Contradiction {
      readings = List.copyOf(readings);
    }
  }

  /**
   * A hole by its name.
   *
   * @param name the bolt's name
   * @return the hole, if the readings fix it
   */
  public Optional<Found> found(String name) {
    return holes.stream().filter(f -> f.name().equals(name)).findFirst();
  }

  /**
   * Whether the holes' places on the tower are known, not just their distances.
   *
   * @return true if landmarks tie them to it
   */
  public boolean tied() {
    return loose == 0;
  }

  /**
   * Whether every hole of the plate was found.
   *
   * @return false if one is not fixed by anything
   */
  public boolean complete() {
    return hanging.isEmpty();
  }
}
