package dev.towerscribe.model;

/** Class of the general tolerances of ISO 2768-1, for sizes with no tolerance of their own. */
public enum GeneralTolerance {
  /** Fine. */
  FINE("f"),
  /** Medium. */
  MEDIUM("m"),
  /** Coarse. */
  COARSE("c");

  private final String word;

  GeneralTolerance(String word) {
    this.word = word;
  }

  /**
   * The word used in job files and on drawings.
   *
   * @return that word
   */
  public String word() {
    return word;
  }
}
