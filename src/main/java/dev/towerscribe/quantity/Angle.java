package dev.towerscribe.quantity;

/**
 * A plane angle. Held in radians; degrees appear only where people read or write. The sign is that
 * of the quantity it measures and is stated by whoever holds it.
 *
 * @param radians the angle in radians; finite
 */
public record Angle(double radians) implements Comparable<Angle> {
  /** No turn. */
  public static final Angle ZERO = new Angle(0.0);

  /**
   * Checks that the value is a number.
   *
   * @throws IllegalArgumentException if not finite
   */
  public Angle {
    if (!Double.isFinite(radians)) {
      throw new IllegalArgumentException("an angle must be finite, not " + radians);
    }
  }

  /**
   * An angle from degrees.
   *
   * @param degrees the angle in degrees; finite
   * @return the same angle
   */
  public static Angle ofDegrees(double degrees) {
    return new Angle(Math.toRadians(degrees));
  }

  /**
   * The angle in degrees.
   *
   * @return degrees
   */
  public double degrees() {
    return Math.toDegrees(radians);
  }

  /**
   * Its sine.
   *
   * @return sine, -1 to 1
   */
  public double sin() {
    return Math.sin(radians);
  }

  /**
   * Its cosine.
   *
   * @return cosine, -1 to 1
   */
  public double cos() {
    return Math.cos(radians);
  }

  /**
   * Its tangent.
   *
   * @return tangent
   */
  public double tan() {
    return Math.tan(radians);
  }

  /**
   * The same turn the other way.
   *
   * @return the negated angle
   */
  public Angle negated() {
    return new Angle(-radians);
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(radians, other.radians);
  }
}
