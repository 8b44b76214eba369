package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
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
  private static final double HALF_HEAD = 0.9;
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

  /** A circle, outlined and empty; its radius is told in the figure's mm. */
  void circle(Vec2 p, double radius) {
    circle(p, radius, Pen.OUTLINE, Ink.WHITE);
  }

  void circle(Vec2 p, double radius, Pen pen, Ink fill) {
    notes().circle(at(p), radius * scale, pen, fill);
  }

  /** Lines from point to point, each told as x and y. */
  void chain(Pen pen, double[][] points) {
    notes().path(Arrays.stream(points).map(p -> at(p[0], p[1])).toList(), pen);
  }

  /** A part's edge from corner to corner, each told as x and y. */
  void closed(double[][] corners) {
    closed(Pen.OUTLINE, Ink.WHITE, Arrays.stream(corners).map(c -> new Vec2(c[0], c[1])).toList());
  }

  void closed(Pen pen, Ink fill, List<Vec2> corners) {
    notes().polygon(corners.stream().map(this::at).toList(), pen, fill);
  }

  /** A rectangle with rounded corners. */
  void rounded(Box box, double radius, Pen pen, Ink fill) {
    List<Vec2> points = new ArrayList<>();
    List<Vec2> centres = box.grown(-radius).corners();
    for (int corner = 0; corner < 4; corner++) {
      for (int i = 0; i <= ROUND_STEPS; i++) {
        Angle turn = Angle.ofDegrees(90 * corner + 90 * i / ROUND_STEPS);
        points.add(at(centres.get((corner + 2) % 4).plus(Vec2.polar(radius, turn))));
      }
    }
    notes().polygon(points, pen, fill);
  }

  /** A bar between two points, so wide, outlined and empty. */
  void bar(Vec2 from, Vec2 to, double wide) {
    bar(from, to, wide, Pen.OUTLINE, Ink.WHITE);
  }

  void bar(Vec2 from, Vec2 to, double wide, Pen pen, Ink fill) {
    Vec2 off = to.minus(from).unit().quarterTurn().times(wide / 2);
    closed(pen, fill, List.of(from.plus(off), to.plus(off), to.minus(off), from.minus(off)));
  }

  /** A line with an arrowhead at its end; the head keeps its size on the page. */
  void arrow(double x1, double y1, double x2, double y2, Pen pen) {
    notes().arrow(at(x1, y1), at(x2, y2), HEAD, HALF_HEAD, pen);
  }

  /** An arrow and a word behind it that says where it points: 1 to the page's right, -1 left. */
  static void toward(Vec2 tip, int way, String word, double base, LayerPen notes) {
    notes.arrow(tip.minus(new Vec2(way * 9.0, 0)), tip, HEAD, HALF_HEAD, Pen.EDGE);
    Align align = way < 0 ? Align.START : Align.END;
    notes.text(tip.x() - way * 10.5, base, FormPieces.WORDS, align, word);
  }

  /** Running words, placed as larger ones are. */
  void words(double x, double y, Align align, String words) {
    words(x, y, FormPieces.WORDS, align, words);
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
