package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.sheet.text.Fragment;
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
    return new TapeRows(widthMm, Math.max(FormPieces.Blank.LEAST, BOX_SHARE * widthMm), rowMm);
  }

  /** The narrowest boxes, for longer names. */
  static TapeRows narrow(double widthMm, double rowMm) {
    return new TapeRows(widthMm, FormPieces.Blank.LEAST, rowMm);
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

  private List<FormPieces.Cell> cells(FormPieces.Cell label, FormPieces.Cell names) {
    List<FormPieces.Cell> cells = new ArrayList<>(List.of(label, names));
    for (int i = 0; i < 3; i++) {
      cells.add(new FormPieces.Blank(boxMm()));
    }
    return cells;
  }

  /** What stands over the columns. */
  Fragment headings() {
    return FormPieces.headings(
        List.of("", "from, and under it to", "1st", "2nd", "3rd"),
        cells(new FormPieces.Gap(LABEL), new FormPieces.Gap(namesMm())));
  }

  /**
   * The rows, and blank ones after them.
   *
   * @param entries the distances
   * @param blanks how many blank rows
   * @param prefix of their labels
   * @param after what the last label before them counts up to
   */
  List<FormPieces.Row> rows(List<Entry> entries, int blanks, String prefix, int after) {
    List<FormPieces.Row> rows = new ArrayList<>();
    for (Entry entry : entries) {
      FormPieces.Says label = FormPieces.Says.wrapped(entry.label(), FormPieces.NAME, LABEL);
      WorksheetPlan.Tape t = entry.tape();
      FormPieces.Says names =
          FormPieces.Says.wrapped(
                  entry.before() + t.from().sign() + " " + t.from().words(),
                  FormPieces.NAME,
                  namesMm())
              .then(entry.beforeTo() + t.to().sign() + " " + t.to().words(), FormPieces.NAME);
      List<FormPieces.Cell> cells = cells(label, names);
      if (rows.size() % 2 == 0) {
        cells.add(0, new FormPieces.Shade(LABEL + namesMm() - 1.0));
      }
      rows.add(FormPieces.row(cells, rowMm));
    }
    for (int i = 0; i < blanks; i++) {
      FormPieces.Says label =
          FormPieces.Says.wrapped(prefix + (after + i + 1), FormPieces.NAME, LABEL);
      rows.add(new FormPieces.Row(cells(label, new FormPieces.Rule(namesMm())), rowMm));
    }
    return rows;
  }
}
