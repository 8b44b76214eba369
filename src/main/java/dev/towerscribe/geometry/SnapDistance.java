package dev.towerscribe.geometry;

import dev.towerscribe.quantity.Tolerances;
import java.util.List;

/**
 * How close counts as touching while boundaries are cut and joined.
 *
 * @param touchMm a point this near an edge is on it
 * @param snapMm points this near each other are one vertex
 * @param shortMm how far short of its distance a point of a parallel curve may fall by rounding
 */
record SnapDistance(double touchMm, double snapMm, double shortMm) {
  /** The usual room, then what is tried when chance coincidences defeat that one. */
  static final List<SnapDistance> TRIES = List.of(of(1.0), of(30.0), of(0.1), of(1000.0));

  /**
   * Sized from what geometry computed in two ways agrees to. The snap is a little more, so that two
   * points that touch the same edge are one; the shortfall is less, so that a piece is not taken
   * for valid merely because it is short.
   */
  private static SnapDistance of(double times) {
    double mm = Tolerances.COMPUTED_MM * times;
    return new SnapDistance(mm, 2 * mm, mm / 10);
  }
}
