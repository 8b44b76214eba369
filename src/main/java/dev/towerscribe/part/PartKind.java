package dev.towerscribe.part;

/** What a part is for. */
public enum PartKind {
  /** The new top mount. */
  PLATE("plate"),
  /** Carries the bearing along the plate's slot. */
  SLIDER("slider"),
  /** Guides the drill on a tower. */
  JIG("jig");

  private final String word;

  PartKind(String word) {
    this.word = word;
  }

  /**
   * Its name in file names and data.
   *
   * @return lower-case word
   */
  public String word() {
    return word;
  }
}
