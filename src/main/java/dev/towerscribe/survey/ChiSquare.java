package dev.towerscribe.survey;

import org.hipparchus.special.Gamma;

/** The chi-square distribution. */
final class ChiSquare {
  private ChiSquare() {}

  /**
   * How often chance alone gives more.
   *
   * @param value a sum of squares, not negative
   * @param freedom degrees of freedom, at least one
   * @return probability, 0 to 1
   */
  static double above(double value, int freedom) {
    return Gamma.regularizedGammaQ(freedom / 2.0, value / 2.0);
  }
}
