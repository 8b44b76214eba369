package dev.towerscribe.model;

/** A side of the car, as its driver sees it. */
public enum Side {
  /** Vehicle +Y. */
  LEFT("left"),
  /** Vehicle -Y. */
  RIGHT("right");

  private final String word;

  Side(String word) {
    this.word = word;
  }

  /**
   * The word used in job files, reports and file names.
   *
   * @return lower-case word
   */
  public String word() {
    return word;
  }

  /**
   * The vehicle Y direction of this tower's inboard axis.
   *
   * @return -1 on the left, +1 on the right
   */
  public int inboardSign() {
    return this == LEFT ? -1 : 1;
  }
}
