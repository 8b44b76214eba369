package dev.towerscribe.part;

/**
 * Outside diameters of headless press-fit drill bushings by their bore, after DIN 179: from memory,
 * as nobody has looked them up yet; a job can give its own.
 */
final class Bushings {
  static final String SOURCE = "from memory, DIN 179";

  /** Bores up to and including this, mm ... */
  private static final double[] BORES = {1, 1.8, 2.6, 3.3, 4, 5, 6, 8, 10, 12, 15, 18, 22, 26};

  /** ... are in bushings of this outside diameter, mm. */
  private static final double[] OUTSIDES = {3, 4, 5, 6, 7, 8, 10, 12, 15, 18, 22, 26, 30, 35};

  private Bushings() {}

  /**
   * The outside of the bushing for a drill.
   *
   * @param boreMm its bore, above 0 and at most 26
   * @return mm
   * @throws IllegalArgumentException for a larger bore
   */
  static double outsideMm(double boreMm) {
    for (int i = 0; i < BORES.length; i++) {
      if (boreMm <= BORES[i]) {
        return OUTSIDES[i];
      }
    }
    throw new IllegalArgumentException("no bushing is known for " + boreMm + " mm");
  }
}
