package dev.towerscribe.layout;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Optional;

/**
 * The narrowest section of what a notch leaves: the shortest straight way through the metal from a
 * socket's circle to another one or to an edge of the bracket, square to both. A side that the
 * circle crosses is the notch's mouth, not a section.
 */
final class NotchWidths {
  private static final double SQUARE = 1e-9;

  private NotchWidths() {}

  /**
   * A way through the metal.
   *
   * @param widthMm its length
   * @param across where it is, empty where it stands for the whole bracket
   */
  record Section(double widthMm, Optional<Segment> across) {
    private static final Section NONE = new Section(Double.POSITIVE_INFINITY, Optional.empty());

    Section orNarrower(Section other) {
      return other.widthMm < widthMm ? other : this;
    }
  }

  static Section least(Contour outline, Region remaining, List<Notches.Bite> bites) {
    if (remaining.isEmpty()) {
      return new Section(0.0, Optional.empty());
    }
    // Nothing is wider than the whole bracket.
    double whole = Math.hypot(outline.bounds().width(), outline.bounds().height());
    Section least = new Section(whole, Optional.empty());
    for (int i = 0; i < bites.size(); i++) {
      Notches.Bite bite = bites.get(i);
      for (Edge edge : outline.edges()) {
        Vec2 foot = edge.nearest(bite.centre());
        if (isSquare(edge, foot)) {
          least = least.orNarrower(through(bite.centre(), foot, bite.radiusMm(), 0.0, remaining));
        }
      }
      for (Vec2 corner : outline.corners()) {
        if (isReentrant(outline, corner)) {
          least = least.orNarrower(through(bite.centre(), corner, bite.radiusMm(), 0.0, remaining));
        }
      }
      for (int j = i + 1; j < bites.size(); j++) {
        Notches.Bite other = bites.get(j);
        least =
            least.orNarrower(
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
  private static Section through(Vec2 a, Vec2 b, double radiusA, double radiusB, Region remaining) {
    double whole = a.distanceTo(b);
    double width = whole - radiusA - radiusB;
    if (!(width > 0)) {
      return Section.NONE;
    }
    for (double t : new double[] {0.25, 0.5, 0.75}) {
      if (!remaining.contains(a.toward(b, (radiusA + t * width) / whole))) {
        return Section.NONE;
      }
    }
    return new Section(
        width,
        Optional.of(
            new Segment(a.toward(b, radiusA / whole), a.toward(b, (radiusA + width) / whole))));
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
