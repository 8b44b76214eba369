package dev.towerscribe.model;

import dev.towerscribe.quantity.Require;

/**
 * What one strut tower carries, for an advisory look at strength.
 *
 * @param springNPerMm rate of the spring along the strut
 * @param bumpMm travel along the strut from rest to full bump
 * @param staticN force on the top mount with the car at rest
 * @param factor what the sum of both is multiplied by for a road's blows
 * @param boltClass property class of the bolts
 * @param friction friction in thread and under head, for preload and torque
 */
public record Load(
    double springNPerMm,
    double bumpMm,
    double staticN,
    Stated<Double> factor,
    Stated<BoltClass> boltClass,
    Stated<Double> friction) {
  /** Common practice, no source: a blow beyond the slow force at full bump. */
  public static final double FACTOR = 1.5;

  /** The lower of the classes that are sold as high-tensile. */
  public static final BoltClass CLASS = BoltClass.CLASS_8_8;

  /** Lightly oiled steel; common practice, no source. */
  public static final double FRICTION = 0.12;

  /** Checks the figures. */
  public Load {
    Require.positive("spring rate", springNPerMm);
    Require.notNegative("bump", bumpMm);
    Require.positive("static load", staticN);
    Require.positive("friction", friction.value());
    if (!(factor.value() >= 1) || !Double.isFinite(factor.value())) {
      throw new IllegalArgumentException("a dynamic factor is at least 1, not " + factor.value());
    }
  }
}
