package dev.towerscribe.model;

import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Require;
import java.util.Optional;

/**
 * A fastener of the plate.
 *
 * @param name short name printed beside its hole
 * @param at centre, plate frame
 * @param thread its size
 * @param flatsMm width across the flats of its nut or head, as measured
 * @param washerMm outside diameter of the washer under it
 * @param plateHoleMm diameter of its hole in the plate, where the job says it
 * @param recess how that hole is widened at a face of the plate, if it is
 */
public record Bolt(
    String name,
    Vec2 at,
    Thread thread,
    double flatsMm,
    double washerMm,
    Optional<Double> plateHoleMm,
    Optional<Recess> recess) {
  /** Checks the sizes. */
  public Bolt {
    Require.positive("flats", flatsMm);
    Require.positive("washer", washerMm);
    plateHoleMm.ifPresent(mm -> Require.positive("hole", mm));
  }

  /**
   * A fastener in a plain clearance hole.
   *
   * @param name short name printed beside its hole
   * @param at centre, plate frame
   * @param thread its size
   * @param flatsMm width across the flats of its nut or head, as measured
   * @param washerMm outside diameter of the washer under it
   */
  public Bolt(String name, Vec2 at, Thread thread, double flatsMm, double washerMm) {
    this(name, at, thread, flatsMm, washerMm, Optional.empty(), Optional.empty());
  }

  /**
   * Its hole in the plate: what the job says, or the clearance hole for its thread.
   *
   * @param fit clearance series
   * @return mm
   */
  public Stated<Double> plateHoleMm(Fit fit) {
    return Stated.or(plateHoleMm, thread.holeMm(fit));
  }

  /**
   * Radius of the flat metal it needs: the washer, or the nut's corners where those reach further
   * (across corners = across flats * 2 / sqrt 3).
   *
   * @return mm
   */
  public double seatRadiusMm() {
    return Math.max(washerMm, flatsMm * 2 / Math.sqrt(3)) / 2;
  }
}
