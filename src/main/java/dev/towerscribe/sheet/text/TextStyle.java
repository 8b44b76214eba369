package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;

/** Sizes of the text pages' lettering (heights of capitals, mm) and the shapes they are made of. */
public final class TextStyle {
  /** Page titles. */
  public static final double TITLE = 7.0;

  /** The side of the car. */
  static final double SIDE = 10.0;

  /** Section headings and first lines of steps. */
  public static final double HEADING = 3.8;

  /** Running text. */
  public static final double BODY = 3.0;

  /** Tables. */
  static final double TABLE = 3.0;

  /** Sources and second units; nothing on a page is smaller. */
  public static final double SMALL = 2.5;

  /** Distance of base lines over the height of a capital. */
  private static final double PITCH = 1.75;

  /** Upper edge of a line to its base line, over the height of a capital. */
  private static final double DROP = 1.37;

  private TextStyle() {}

  /** Height that a line takes. */
  public static double lineMm(double cap) {
    return PITCH * cap;
  }

  /** Base line of a line whose upper edge is given. */
  public static double baseMm(double topMm, double cap) {
    return topMm - DROP * cap;
  }

  /** A line of text. */
  public static Item text(double x, double baseMm, double cap, Align align, String words) {
    return new Item.Text(
        Layer.NOTES, new Vec2(x, baseMm), cap, align, Angle.ZERO, words, Ink.BLACK);
  }

  /** A line of white text, for a black ground. */
  public static Item white(double x, double baseMm, double cap, Align align, String words) {
    return new Item.Text(
        Layer.NOTES, new Vec2(x, baseMm), cap, align, Angle.ZERO, words, Ink.WHITE);
  }

  /** A straight line. */
  public static Item line(double x1, double y1, double x2, double y2, Pen pen) {
    return new Item.Line(Layer.NOTES, new Vec2(x1, y1), new Vec2(x2, y2), pen);
  }

  /** An upright rectangle. */
  public static Item box(double x1, double y1, double x2, double y2, Pen pen, Ink fill) {
    return new Item.Polyline(
        Layer.NOTES,
        List.of(new Vec2(x1, y1), new Vec2(x2, y1), new Vec2(x2, y2), new Vec2(x1, y2)),
        true,
        pen,
        fill);
  }

  /** Words broken to a width; empty words give no line. */
  public static List<String> wrap(String words, double cap, double widthMm) {
    return words.isEmpty() ? List.of() : Lettering.wrap(words, cap, widthMm);
  }
}
