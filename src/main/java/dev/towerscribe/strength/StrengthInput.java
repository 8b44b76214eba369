package dev.towerscribe.strength;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.BoltClass;
import dev.towerscribe.model.Load;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.SideJob;
import java.util.Objects;
import java.util.Optional;

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
  /**
   * What a job says of one tower.
   *
   * @param job the side
   * @param load the load it gives
   * @return the same for the report; without strut points the strut pushes along the tower's normal
   */
  public static StrengthInput of(SideJob job, Load load) {
    Optional<Vec3> line = StrutLine.of(job);
    return new StrengthInput(
        new Loads(load.springNPerMm(), load.bumpMm(), load.staticN(), load.factor().value()),
        line.orElseGet(() -> job.tower().lean().normal(job.side())),
        line.isPresent()
            ? "the measured points of the strut"
            : "the tower's normal, as the job has no strut points",
        job.seating().seat(),
        load.boltClass().value(),
        load.friction().value());
  }

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
