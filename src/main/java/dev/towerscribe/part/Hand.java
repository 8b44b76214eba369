package dev.towerscribe.part;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Worded;

/** Which tower a part is for. */
public enum Hand implements Worded {
  /** The left one only. */
  LEFT,
  /** The right one only. */
  RIGHT,
  /** One part for either. */
  BOTH;

  /**
   * The hand of a part for one tower.
   *
   * @param side the tower's side
   * @return its hand
   */
  public static Hand of(Side side) {
    return side == Side.LEFT ? LEFT : RIGHT;
  }
}
