package dev.towerscribe.model;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

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
    return withSides(side -> side.with(mount));
  }

  /**
   * The same job from another printer.
   *
   * @param across printed over nominal along the paper's short side
   * @param along printed over nominal along the paper's long side
   * @param skew how far the printed long side leans toward +across
   * @return the changed job
   */
  public Job printedBy(double across, double along, Angle skew) {
    return withSides(side -> side.with(side.print().by(across, along, skew)));
  }

  /**
   * The same job with a change made to each of its sides.
   *
   * @param change what is made of a side
   * @return the changed job
   */
  public Job withSides(UnaryOperator<SideJob> change) {
    Map<Side, SideJob> changed = new EnumMap<>(Side.class);
    sides.forEach((side, job) -> changed.put(side, change.apply(job)));
    return new Job(title, date, units, changed, drawing, jig, load);
  }
}
