package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;

/** Lines and letters on one layer. */
record Strokes(Layer layer, List<Item> out) {
  void line(double x1, double y1, double x2, double y2, Pen pen) {
    out.add(new Item.Line(layer, new Vec2(x1, y1), new Vec2(x2, y2), pen));
  }

  void box(Box box, Pen pen) {
    out.add(
        new Item.Polyline(
            layer,
            List.of(
                new Vec2(box.minX(), box.minY()),
                new Vec2(box.maxX(), box.minY()),
                new Vec2(box.maxX(), box.maxY()),
                new Vec2(box.minX(), box.maxY())),
            true,
            pen,
            Ink.NONE));
  }

  void circle(Vec2 centre, double radiusMm, Pen pen) {
    out.add(new Item.Circle(layer, centre, radiusMm, pen, Ink.NONE));
  }

  void text(double x, double y, double capMm, Align align, String words) {
    out.add(new Item.Text(layer, new Vec2(x, y), capMm, align, Angle.ZERO, words, Ink.BLACK));
  }
}
