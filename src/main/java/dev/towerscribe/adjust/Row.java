package dev.towerscribe.adjust;

/**
 * Derivatives of one function of the unknowns, zeros left out.
 *
 * @param at numbers of unknowns
 * @param by the derivative by each
 */
public record Row(int[] at, double[] by) {
  /**
   * One unknown times a factor.
   *
   * @param unknown its number
   * @param by the factor
   * @return the row
   */
  public static Row of(int unknown, double by) {
    return new Row(new int[] {unknown}, new double[] {by});
  }
}
