package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Require;

/**
 * An existing straight line on the car that a sheet is laid along: an edge, a seam, or a line drawn
 * with a straightedge between both towers.
 *
 * @param name what a person calls it
 * @param from one plan point on it
 * @param to another
 */
public record Straightedge(String name, Vec2 from, Vec2 to) {
  /** Checks that there are two points. */
  public Straightedge {
    Require.positive("straightedge length", from.distanceTo(to));
  }
}
