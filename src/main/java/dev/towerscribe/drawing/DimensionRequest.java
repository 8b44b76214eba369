package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Optional;

/**
 * A dimension that is wanted: what it measures, what it says, and where it would best stand. All
 * points in page millimetres, y up. The words are the caller's, so that a page may show mm, inches
 * or both: one string for each line, the top one first. Words may be written with the diameter sign
 * U+2300; where the sheet font lacks it the letter U+00D8 stands for it.
 */
public sealed interface DimensionRequest {
  /**
   * What it says.
   *
   * @return lines from the top, at least one
   */
  List<String> words();

  /**
   * A distance along a direction, between arrows. Dimension lines of the same side stand in tiers,
   * the shorter nearer the part.
   *
   * @param from one point
   * @param to the other; differs from the first along the direction
   * @param along direction that is measured, any length
   * @param side the better side, square to the direction or nearly; any length
   * @param clearMm where extension lines begin: this far from the points, beside the style's gap;
   *     for instance a hole's radius. Zero or more
   * @param words what it says
   */
  record Linear(Vec2 from, Vec2 to, Vec2 along, Vec2 side, double clearMm, List<String> words)
      implements DimensionRequest {
    /** Checks the points and directions; the side is made square to the direction. */
    public Linear {
      along = along.unit();
      Vec2 normal = along.quarterTurn();
      double toward = side.dot(normal);
      if (!(Math.abs(toward) > 1e-6 * side.norm())) {
        throw new IllegalArgumentException("the side lies along what is measured: " + side);
      }
      side = normal.times(Math.signum(toward));
      if (!(Math.abs(to.minus(from).dot(along)) > LEAST_MM) || !(clearMm >= 0)) {
        throw new IllegalArgumentException("nothing to measure: " + from + ", " + to);
      }
      words = written(words);
    }

    /**
     * Left to right.
     *
     * @param from one point
     * @param to the other
     * @param above whether the better side is above, else below
     * @param words what it says
     * @return the request
     */
    public static Linear horizontal(Vec2 from, Vec2 to, boolean above, List<String> words) {
      return new Linear(from, to, new Vec2(1, 0), new Vec2(0, above ? 1 : -1), 0, words);
    }

    /**
     * Up and down.
     *
     * @param from one point
     * @param to the other
     * @param right whether the better side is to the right, else to the left
     * @param words what it says
     * @return the request
     */
    public static Linear vertical(Vec2 from, Vec2 to, boolean right, List<String> words) {
      return new Linear(from, to, new Vec2(0, 1), new Vec2(right ? 1 : -1, 0), 0, words);
    }

    /**
     * From point to point.
     *
     * @param from one point
     * @param to the other
     * @param side which of the two sides is better: any direction not along the line
     * @param words what it says
     * @return the request
     */
    public static Linear aligned(Vec2 from, Vec2 to, Vec2 side, List<String> words) {
      return new Linear(from, to, to.minus(from), side, 0, words);
    }

    double lengthMm() {
      return Math.abs(to.minus(from).dot(along));
    }
  }

  /**
   * A distance from a datum, square to the leader. Those with the same side and datum are set in a
   * row in order of distance; those at the same distance with the same words share one leader,
   * which begins at the point nearest the row. The datum's own request says "0".
   *
   * @param datum a point of the line that is measured from
   * @param point what is measured
   * @param side direction of the leader, any length; what is measured lies square to it
   * @param clearMm where the leader begins: this far from the point, beside the style's gap. Zero
   *     or more
   * @param words what it says
   */
  record Ordinate(Vec2 datum, Vec2 point, Vec2 side, double clearMm, List<String> words)
      implements DimensionRequest {
    /** Checks the words; the side gets length one. */
    public Ordinate {
      Vec2 unit = side.unit();
      // Without negative zeros, so that like sides are equal.
      side = new Vec2(unit.x() + 0.0, unit.y() + 0.0);
      if (!(clearMm >= 0)) {
        throw new IllegalArgumentException("a leader cannot begin " + clearMm + " mm off");
      }
      words = written(words);
    }
  }

  /**
   * A circle's diameter.
   *
   * @param centre centre
   * @param radiusMm radius as drawn, positive
   * @param toward direction best liked for the leader, any length; empty for away from the part
   * @param words what it says, sign included
   */
  record Diameter(Vec2 centre, double radiusMm, Optional<Vec2> toward, List<String> words)
      implements DimensionRequest {
    /** Checks the circle. */
    public Diameter {
      if (!(radiusMm > 0)) {
        throw new IllegalArgumentException("not a radius: " + radiusMm);
      }
      toward = toward.map(Vec2::unit);
      words = written(words);
    }
  }

  /**
   * An arc's radius; the arrow touches the arc itself, never its continuation.
   *
   * @param arc as drawn
   * @param words what it says, letter R included
   */
  record Radius(Arc arc, List<String> words) implements DimensionRequest {
    /** Checks the words. */
    public Radius {
      words = written(words);
    }
  }

  /**
   * The lesser angle between two arms.
   *
   * @param vertex where they meet
   * @param from a point on one arm, where what is drawn of it ends
   * @param to a point on the other
   * @param words what it says, degree sign included
   */
  record AngleBetween(Vec2 vertex, Vec2 from, Vec2 to, List<String> words)
      implements DimensionRequest {
    /** Checks that there is an angle. */
    public AngleBetween {
      Vec2 a = from.minus(vertex).unit();
      Vec2 b = to.minus(vertex).unit();
      if (!(Math.abs(a.cross(b)) > 1e-3)) {
        throw new IllegalArgumentException("no angle between " + from + " and " + to);
      }
      words = written(words);
    }
  }

  /** Shorter distances cannot be dimensioned with a line, mm. */
  double LEAST_MM = 0.1;

  private static List<String> written(List<String> words) {
    if (words.isEmpty() || words.stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException("a dimension without words");
    }
    return words.stream()
        .map(line -> Lettering.canWrite(0x2300) ? line : line.replace('\u2300', '\u00D8'))
        .toList();
  }
}
