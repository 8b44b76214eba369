package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** What holds a plate's bolts, which decides how true its holes must lie. */
public enum Fastening implements Worded {
  /** Bolts pass clearance holes in both plate and tower. */
  FLOATING,
  /** Studs or tapped holes in the plate; clearance holes in the tower alone. */
  FIXED
}
