package dev.towerscribe.model;

/**
 * How sheets are printed.
 *
 * @param paper paper size
 * @param marginMm unprinted edge, not negative
 * @param scaleAcross printed over nominal along the paper's short side
 * @param scaleAlong printed over nominal along the paper's long side
 */
public record Print(Paper paper, double marginMm, double scaleAcross, double scaleAlong) {
  /** Checks the figures. */
  public Print {
    Checks.notNegative("margin", marginMm);
    Checks.positive("scale across", scaleAcross);
    Checks.positive("scale along", scaleAlong);
  }
}
