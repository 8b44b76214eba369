package dev.towerscribe.sheet.shop;

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
    new LayerPen(layers.apply(Layer.PLATE), out).contour(outline, Pen.EDGE);
    LayerPen cutouts = new LayerPen(layers.apply(Layer.CUTOUTS), out);
    solid.cutouts().forEach(cutout -> cutouts.contour(at.contour(cutout), Pen.EDGE));
    solid.bores().forEach(bore -> bore(bore, at, layers, out));
    Box b = outline.bounds().grown(2 * OVER_MM);
    if (b.contains(at.origin())) {
      axes(b, at.origin(), out);
    }
  }

  /** The two axes through a view's origin, across a box. */
  static void axes(Box b, Vec2 origin, List<Item> out) {
    LayerPen centres = new LayerPen(Layer.CENTRE_LINES, out);
    centres.line(b.minX(), origin.y(), b.maxX(), origin.y(), Pen.CENTRE);
    centres.line(origin.x(), b.minY(), origin.x(), b.maxY(), Pen.CENTRE);
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
    new LayerPen(Layer.CENTRE_LINES, out).cross(c, arm, Pen.FINE);
  }
}
