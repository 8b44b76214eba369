package dev.towerscribe.geometry;

import java.util.List;
import java.util.Optional;

/** Questions about polygons as people write them, before they become regions. */
public final class Polygons {
  private Polygons() {}

  /**
   * Looks for what makes a ring of points unusable: fewer than three points, two neighbours in one
   * place, no area, or sides that cross or touch each other.
   *
   * @param points the ring, the first point not repeated
   * @return the reason in plain words, with the place of the fault, or empty when the ring is
   *     simple
   */
  public static Optional<String> fault(List<Vec2> points) {
    throw new UnsupportedOperationException();
  }
}
