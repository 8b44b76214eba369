package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.List;

/** Two holes and the three distances between them: near edges, centres, far edges. */
record JawSketch() implements Fragment {
  /** Its width, mm. */
  static final double WIDTH = 60.0;

  private static final double HEIGHT = 33.0;
  private static final double RADIUS = 6.5;
  private static final double SPACING = 40.0;
  private static final double FIRST = 11.0;
  private static final double PITCH = 7.0;
  private static final double ARROW = 2.4;

  @Override
  public double heightMm() {
    return HEIGHT;
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double x = leftMm + WIDTH / 2;
    double y = topMm - RADIUS - 0.5;
    for (int side = -1; side <= 1; side += 2) {
      Vec2 hole = new Vec2(x + side * SPACING / 2, y);
      notes.circle(hole, RADIUS, Pen.OUTLINE, Ink.PALE);
      notes.line(hole.x() - 2, y, hole.x() + 2, y, Pen.FINE);
    }
    distance("NEAR", x, y, y - FIRST, SPACING / 2 - RADIUS, out);
    distance("CENTRES", x, y, y - FIRST - PITCH, SPACING / 2, out);
    distance("FAR", x, y, y - FIRST - 2 * PITCH, SPACING / 2 + RADIUS, out);
  }

  private static void distance(
      String word, double centre, double from, double y, double half, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double gap = Lettering.width(word, TextStyle.SMALL) / 2 + 1.5;
    notes.text(centre, y - TextStyle.SMALL / 2, TextStyle.SMALL, Align.MIDDLE, word);
    for (int side = -1; side <= 1; side += 2) {
      double end = centre + side * half;
      notes.line(end, from, end, y - 1.0, Pen.FINE);
      notes.line(centre + side * gap, y, end - side * ARROW, y, Pen.FINE);
      notes.polygon(
          List.of(
              new Vec2(end, y),
              new Vec2(end - side * ARROW, y + 0.6),
              new Vec2(end - side * ARROW, y - 0.6)),
          Pen.NONE,
          Ink.BLACK);
    }
  }
}
