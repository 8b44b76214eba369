package dev.towerscribe.model;

import dev.towerscribe.quantity.Require;

/**
 * How the opening is cut.
 *
 * @param keepMm left standing inside the mark
 * @param roughMm how far the rough cut stays inside the final cut
 * @param cornerMm least radius of an inside corner
 * @param starterMm diameter of the saw's starter holes
 */
public record CutRules(double keepMm, double roughMm, double cornerMm, double starterMm) {
  /** Checks the figures. */
  public CutRules {
    Require.notNegative("keep", keepMm);
    Require.notNegative("rough", roughMm);
    Require.notNegative("corner", cornerMm);
    Require.positive("starter", starterMm);
  }

  /**
   * The same with more kept inside the mark.
   *
   * @param moreMm how much more, not negative
   * @return the changed rules
   */
  public CutRules keeping(double moreMm) {
    return new CutRules(keepMm + moreMm, roughMm, cornerMm, starterMm);
  }
}
