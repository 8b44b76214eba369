package dev.towerscribe.model;

/**
 * What one strut tower carries, for an advisory look at strength.
 *
 * @param springNPerMm rate of the spring along the strut
 * @param bumpMm travel from rest to full bump
 * @param staticN force on the top mount with the car at rest
 * @param factor what the sum of both is multiplied by for a road's blows
 * @param boltClass property class of the bolts
 * @param factorAssumed true when the job does not say the factor
 * @param boltClassAssumed true when the job does not say the class
 */
public record Load(
    double springNPerMm,
    double bumpMm,
    double staticN,
    double factor,
    BoltClass boltClass,
    boolean factorAssumed,
    boolean boltClassAssumed) {
  /** Common practice, no source: a blow beyond the slow force at full bump. */
  public static final double FACTOR = 1.5;

  /** The lower of the classes that are sold as high-tensile. */
  public static final BoltClass CLASS = BoltClass.CLASS_8_8;

  /** Checks the figures. */
  public Load {
    Checks.positive("spring rate", springNPerMm);
    Checks.notNegative("bump", bumpMm);
    Checks.positive("static load", staticN);
    if (!(factor >= 1) || !Double.isFinite(factor)) {
      throw new IllegalArgumentException("a dynamic factor is at least 1, not " + factor);
    }
  }

  /**
   * A load of which everything is said.
   *
   * @param springNPerMm rate of the spring along the strut
   * @param bumpMm travel from rest to full bump
   * @param staticN force on the top mount with the car at rest
   * @param factor what the sum of both is multiplied by
   * @param boltClass property class of the bolts
   */
  public Load(
      double springNPerMm, double bumpMm, double staticN, double factor, BoltClass boltClass) {
    this(springNPerMm, bumpMm, staticN, factor, boltClass, false, false);
  }
}
