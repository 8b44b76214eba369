package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec2;

/**
 * A fastener of the plate.
 *
 * @param name short name printed beside its hole
 * @param at centre, plate frame
 * @param thread its size
 * @param flatsMm width across the flats of its nut or head, as measured
 * @param washerMm outside diameter of the washer under it
 */
public record Bolt(String name, Vec2 at, Thread thread, double flatsMm, double washerMm) {
  /** Checks the sizes. */
  public Bolt {
    Checks.positive("flats", flatsMm);
    Checks.positive("washer", washerMm);
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

  /** As generated, but written out: pack marks rest on it, and making one takes long. */
  @Override
  public String toString() {
    return "Bolt[name="
        + name
        + ", at="
        + at
        + ", thread="
        + thread
        + ", flatsMm="
        + flatsMm
        + ", washerMm="
        + washerMm
        + "]";
  }
}
