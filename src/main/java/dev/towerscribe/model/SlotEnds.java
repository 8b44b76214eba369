package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** How the ends of a plate's slot are made. */
public enum SlotEnds implements Worded {
  /** Half circles as wide as the slot: one cutter of that size. */
  ROUND,
  /** Straight, with rounded corners. */
  SQUARE
}
