package dev.towerscribe.geometry;

/**
 * A point or vector of space, mm. Vehicle axes (ISO 8855: X forward, Y left, Z up) unless said
 * otherwise.
 *
 * @param x first coordinate, finite
 * @param y second coordinate, finite
 * @param z third coordinate, finite
 */
public record Vec3(double x, double y, double z) {
  /**
   * Checks the coordinates.
   *
   * @throws IllegalArgumentException if one is not finite
   */
  public Vec3 {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException("not a point: " + x + ", " + y + ", " + z);
    }
  }

  /**
   * Sum.
   *
   * @param o other vector
   * @return this + o
   */
  public Vec3 plus(Vec3 o) {
    return new Vec3(x + o.x, y + o.y, z + o.z);
  }

  /**
   * Difference.
   *
   * @param o other vector
   * @return this - o
   */
  public Vec3 minus(Vec3 o) {
    return new Vec3(x - o.x, y - o.y, z - o.z);
  }

  /**
   * Multiple.
   *
   * @param k factor
   * @return k times this
   */
  public Vec3 times(double k) {
    return new Vec3(x * k, y * k, z * k);
  }

  /**
   * Scalar product.
   *
   * @param o other vector
   * @return this . o
   */
  public double dot(Vec3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  /**
   * Vector product, right-handed.
   *
   * @param o other vector
   * @return this x o
   */
  public Vec3 cross(Vec3 o) {
    return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  /**
   * Length.
   *
   * @return the norm
   */
  public double norm() {
    return Math.sqrt(dot(this));
  }

  /**
   * The same direction with length one.
   *
   * @return unit vector
   * @throws ArithmeticException for the zero vector
   */
  public Vec3 unit() {
    double n = norm();
    if (n == 0.0) {
      throw new ArithmeticException("the zero vector has no direction");
    }
    return times(1.0 / n);
  }

  /**
   * The mirror image in the car's centre plane (Y = 0).
   *
   * @return (x, -y, z)
   */
  public Vec3 mirroredAcross() {
    return new Vec3(x, -y, z);
  }
}
