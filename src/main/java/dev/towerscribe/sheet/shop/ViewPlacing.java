package dev.towerscribe.sheet.shop;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;

/**
 * Where a view stands on its sheet and how large: page = origin + factor * view. No turning: a view
 * that is turned or seen from below has its own coordinates already.
 *
 * @param origin page point of the view's (0, 0)
 * @param factor page length over true length, positive; 0.5 for a scale of 1:2
 */
record ViewPlacing(Vec2 origin, double factor) {
  ViewPlacing {
    if (!(factor > 0) || Double.isInfinite(factor)) {
      throw new IllegalArgumentException("not a scale: " + factor);
    }
  }

  Vec2 point(Vec2 p) {
    return new Vec2(origin.x() + factor * p.x(), origin.y() + factor * p.y());
  }

  double length(double mm) {
    return factor * mm;
  }

  Contour contour(Contour c) {
    return Contour.of(c.edges().stream().map(this::edge).toList());
  }

  private Edge edge(Edge e) {
    return e instanceof Arc a
        ? new Arc(point(a.centre()), length(a.radius()), a.startAngle(), a.sweep())
        : new Segment(point(e.start()), point(e.end()));
  }
}
