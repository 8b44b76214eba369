package dev.towerscribe.strength;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Require;

/**
 * A force on the plate, split by the tower's plane.
 *
 * @param normalN along the plane's upward normal, N
 * @param inPlaneN along the plane, (fore, in), N
 */
public record PlaneForce(double normalN, Vec2 inPlaneN) {
  /** Checks the figure. */
  public PlaneForce {
    Require.finite("normal force", normalN);
  }

  /**
   * Splits a force of the strut.
   *
   * @param forceN its size, N
   * @param toward the way it pushes, vehicle axes, of any length but zero
   * @param lean how the tower's top departs from level
   * @param side which tower
   * @return its parts
   * @throws ArithmeticException if {@code toward} is the zero vector
   */
  public static PlaneForce of(double forceN, Vec3 toward, Lean lean, Side side) {
    Vec3 force = toward.unit().times(forceN);
    return new PlaneForce(
        force.dot(lean.normal(side)),
        new Vec2(force.dot(lean.fore(side)), force.dot(lean.in(side))));
  }
}
