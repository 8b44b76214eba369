package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.quantity.Tolerances;
import java.util.Arrays;
import java.util.List;
import java.util.NoSuchElementException;

/** Shortest ways between boundaries, in closed form edge by edge. */
final class Gaps {
  private Gaps() {}

  /**
   * The shortest way between two sets of boundaries. Edges within {@link Tolerances#COMPUTED_MM} of
   * each other touch, and the gap is zero.
   *
   * @throws NoSuchElementException if either has none
   */
  static Gap between(List<Contour> a, List<Contour> b) {
    Gap best = null;
    Edge[] edgesB = edges(b);
    Box[] boxesB = Arrays.stream(edgesB).map(Edge::bounds).toArray(Box[]::new);
    for (Edge edgeA : edges(a)) {
      Box boxA = edgeA.bounds();
      for (int j = 0; j < edgesB.length; j++) {
        if (best == null || boxA.distanceTo(boxesB[j]) < best.mm()) {
          Gap gap = between(edgeA, edgesB[j]);
          if (best == null || gap.mm() < best.mm()) {
            best = gap;
          }
        }
      }
    }
    if (best == null) {
      throw new NoSuchElementException("no boundary to measure from or to");
    }
    return best;
  }

  private static Edge[] edges(List<Contour> contours) {
    return contours.stream().flatMap(c -> c.edges().stream()).toArray(Edge[]::new);
  }

  /**
   * The shortest way between two edges. Where they do not meet it starts at an end of one of them,
   * or it stands square on both: on the line through a centre square to a segment, or through two
   * centres.
   */
  static Gap between(Edge a, Edge b) {
    if (a.bounds().grown(Tolerances.COMPUTED_MM).meets(b.bounds())) {
      List<Vec2> shared = Crossings.of(a, b, Tolerances.COMPUTED_MM);
      if (!shared.isEmpty()) {
        return new Gap(0.0, shared.get(0), shared.get(0));
      }
    }
    Gap best = null;
    for (Vec2 p : candidates(a, b)) {
      best = shorter(best, p, b.nearest(p));
    }
    for (Vec2 q : candidates(b, a)) {
      best = shorter(best, a.nearest(q), q);
    }
    return best;
  }

  private static Gap shorter(Gap best, Vec2 from, Vec2 to) {
    double mm = from.distanceTo(to);
    return best == null || mm < best.mm() ? new Gap(mm, from, to) : best;
  }

  /** Points of one edge from which the shortest way to another may start. */
  private static List<Vec2> candidates(Edge on, Edge other) {
    if (!(other instanceof Arc arc)) {
      return List.of(on.start(), on.end());
    }
    if (on instanceof Arc own) {
      Vec2 between = arc.centre().minus(own.centre());
      if (between.norm() > 0) {
        Vec2 reach = between.times(own.radius() / between.norm());
        // nearest() falls back to an end where the arc does not pass.
        return List.of(
            on.start(),
            on.end(),
            on.nearest(own.centre().plus(reach)),
            on.nearest(own.centre().minus(reach)));
      }
    }
    return List.of(on.start(), on.end(), on.nearest(arc.centre()));
  }

  /** See {@link Region#marginAround}. */
  static double marginAround(Boundaries outer, Boundaries inner) {
    Gap gap = between(inner.contours(), outer.contours());
    boolean crosses = gap.mm() == 0.0;
    boolean leaves =
        inner.contours().stream().anyMatch(c -> !outer.contains(c.edges().get(0).at(0.5)));
    boolean covers =
        outer.contours().stream().anyMatch(c -> inner.contains(c.edges().get(0).at(0.5)));
    return crosses || leaves || covers ? -Overhang.mm(outer, inner, covers) : gap.mm();
  }
}
