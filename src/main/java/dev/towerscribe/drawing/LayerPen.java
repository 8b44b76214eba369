package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Hatch;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;

/**
 * Draws on one layer of a page: each call adds its shapes to the end of the list given. All lengths
 * page mm, y up.
 *
 * @param layer what the shapes stand for
 * @param out where they go; shared with whoever gave it
 */
public record LayerPen(Layer layer, List<Item> out) {
  /**
   * A pen for words, tables and frames.
   *
   * @param out where shapes go
   * @return a pen of the layer of notes
   */
  public static LayerPen notes(List<Item> out) {
    return new LayerPen(Layer.NOTES, out);
  }

  /**
   * Draws a straight line.
   *
   * @param from one end
   * @param to other end
   * @param pen its line
   */
  public void line(Vec2 from, Vec2 to, Pen pen) {
    out.add(new Item.Line(layer, from, to, pen));
  }

  /**
   * Draws a straight line.
   *
   * @param x1 of one end
   * @param y1 of one end
   * @param x2 of the other
   * @param y2 of the other
   * @param pen its line
   */
  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    line(new Vec2(x1, y1), new Vec2(x2, y2), pen);
  }

  /**
   * Draws straight lines from point to point.
   *
   * @param points at least two
   * @param pen their line
   */
  public void path(List<Vec2> points, Pen pen) {
    out.add(new Item.Polyline(layer, points, false, pen, Ink.NONE));
  }

  /**
   * Draws a polygon.
   *
   * @param corners at least three
   * @param pen its line
   * @param fill its inside
   */
  public void polygon(List<Vec2> corners, Pen pen, Ink fill) {
    out.add(new Item.Polyline(layer, corners, true, pen, fill));
  }

  /**
   * Draws an upright rectangle between two opposite corners.
   *
   * @param x1 of one corner
   * @param y1 of one corner
   * @param x2 of the other
   * @param y2 of the other
   * @param pen its line
   * @param fill its inside
   */
  public void box(double x1, double y1, double x2, double y2, Pen pen, Ink fill) {
    polygon(
        List.of(new Vec2(x1, y1), new Vec2(x2, y1), new Vec2(x2, y2), new Vec2(x1, y2)), pen, fill);
  }

  /**
   * Draws an upright rectangle.
   *
   * @param box the rectangle
   * @param pen its line
   */
  public void frame(Box box, Pen pen) {
    polygon(box.corners(), pen, Ink.NONE);
  }

  /**
   * Fills an upright rectangle.
   *
   * @param box the rectangle
   * @param fill its inside
   */
  public void area(Box box, Ink fill) {
    polygon(box.corners(), Pen.NONE, fill);
  }

  /**
   * Draws a circle.
   *
   * @param centre its centre
   * @param radiusMm its radius, positive
   * @param pen its line
   */
  public void circle(Vec2 centre, double radiusMm, Pen pen) {
    circle(centre, radiusMm, pen, Ink.NONE);
  }

  /**
   * Draws a circle with something in it.
   *
   * @param centre its centre
   * @param radiusMm its radius, positive
   * @param pen its line
   * @param fill its inside
   */
  public void circle(Vec2 centre, double radiusMm, Pen pen, Ink fill) {
    out.add(new Item.Circle(layer, centre, radiusMm, pen, fill));
  }

  /**
   * Draws a black disc.
   *
   * @param centre its centre
   * @param radiusMm its radius, positive
   */
  public void dot(Vec2 centre, double radiusMm) {
    circle(centre, radiusMm, Pen.NONE, Ink.BLACK);
  }

  /**
   * Draws a straight line with a black head at its end.
   *
   * @param from where it begins
   * @param tip where its head ends
   * @param headMm length of the head
   * @param halfMm half the head's width
   * @param pen the line
   */
  public void arrow(Vec2 from, Vec2 tip, double headMm, double halfMm, Pen pen) {
    Vec2 way = tip.minus(from).unit();
    Vec2 back = tip.minus(way.times(headMm));
    Vec2 half = way.quarterTurn().times(halfMm);
    line(from, back, pen);
    polygon(List.of(tip, back.plus(half), back.minus(half)), Pen.NONE, Ink.BLACK);
  }

  /**
   * Draws an upright cross: the level line first.
   *
   * @param at where its lines meet
   * @param armMm from there to each of its four ends
   * @param pen its lines
   */
  public void cross(Vec2 at, double armMm, Pen pen) {
    for (Vec2 arm : List.of(new Vec2(armMm, 0), new Vec2(0, armMm))) {
      line(at.minus(arm), at.plus(arm), pen);
    }
  }

  /**
   * Draws all boundaries of a region as one figure.
   *
   * @param region the region
   * @param pen their line
   */
  public void outline(Region region, Pen pen) {
    out.add(Item.Figure.of(layer, region, pen, Ink.NONE));
  }

  /**
   * Draws one boundary, a whole circle as a circle.
   *
   * @param contour the boundary
   * @param pen its line
   */
  public void contour(Contour contour, Pen pen) {
    contour
        .asCircle()
        .ifPresentOrElse(
            c -> circle(c.centre(), c.radius(), pen),
            () -> out.add(new Item.Figure(layer, List.of(contour), pen, Ink.NONE)));
  }

  /**
   * Hatches what lies in one region and not in another.
   *
   * @param region what is hatched
   * @param except what is left out of it, perhaps nothing
   * @param direction of the lines, from the page's x axis
   * @param spacingMm from line to line, positive
   * @param pen the lines
   */
  public void hatch(Region region, Region except, Angle direction, double spacingMm, Pen pen) {
    for (Segment s : Hatch.lines(region, except, direction, spacingMm)) {
      line(s.start(), s.end(), pen);
    }
  }

  /**
   * Sets a level line of black text.
   *
   * @param x of the place that {@code align} speaks of
   * @param y of the base line
   * @param capMm height of a capital
   * @param align which part of the text stands at x
   * @param words the text
   */
  public void text(double x, double y, double capMm, Align align, String words) {
    text(x, y, capMm, align, words, Ink.BLACK);
  }

  /**
   * Sets a level line of text.
   *
   * @param x of the place that {@code align} speaks of
   * @param y of the base line
   * @param capMm height of a capital
   * @param align which part of the text stands at x
   * @param words the text
   * @param ink black, or white on a dark ground
   */
  public void text(double x, double y, double capMm, Align align, String words, Ink ink) {
    out.add(new Item.Text(layer, new Vec2(x, y), capMm, align, Angle.ZERO, words, ink));
  }
}
