package dev.towerscribe.model;

import dev.towerscribe.quantity.Require;

/**
 * A second sheet under the tower's upper one.
 *
 * @param sheetMm its thickness, positive
 * @param apartMm gap between the two sheets, not negative; 0 where they lie together
 */
public record SecondSkin(double sheetMm, double apartMm) {
  /** Checks the figures. */
  public SecondSkin {
    Require.positive("second skin", sheetMm);
    Require.notNegative("gap between skins", apartMm);
  }
}
