package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.function.UnaryOperator;

/** A flat part seen from above: edges, holes, recesses, axes through its origin. */
final class PartPlan {
  /** How far centre marks and axes stand out over what they mark, paper mm. */
  static final double OVER_MM = 2.5;

  private PartPlan() {}

  /**
   * Draws it.
   *
   * @param solid the part
   * @param at where
   * @param out where shapes go
   */
  static void draw(FlatSolid solid, ViewPlacing at, List<Item> out) {
    draw(solid, at, UnaryOperator.identity(), out);
  }

  /**
   * Draws it as a picture beside the part that counts: nothing of it is on a layer that a machine
   * may cut along.
   *
   * @param solid the part
   * @param at where
   * @param out where shapes go
   */
  static void drawAside(FlatSolid solid, ViewPlacing at, List<Item> out) {
    draw(solid, at, layer -> Layer.OTHER_VIEWS, out);
  }

  private static void draw(
      FlatSolid solid, ViewPlacing at, UnaryOperator<Layer> layers, List<Item> out) {
    Contour outline = at.contour(solid.outline());
    out.add(figure(layers.apply(Layer.PLATE), outline));
    for (Contour cutout : solid.cutouts()) {
      Contour drawn = at.contour(cutout);
      out.add(figure(layers.apply(Layer.CUTOUTS), drawn));
    }
    for (Bore bore : solid.bores()) {
      bore(bore, at, layers, out);
    }
    Box b = outline.bounds().grown(2 * OVER_MM);
    Vec2 origin = at.origin();
    if (b.contains(origin)) {
      out.add(axis(new Vec2(b.minX(), origin.y()), new Vec2(b.maxX(), origin.y())));
      out.add(axis(new Vec2(origin.x(), b.minY()), new Vec2(origin.x(), b.maxY())));
    }
  }

  private static Item figure(Layer layer, Contour contour) {
    return contour
        .asCircle()
        .<Item>map(c -> new Item.Circle(layer, c.centre(), c.radius(), Pen.EDGE, Ink.NONE))
        .orElseGet(() -> new Item.Figure(layer, List.of(contour), Pen.EDGE, Ink.NONE));
  }

  private static Item axis(Vec2 from, Vec2 to) {
    return new Item.Line(Layer.CENTRE_LINES, from, to, Pen.CENTRE);
  }

  private static void bore(Bore bore, ViewPlacing at, UnaryOperator<Layer> layers, List<Item> out) {
    Vec2 c = at.point(bore.centre());
    new LayerPen(layers.apply(Layer.HOLES), out)
        .circle(c, at.length(bore.diameterMm() / 2), Pen.EDGE);
    if (bore.recess().isPresent()) {
      Recess recess = bore.recess().get();
      new LayerPen(layers.apply(Layer.RECESSES), out)
          .circle(c, at.length(recess.diameterMm() / 2), recess.fromTop() ? Pen.EDGE : Pen.HIDDEN);
    }
    double arm = at.length(bore.widestMm() / 2) + OVER_MM;
    for (Vec2 half : List.of(new Vec2(arm, 0), new Vec2(0, arm))) {
      new LayerPen(Layer.CENTRE_LINES, out).line(c.minus(half), c.plus(half), Pen.FINE);
    }
  }
}
