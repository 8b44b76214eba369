package dev.towerscribe.sheet.text;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.quantity.LengthUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What every page of a pack says about its job.
 *
 * @param title what the job is called
 * @param date the job's date; a blank to fill in stands in its place without one
 * @param units the unit that is named first
 * @param packMark short code printed on every page, so that sheets of two packs are never mixed
 * @param acceptedStops stop findings that the user accepted; every sheet carries them
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
