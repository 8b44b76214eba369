package dev.towerscribe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Tells the separate parts of a region from one another. */
final class RegionParts {
  private RegionParts() {}

  /**
   * Each outer boundary with the holes that lie in it and in no smaller one.
   *
   * @param region any region
   * @return its parts, largest first; in each the outer boundary first
   */
  static List<List<Contour>> of(Boundaries region) {
    List<List<Contour>> groups = new ArrayList<>();
    for (Contour outer : region.contours()) {
      if (outer.signedArea() > 0) {
        groups.add(new ArrayList<>(List.of(outer)));
      }
    }
    for (Contour hole : region.contours()) {
      if (hole.signedArea() <= 0) {
        groups.stream()
            .filter(g -> g.get(0).signedArea() > -hole.signedArea() && holds(g.get(0), hole))
            .min(Comparator.comparingDouble(g -> g.get(0).signedArea()))
            .ifPresent(g -> g.add(hole));
      }
    }
    groups.sort(Comparator.<List<Contour>>comparingDouble(Boundaries::area).reversed());
    return groups;
  }

  /** Boundaries may touch, so the point of the hole furthest from the outer boundary decides. */
  private static boolean holds(Contour outer, Contour hole) {
    Vec2 best = hole.edges().get(0).at(0.5);
    for (Edge edge : hole.edges()) {
      Vec2 p = edge.at(0.5);
      if (outer.distanceTo(p) > outer.distanceTo(best)) {
        best = p;
      }
    }
    return outer.encloses(best);
  }
}
