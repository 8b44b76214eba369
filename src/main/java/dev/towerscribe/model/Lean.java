package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Angle;

/**
 * How the tower top departs from level: which way the upward normal of its plane tips.
 *
 * @param inboard positive when the normal tips toward the car's centre line, seen from the front
 * @param rearward positive when the normal tips rearward, seen from the side
 */
public record Lean(Angle inboard, Angle rearward) {
  /** A level tower. */
  public static final Lean LEVEL = new Lean(Angle.ZERO, Angle.ZERO);

  /**
   * The plane's upward normal.
   *
   * @param side which tower
   * @return unit vector, vehicle axes
   */
  public Vec3 normal(Side side) {
    return new Vec3(-rearward.tan(), side.inboardSign() * inboard.tan(), 1.0).unit();
  }

  /**
   * The plan's fore axis: vehicle X projected into the plane.
   *
   * @param side which tower
   * @return unit vector, vehicle axes
   */
  public Vec3 fore(Side side) {
    Vec3 n = normal(side);
    return new Vec3(1, 0, 0).minus(n.times(n.x())).unit();
  }

  /**
   * The plan's inboard axis, square to the other two.
   *
   * @param side which tower
   * @return unit vector, vehicle axes
   */
  public Vec3 in(Side side) {
    return normal(side).cross(fore(side)).times(side.inboardSign());
  }
}
