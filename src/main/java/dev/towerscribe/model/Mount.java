package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;

/**
 * Where the plate goes.
 *
 * @param rotation angle of the slot from straight across the car, toward the rear
 * @param rearwardMm plate centre behind the original strut rod centre
 * @param inboardMm plate centre inboard of it
 * @param settingMm where along the slot the bearing is fixed
 */
public record Mount(Angle rotation, double rearwardMm, double inboardMm, double settingMm) {
  /** Checks the figures. */
  public Mount {
    Require.finite("rearward", rearwardMm);
    Require.finite("inboard", inboardMm);
    Require.finite("setting", settingMm);
  }

  /**
   * The same place with the bearing fixed elsewhere in the slot.
   *
   * @param atMm where along the slot
   * @return the changed mount
   */
  public Mount withSetting(double atMm) {
    return new Mount(rotation, rearwardMm, inboardMm, atMm);
  }

  /**
   * The plate moved, not turned.
   *
   * @param plan how far, (fore, in), mm
   * @return the changed mount
   */
  public Mount shifted(Vec2 plan) {
    return moved(0, -plan.x(), plan.y());
  }

  /**
   * The plate turned and moved, its setting kept.
   *
   * @param turn how much farther round, radians, toward the rear
   * @param rearward how much farther to the rear, mm
   * @param inboard how much farther inboard, mm
   * @return the changed mount
   */
  public Mount moved(double turn, double rearward, double inboard) {
    return new Mount(
        new Angle(rotation.radians() + turn),
        rearwardMm + rearward,
        inboardMm + inboard,
        settingMm);
  }
}
