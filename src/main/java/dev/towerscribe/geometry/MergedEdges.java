package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import java.util.ArrayList;
import java.util.List;

/** Neighbouring edges on one line or one circle, made one. */
final class MergedEdges {
  private MergedEdges() {}

  /**
   * Joins what can be joined, also over the seam.
   *
   * @param loop edges that meet end to start and close
   * @param roomMm how far the shared point may lie off the joined edge
   * @return fewer edges, or the same; one full arc where they make a circle
   */
  static List<Edge> edges(List<Edge> loop, double roomMm) {
    List<Edge> joined = new ArrayList<>();
    for (Edge edge : loop) {
      int last = joined.size() - 1;
      Edge both = last < 0 ? null : both(joined.get(last), edge, roomMm);
      if (both != null) {
        joined.set(last, both);
      } else {
        joined.add(edge);
      }
    }
    while (joined.size() > 1) {
      int last = joined.size() - 1;
      Edge both = both(joined.get(last), joined.get(0), roomMm);
      if (both == null) {
        break;
      }
      joined.set(0, both);
      joined.remove(last);
    }
    return joined;
  }

  private static Edge both(Edge a, Edge b, double roomMm) {
    if (a instanceof Segment && b instanceof Segment) {
      Vec2 whole = b.end().minus(a.start());
      Vec2 first = a.end().minus(a.start());
      boolean onward = first.dot(b.end().minus(b.start())) > 0;
      boolean straight = onward && Math.abs(whole.cross(first)) <= roomMm * whole.norm();
      return straight ? new Segment(a.start(), b.end()) : null;
    }
    if (a instanceof Arc p && b instanceof Arc q) {
      double sweep = p.sweep() + q.sweep();
      boolean alike =
          p.sweep() * q.sweep() > 0
              && p.centre().distanceTo(q.centre()) <= roomMm
              && Math.abs(p.radius() - q.radius()) <= roomMm
              && p.end().distanceTo(q.start()) <= 100 * roomMm;
      if (!alike || Math.abs(sweep) > 2 * Math.PI + 100 * roomMm / p.radius()) {
        return null;
      }
      boolean whole = Math.abs(sweep) >= 2 * Math.PI - 100 * roomMm / p.radius();
      double turn = whole ? Math.copySign(2 * Math.PI, sweep) : sweep;
      return new Arc(p.centre(), p.radius(), p.startAngle(), turn);
    }
    return null;
  }
}
