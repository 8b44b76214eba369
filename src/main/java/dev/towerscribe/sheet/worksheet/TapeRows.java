package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.worksheet.FormPieces.Blank;
import dev.towerscribe.sheet.worksheet.FormPieces.Cell;
import dev.towerscribe.sheet.worksheet.FormPieces.Gap;
import dev.towerscribe.sheet.worksheet.FormPieces.Row;
import dev.towerscribe.sheet.worksheet.FormPieces.Rule;
import dev.towerscribe.sheet.worksheet.FormPieces.Says;
import dev.towerscribe.sheet.worksheet.FormPieces.Shade;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows of a tape table: what it is held to, and three boxes, for each distance is read three times.
 *
 * @param widthMm width of the table
 * @param boxMm width of a box, its gap included
 * @param rowMm height of a row
 */
record TapeRows(double widthMm, double boxMm, double rowMm) {
  /** Two lines of names and the room round them. */
  static final double LEAST_ROW = 12.7;

  /** Rows are no higher than this, however much room there is. */
  static final double MOST_ROW = 14.5;

  private static final double LABEL = 15.0;
  private static final double BOX_SHARE = 0.16;

  /** Boxes as wide as the names of one side's points leave room for. */
  static TapeRows wide(double widthMm, double rowMm) {
    return new TapeRows(widthMm, Math.max(Blank.LEAST, BOX_SHARE * widthMm), rowMm);
  }

  /** The narrowest boxes, for longer names. */
  static TapeRows narrow(double widthMm, double rowMm) {
    return new TapeRows(widthMm, Blank.LEAST, rowMm);
  }

  /**
   * A distance.
   *
   * @param label its row's name
   * @param tape what is taped
   * @param before stands before the first end's words
   * @param beforeTo stands before the second end's words
   */
  record Entry(String label, WorksheetPlan.Tape tape, String before, String beforeTo) {}

  private double namesMm() {
    return widthMm - LABEL - 3 * boxMm();
  }

  private List<Cell> cells(Cell label, Cell names) {
    return FormPieces.boxes(3, boxMm, label, names);
  }

  /** What stands over the columns. */
  Fragment headings() {
    return FormPieces.headings(
        List.of("", "from, and under it to", "1st", "2nd", "3rd"),
        cells(new Gap(LABEL), new Gap(namesMm())));
  }

  /**
   * The rows, and blank ones after them.
   *
   * @param entries the distances
   * @param blanks how many blank rows
   * @param prefix of their labels
   * @param after what the last label before them counts up to
   */
  List<Row> rows(List<Entry> entries, int blanks, String prefix, int after) {
    List<Row> rows = new ArrayList<>();
    for (Entry entry : entries) {
      Says label = Says.wrapped(entry.label(), FormPieces.NAME, LABEL);
      WorksheetPlan.Tape t = entry.tape();
      Says names =
          Says.wrapped(
                  entry.before() + t.from().sign() + " " + t.from().words(),
                  FormPieces.NAME,
                  namesMm())
              .then(entry.beforeTo() + t.to().sign() + " " + t.to().words(), FormPieces.NAME);
      List<Cell> cells = cells(label, names);
      if (rows.size() % 2 == 0) {
        cells.add(0, new Shade(LABEL + namesMm() - 1.0));
      }
      rows.add(FormPieces.row(cells, rowMm));
    }
    for (int i = 0; i < blanks; i++) {
      Says label = Says.wrapped(prefix + (after + i + 1), FormPieces.NAME, LABEL);
      rows.add(new Row(cells(label, new Rule(namesMm())), rowMm));
    }
    return rows;
  }
}
