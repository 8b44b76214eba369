package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * Frame, centring marks and reference grid of a drawing sheet after ISO 5457:1999: continuous frame
 * 0.7 mm wide, marks at the middle of each side, fields of 50 mm counted from those marks, letters
 * downward without I and O, figures from the left. On upright paper the grid stands at the top and
 * the right only. Figures of the standard from memory.
 */
final class DrawingFrame {
  private static final double FIELD_MM = 50.0;
  private static final double MARK_INSIDE_MM = 5.0;
  private static final double CAP_MM = 2.5;
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

  private DrawingFrame() {}

  static List<Item> items(DrawingSheetSize leaf) {
    List<Item> items = new ArrayList<>();
    LayerPen s = new LayerPen(Layer.FRAME, items);
    Box f = leaf.frame();
    Box grid = f.grown(DrawingSheetSize.GRID_MM);
    s.frame(f, Pen.FINAL_CUT);
    double x = f.centre().x();
    double y = f.centre().y();
    s.line(x, f.maxY() - MARK_INSIDE_MM, x, grid.maxY(), Pen.FINAL_CUT);
    // The title block may stand at the lower edge: there the mark ends at the frame.
    s.line(x, grid.minY(), x, f.minY(), Pen.FINAL_CUT);
    s.line(grid.minX(), y, f.minX() + MARK_INSIDE_MM, y, Pen.FINAL_CUT);
    s.line(f.maxX() - MARK_INSIDE_MM, y, grid.maxX(), y, Pen.FINAL_CUT);
    across(s, f, f.maxY(), grid.maxY());
    down(s, f, f.maxX(), grid.maxX());
    if (!leaf.isUpright()) {
      across(s, f, grid.minY(), f.minY());
      down(s, f, grid.minX(), f.minX());
    }
    return items;
  }

  /** Borders of the fields along one side, the ends among them, counted from the middle. */
  private static List<Double> borders(double from, double to) {
    List<Double> borders = new ArrayList<>();
    borders.add(from);
    double middle = (from + to) / 2;
    int each = (int) Math.ceil((to - middle) / FIELD_MM - 1e-9);
    for (int i = 1 - each; i < each; i++) {
      borders.add(middle + i * FIELD_MM);
    }
    borders.add(to);
    return borders;
  }

  private static void across(LayerPen s, Box f, double from, double to) {
    List<Double> borders = borders(f.minX(), f.maxX());
    double middle = f.centre().x();
    for (int i = 0; i + 1 < borders.size(); i++) {
      double a = borders.get(i);
      double b = borders.get(i + 1);
      if (i > 0 && Math.abs(a - middle) > 1e-9) {
        s.line(a, from, a, to, Pen.OUTLINE);
      }
      if (b - a > 2 * CAP_MM) {
        String number = Integer.toString(i + 1);
        s.text((a + b) / 2, (from + to - CAP_MM) / 2, CAP_MM, Align.MIDDLE, number);
      }
    }
  }

  private static void down(LayerPen s, Box f, double from, double to) {
    List<Double> borders = borders(f.minY(), f.maxY());
    double middle = f.centre().y();
    int fields = borders.size() - 1;
    for (int i = 0; i < fields; i++) {
      double a = borders.get(i);
      double b = borders.get(i + 1);
      if (i > 0 && Math.abs(a - middle) > 1e-9) {
        s.line(from, a, to, a, Pen.OUTLINE);
      }
      if (b - a > 2 * CAP_MM) {
        String letter = String.valueOf(LETTERS.charAt(fields - 1 - i));
        s.text((from + to) / 2, (a + b - CAP_MM) / 2, CAP_MM, Align.MIDDLE, letter);
      }
    }
  }
}
