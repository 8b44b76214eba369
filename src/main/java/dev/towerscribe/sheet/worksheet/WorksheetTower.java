package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.worksheet.FormPieces.Blank;
import dev.towerscribe.sheet.worksheet.FormPieces.Cell;
import dev.towerscribe.sheet.worksheet.FormPieces.Disc;
import dev.towerscribe.sheet.worksheet.FormPieces.Gap;
import dev.towerscribe.sheet.worksheet.FormPieces.Row;
import dev.towerscribe.sheet.worksheet.FormPieces.Rule;
import dev.towerscribe.sheet.worksheet.FormPieces.Says;
import dev.towerscribe.sheet.worksheet.FormPieces.Tick;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** The worksheet's pages for one tower's top. */
final class WorksheetTower {
  private static final double FIGURE_MM = 116.0;
  private static final double ROW = Row.LEAST;
  private static final double GUTTER = 3.0;
  private static final int BLANK_SPANS = 3;

  private WorksheetTower() {}

  /** The figure and what is read once or twice each. */
  static List<Page> top(WorksheetHead head) {
    TextPage page = new TextPage(head);
    double wide = page.columnMm();
    page.add(new TowerFigure(head.side().orElseThrow(), wide, FIGURE_MM), 0, false);
    double half = (wide - GUTTER) / 2;
    page.add(
        new Fragments.Beside(
            table(half, List.of("sheet", "opening", "mark", "rod thread", "pivot height")),
            table(half, List.of("lean inboard", "lean rearward", "crown across", "crown rise")),
            half + GUTTER),
        3.0,
        false);
    page.paragraph(
        "SHEET, OPENING: calipers, the second reading elsewhere on the edge, a quarter round."
            + " MARK: the inner edge of the ring.",
        FormPieces.WORDS);
    page.paragraph(
        "LEAN, degrees: the second reading with the angle finder turned end for end; read it again"
            + " if they differ by more than 0.4. CROWN: none if no light shows under the"
            + " straightedge. PIVOT HEIGHT: on the old mount, on the bench; below the upper face:"
            + " minus.",
        FormPieces.WORDS);
    return head.pages(page, "tower", "tower, top");
  }

  private static Fragment table(double wide, List<String> names) {
    double box = Math.max(Blank.LEAST, 0.27 * wide);
    double words = wide - 2 * box;
    List<Fragment> rows = new ArrayList<>();
    rows.add(
        FormPieces.headings(List.of("", "1st", "2nd"), FormPieces.boxes(2, box, new Gap(words))));
    for (String name : names) {
      Says says = Says.wrapped(name, FormPieces.NAME, words);
      rows.add(new Row(FormPieces.boxes(2, box, says), ROW));
    }
    return new Fragments.Stack(rows, 0);
  }

  /** Landmarks, spans, straight lines. */
  static List<Page> landmarks(WorksheetHead head) {
    TextPage page = new TextPage(head);
    double wide = page.columnMm();
    page.lead(
        "On the tower FORE and IN count from the old strut rod centre, along the metal. IN is"
            + " toward the middle of the car; outboard is minus.",
        FormPieces.WORDS);
    landmarkRows(page, wide);
    WorksheetStart.heading(page, "SPANS: tick how each was read");
    page.lead(
        "Inside: near edges. Outside: far edges. Or rule from centre to centre.", FormPieces.WORDS);
    spanRows(page, wide);
    WorksheetStart.heading(page, "STRAIGHT LINE: two points of it, far apart");
    lineRows(page, wide);
    return head.pages(page, "landmarks", "tower, landmarks and spans");
  }

  private static void landmarkRows(TextPage page, double wide) {
    double disc = WorksheetCorner.DISC;
    double box = Math.max(Blank.LEAST, 0.14 * wide);
    Rule name = new Rule(wide - disc - 4 * box);
    List<Row> rows = new ArrayList<>();
    for (int i = 1; i <= WorksheetPlan.landmarks().size() + 1; i++) {
      Disc sign = new Disc(Integer.toString(i), disc);
      rows.add(new Row(FormPieces.boxes(4, box, sign, name), ROW + 0.4));
    }
    rows(page, List.of("", "landmark: what it is", "fore", "in", "diameter", "again"), rows);
  }

  private static void rows(TextPage page, List<String> headings, List<Row> rows) {
    page.rows(FormPieces.headings(headings, rows.get(0).cells()), rows, 1.0);
  }

  private static void spanRows(TextPage page, double wide) {
    double box = Math.max(Blank.LEAST, 0.14 * wide);
    List<Cell> after = new ArrayList<>();
    for (String word : List.of("inside", "outside", "centres")) {
      after.add(new Tick(word, FormPieces.tickMm(word)));
    }
    double name = wide - 2 * box - after.stream().mapToDouble(Cell::widthMm).sum();
    after.addAll(FormPieces.boxes(2, box));
    List<Cell> firsts = new ArrayList<>();
    for (WorksheetPlan.Span span : WorksheetPlan.spans()) {
      firsts.add(Says.wrapped(words(span), FormPieces.NAME, name));
    }
    firsts.addAll(Collections.nCopies(BLANK_SPANS, new Rule(name)));
    List<Row> rows =
        firsts.stream()
            .map(first -> Stream.concat(Stream.of(first), after.stream()).toList())
            .map(cells -> new Row(cells, ROW))
            .toList();
    rows(page, List.of("from - to", "", "", "", "1st", "2nd"), rows);
  }

  /** A span by the numbers in the figure's discs. */
  static String words(WorksheetPlan.Span span) {
    return (span.from() + " - " + span.to()).replace("landmark ", "");
  }

  private static void lineRows(TextPage page, double wide) {
    double box = Math.max(Blank.LEAST, 0.14 * wide);
    Row row = new Row(FormPieces.boxes(4, box, new Rule(wide - 4 * box)), ROW);
    List<String> headings = List.of("what it is", "from fore", "from in", "to fore", "to in");
    rows(page, headings, List.of(row, row));
  }
}
