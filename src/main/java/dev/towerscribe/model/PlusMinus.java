package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;
import java.util.Collections;
import java.util.List;

/**
 * How far the figures of a strut may be off: one standard deviation of each, taken as independent
 * of all the others.
 *
 * @param points of the eight points, mm along X, Y and Z, in the order of {@link
 *     StrutPoints#points}
 * @param camber of the camber as measured
 */
public record PlusMinus(List<Vec3> points, Angle camber) {
  private static final int POINTS = 8;

  /** Checks the figures and copies the list. */
  public PlusMinus {
    points = List.copyOf(points);
    if (points.size() != POINTS) {
      throw new IllegalArgumentException("a strut has eight points, not " + points.size());
    }
    for (Vec3 p : points) {
      Require.notNegative("plus_minus", p.x());
      Require.notNegative("plus_minus", p.y());
      Require.notNegative("plus_minus", p.z());
    }
    Require.notNegative("plus_minus.camber", camber.radians());
  }

  /**
   * The same for every coordinate, and a camber taken as true.
   *
   * @param mm one standard deviation, not negative
   * @return that for all
   */
  public static PlusMinus all(double mm) {
    return new PlusMinus(Collections.nCopies(POINTS, new Vec3(mm, mm, mm)), Angle.ZERO);
  }
}
