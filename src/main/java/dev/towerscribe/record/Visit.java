package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A visit to an alignment bay: what was read there before and after the work.
 *
 * @param date its day
 * @param words what it was for, perhaps empty
 * @param bay where it was, if said
 * @param uncertainty how far the readings may be off
 * @param wheels the wheels that were read, left first; at least one
 */
public record Visit(
    LocalDate date,
    String words,
    Optional<String> bay,
    BayUncertainty uncertainty,
    Map<Side, WheelVisit> wheels) {
  /** Copies the map in the order of {@link Side}. */
  public Visit {
    if (wheels.isEmpty()) {
      throw new IllegalArgumentException("a visit has at least one wheel");
    }
    wheels = Collections.unmodifiableMap(new EnumMap<>(wheels));
  }
}
