package dev.towerscribe.model;

import dev.towerscribe.quantity.Angle;

/**
 * Where the plate goes.
 *
 * @param rotation angle of the slot from straight across the car, toward the rear
 * @param rearwardMm plate centre behind the original strut-shaft centre
 * @param inboardMm plate centre inboard of it
 * @param settingMm where along the slot the bearing is fixed
 */
public record Mount(Angle rotation, double rearwardMm, double inboardMm, double settingMm) {
  /** Checks the figures. */
  public Mount {
    Checks.finite("rearward", rearwardMm);
    Checks.finite("inboard", inboardMm);
    Checks.finite("setting", settingMm);
  }
}
