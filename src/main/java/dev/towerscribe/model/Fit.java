package dev.towerscribe.model;

/** Clearance hole series of ISO 273:1979; for inch threads the ASME B18.2.8 row beside it. */
public enum Fit {
  /** ISO 273 fine (H12); ASME close. */
  FINE("fine"),
  /** ISO 273 medium (H13); ASME normal. */
  MEDIUM("medium"),
  /** ISO 273 coarse (H14); ASME loose. */
  COARSE("coarse");

  private final String word;

  Fit(String word) {
    this.word = word;
  }

  /**
   * The word used in job files.
   *
   * @return lower-case word
   */
  public String word() {
    return word;
  }
}
