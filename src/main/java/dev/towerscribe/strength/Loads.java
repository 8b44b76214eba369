package dev.towerscribe.strength;

import dev.towerscribe.quantity.Require;

/**
 * What presses on one strut top.
 *
 * @param springNPerMm rate of the spring, along the strut, not negative
 * @param bumpMm how much further the spring is pressed together at full bump than at rest, along
 *     the strut, not negative
 * @param staticN load of the strut top with the car at rest, along the strut, not negative
 * @param factor what the sum is multiplied by for a hard knock, at least 1; no published figure for
 *     a strut tower was found, so it is the user's choice
 */
public record Loads(double springNPerMm, double bumpMm, double staticN, double factor) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is out of its range
   */
  public Loads {
    Require.atLeast("spring rate", springNPerMm, 0);
    Require.atLeast("bump", bumpMm, 0);
    Require.atLeast("static load", staticN, 0);
    Require.atLeast("dynamic factor", factor, 1);
  }

  /**
   * Load at full bump, driven slowly onto the stop.
   *
   * @return static load and what the spring adds, N
   */
  public double fullBumpN() {
    return staticN + springNPerMm * bumpMm;
  }

  /**
   * The load that everything else is calculated for.
   *
   * @return load at full bump times the factor, N
   */
  public double cornerN() {
    return fullBumpN() * factor;
  }
}
