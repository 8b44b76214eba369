package dev.towerscribe.geometry;

/**
 * A rigid map of the plane, with or without a reflection: p maps to origin + p.x * xAxis + p.y *
 * yAxis.
 *
 * @param origin where (0, 0) goes
 * @param xAxis where +x goes; unit length
 * @param yAxis where +y goes; unit length, square to xAxis, on either side of it
 */
public record Frame2(Vec2 origin, Vec2 xAxis, Vec2 yAxis) {
  private static final double ORTHONORMAL = 1e-12;

  /** No change. */
  public static final Frame2 IDENTITY = new Frame2(Vec2.ZERO, new Vec2(1, 0), new Vec2(0, 1));

  /**
   * Checks that the axes are orthonormal to a few roundings.
   *
   * @throws IllegalArgumentException if they are not
   */
  public Frame2 {
    if (Math.abs(xAxis.dot(yAxis)) > ORTHONORMAL
        || Math.abs(xAxis.norm() - 1) > ORTHONORMAL
        || Math.abs(yAxis.norm() - 1) > ORTHONORMAL) {
      throw new IllegalArgumentException("axes not orthonormal: " + xAxis + ", " + yAxis);
    }
  }

  /**
   * Maps a point.
   *
   * @param p point in this frame
   * @return the point outside
   */
  public Vec2 map(Vec2 p) {
    return origin.plus(mapVector(p));
  }

  /**
   * Maps a direction or a difference of points.
   *
   * @param v vector in this frame
   * @return the vector outside
   */
  public Vec2 mapVector(Vec2 v) {
    return new Vec2(v.x() * xAxis.x() + v.y() * yAxis.x(), v.x() * xAxis.y() + v.y() * yAxis.y());
  }

  /**
   * Whether the map reflects (turns left hands into right ones).
   *
   * @return true for a reflection
   */
  public boolean reflects() {
    return xAxis.cross(yAxis) < 0;
  }

  /**
   * The inverse map.
   *
   * @return maps outside points into this frame
   */
  public Frame2 inverse() {
    Vec2 x = new Vec2(xAxis.x(), yAxis.x());
    Vec2 y = new Vec2(xAxis.y(), yAxis.y());
    Vec2 o = new Vec2(-origin.dot(xAxis), -origin.dot(yAxis));
    return new Frame2(o, x, y);
  }
}
