package dev.towerscribe.geometry;

import dev.towerscribe.quantity.Angle;
import java.util.List;

/**
 * A point or vector of a plane, mm. Which plane and which axes is said by whoever holds it.
 *
 * @param x first coordinate, finite
 * @param y second coordinate, finite
 */
public record Vec2(double x, double y) {
  /** The origin. */
  public static final Vec2 ZERO = new Vec2(0.0, 0.0);

  /**
   * Checks the coordinates.
   *
   * @throws IllegalArgumentException if one is not finite
   */
  public Vec2 {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("not a point: " + x + ", " + y);
    }
  }

  /**
   * The point at a distance and angle from the origin.
   *
   * @param radius distance
   * @param angle from +x toward +y
   * @return the point
   */
  public static Vec2 polar(double radius, Angle angle) {
    return new Vec2(radius * angle.cos(), radius * angle.sin());
  }

  /**
   * Sum.
   *
   * @param o other vector
   * @return this + o
   */
  public Vec2 plus(Vec2 o) {
    return new Vec2(x + o.x, y + o.y);
  }

  /**
   * Difference.
   *
   * @param o other vector
   * @return this - o
   */
  public Vec2 minus(Vec2 o) {
    return new Vec2(x - o.x, y - o.y);
  }

  /**
   * Multiple.
   *
   * @param k factor
   * @return k times this
   */
  public Vec2 times(double k) {
    return new Vec2(x * k, y * k);
  }

  /**
   * Scalar product.
   *
   * @param o other vector
   * @return this . o
   */
  public double dot(Vec2 o) {
    return x * o.x + y * o.y;
  }

  /**
   * Vector product's component along the normal.
   *
   * @param o other vector
   * @return positive when {@code o} lies counter-clockwise of this
   */
  public double cross(Vec2 o) {
    return x * o.y - y * o.x;
  }

  /**
   * Length.
   *
   * @return the norm
   */
  public double norm() {
    return Math.hypot(x, y);
  }

  /**
   * Distance between points.
   *
   * @param o other point
   * @return distance
   */
  public double distanceTo(Vec2 o) {
    return Math.hypot(x - o.x, y - o.y);
  }

  /**
   * The same direction with length one.
   *
   * @return unit vector
   * @throws ArithmeticException for the zero vector
   */
  public Vec2 unit() {
    double n = norm();
    if (n == 0.0) {
      throw new ArithmeticException("the zero vector has no direction");
    }
    return new Vec2(x / n, y / n);
  }

  /**
   * The middle of several points, all alike.
   *
   * @param points at least one
   * @return their mean
   */
  public static Vec2 mean(List<Vec2> points) {
    return points.stream().reduce(ZERO, Vec2::plus).times(1.0 / points.size());
  }

  /**
   * A quarter turn counter-clockwise.
   *
   * @return (-y, x)
   */
  public Vec2 quarterTurn() {
    return new Vec2(-y, x);
  }

  /**
   * Turned about the origin, +x toward +y.
   *
   * @param angle turn
   * @return the turned vector
   */
  public Vec2 rotated(Angle angle) {
    double c = angle.cos();
    double s = angle.sin();
    return new Vec2(c * x - s * y, s * x + c * y);
  }

  /**
   * Direction from +x toward +y.
   *
   * @return angle in (-pi, pi]
   */
  public Angle direction() {
    return new Angle(Math.atan2(y, x));
  }

  /**
   * A point on the straight line to another.
   *
   * @param o the other point
   * @param t 0 here, 1 there
   * @return the point between
   */
  public Vec2 toward(Vec2 o, double t) {
    return new Vec2(x + t * (o.x - x), y + t * (o.y - y));
  }
}
