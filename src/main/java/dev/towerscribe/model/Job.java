package dev.towerscribe.model;

import dev.towerscribe.quantity.LengthUnit;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * One car's work.
 *
 * @param title what the job is called
 * @param date the job's date as the file gives it; sheets leave a blank to fill in without one
 * @param units the unit its file is written in, and the one sheets name first
 * @param sides the sides to be worked on, at least one, left first
 * @param drawing what the title blocks of drawings say beside these
 * @param jig how drilling jigs are made
 * @param load what a tower carries, if the job says it
 */
public record Job(
    String title,
    Optional<LocalDate> date,
    LengthUnit units,
    Map<Side, SideJob> sides,
    DrawingInfo drawing,
    JigRules jig,
    Optional<Load> load) {
  /** Copies the map in the order of {@link Side}. */
  public Job {
    if (sides.isEmpty()) {
      throw new IllegalArgumentException("a job has at least one side");
    }
    sides = Collections.unmodifiableMap(new EnumMap<>(sides));
  }

  /**
   * A job that says nothing of drawings, jigs and loads.
   *
   * @param title what the job is called
   * @param date the job's date, if it has one
   * @param units the unit its file is written in
   * @param sides the sides to be worked on, at least one
   */
  public Job(String title, Optional<LocalDate> date, LengthUnit units, Map<Side, SideJob> sides) {
    this(title, date, units, sides, DrawingInfo.BLANK, JigRules.ASSUMED, Optional.empty());
  }

  /**
   * The same job with the plates of all its sides elsewhere.
   *
   * @param mount where they go
   * @return the changed job
   */
  public Job with(Mount mount) {
    Map<Side, SideJob> moved = new EnumMap<>(Side.class);
    sides.forEach((side, job) -> moved.put(side, job.with(mount)));
    return new Job(title, date, units, moved, drawing, jig, load);
  }
}
