package dev.towerscribe.layout;

import dev.towerscribe.geometry.Arc;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Segment;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/**
 * The narrowest section of what a notch leaves: the shortest straight way through the metal from a
 * bite's rim to another bite or to an edge of the bracket, square to both. Sides that the bite runs
 * out through are its mouth, not a section.
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
      Segment core = new Segment(bite.from(), bite.to());
      for (Edge edge : outline.edges()) {
        for (Vec2 end : List.of(bite.from(), bite.to())) {
          Vec2 foot = edge.nearest(end);
          least = Math.min(least, section(core.nearest(foot), foot, edge, bite, remaining));
        }
      }
      for (int j = i + 1; j < bites.size(); j++) {
        Notches.Bite other = bites.get(j);
        Segment second = new Segment(other.from(), other.to());
        for (Vec2 end : List.of(bite.from(), bite.to())) {
          least = Math.min(least, between(end, second.nearest(end), bite, other, remaining));
        }
        for (Vec2 end : List.of(other.from(), other.to())) {
          least = Math.min(least, between(core.nearest(end), end, bite, other, remaining));
        }
      }
      // A bracket's re-entrant corners can be nearest too.
      for (Vec2 corner : outline.corners()) {
        Vec2 near = core.nearest(corner);
        if (isReentrant(outline, corner)) {
          least = Math.min(least, through(near, corner, bite.radiusMm(), 0.0, remaining));
        }
      }
    }
    return least;
  }

  private static double section(
      Vec2 near, Vec2 foot, Edge edge, Notches.Bite bite, Region remaining) {
    boolean square =
        edge instanceof Arc
            || Math.abs(edge.end().minus(edge.start()).unit().dot(foot.minus(near)))
                <= SQUARE * Math.max(1.0, foot.distanceTo(near));
    boolean atEnd = foot.distanceTo(edge.start()) < SQUARE || foot.distanceTo(edge.end()) < SQUARE;
    return square && !atEnd
        ? through(near, foot, bite.radiusMm(), 0.0, remaining)
        : Double.POSITIVE_INFINITY;
  }

  private static double between(
      Vec2 a, Vec2 b, Notches.Bite first, Notches.Bite second, Region remaining) {
    return through(a, b, first.radiusMm(), second.radiusMm(), remaining);
  }

  /** The part of a line outside both rims, if it runs through metal that is still there. */
  private static double through(Vec2 a, Vec2 b, double radiusA, double radiusB, Region remaining) {
    double whole = a.distanceTo(b);
    double width = whole - radiusA - radiusB;
    if (!(width > 0) || whole == 0.0) {
      return Double.POSITIVE_INFINITY;
    }
    for (double t : new double[] {0.25, 0.5, 0.75}) {
      if (!remaining.contains(a.toward(b, (radiusA + t * width) / whole))) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return width;
  }

  private static boolean isReentrant(Contour outline, Vec2 corner) {
    Region inside = Region.inside(outline);
    List<Edge> edges = inside.contours().get(0).edges();
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
