package dev.towerscribe.layout;

import dev.towerscribe.geometry.Arc;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/**
 * The narrowest section of what a notch leaves: the shortest straight way through the metal from a
 * socket's circle to another one or to an edge of the bracket, square to both. A side that the
 * circle crosses is the notch's mouth, not a section.
 */
final class NotchWidths {
  private static final double SQUARE = 1e-9;

  private NotchWidths() {}

  static double least(Contour outline, Region remaining, List<Notches.Bite> bites) {
    if (remaining.isEmpty()) {
      return 0.0;
    }
    // Nothing is wider than the whole bracket.
    double least = Math.hypot(outline.bounds().width(), outline.bounds().height());
    for (int i = 0; i < bites.size(); i++) {
      Notches.Bite bite = bites.get(i);
      for (Edge edge : outline.edges()) {
        Vec2 foot = edge.nearest(bite.centre());
        if (isSquare(edge, foot)) {
          least = Math.min(least, through(bite.centre(), foot, bite.radiusMm(), 0.0, remaining));
        }
      }
      for (Vec2 corner : outline.corners()) {
        if (isReentrant(outline, corner)) {
          least = Math.min(least, through(bite.centre(), corner, bite.radiusMm(), 0.0, remaining));
        }
      }
      for (int j = i + 1; j < bites.size(); j++) {
        Notches.Bite other = bites.get(j);
        least =
            Math.min(
                least,
                through(
                    bite.centre(), other.centre(), bite.radiusMm(), other.radiusMm(), remaining));
      }
    }
    return least;
  }

  /** Whether the nearest point of an edge is one where the way to it meets the edge squarely. */
  static boolean isSquare(Edge edge, Vec2 foot) {
    if (edge instanceof Arc arc && arc.isFullCircle()) {
      return true;
    }
    return foot.distanceTo(edge.start()) >= SQUARE && foot.distanceTo(edge.end()) >= SQUARE;
  }

  /** The part of a line outside both circles, if it runs through metal that is still there. */
  private static double through(Vec2 a, Vec2 b, double radiusA, double radiusB, Region remaining) {
    double whole = a.distanceTo(b);
    double width = whole - radiusA - radiusB;
    if (!(width > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    for (double t : new double[] {0.25, 0.5, 0.75}) {
      if (!remaining.contains(a.toward(b, (radiusA + t * width) / whole))) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return width;
  }

  static boolean isReentrant(Contour outline, Vec2 corner) {
    List<Edge> edges = Region.inside(outline).contours().get(0).edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge next = edges.get(i);
      if (next.start().distanceTo(corner) < SQUARE) {
        Edge before = edges.get((i + edges.size() - 1) % edges.size());
        Vec2 in = before.end().minus(before.at(0.999));
        Vec2 out = next.at(0.001).minus(next.start());
        return in.cross(out) < 0;
      }
    }
    return false;
  }
}
