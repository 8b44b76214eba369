package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** What fills the gap that a domed or lipped tower leaves under a flat plate. */
public enum Packing implements Worded {
  /** A stack of shims or a machined spacer at each bolt. */
  SHIMS("shims"),
  /** A ring or spacer whose face is formed to the tower's. */
  FORMED_SEAT("formed seat");

  private final String word;

  Packing(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
