package dev.towerscribe.model;

import dev.towerscribe.quantity.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * How a plate lies against its tower.
 *
 * @param stated which face it lies against; empty if the job does not say
 * @param packing what fills the gap under it, if the job names anything
 * @param restMm how far the plate's face lies above the face that it would touch if the tower were
 *     flat, mm along the tower's normal over the old strut rod's place; 0 on a flat top and before
 *     it is worked out, negative on a dome, whose rim lies lower than its middle
 * @param rimMm how far the rim of the finished opening lies above a flat top, in the same way; what
 *     moves with the bearing passes the metal there
 */
public record Seating(
    Optional<Seat> stated, Optional<Packing> packing, double restMm, double rimMm) {
  /** A job that says nothing of it, on a flat top. */
  public static final Seating UNSTATED = new Seating(Optional.empty(), Optional.empty());

  /** Checks that nothing is missing. */
  public Seating {
    Objects.requireNonNull(stated);
    Objects.requireNonNull(packing);
    Require.finite("rest", restMm);
    Require.finite("rim", rimMm);
  }

  /**
   * A seating as a job states it, on a flat top.
   *
   * @param stated which face the plate lies against, if said
   * @param packing what fills the gap under it, if named
   */
  public Seating(Optional<Seat> stated, Optional<Packing> packing) {
    this(stated, packing, 0.0, 0.0);
  }

  /**
   * The face that the work is done for.
   *
   * @return the one stated; without one the upper face, which the job's stop finding says
   */
  public Seat seat() {
    return stated.orElse(Seat.ON_TOP);
  }

  /**
   * The same, the plate at rest.
   *
   * @param heightMm how far its face lies above a flat top's, mm
   * @param rimHeightMm how far the finished opening's rim does, mm
   * @return the changed seating
   */
  public Seating resting(double heightMm, double rimHeightMm) {
    return new Seating(stated, packing, heightMm, rimHeightMm);
  }
}
