package dev.towerscribe.geometry;

import java.util.List;

/**
 * An upright rectangle, mm.
 *
 * @param minX left
 * @param minY bottom
 * @param maxX right, not less than minX
 * @param maxY top, not less than minY
 */
public record Box(double minX, double minY, double maxX, double maxY) {
  /**
   * Checks the order of the sides.
   *
   * @throws IllegalArgumentException if a side is not finite or out of order
   */
  public Box {
    if (!(minX <= maxX && minY <= maxY)
        || !Double.isFinite(maxX - minX)
        || !Double.isFinite(maxY - minY)) {
      throw new IllegalArgumentException(
          "not a box: " + minX + ", " + minY + ", " + maxX + ", " + maxY);
    }
  }

  /**
   * The smallest box around a disc.
   *
   * @param centre centre
   * @param radiusMm radius, not negative
   * @return the box
   */
  public static Box around(Vec2 centre, double radiusMm) {
    return new Box(
        centre.x() - radiusMm, centre.y() - radiusMm, centre.x() + radiusMm, centre.y() + radiusMm);
  }

  /**
   * Width.
   *
   * @return mm
   */
  public double width() {
    return maxX - minX;
  }

  /**
   * Height.
   *
   * @return mm
   */
  public double height() {
    return maxY - minY;
  }

  /**
   * Centre.
   *
   * @return the middle point
   */
  public Vec2 centre() {
    return new Vec2((minX + maxX) / 2, (minY + maxY) / 2);
  }

  /**
   * Its corners.
   *
   * @return four, counter-clockwise from the lower left one
   */
  public List<Vec2> corners() {
    return List.of(
        new Vec2(minX, minY), new Vec2(maxX, minY), new Vec2(maxX, maxY), new Vec2(minX, maxY));
  }

  /**
   * The smallest box that holds both.
   *
   * @param o other box
   * @return the union's box
   */
  public Box union(Box o) {
    return new Box(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY));
  }

  /**
   * The part that lies in another box.
   *
   * @param o a box that meets this one
   * @return what both share
   * @throws IllegalArgumentException if they do not meet
   */
  public Box within(Box o) {
    return new Box(
        Math.max(minX, o.minX),
        Math.max(minY, o.minY),
        Math.min(maxX, o.maxX),
        Math.min(maxY, o.maxY));
  }

  /**
   * Moved outward on all sides.
   *
   * @param mm by how much; negative shrinks
   * @return the grown box
   */
  public Box grown(double mm) {
    return new Box(minX - mm, minY - mm, maxX + mm, maxY + mm);
  }

  /**
   * Whether a point is inside or on the edge.
   *
   * @param p point
   * @return true if so
   */
  public boolean contains(Vec2 p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }

  /**
   * Whether another box is wholly inside or on the edge.
   *
   * @param o other box
   * @return true if so
   */
  public boolean contains(Box o) {
    return o.minX >= minX && o.maxX <= maxX && o.minY >= minY && o.maxY <= maxY;
  }

  /**
   * Whether two boxes share a point.
   *
   * @param o other box
   * @return true if so
   */
  public boolean meets(Box o) {
    return o.minX <= maxX && o.maxX >= minX && o.minY <= maxY && o.maxY >= minY;
  }

  /** Distance to a point, mm; zero inside. */
  double distanceTo(Vec2 p) {
    double x = Math.max(0.0, Math.max(minX - p.x(), p.x() - maxX));
    double y = Math.max(0.0, Math.max(minY - p.y(), p.y() - maxY));
    return Math.sqrt(x * x + y * y);
  }

  /** Distance to another box, mm; zero where they meet. */
  double distanceTo(Box o) {
    double x = Math.max(0.0, Math.max(minX - o.maxX, o.minX - maxX));
    double y = Math.max(0.0, Math.max(minY - o.maxY, o.minY - maxY));
    return Math.sqrt(x * x + y * y);
  }
}
