package dev.towerscribe.finding;

import dev.towerscribe.quantity.Worded;

/** How much a finding weighs, most serious first. */
public enum Severity implements Worded {
  /** No cutting sheet unless this very finding is accepted by its id. */
  STOP,
  /** Work may go on; the figure is poor or could not be known. */
  CAUTION,
  /** For information, and for the record that the check passed. */
  NOTE
}
