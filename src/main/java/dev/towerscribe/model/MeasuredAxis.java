package dev.towerscribe.model;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;

/**
 * The steering axis where no points were measured.
 *
 * @param caster positive when the upper pivot is rearward of the lower
 * @param inclination kingpin inclination, positive when the upper pivot is inboard
 * @param lengthMm ball joint to top pivot
 * @param camber as measured, positive when the wheel's top leans outward
 */
public record MeasuredAxis(Angle caster, Angle inclination, double lengthMm, Angle camber) {
  /** Checks the length. */
  public MeasuredAxis {
    Require.positive("axis length", lengthMm);
  }
}
