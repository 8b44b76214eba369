package dev.towerscribe.part;

import dev.towerscribe.quantity.Worded;

/** What a part is for. */
public enum PartKind implements Worded {
  /** The new top mount. */
  PLATE,
  /** Carries the bearing along the plate's slot. */
  SLIDER,
  /** Guides the drill on a tower. */
  JIG
}
