package dev.towerscribe.strength;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.BoltClass;
import dev.towerscribe.model.Seat;
import java.util.Objects;

/**
 * What the report needs beside the layout.
 *
 * @param loads what presses on the strut top
 * @param toward the way the strut pushes on its bearing, vehicle axes, of any length but zero; see
 *     {@link StrutLine}
 * @param towardFrom where that direction comes from, in words that end a sentence: "the measured
 *     points of the strut"
 * @param seat which face of the tower the plate lies against
 * @param propertyClass class of all bolts
 * @param friction friction in thread and under head, for preload and torque
 */
public record StrengthInput(
    Loads loads,
    Vec3 toward,
    String towardFrom,
    Seat seat,
    BoltClass propertyClass,
    double friction) {
  /** Checks that nothing is missing. */
  public StrengthInput {
    Objects.requireNonNull(loads);
    Objects.requireNonNull(seat);
    Objects.requireNonNull(propertyClass);
    if (toward.norm() == 0.0) {
      throw new IllegalArgumentException("the strut needs a direction");
    }
    if (towardFrom.isBlank()) {
      throw new IllegalArgumentException("the direction needs its source");
    }
  }
}
