package dev.towerscribe.record;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;

/**
 * One wheel at a visit to the bay.
 *
 * @param before the car as it came
 * @param after the car as it left
 * @param settingMm where along the slot the bearing was left
 * @param knuckle camber change taken by the knuckle's camber bolt, after the work
 */
public record WheelVisit(BayReading before, BayReading after, double settingMm, Angle knuckle) {
  /** Checks the setting. */
  public WheelVisit {
    Require.finite("setting", settingMm);
  }

  /** What was read at a stage: before or after. */
  BayReading at(ReadingStage stage) {
    return stage == ReadingStage.BEFORE ? before : after;
  }

  /**
   * Whether anything was read.
   *
   * @return false if both readings lack every figure
   */
  public boolean hasFigures() {
    return !before.figures().isEmpty() || !after.figures().isEmpty();
  }
}
