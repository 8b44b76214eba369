package dev.towerscribe.model;

/** Which way a sheet is looked at. */
public enum Face {
  /** From below, lying under the tower. */
  UNDERSIDE("underside"),
  /** From above, with the bonnet open. */
  TOPSIDE("topside");

  private final String word;

  Face(String word) {
    this.word = word;
  }

  /**
   * The word used on sheets and in file names.
   *
   * @return lower-case word
   */
  public String word() {
    return word;
  }
}
