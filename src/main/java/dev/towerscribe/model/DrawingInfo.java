package dev.towerscribe.model;

import java.util.Optional;

/**
 * What the title block of a drawing says beside the job's title and date (ISO 7200 fields).
 *
 * @param number identification number
 * @param owner legal owner
 * @param createdBy who made it
 * @param approvedBy who approved it
 * @param revision revision index
 * @param projection how its views lie to each other
 */
public record DrawingInfo(
    Optional<String> number,
    Optional<String> owner,
    Optional<String> createdBy,
    Optional<String> approvedBy,
    Optional<String> revision,
    Stated<Projection> projection) {
  /** Blanks to be filled in by hand. */
  public static final DrawingInfo BLANK =
      new DrawingInfo(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Stated.assumed(Projection.THIRD));
}
