package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
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
    fields(s, f, true, f.maxY(), grid.maxY());
    fields(s, f, false, f.maxX(), grid.maxX());
    if (!leaf.isUpright()) {
      fields(s, f, true, grid.minY(), f.minY());
      fields(s, f, false, grid.minX(), f.minX());
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

  /** The fields along one side, figures across the sheet or letters down it. */
  private static void fields(LayerPen s, Box f, boolean across, double from, double to) {
    List<Double> borders = across ? borders(f.minX(), f.maxX()) : borders(f.minY(), f.maxY());
    double middle = across ? f.centre().x() : f.centre().y();
    int fields = borders.size() - 1;
    for (int i = 0; i < fields; i++) {
      double a = borders.get(i);
      double b = borders.get(i + 1);
      if (i > 0 && Math.abs(a - middle) > 1e-9) {
        s.line(at(across, a, from), at(across, a, to), Pen.OUTLINE);
      }
      if (b - a > 2 * CAP_MM) {
        Vec2 centre = at(across, (a + b) / 2, (from + to) / 2);
        char letter = LETTERS.charAt(fields - 1 - i);
        String name = across ? Integer.toString(i + 1) : Character.toString(letter);
        s.text(centre.x(), centre.y() - CAP_MM / 2, CAP_MM, Align.MIDDLE, name);
      }
    }
  }

  private static Vec2 at(boolean across, double along, double off) {
    return across ? new Vec2(along, off) : new Vec2(off, along);
  }
}
