package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;

/** The worksheet's pages for one tower's top. */
final class WorksheetTower {
  private static final double FIGURE_MM = 116.0;
  private static final double ROW = FormPieces.Row.LEAST;
  private static final double GUTTER = 3.0;
  private static final int BLANK_SPANS = 3;

  private WorksheetTower() {}

  private static List<Page> pages(TextPage page, WorksheetHead head, String stem, String title) {
    String word = head.side().orElseThrow().word();
    return page.pages(
        "survey-" + word + "-" + stem,
        TextStyle.titleCase(word) + " tower, " + title,
        "S-" + word.charAt(0) + "-" + stem,
        true);
  }

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
    return pages(page, head, "tower", "top");
  }

  private static Fragment table(double wide, List<String> names) {
    double box = Math.max(FormPieces.Blank.LEAST, 0.27 * wide);
    List<Fragment> rows = new ArrayList<>();
    List<FormPieces.Cell> like =
        List.of(
            new FormPieces.Gap(wide - 2 * box),
            new FormPieces.Blank(box),
            new FormPieces.Blank(box));
    rows.add(FormPieces.headings(List.of("", "1st", "2nd"), like));
    for (String name : names) {
      rows.add(
          new FormPieces.Row(
              List.of(
                  FormPieces.Says.wrapped(name, FormPieces.NAME, wide - 2 * box),
                  new FormPieces.Blank(box),
                  new FormPieces.Blank(box)),
              ROW));
    }
    return new Fragments.Stack(rows, 0);
  }

  /** Landmarks, spans, straight lines. */
  static List<Page> landmarks(WorksheetHead head) {
    TextPage page = new TextPage(head);
    double wide = page.columnMm();
    page.lead(
        "On the tower FORE and IN count from the old strut rod's centre, along the metal. IN is"
            + " toward the middle of the car; outboard is minus.",
        FormPieces.WORDS);
    landmarkRows(page, wide);
    WorksheetStart.heading(page, "SPANS: tick how each was read");
    page.lead(
        "Inside: near edges. Outside: far edges. Or rule from centre to centre.", FormPieces.WORDS);
    spanRows(page, wide);
    WorksheetStart.heading(page, "STRAIGHT LINE: two points of it, far apart");
    lineRows(page, wide);
    return pages(page, head, "landmarks", "landmarks and spans");
  }

  private static void landmarkRows(TextPage page, double wide) {
    double disc = 2 * FormPieces.discMm() + 2.6;
    double box = Math.max(FormPieces.Blank.LEAST, 0.14 * wide);
    double name = wide - disc - 4 * box;
    List<FormPieces.Cell> boxes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      boxes.add(new FormPieces.Blank(box));
    }
    List<FormPieces.Cell> like =
        new ArrayList<>(List.of(new FormPieces.Gap(disc), new FormPieces.Gap(name)));
    like.addAll(boxes);
    List<FormPieces.Row> rows = new ArrayList<>();
    for (int i = 1; i <= WorksheetPlan.landmarks().size() + 1; i++) {
      List<FormPieces.Cell> cells =
          new ArrayList<>(
              List.of(new FormPieces.Disc(Integer.toString(i), disc), new FormPieces.Rule(name)));
      cells.addAll(boxes);
      rows.add(new FormPieces.Row(cells, ROW + 0.4));
    }
    page.rows(
        FormPieces.headings(
            List.of("", "landmark: what it is", "fore", "in", "diameter", "again"), like),
        rows,
        1.0);
  }

  private static void spanRows(TextPage page, double wide) {
    double box = Math.max(FormPieces.Blank.LEAST, 0.14 * wide);
    List<FormPieces.Cell> after = new ArrayList<>();
    for (String word : List.of("inside", "outside", "centres")) {
      after.add(new FormPieces.Tick(word, FormPieces.tickMm(word)));
    }
    double name = wide - 2 * box - after.stream().mapToDouble(FormPieces.Cell::widthMm).sum();
    after.add(new FormPieces.Blank(box));
    after.add(new FormPieces.Blank(box));
    List<FormPieces.Row> rows = new ArrayList<>();
    for (WorksheetPlan.Span span : WorksheetPlan.spans()) {
      rows.add(row(FormPieces.Says.wrapped(words(span), FormPieces.NAME, name), after));
    }
    for (int i = 0; i < BLANK_SPANS; i++) {
      rows.add(row(new FormPieces.Rule(name), after));
    }
    List<FormPieces.Cell> like = new ArrayList<>();
    like.add(new FormPieces.Gap(name));
    like.addAll(after);
    page.rows(FormPieces.headings(List.of("from - to", "", "", "", "1st", "2nd"), like), rows, 1.0);
  }

  private static FormPieces.Row row(FormPieces.Cell first, List<FormPieces.Cell> after) {
    List<FormPieces.Cell> cells = new ArrayList<>(List.of(first));
    cells.addAll(after);
    return new FormPieces.Row(cells, ROW);
  }

  /** A span by the numbers in the figure's discs. */
  static String words(WorksheetPlan.Span span) {
    return end(span.from()) + " - " + end(span.to());
  }

  private static String end(String name) {
    return name.replace("landmark ", "");
  }

  private static void lineRows(TextPage page, double wide) {
    double box = Math.max(FormPieces.Blank.LEAST, 0.14 * wide);
    double name = wide - 4 * box;
    List<FormPieces.Cell> cells = new ArrayList<>();
    cells.add(new FormPieces.Rule(name));
    List<FormPieces.Cell> like = new ArrayList<>();
    like.add(new FormPieces.Gap(name));
    for (int i = 0; i < 4; i++) {
      cells.add(new FormPieces.Blank(box));
      like.add(new FormPieces.Blank(box));
    }
    page.rows(
        FormPieces.headings(
            List.of("what it is", "from fore", "from in", "to fore", "to in"), like),
        List.of(new FormPieces.Row(cells, ROW), new FormPieces.Row(cells, ROW)),
        1.0);
  }
}
