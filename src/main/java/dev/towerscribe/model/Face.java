package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** Which way a sheet is looked at. */
public enum Face implements Worded {
  /** From below, lying under the tower. */
  UNDERSIDE,
  /** From above, with the bonnet open. */
  TOPSIDE
}
