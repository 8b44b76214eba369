package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;

/**
 * A ruled table. Cells wrap; a second line of a cell, in small lettering, carries the other unit.
 *
 * @param columns its columns
 * @param rows cells of each row, as many as columns
 * @param widthMm its width
 * @param leastRowMm least height of a row, to write in
 * @param padMm space above and below what a row says
 */
public record Table(
    List<Column> columns, List<List<Cell>> rows, double widthMm, double leastRowMm, double padMm) {
  /** Space above and below what a row says, where there is plenty. */
  public static final double AIRY_MM = 0.7;

  private static final double PAD_X = 1.6;

  /** What sharing out a width may round off. */
  private static final double ROUNDING_MM = 1e-6;

  /** Half the outer line, so that it stays inside the width. */
  private static final double INSET = Pen.OUTLINE.widthMm() / 2;

  /**
   * A column.
   *
   * @param head its heading; a line feed breaks it
   * @param weight its share of the width
   * @param align where its cells stand
   */
  public record Column(String head, double weight, Align align) {}

  /**
   * A cell.
   *
   * @param main what it says
   * @param second small lettering under it, perhaps empty
   */
  public record Cell(String main, String second) {
    /**
     * A cell of one line.
     *
     * @param main what it says
     * @return the cell
     */
    public static Cell of(String main) {
      return new Cell(main, "");
    }

    /**
     * A length with the other unit below it.
     *
     * @param mm the length
     * @param lengths the first unit
     * @return the cell
     */
    public static Cell length(double mm, Lengths lengths) {
      return new Cell(lengths.with(mm), lengths.other().with(mm));
    }
  }

  /**
   * A table with plenty of space in its rows.
   *
   * @param columns its columns
   * @param rows cells of each row, as many as columns
   * @param widthMm its width
   * @param leastRowMm least height of a row, to write in
   */
  public Table(List<Column> columns, List<List<Cell>> rows, double widthMm, double leastRowMm) {
    this(columns, rows, widthMm, leastRowMm, AIRY_MM);
  }

  /**
   * Copies the lists and widens columns of figures as they need.
   *
   * @throws IllegalArgumentException if a row has not a cell for each column
   */
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException("a row needs a cell for each column");
      }
    }
    columns = fitted(columns, rows, widthMm);
  }

  /**
   * Columns of figures as wide as their longest one, at the cost of columns of words: a figure that
   * goes on in the next line would be read as another one.
   */
  private static List<Column> fitted(List<Column> columns, List<List<Cell>> rows, double widthMm) {
    double all = columns.stream().mapToDouble(Column::weight).sum();
    double room = widthMm - 2 * INSET;
    double[] wide = new double[columns.size()];
    double figures = 0;
    double words = 0;
    boolean tooNarrow = false;
    for (int i = 0; i < wide.length; i++) {
      wide[i] = room * columns.get(i).weight() / all;
      if (columns.get(i).align() == Align.END) {
        int column = i;
        double longest =
            rows.stream().mapToDouble(r -> longestWordMm(r.get(column))).max().orElse(0);
        tooNarrow |= longest + 2 * PAD_X > wide[i];
        wide[i] = Math.max(wide[i], longest + 2 * PAD_X + ROUNDING_MM);
        figures += wide[i];
      } else {
        words += columns.get(i).weight();
      }
    }
    if (!tooNarrow || figures >= room || words <= 0) {
      return columns;
    }
    List<Column> fitted = new ArrayList<>();
    for (int i = 0; i < wide.length; i++) {
      Column c = columns.get(i);
      double mm = c.align() == Align.END ? wide[i] : (room - figures) * c.weight() / words;
      fitted.add(new Column(c.head(), mm, c.align()));
    }
    return fitted;
  }

  private static double longestWordMm(Cell cell) {
    return Math.max(
        TextStyle.longestWordMm(cell.main(), TextStyle.TABLE),
        TextStyle.longestWordMm(cell.second(), TextStyle.SMALL));
  }

  private double columnMm(int i) {
    double all = columns.stream().mapToDouble(Column::weight).sum();
    return (widthMm - 2 * INSET) * columns.get(i).weight() / all;
  }

  /**
   * The headings.
   *
   * @return a block
   */
  public Fragment head() {
    List<List<Fragments.Words>> cells = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      cells.add(words(columns.get(i).head(), TextStyle.SMALL, i));
    }
    return new Row(cells, true);
  }

  /**
   * The rows, each as a block.
   *
   * @return without the headings
   */
  public List<Fragment> body() {
    return rows.stream().map(this::row).toList();
  }

  private Fragment row(List<Cell> row) {
    List<List<Fragments.Words>> cells = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Cell cell = row.get(i);
      List<Fragments.Words> all = new ArrayList<>(words(cell.main(), TextStyle.TABLE, i));
      all.addAll(words(cell.second(), TextStyle.SMALL, i));
      cells.add(all);
    }
    return new Row(cells, false);
  }

  /**
   * The whole table as one block, for small ones.
   *
   * @return headings and rows
   */
  public Fragment whole() {
    List<Fragment> all = new ArrayList<>(List.of(head()));
    all.addAll(body());
    return new Fragments.Stack(all, 0);
  }

  private List<Fragments.Words> words(String text, double cap, int column) {
    return TextStyle.wrap(text, cap, columnMm(column) - 2 * PAD_X).stream()
        .map(line -> new Fragments.Words(line, cap, 0))
        .toList();
  }

  private final class Row implements Fragment {
    private final List<List<Fragments.Words>> cells;
    private final boolean head;

    Row(List<List<Fragments.Words>> cells, boolean head) {
      this.cells = cells;
      this.head = head;
    }

    @Override
    public double heightMm() {
      double tallest = cells.stream().mapToDouble(Table::stackMm).max().orElse(0);
      return Math.max(head ? 0 : leastRowMm, tallest + 2 * padMm);
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double bottom = topMm - heightMm();
      double left = leftMm + INSET;
      double right = leftMm + widthMm - INSET;
      if (head) {
        double edge = topMm - INSET;
        notes.box(left, bottom, right, edge, Pen.NONE, Ink.PALE);
        notes.line(leftMm, edge, leftMm + widthMm, edge, Pen.OUTLINE);
      }
      double x = left;
      for (int i = 0; i < cells.size(); i++) {
        double wide = columnMm(i);
        double y = topMm - (heightMm() - stackMm(cells.get(i))) / 2;
        Align align = columns.get(i).align();
        double at =
            switch (align) {
              case START -> x + PAD_X;
              case MIDDLE -> x + wide / 2;
              case END -> x + wide - PAD_X;
            };
        for (Fragments.Words line : cells.get(i)) {
          if (!line.words().isEmpty()) {
            double base = TextStyle.baseMm(y, line.cap());
            notes.text(at, base, line.cap(), align, line.words());
          }
          y -= line.heightMm();
        }
        notes.line(x, bottom, x, topMm, i == 0 ? Pen.OUTLINE : Pen.FINE);
        x += wide;
      }
      notes.line(right, bottom, right, topMm, Pen.OUTLINE);
      notes.line(leftMm, bottom, leftMm + widthMm, bottom, head ? Pen.OUTLINE : Pen.THIN);
    }
  }

  private static double stackMm(List<Fragments.Words> lines) {
    return lines.stream().mapToDouble(Fragments.Words::heightMm).sum();
  }
}
