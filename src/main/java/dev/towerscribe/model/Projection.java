package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** How the views of a drawing lie to each other, ISO 5456-2. */
public enum Projection implements Worded {
  /** Seen from the left stands to the right. */
  FIRST,
  /** Seen from the left stands to the left. */
  THIRD
}
