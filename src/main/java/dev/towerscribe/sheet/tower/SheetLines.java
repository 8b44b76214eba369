package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LabelPlacer;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/**
 * Draws the lines of a 1:1 sheet and tells the placer of labels, line by line, which ones no label
 * may cross and what it costs to cross the others. All page mm.
 *
 * @param items where the shapes go
 * @param placer who places the labels later
 */
record SheetLines(List<Item> items, LabelPlacer placer) {
  /** Sag of chords that stand for curves when labels are placed. */
  private static final double SAG_MM = 0.05;

  /** A pen for lines that labels need not know of. */
  LayerPen on(Layer layer) {
    return new LayerPen(layer, items);
  }

  /** Boundaries that labels had better not cross. */
  void outline(Layer layer, Region region, Pen pen, double costPerMm) {
    on(layer).outline(region, pen);
    region.contours().forEach(c -> placer.avoid(c.flattened(SAG_MM), true, costPerMm));
  }

  /** Boundaries that labels may not cross; drawn by whoever calls this. */
  void bar(Region region) {
    region.contours().forEach(c -> placer.keepClear(c.flattened(SAG_MM), true));
  }

  /** A circle that labels had better not cross. */
  void ring(Layer layer, Vec2 at, double radiusMm, Pen pen, double costPerMm) {
    on(layer).circle(at, radiusMm, pen);
    placer.avoid(Contour.circle(at, radiusMm).flattened(SAG_MM), true, costPerMm);
  }

  /** A cross that labels may not cover. */
  void cross(Layer layer, Vec2 at, double reachMm) {
    on(layer).cross(at, reachMm, Pen.FINE);
    placer.keepClear(at.plus(new Vec2(-reachMm, 0)), at.plus(new Vec2(reachMm, 0)));
    placer.keepClear(at.plus(new Vec2(0, -reachMm)), at.plus(new Vec2(0, reachMm)));
  }

  /** An open line that labels had better not cross. */
  void path(List<Vec2> path, Pen pen, double costPerMm) {
    on(Layer.CENTRE_LINES).path(path, pen);
    placer.avoid(path, false, costPerMm);
  }

  /** The line along the car, from end to end of a window, if it runs through that at all. */
  void foreAft(double x, Box window, double costPerMm) {
    if (x > window.minX() && x < window.maxX()) {
      Vec2 low = new Vec2(x, window.minY());
      Vec2 high = new Vec2(x, window.maxY());
      on(Layer.CENTRE_LINES).line(low, high, Pen.OUTLINE);
      placer.avoid(List.of(low, high), false, costPerMm);
    }
  }
}
