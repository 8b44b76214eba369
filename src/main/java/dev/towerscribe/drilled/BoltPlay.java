package dev.towerscribe.drilled;

import dev.towerscribe.geometry.Vec2;
import java.util.Objects;

/**
 * One bolt between a hole drilled in the tower and its hole in the plate.
 *
 * @param name the bolt's name
 * @param hole centre of the drilled hole as measured, plan, mm
 * @param place planned centre of the plate's hole, plan, mm
 * @param towerHoleMm diameter of the drilled hole, positive
 * @param plateHoleMm diameter of the plate's hole, positive; the bolt's own for a stud that is
 *     pressed in
 * @param boltMm greatest diameter of the bolt, positive
 */
public record BoltPlay(
    String name, Vec2 hole, Vec2 place, double towerHoleMm, double plateHoleMm, double boltMm) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if a diameter is not positive
   */
  public BoltPlay {
    Objects.requireNonNull(name);
    Objects.requireNonNull(hole);
    Objects.requireNonNull(place);
    for (double d : new double[] {towerHoleMm, plateHoleMm, boltMm}) {
      if (!(d > 0) || !Double.isFinite(d)) {
        throw new IllegalArgumentException("a diameter must be positive, not " + d);
      }
    }
  }

  /**
   * How far the two holes may lie apart, centre to centre, before the bolt no longer goes through
   * both: half the sum of what each is wider than the bolt.
   *
   * @return mm; negative where they are narrower
   */
  public double playMm() {
    return (towerHoleMm + plateHoleMm) / 2 - boltMm;
  }

  /** Whether the bolt goes through the drilled hole by itself. */
  boolean entersTower() {
    return towerHoleMm >= boltMm;
  }

  /** Whether the bolt goes through the plate's hole by itself. */
  boolean entersPlate() {
    return plateHoleMm >= boltMm;
  }

  /**
   * The same bolt with its hole in the tower drilled out.
   *
   * @param diameterMm new diameter
   * @return the changed peg
   */
  public BoltPlay drilledTo(double diameterMm) {
    return new BoltPlay(name, hole, place, diameterMm, plateHoleMm, boltMm);
  }
}
