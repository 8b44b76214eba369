package dev.towerscribe.alignment;

import dev.towerscribe.quantity.Angle;
import java.util.Optional;

/**
 * What a bay would read, or an estimate of it.
 *
 * @param caster positive when the upper pivot is rearward of the lower
 * @param camber positive when the wheel's top leans outward
 * @param inclination kingpin inclination, positive when the upper pivot is inboard of the lower
 * @param linkage where the upright is, for everything else that the strut's points give; absent for
 *     an estimate
 */
public record Reading(Angle caster, Angle camber, Angle inclination, Optional<Pose> linkage) {
  /**
   * From a pose of the linkage.
   *
   * @param pose where the upright is
   * @return its reading
   */
  public static Reading of(Pose pose) {
    return new Reading(
        new Angle(pose.caster()),
        new Angle(pose.camber()),
        new Angle(pose.inclination()),
        Optional.of(pose));
  }

  /**
   * From an estimate.
   *
   * @param axis the steering axis
   * @return its reading
   */
  public static Reading of(AxisEstimate axis) {
    return new Reading(
        new Angle(axis.caster()),
        new Angle(axis.camber()),
        new Angle(axis.inclination()),
        Optional.empty());
  }

  /**
   * Included angle: kingpin inclination plus camber.
   *
   * @return angle
   */
  public Angle includedAngle() {
    return new Angle(inclination.radians() + camber.radians());
  }
}
