package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Require;

/**
 * An existing round feature that a sheet is laid against.
 *
 * @param name what a person calls it
 * @param at plan point
 * @param diameterMm its size, positive
 */
public record Landmark(String name, Vec2 at, double diameterMm) {
  /** Checks the size. */
  public Landmark {
    Require.positive("landmark diameter", diameterMm);
  }
}
