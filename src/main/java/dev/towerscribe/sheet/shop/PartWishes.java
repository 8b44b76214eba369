package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.DimensionRequest;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.part.Feature;
import dev.towerscribe.part.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The dimensions of a flat part seen from above: places of holes from the datum, sizes once each,
 * the slot, the outline. What finds no room is in the tables as well.
 */
final class PartWishes {
  /** Radii nearer than this are the same, mm: what a drawing's figures show. */
  static final double SAME_MM = 0.005;

  private static final Vec2 DOWN = new Vec2(0, -1);
  private static final Vec2 LEFTWARD = new Vec2(-1, 0);

  private PartWishes() {}

  static List<DimensionRequest> above(Part part, DrawingLengths sizes, ViewPlacing at) {
    List<DimensionRequest> wishes = new ArrayList<>();
    contour(part.solid().outline(), Optional.of(new Vec2(1, 1)), "", sizes, at, wishes);
    holeSizes(part.features(), sizes, at, wishes);
    for (Feature f : part.features()) {
      String tolerance = (" " + sizes.tolerance(f.size())).stripTrailing();
      f.edge().ifPresent(edge -> contour(edge, Optional.empty(), tolerance, sizes, at, wishes));
    }
    ordinates(part, sizes, at, wishes);
    return wishes;
  }

  /**
   * A contour's sizes: a circle's diameter, or else height and width over all and the radii.
   *
   * @param toward which way a circle's figure stands out, if it matters
   * @param after what follows the last figure: a tolerance, or nothing
   */
  private static void contour(
      Contour contour,
      Optional<Vec2> toward,
      String after,
      DrawingLengths sizes,
      ViewPlacing at,
      List<DimensionRequest> wishes) {
    Optional<Arc> circle = contour.asCircle();
    if (circle.isPresent()) {
      Arc c = circle.get();
      wishes.add(
          new DimensionRequest.Diameter(
              at.point(c.centre()),
              at.length(c.radius()),
              toward,
              sizes.lines("\u2300", 2 * c.radius(), "")));
      return;
    }
    Box b = contour.bounds();
    wishes.add(
        DimensionRequest.Linear.horizontal(
            at.point(new Vec2(b.minX(), b.maxY())),
            at.point(new Vec2(b.maxX(), b.maxY())),
            true,
            sizes.lines(b.width())));
    wishes.add(
        DimensionRequest.Linear.vertical(
            at.point(new Vec2(b.maxX(), b.minY())),
            at.point(new Vec2(b.maxX(), b.maxY())),
            true,
            sizes.lines("", b.height(), after)));
    radii(contour, sizes, at, wishes);
  }

  /** Each radius once, with how often it comes. */
  private static void radii(
      Contour contour, DrawingLengths sizes, ViewPlacing at, List<DimensionRequest> wishes) {
    Map<Long, List<Arc>> same = new LinkedHashMap<>();
    for (Edge edge : contour.edges()) {
      if (edge instanceof Arc arc && !arc.isFullCircle()) {
        same.computeIfAbsent(Math.round(arc.radius() / SAME_MM), k -> new ArrayList<>()).add(arc);
      }
    }
    for (List<Arc> arcs : same.values()) {
      Arc a = arcs.get(0);
      Arc drawn = new Arc(at.point(a.centre()), at.length(a.radius()), a.startAngle(), a.sweep());
      String count = arcs.size() > 1 ? arcs.size() + "\u00D7 " : "";
      wishes.add(new DimensionRequest.Radius(drawn, sizes.lines(count + "R", a.radius(), "")));
    }
  }

  /** Holes of one size and tolerance share one dimension. */
  private static void holeSizes(
      List<Feature> features, DrawingLengths sizes, ViewPlacing at, List<DimensionRequest> wishes) {
    Map<String, List<Feature>> alike = new LinkedHashMap<>();
    for (Feature f : features) {
      if (f.edge().isEmpty()) {
        String key = sizes.figure(f.diameterMm()) + "|" + f.size().text() + "|" + f.recess();
        alike.computeIfAbsent(key, k -> new ArrayList<>()).add(f);
      }
    }
    for (List<Feature> group : alike.values()) {
      Feature f = group.get(0);
      String count = group.size() > 1 ? group.size() + "\u00D7 " : "";
      wishes.add(
          new DimensionRequest.Diameter(
              at.point(f.centre()),
              at.length(f.diameterMm() / 2),
              Optional.empty(),
              sizes.lines(count + "\u2300", f.diameterMm(), " " + sizes.tolerance(f.size()))));
    }
  }

  private static void ordinates(
      Part part, DrawingLengths sizes, ViewPlacing at, List<DimensionRequest> wishes) {
    Vec2 zero = at.origin();
    wishes.add(new DimensionRequest.Ordinate(zero, zero, DOWN, 0, List.of("0")));
    wishes.add(new DimensionRequest.Ordinate(zero, zero, LEFTWARD, 0, List.of("0")));
    for (Feature f : part.features()) {
      if (f.edge().isPresent()) {
        Box b = f.edge().get().bounds();
        for (double x : new double[] {b.minX(), b.maxX()}) {
          ordinate(zero, new Vec2(x, f.centre().y()), DOWN, 0, sizes.lines(x), at, wishes);
        }
        continue;
      }
      double clear = at.length(f.recess().map(r -> r.diameterMm()).orElse(f.diameterMm()) / 2);
      Vec2 c = f.centre();
      ordinate(zero, c, DOWN, clear, sizes.lines(c.x()), at, wishes);
      ordinate(zero, c, LEFTWARD, clear, sizes.lines(c.y()), at, wishes);
    }
  }

  private static void ordinate(
      Vec2 zero,
      Vec2 p,
      Vec2 side,
      double clear,
      List<String> words,
      ViewPlacing at,
      List<DimensionRequest> wishes) {
    double from = side.x() == 0 ? p.x() : p.y();
    if (Math.abs(from) < SAME_MM) {
      // It stands on the datum's own line, which says 0 already.
      return;
    }
    wishes.add(
        new DimensionRequest.Ordinate(zero, at.point(p), side, clear + PartPlan.OVER_MM, words));
  }
}
