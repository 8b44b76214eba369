package dev.towerscribe.drilled;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.quantity.Angle;

/**
 * A turn about the plan's origin and then a shift: planned place p goes to R(turn) p + shift.
 *
 * @param turn positive from fore toward in
 * @param shift mm, plan
 */
public record RigidMove(Angle turn, Vec2 shift) {
  /** Nothing moved. */
  public static final RigidMove NONE = new RigidMove(Angle.ZERO, Vec2.ZERO);

  /**
   * Where a planned point goes.
   *
   * @param planned plan point
   * @return the moved point
   */
  public Vec2 of(Vec2 planned) {
    return planned.rotated(turn).plus(shift);
  }

  /**
   * Where the plate sits when everything about its mount is moved so.
   *
   * @param planned the mount as planned
   * @return the mount as moved, setting kept
   */
  public Mount of(Mount planned) {
    Vec2 centre = of(centre(planned));
    return new Mount(
        new Angle(planned.rotation().radians() + turn.radians()),
        -centre.x(),
        centre.y(),
        planned.settingMm());
  }

  /** A mount's plate centre, plan. */
  static Vec2 centre(Mount mount) {
    return new Vec2(-mount.rearwardMm(), mount.inboardMm());
  }
}
