package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** A published rule for the least distance of a hole from an edge and from another hole. */
public enum EdgeRule implements Worded {
  /** The stricter of the other two, figure by figure. */
  STRICT("stricter of EN 1993-1-8:2005 Table 3.3 and 2 D edge / 3 D spacing"),
  /** EN 1993-1-8:2005 Table 3.3: edge 1.2 d0; spacing 2.4 d0, the larger of p1 and p2. */
  EN1993("EN 1993-1-8:2005 Table 3.3"),
  /** Aircraft sheet practice: edge 2 D, spacing 3 D (NAVEDTRA 14018 ch. 13). */
  TWO_DIAMETER("2 D edge, 3 D spacing: NAVEDTRA 14018 ch. 13");

  private final String source;

  EdgeRule(String source) {
    this.source = source;
  }

  @Override
  public String word() {
    return Worded.super.word().replace(' ', '-');
  }

  /**
   * Where the figures come from.
   *
   * @return citation
   */
  public String source() {
    return source;
  }

  /**
   * Least distance from a hole's centre to an edge.
   *
   * @param boltMm nominal bolt diameter D
   * @param holeMm hole diameter d0
   * @return mm
   */
  public double edgeMm(double boltMm, double holeMm) {
    return switch (this) {
      case EN1993 -> 1.2 * holeMm;
      case TWO_DIAMETER -> 2.0 * boltMm;
      case STRICT -> Math.max(1.2 * holeMm, 2.0 * boltMm);
    };
  }

  /**
   * Least distance between two hole centres. The direction of the load is not known, so the larger
   * of Table 3.3's p1 (2.2 d0) and p2 (2.4 d0) is taken.
   *
   * @param boltMm nominal bolt diameter D, the larger of two
   * @param holeMm hole diameter d0, the larger of two
   * @return mm
   */
  public double spacingMm(double boltMm, double holeMm) {
    return switch (this) {
      case EN1993 -> 2.4 * holeMm;
      case TWO_DIAMETER -> 3.0 * boltMm;
      case STRICT -> Math.max(2.4 * holeMm, 3.0 * boltMm);
    };
  }
}
