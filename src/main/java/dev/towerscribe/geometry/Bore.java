package dev.towerscribe.geometry;

import java.util.Optional;

/**
 * A round hole right through a flat solid, perhaps widened at one face.
 *
 * @param centre its axis
 * @param diameterMm diameter of the plain hole, positive
 * @param recess its widening, or empty
 */
public record Bore(Vec2 centre, double diameterMm, Optional<Recess> recess) {
  /** Checks that a widening widens. */
  public Bore {
    if (!(diameterMm > 0) || Double.isInfinite(diameterMm)) {
      throw new IllegalArgumentException("not a hole: " + diameterMm);
    }
    if (recess.isPresent() && !(recess.get().diameterMm() > diameterMm)) {
      throw new IllegalArgumentException("a recess no wider than its hole: " + recess.get());
    }
  }

  /**
   * A plain hole.
   *
   * @param centre its axis
   * @param diameterMm its diameter
   * @return the hole
   */
  public static Bore plain(Vec2 centre, double diameterMm) {
    return new Bore(centre, diameterMm, Optional.empty());
  }

  /**
   * The greatest diameter it takes up in either face.
   *
   * @return mm
   */
  public double widestMm() {
    return recess.map(Recess::diameterMm).orElse(diameterMm);
  }

  /**
   * The same hole elsewhere; faces stay what they are.
   *
   * @param frame rigid map of the plane, perhaps a reflection
   * @return mapped hole
   */
  public Bore mapped(Frame2 frame) {
    return new Bore(frame.map(centre), diameterMm, recess);
  }
}
