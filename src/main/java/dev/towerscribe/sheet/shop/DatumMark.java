package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.sheet.text.Fragment;
import java.util.List;

/**
 * Signs of geometrical tolerancing: the datum's triangle with its letter, and the frame of a
 * position tolerance (ISO 1101, ISO 5459; forms from memory).
 */
final class DatumMark {
  private static final double CAP_MM = 3.0;

  /** Height of frames: twice the lettering. */
  static final double FRAME_MM = 2 * CAP_MM;

  private static final double TRIANGLE_MM = 3.0;
  private static final double STEM_MM = 2.5;

  private DatumMark() {}

  /** Below an edge: a filled triangle on it, a stem and the letter in a frame. */
  static void below(Vec2 at, String letter, List<Item> out) {
    LayerPen s = new LayerPen(Layer.DIMENSIONS, out);
    s.polygon(
        List.of(
            at.plus(new Vec2(-TRIANGLE_MM / 2, 0)),
            at.plus(new Vec2(TRIANGLE_MM / 2, 0)),
            at.plus(new Vec2(0, -TRIANGLE_MM * 0.8))),
        Pen.NONE,
        Ink.BLACK);
    double top = at.y() - TRIANGLE_MM * 0.8 - STEM_MM;
    s.line(at.x(), at.y() - TRIANGLE_MM * 0.8, at.x(), top, Pen.THIN);
    s.frame(new Box(at.x() - FRAME_MM / 2, top - FRAME_MM, at.x() + FRAME_MM / 2, top), Pen.THIN);
    s.text(at.x(), top - FRAME_MM / 2 - CAP_MM / 2, CAP_MM, Align.MIDDLE, letter);
  }

  /** How far a datum mark reaches below its edge. */
  static double reachMm() {
    return TRIANGLE_MM * 0.8 + STEM_MM + FRAME_MM;
  }

  /**
   * A position tolerance: its sign, the diameter of its zone, its datums.
   *
   * @param zone "\u00D81.00"
   * @param datums letters in order
   */
  record Position(String zone, List<String> datums) implements Fragment {
    @Override
    public double heightMm() {
      return FRAME_MM + 1.0;
    }

    double widthMm() {
      return FRAME_MM * (1 + datums.size()) + zoneMm();
    }

    private double zoneMm() {
      return Lettering.width(zone, CAP_MM) + 3.0;
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen s = new LayerPen(Layer.NOTES, out);
      double top = topMm - 0.5;
      double low = top - FRAME_MM;
      double base = low + (FRAME_MM - CAP_MM) / 2;
      s.frame(new Box(leftMm, low, leftMm + widthMm(), top), Pen.THIN);
      Vec2 c = new Vec2(leftMm + FRAME_MM / 2, (low + top) / 2);
      double r = 0.42 * CAP_MM;
      s.circle(c, r, Pen.THIN);
      s.cross(c, 1.7 * r, Pen.THIN);
      double x = leftMm + FRAME_MM;
      s.line(x, low, x, top, Pen.THIN);
      s.text(x + zoneMm() / 2, base, CAP_MM, Align.MIDDLE, zone);
      x += zoneMm();
      for (String letter : datums) {
        s.line(x, low, x, top, Pen.THIN);
        s.text(x + FRAME_MM / 2, base, CAP_MM, Align.MIDDLE, letter);
        x += FRAME_MM;
      }
    }
  }
}
