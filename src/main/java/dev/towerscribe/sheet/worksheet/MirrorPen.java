package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Draws a figure of one side of the car and, mirrored, the same of the other: everything is told as
 * for the left side, and only here the page's x turns round. Letters are never mirrored.
 *
 * @param origin where the figure's (0, 0) lies, page mm
 * @param scale page mm for one of the figure's mm
 * @param sign +1 as told, -1 mirrored
 * @param out where the shapes go
 */
record MirrorPen(Vec2 origin, double scale, int sign, List<Item> out) {
  private static final double HEAD = 2.6;
  private static final double ROUND_STEPS = 10;

  /** +1 for the left side, -1 for the right. */
  static int sign(Side side) {
    return side == Side.LEFT ? 1 : -1;
  }

  /** The pen that draws in places of the page. */
  LayerPen notes() {
    return LayerPen.notes(out);
  }

  /** A point of the figure on the page. */
  Vec2 at(double x, double y) {
    return origin.plus(new Vec2(sign * x, y).times(scale));
  }

  Vec2 at(Vec2 p) {
    return at(p.x(), p.y());
  }

  void line(double x1, double y1, double x2, double y2, Pen pen) {
    notes().line(at(x1, y1), at(x2, y2), pen);
  }

  /** A circle whose radius is told in the figure's mm. */
  void circle(double x, double y, double radius, Pen pen, Ink fill) {
    circle(new Vec2(x, y), radius, pen, fill);
  }

  void circle(Vec2 p, double radius, Pen pen, Ink fill) {
    notes().circle(at(p), radius * scale, pen, fill);
  }

  /** Lines from point to point, each told as x and y. */
  void chain(Pen pen, double[][] points) {
    notes().path(Arrays.stream(points).map(p -> at(p[0], p[1])).toList(), pen);
  }

  /** A polygon, its corners told as x and y. */
  void closed(Pen pen, Ink fill, double[][] corners) {
    notes().polygon(Arrays.stream(corners).map(p -> at(p[0], p[1])).toList(), pen, fill);
  }

  void closed(Pen pen, Ink fill, List<Vec2> corners) {
    notes().polygon(corners.stream().map(this::at).toList(), pen, fill);
  }

  /** A rectangle with rounded corners. */
  void rounded(double x1, double y1, double x2, double y2, double radius, Pen pen, Ink fill) {
    List<Vec2> points = new ArrayList<>();
    double[][] centres = {
      {x2 - radius, y2 - radius, 0}, {x1 + radius, y2 - radius, 90},
      {x1 + radius, y1 + radius, 180}, {x2 - radius, y1 + radius, 270}
    };
    for (double[] c : centres) {
      for (int i = 0; i <= ROUND_STEPS; i++) {
        Vec2 arm = Vec2.polar(radius, Angle.ofDegrees(c[2] + 90 * i / ROUND_STEPS));
        points.add(at(c[0] + arm.x(), c[1] + arm.y()));
      }
    }
    notes().polygon(points, pen, fill);
  }

  /** A bar between two points, so wide. */
  void bar(Vec2 from, Vec2 to, double wide, Pen pen, Ink fill) {
    Vec2 off = to.minus(from).unit().quarterTurn().times(wide / 2);
    closed(pen, fill, List.of(from.plus(off), to.plus(off), to.minus(off), from.minus(off)));
  }

  /** A line with an arrowhead at its end; the head keeps its size on the page. */
  void arrow(double x1, double y1, double x2, double y2, Pen pen) {
    arrow(at(x1, y1), at(x2, y2), pen, out);
  }

  /** The same between places of the page. */
  static void arrow(Vec2 from, Vec2 to, Pen pen, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    Vec2 way = to.minus(from).unit();
    Vec2 back = to.minus(way.times(HEAD));
    Vec2 half = way.quarterTurn().times(0.9);
    notes.line(from, back, pen);
    notes.polygon(List.of(to, back.plus(half), back.minus(half)), Pen.NONE, Ink.BLACK);
  }

  /** Words whose base line starts, ends or is centred at a place; start and end are mirrored. */
  void words(double x, double y, double cap, Align align, String words) {
    Align turned =
        sign > 0 || align == Align.MIDDLE ? align : align == Align.START ? Align.END : Align.START;
    Vec2 p = at(x, y);
    notes().text(p.x(), p.y(), cap, turned, words);
  }

  /** The place a point is read at: a small ring with a dot, the same size on every page. */
  void target(Vec2 p) {
    notes().circle(at(p), 1.5, Pen.OUTLINE, Ink.WHITE);
    notes().dot(at(p), 0.6);
  }
}
