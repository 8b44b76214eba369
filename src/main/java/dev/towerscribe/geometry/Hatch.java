package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * Hatching: parallel lines cut off exactly where they meet the boundaries of a region, arcs
 * included. The lines lie on a lattice through the origin, so that neighbouring regions hatched
 * alike match.
 */
public final class Hatch {
  /** Pieces shorter than this leave no mark on paper: the width of a hair line, mm. */
  private static final double LEAST_MM = 0.13;

  private Hatch() {}

  /**
   * Lines inside one region and outside another.
   *
   * @param inside where to hatch; may be empty
   * @param outside where not to; may be empty
   * @param direction of the lines, from +x toward +y
   * @param spacingMm between neighbouring lines, positive
   * @return segments, ordered by line and then along it
   */
  public static List<Segment> lines(
      Region inside, Region outside, Angle direction, double spacingMm) {
    if (!(spacingMm > 0)) {
      throw new IllegalArgumentException("hatching needs a positive spacing, not " + spacingMm);
    }
    List<Segment> result = new ArrayList<>();
    if (inside.isEmpty()) {
      return result;
    }
    Vec2 along = Vec2.polar(1.0, direction);
    Vec2 across = along.quarterTurn();
    List<Vec2> corners = inside.bounds().corners();
    double least = corners.stream().mapToDouble(across::dot).min().orElseThrow();
    double most = corners.stream().mapToDouble(across::dot).max().orElseThrow();
    for (long k = (long) Math.ceil(least / spacingMm); k * spacingMm <= most; k++) {
      double height = k * spacingMm;
      List<Double> cuts = new ArrayList<>();
      crossings(inside, along, across, height, cuts);
      crossings(outside, along, across, height, cuts);
      cuts.sort(null);
      Vec2 foot = across.times(height);
      for (int i = 0; i + 1 < cuts.size(); i++) {
        double from = cuts.get(i);
        double to = cuts.get(i + 1);
        if (to - from < LEAST_MM) {
          continue;
        }
        Vec2 middle = foot.plus(along.times((from + to) / 2));
        if (inside.contains(middle) && !outside.contains(middle)) {
          result.add(new Segment(foot.plus(along.times(from)), foot.plus(along.times(to))));
        }
      }
    }
    return result;
  }

  /** Where a line at a height crosses a region's boundaries, as distances along the line. */
  private static void crossings(
      Region region, Vec2 along, Vec2 across, double height, List<Double> into) {
    for (Contour contour : region.contours()) {
      for (Edge edge : contour.edges()) {
        if (edge instanceof Arc arc) {
          double h = height - across.dot(arc.centre());
          double squared = arc.radius() * arc.radius() - h * h;
          if (squared <= 0) {
            continue;
          }
          double half = Math.sqrt(squared);
          for (double t : new double[] {-half, half}) {
            Vec2 out = along.times(t).plus(across.times(h));
            if (arc.isFullCircle() || arc.spans(Math.atan2(out.y(), out.x()))) {
              into.add(along.dot(arc.centre()) + t);
            }
          }
        } else {
          double h1 = across.dot(edge.start()) - height;
          double h2 = across.dot(edge.end()) - height;
          if (h1 > 0 != h2 > 0) {
            Vec2 p = edge.start().toward(edge.end(), h1 / (h1 - h2));
            into.add(along.dot(p));
          }
        }
      }
    }
  }
}
