package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** A side of the car, as its driver sees it. */
public enum Side implements Worded {
  /** Vehicle +Y. */
  LEFT,
  /** Vehicle -Y. */
  RIGHT;

  /**
   * The vehicle Y direction of this tower's inboard axis.
   *
   * @return -1 on the left, +1 on the right
   */
  public int inboardSign() {
    return this == LEFT ? -1 : 1;
  }
}
