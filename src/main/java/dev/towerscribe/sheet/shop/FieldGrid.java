package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.sheet.text.NoRoomException;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows of labelled fields, as title blocks have. An empty value leaves room to write in by hand;
 * one too long for its field in the smallest lettering is refused, not cut short.
 *
 * @param rows rows from top to bottom
 */
record FieldGrid(List<Row> rows) {
  private static final double LABEL_CAP_MM = 2.5;
  private static final double LEAST_CAP_MM = 2.5;
  private static final double PAD_MM = 1.1;
  private static final double CAP_MM = 3.0;
  private static final double ROW_MM = 10.0;

  /** Base line to base line over the height of a capital. */
  private static final double PITCH = 1.6;

  /**
   * A row of fields.
   *
   * @param heightMm its height
   * @param fields from left to right
   */
  record Row(double heightMm, List<Field> fields) {
    Row {
      fields = List.copyOf(fields);
    }
  }

  /**
   * A field.
   *
   * @param label small words at its top
   * @param value what it says, perhaps empty
   * @param weight its share of the row's width
   * @param capMm height of capitals wished
   */
  record Field(String label, String value, double weight, double capMm) {}

  /** A field in the usual lettering. */
  static Field field(String label, String value, double weight) {
    return new Field(label, value, weight, CAP_MM);
  }

  /** A row of the usual height. */
  static Row row(Field... fields) {
    return new Row(ROW_MM, List.of(fields));
  }

  FieldGrid {
    rows = List.copyOf(rows);
  }

  double heightMm() {
    return rows.stream().mapToDouble(Row::heightMm).sum();
  }

  /**
   * Draws the grid.
   *
   * @param leftMm left edge
   * @param topMm upper edge
   * @param widthMm whole width
   * @param out where shapes go
   * @return the box of each field, row by row
   */
  List<List<Box>> draw(double leftMm, double topMm, double widthMm, List<Item> out) {
    LayerPen s = new LayerPen(Layer.FRAME, out);
    List<List<Box>> boxes = new ArrayList<>();
    double top = topMm;
    for (Row row : rows) {
      double all = row.fields().stream().mapToDouble(Field::weight).sum();
      List<Box> cells = new ArrayList<>();
      double x = leftMm;
      for (Field field : row.fields()) {
        double wide = widthMm * field.weight() / all;
        Box cell = new Box(x, top - row.heightMm(), x + wide, top);
        field(s, field, cell);
        cells.add(cell);
        x += wide;
        if (cells.size() < row.fields().size()) {
          s.line(x, cell.minY(), x, cell.maxY(), Pen.OUTLINE);
        }
      }
      top -= row.heightMm();
      s.line(leftMm, top, leftMm + widthMm, top, Pen.OUTLINE);
      boxes.add(cells);
    }
    s.frame(new Box(leftMm, top, leftMm + widthMm, topMm), Pen.FINAL_CUT);
    return boxes;
  }

  private static void field(LayerPen s, Field field, Box cell) {
    double labelBase = cell.maxY() - PAD_MM - LABEL_CAP_MM;
    s.text(cell.minX() + PAD_MM, labelBase, LABEL_CAP_MM, Align.START, field.label());
    if (field.value().isEmpty()) {
      return;
    }
    double room = cell.width() - 2 * PAD_MM;
    double high = labelBase - PAD_MM - cell.minY() - PAD_MM / 2;
    double cap = Math.min(field.capMm(), high / 1.3);
    List<String> lines = Lettering.wrap(field.value(), cap, room);
    while (!fits(lines, cap, room, high) && cap > LEAST_CAP_MM) {
      cap = Math.max(LEAST_CAP_MM, cap - 0.25);
      lines = Lettering.wrap(field.value(), cap, room);
    }
    if (!fits(lines, cap, room, high)) {
      throw new NoRoomException(
          "no room in the title block for " + field.label() + ": " + field.value());
    }
    double y = labelBase - PAD_MM - cap;
    for (String line : lines) {
      s.text(cell.minX() + PAD_MM, y, cap, Align.START, line);
      y -= PITCH * cap;
    }
  }

  /** Words at the other end of the line that a field's label stands in. */
  static void besideLabel(Box cell, String words, List<Item> out) {
    double base = cell.maxY() - PAD_MM - LABEL_CAP_MM;
    new LayerPen(Layer.FRAME, out).text(cell.maxX() - PAD_MM, base, LABEL_CAP_MM, Align.END, words);
  }

  private static boolean fits(List<String> lines, double cap, double room, double high) {
    double tall = cap + (lines.size() - 1) * PITCH * cap + 0.3 * cap;
    return tall <= high + 1e-9
        && lines.stream().allMatch(line -> Lettering.width(line, cap) <= room + 1e-9);
  }
}
