package dev.towerscribe.record;

/** When a wheel was read. */
public enum Stage {
  /** The car as it came. */
  BEFORE("before"),
  /** The car as it left. */
  AFTER("after"),
  /** After less before: what the work did. */
  CHANGE("change");

  private final String word;

  Stage(String word) {
    this.word = word;
  }

  /**
   * The word used in records and reports.
   *
   * @return lower-case word
   */
  public String word() {
    return word;
  }
}
