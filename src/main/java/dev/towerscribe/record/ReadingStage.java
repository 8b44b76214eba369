package dev.towerscribe.record;

import dev.towerscribe.quantity.Worded;

/** When a wheel was read. */
public enum ReadingStage implements Worded {
  /** The car as it came. */
  BEFORE,
  /** The car as it left. */
  AFTER,
  /** After less before: what the work did. */
  CHANGE
}
