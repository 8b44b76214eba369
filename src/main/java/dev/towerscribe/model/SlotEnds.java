package dev.towerscribe.model;

/** How the ends of a plate's slot are made. */
public enum SlotEnds {
  /** Half circles as wide as the slot: one cutter of that size. */
  ROUND("round"),
  /** Straight, with rounded corners. */
  SQUARE("square");

  private final String word;

  SlotEnds(String word) {
    this.word = word;
  }

  /**
   * The word used in job files.
   *
   * @return that word
   */
  public String word() {
    return word;
  }
}
