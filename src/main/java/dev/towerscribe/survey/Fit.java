package dev.towerscribe.survey;

import java.util.List;

/**
 * How well the readings of a network agree with each other, against their standard deviations as
 * stated.
 *
 * @param entries how many entries of readings there are
 * @param freedom readings beyond those that were needed
 * @param ratio s0: how much larger the residuals are than the standard deviations make likely; 0
 *     without freedom
 * @param chance how often good readings fit as badly or worse, 0 to 1 (chi-square test)
 * @param widened what every +/- was multiplied by: the ratio where chance is below one in a
 *     hundred, otherwise 1; never less
 * @param kinds the same for each kind of reading of which there are more than needed
 */
public record Fit(
    int entries, int freedom, double ratio, double chance, double widened, List<Kind> kinds) {
  /** Copies the list. */
  public Fit {
    kinds = List.copyOf(kinds);
  }

  /**
   * One kind of readings.
   *
   * @param name in the plural
   * @param freedom its share of the freedom
   * @param ratio residuals over standard deviations
   */
  public record Kind(String name, double freedom, double ratio) {}
}
