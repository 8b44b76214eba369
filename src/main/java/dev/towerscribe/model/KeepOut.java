package dev.towerscribe.model;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.quantity.Require;

/**
 * A place where nothing may go: a spot weld, a seam, an existing hole.
 *
 * @param name what a person calls it
 * @param outline its edge in plan
 * @param marginMm room added all round, not negative
 */
public record KeepOut(String name, Contour outline, double marginMm) {
  /** Checks the margin. */
  public KeepOut {
    Require.notNegative("keep-out margin", marginMm);
  }
}
