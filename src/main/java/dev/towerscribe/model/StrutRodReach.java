package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Require;
import java.util.List;

/**
 * Which ways the strut rod points as the wheel goes up and down and steers, with the bearing
 * anywhere along its slot.
 *
 * @param rays at least one
 */
public record StrutRodReach(List<Ray> rays) {
  /**
   * One place of the strut.
   *
   * @param settingMm where along the slot the bearing is
   * @param perMm how far the strut rod's axis goes in plan (fore, in) for each mm down along the
   *     tower's normal
   */
  public record Ray(double settingMm, Vec2 perMm) {
    /** Checks the setting. */
    public Ray {
      Require.finite("setting", settingMm);
    }
  }

  /** Copies the list. */
  public StrutRodReach {
    rays = List.copyOf(rays);
    if (rays.isEmpty()) {
      throw new IllegalArgumentException("a strut rod points at least one way");
    }
  }
}
