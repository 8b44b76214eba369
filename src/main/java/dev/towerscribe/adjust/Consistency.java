package dev.towerscribe.adjust;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.special.Gamma;

/**
 * How well observations agree with each other, against their standard deviations as stated: the
 * chi-square test of all of them together.
 *
 * @param squares sum of squared residuals, each over its standard deviation
 * @param freedom observations beyond those that were needed
 */
public record Consistency(double squares, int freedom) {
  /**
   * Good observations fit as badly once in a hundred; past that the standard deviations count as
   * stated too small. Common practice, no source.
   */
  public static final double UNLIKELY = 0.01;

  /** Far finer than any figure of the distribution is printed. */
  private static final double FINE = 1e-13;

  /**
   * How much larger the residuals are than the standard deviations make likely (s0).
   *
   * @return 1 as expected; 0 without anything to spare
   */
  public double ratio() {
    return freedom < 1 ? 0 : Math.sqrt(squares / freedom);
  }

  /**
   * How often good observations fit as badly or worse.
   *
   * @return probability, 0 to 1; 1 without anything to spare
   */
  public double chance() {
    return freedom < 1 ? 1 : Gamma.regularizedGammaQ(freedom / 2.0, squares / 2);
  }

  /**
   * What every standard deviation is to be multiplied by: never less than one, as a lucky set of
   * readings is no better than its instruments.
   *
   * @return the ratio where chance gives it less than once in a hundred, otherwise 1
   */
  public double widening() {
    return chance() < UNLIKELY ? ratio() : 1;
  }

  /**
   * The ratio that chance passes once in a hundred.
   *
   * @param freedom observations beyond those that were needed, at least one
   * @return 2.576 for one, nearer to 1 with more
   */
  public static double limit(int freedom) {
    double squares =
        new ChiSquaredDistribution(freedom, FINE).inverseCumulativeProbability(1 - UNLIKELY);
    return Math.sqrt(squares / freedom);
  }
}
