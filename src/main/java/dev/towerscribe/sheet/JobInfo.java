package dev.towerscribe.sheet;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.quantity.LengthUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What every page of a pack says about its job.
 *
 * @param title what the job is called
 * @param date the job's date; pages leave a blank to fill in without one
 * @param units the unit pages name first
 * @param packMark the same on all pages of one pack, so that pages of two packs cannot be mixed
 * @param acceptedStops stop findings that were accepted by id; every page shows them
 */
public record JobInfo(
    String title,
    Optional<LocalDate> date,
    LengthUnit units,
    String packMark,
    List<Finding> acceptedStops) {
  /** Copies the list. */
  public JobInfo {
    acceptedStops = List.copyOf(acceptedStops);
  }
}
