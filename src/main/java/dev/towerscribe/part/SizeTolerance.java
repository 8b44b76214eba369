package dev.towerscribe.part;

/**
 * How far a size may be off.
 *
 * @param text as a drawing writes it: "H13", "+/-0.2"
 * @param lowerMm least size minus nominal size
 * @param upperMm greatest size minus nominal size, not less
 * @param source where the figures come from; says so where that is memory
 */
public record SizeTolerance(String text, double lowerMm, double upperMm, String source) {
  /** Checks the order. */
  public SizeTolerance {
    if (!(lowerMm <= upperMm)) {
      throw new IllegalArgumentException("a tolerance from " + lowerMm + " to " + upperMm);
    }
  }
}
