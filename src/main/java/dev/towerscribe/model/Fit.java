package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** Clearance hole series of ISO 273:1979; for inch threads the ASME B18.2.8 row beside it. */
public enum Fit implements Worded {
  /** ISO 273 fine (H12); ASME close. */
  FINE,
  /** ISO 273 medium (H13); ASME normal. */
  MEDIUM,
  /** ISO 273 coarse (H14); ASME loose. */
  COARSE
}
