package dev.towerscribe.part;

import dev.towerscribe.model.Side;

/** Which tower a part is for. */
public enum Hand {
  /** The left one only. */
  LEFT("left"),
  /** The right one only. */
  RIGHT("right"),
  /** One part for either. */
  BOTH("both");

  private final String word;

  Hand(String word) {
    this.word = word;
  }

  /**
   * The hand of a part for one tower.
   *
   * @param side the tower's side
   * @return its hand
   */
  public static Hand of(Side side) {
    return side == Side.LEFT ? LEFT : RIGHT;
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
