package dev.towerscribe.drilled;

/** The chi-squared distribution, as far as it is needed. */
final class Chi2 {
  /** Standard deviations that a normal figure passes once in a thousand times, one way. */
  private static final double Z = 3.0902;

  private Chi2() {}

  /**
   * What the sum of so many squares passes once in a thousand times (Wilson and Hilferty 1931: the
   * cube root is nearly normal; 3 % too high for one square, less for more).
   */
  static double thousandth(int squares) {
    double v = 2.0 / (9.0 * squares);
    return squares * Math.pow(1 - v + Z * Math.sqrt(v), 3);
  }
}
