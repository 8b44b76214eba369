package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.DimensionRequest;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.part.Feature;
import dev.towerscribe.part.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The dimensions that a view wants: places of holes from the datum, sizes once each, the slot, the
 * outline. What finds no room is in the tables as well.
 *
 * @param sizes how lengths are written
 * @param at the view's place
 * @param wishes all that were asked for, in that order
 */
record ViewDimensions(DrawingLengths sizes, ViewPlacing at, List<DimensionRequest> wishes) {
  /** Radii nearer than this are the same, mm: what a drawing's figures show. */
  private static final double SAME_MM = 0.005;

  private static final Vec2 DOWN = new Vec2(0, -1);
  private static final Vec2 LEFTWARD = new Vec2(-1, 0);

  ViewDimensions(DrawingLengths sizes, ViewPlacing at) {
    this(sizes, at, new ArrayList<>());
  }

  /** Those of a flat part seen from above. */
  static List<DimensionRequest> above(Part part, DrawingLengths sizes, ViewPlacing at) {
    ViewDimensions all = new ViewDimensions(sizes, at);
    all.contour(part.solid().outline(), Optional.of(new Vec2(1, 1)), "");
    all.holeSizes(part.features());
    for (Feature f : part.features()) {
      String tolerance = (" " + sizes.tolerance(f.size())).stripTrailing();
      f.edge().ifPresent(edge -> all.contour(edge, Optional.empty(), tolerance));
    }
    all.datum();
    part.features().forEach(all::place);
    return all.wishes();
  }

  /**
   * A contour's sizes: a circle's diameter, or else height and width over all and the radii.
   *
   * @param toward which way a circle's figure stands out, if it matters
   * @param after what follows the last figure: a tolerance, or nothing
   */
  private void contour(Contour contour, Optional<Vec2> toward, String after) {
    Optional<Arc> circle = contour.asCircle();
    if (circle.isPresent()) {
      Arc c = circle.get();
      diameter(c.centre(), c.radius(), toward, sizes.lines("\u2300", 2 * c.radius(), ""));
      return;
    }
    Box b = contour.bounds();
    Vec2 high = at.point(new Vec2(b.maxX(), b.maxY()));
    Vec2 left = at.point(new Vec2(b.minX(), b.maxY()));
    Vec2 low = at.point(new Vec2(b.maxX(), b.minY()));
    wishes.add(DimensionRequest.Linear.horizontal(left, high, true, sizes.lines(b.width())));
    wishes.add(
        DimensionRequest.Linear.vertical(low, high, true, sizes.lines("", b.height(), after)));
    radii(contour);
  }

  /** A circle's diameter; centre and radius in the view. */
  void diameter(Vec2 centre, double radiusMm, Optional<Vec2> toward, List<String> words) {
    wishes.add(new DimensionRequest.Diameter(at.point(centre), at.length(radiusMm), toward, words));
  }

  /** Each radius once, with how often it comes. */
  private void radii(Contour contour) {
    Map<Long, List<Arc>> same = new LinkedHashMap<>();
    for (Edge edge : contour.edges()) {
      if (edge instanceof Arc arc && !arc.isFullCircle()) {
        same.computeIfAbsent(Math.round(arc.radius() / SAME_MM), k -> new ArrayList<>()).add(arc);
      }
    }
    for (List<Arc> arcs : same.values()) {
      Arc a = arcs.get(0);
      Arc drawn = new Arc(at.point(a.centre()), at.length(a.radius()), a.startAngle(), a.sweep());
      String sign = times(arcs) + "R";
      wishes.add(new DimensionRequest.Radius(drawn, sizes.lines(sign, a.radius(), "")));
    }
  }

  private static String times(List<?> alike) {
    return alike.size() > 1 ? alike.size() + "\u00D7 " : "";
  }

  /** Holes of one size and tolerance share one dimension. */
  private void holeSizes(List<Feature> features) {
    Map<List<Object>, List<Feature>> alike = new LinkedHashMap<>();
    for (Feature f : features) {
      if (f.edge().isEmpty()) {
        List<Object> key = List.of(sizes.figure(f.diameterMm()), f.size().text(), f.recess());
        alike.computeIfAbsent(key, k -> new ArrayList<>()).add(f);
      }
    }
    for (List<Feature> group : alike.values()) {
      Feature f = group.get(0);
      String after = " " + sizes.tolerance(f.size());
      List<String> words = sizes.lines(times(group) + "\u2300", f.diameterMm(), after);
      diameter(f.centre(), f.diameterMm() / 2, Optional.empty(), words);
    }
  }

  /** The datum's own lines, which say 0. */
  void datum() {
    for (Vec2 side : List.of(DOWN, LEFTWARD)) {
      wishes.add(new DimensionRequest.Ordinate(at.origin(), at.origin(), side, 0, List.of("0")));
    }
  }

  private void place(Feature f) {
    Vec2 c = f.centre();
    if (f.edge().isPresent()) {
      Box b = f.edge().get().bounds();
      for (double x : new double[] {b.minX(), b.maxX()}) {
        ordinate(new Vec2(x, c.y()), DOWN, 0, x);
      }
    } else {
      place(c, f.recess().map(Recess::diameterMm).orElse(f.diameterMm()) / 2, c.x(), c.y());
    }
  }

  /**
   * Where a round thing is.
   *
   * @param p its middle in the view
   * @param radiusMm its largest, true mm
   * @param across what is written of its place across the view, mm
   * @param up what is written of its place up the view, mm
   */
  void place(Vec2 p, double radiusMm, double across, double up) {
    ordinate(p, DOWN, at.length(radiusMm), across);
    ordinate(p, LEFTWARD, at.length(radiusMm), up);
  }

  private void ordinate(Vec2 p, Vec2 side, double clear, double mm) {
    // On the datum's own line, which says 0 already, nothing more is written.
    if (Math.abs(mm) >= SAME_MM) {
      Vec2 at = this.at.point(p);
      wishes.add(
          new DimensionRequest.Ordinate(
              this.at.origin(), at, side, clear + PartPlan.OVER_MM, sizes.lines(mm)));
    }
  }
}
