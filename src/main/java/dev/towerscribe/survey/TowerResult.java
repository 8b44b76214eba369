package dev.towerscribe.survey;

import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Optional;

/**
 * One tower; every figure only where it was read.
 *
 * @param sheet thickness
 * @param opening diameter
 * @param mark diameter
 * @param leanInboard angle
 * @param leanRearward angle
 * @param crownAcross width
 * @param crownRise rise over it
 * @param pivotHeight above the plane
 * @param landmarks round holes
 * @param lines straight lines
 * @param datum how sure the landmarks are as readings of drilled holes want it, if there are any
 * @param fit how its readings of places agree
 */
public record TowerResult(
    Optional<Figure> sheet,
    Optional<Figure> opening,
    Optional<Figure> mark,
    Optional<Figure> leanInboard,
    Optional<Figure> leanRearward,
    Optional<Figure> crownAcross,
    Optional<Figure> crownRise,
    Optional<Figure> pivotHeight,
    List<Hole> landmarks,
    List<Line> lines,
    Optional<Datum> datum,
    Fit fit) {
  /** Copies the lists. */
  public TowerResult {
    landmarks = List.copyOf(landmarks);
    lines = List.copyOf(lines);
  }

  /**
   * The landmarks' uncertainty in three parts, as a line drawn at a slight angle turns all of them
   * together and a centre beside the true one shifts them.
   *
   * @param turnSd of their common turn about the strut rod centre, radians
   * @param shiftSdMm of each coordinate of their common shift, mm
   * @param landmarkSdMm of each coordinate of each by itself, mm
   */
  public record Datum(double turnSd, double shiftSdMm, double landmarkSdMm) {}

  /**
   * A landmark.
   *
   * @param name its name
   * @param at its centre, plan
   * @param sd one standard deviation of each coordinate, mm
   * @param diameter its diameter
   * @param found whether the readings fix its place
   */
  public record Hole(String name, Vec2 at, Vec2 sd, Figure diameter, boolean found) {}

  /**
   * A straight line.
   *
   * @param name its name
   * @param from one place on it, plan
   * @param to another
   * @param sd the greatest standard deviation of the four coordinates, mm
   */
  public record Line(String name, Vec2 from, Vec2 to, double sd) {}
}
