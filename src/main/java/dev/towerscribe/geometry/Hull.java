package dev.towerscribe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Convex hull of points by Andrew's monotone chain. */
public final class Hull {
  /** Twice the area, mm2, of a triangle so flat that its middle corner does not count. */
  private static final double FLAT_MM2 = 1e-9;

  private Hull() {}

  /**
   * The corners of the hull.
   *
   * @param points in any order, at least one
   * @return counter-clockwise; one point, or the two ends, if they lie in one place or on one line
   */
  public static List<Vec2> of(List<Vec2> points) {
    List<Vec2> sorted =
        points.stream()
            .distinct()
            .sorted(Comparator.comparingDouble(Vec2::x).thenComparingDouble(Vec2::y))
            .toList();
    if (sorted.size() <= 2) {
      return sorted;
    }
    List<Vec2> hull = new ArrayList<>();
    for (Vec2 p : sorted) {
      add(hull, p, 0);
    }
    int lower = hull.size() - 1;
    for (int i = sorted.size() - 2; i >= 0; i--) {
      add(hull, sorted.get(i), lower);
    }
    hull.remove(hull.size() - 1);
    return hull;
  }

  /** Adds a point and drops those before it, down to a place, that no longer stand out. */
  private static void add(List<Vec2> hull, Vec2 p, int from) {
    while (hull.size() >= from + 2) {
      Vec2 a = hull.get(hull.size() - 2);
      Vec2 b = hull.get(hull.size() - 1);
      if (b.minus(a).cross(p.minus(b)) > FLAT_MM2) {
        break;
      }
      hull.remove(hull.size() - 1);
    }
    hull.add(p);
  }
}
