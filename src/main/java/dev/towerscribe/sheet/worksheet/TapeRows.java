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
import java.util.function.IntFunction;

/**
 * Rows of a tape table: what it is held to, and three boxes, for each distance is read three times.
 *
 * @param widthMm width of the table
 * @param boxMm width of a box, its gap included
 * @param rowMm height of a row
 * @param from stands before the first end's name: its side, where both are in the table
 * @param to stands before the second end's name
 */
record TapeRows(double widthMm, double boxMm, double rowMm, String from, String to) {
  /** Two lines of names and the room round them. */
  static final double LEAST_ROW = 12.7;

  /** Rows are no higher than this, however much room there is. */
  static final double MOST_ROW = 14.5;

  private static final double LABEL = 15.0;
  private static final double BOX_SHARE = 0.16;

  /** Distances of one side: boxes as wide as the names of its points leave room for. */
  static TapeRows ofOneSide(double widthMm, double rowMm) {
    return new TapeRows(widthMm, Math.max(Blank.LEAST, BOX_SHARE * widthMm), rowMm, "", "");
  }

  /** Distances from left to right, whose names are longer: the narrowest boxes. */
  static TapeRows across(double widthMm, double rowMm) {
    return new TapeRows(widthMm, Blank.LEAST, rowMm, "LEFT ", "RIGHT ");
  }

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
   * @param tapes the distances
   * @param blanks how many blank rows
   * @param label of each row, counted from 0, blank ones too
   */
  List<Row> rows(List<WorksheetPlan.Tape> tapes, int blanks, IntFunction<String> label) {
    List<Row> rows = new ArrayList<>();
    for (WorksheetPlan.Tape tape : tapes) {
      Says names =
          Says.wrapped(from + named(tape.from()), FormPieces.NAME, namesMm())
              .then(to + named(tape.to()), FormPieces.NAME);
      List<Cell> cells = cells(label(label, rows.size()), names);
      if (rows.size() % 2 == 0) {
        cells.add(0, new Shade(LABEL + namesMm() - 1.0));
      }
      rows.add(FormPieces.row(cells, rowMm));
    }
    for (int i = 0; i < blanks; i++) {
      rows.add(new Row(cells(label(label, rows.size()), new Rule(namesMm())), rowMm));
    }
    return rows;
  }

  private static Says label(IntFunction<String> label, int row) {
    return Says.wrapped(label.apply(row), FormPieces.NAME, LABEL);
  }

  private static String named(WorksheetEnd end) {
    return end.sign() + " " + end.words();
  }
}
