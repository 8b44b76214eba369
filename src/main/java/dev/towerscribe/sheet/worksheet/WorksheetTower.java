package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.Type;
import java.util.ArrayList;
import java.util.List;

/** The worksheet's pages for one tower's top. */
final class WorksheetTower {
  private static final double FIGURE_MM = 116.0;
  private static final double ROW = Form.Row.LEAST;
  private static final double GUTTER = 3.0;
  private static final int BLANK_SPANS = 3;

  private WorksheetTower() {}

  private static List<Page> pages(TextPage page, WorksheetHead head, String stem, String title) {
    String word = head.side().orElseThrow().word();
    return page.pages(
        "survey-" + word + "-" + stem,
        Type.titleCase(word) + " tower, " + title,
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
            table(half, List.of("sheet", "opening", "mark", "shaft thread", "pivot height")),
            table(half, List.of("lean inboard", "lean rearward", "crown across", "crown rise")),
            half + GUTTER),
        3.0,
        false);
    page.paragraph(
        "SHEET, OPENING: calipers, the second reading elsewhere on the edge, a quarter round."
            + " MARK: the inner edge of the ring.",
        Form.WORDS);
    page.paragraph(
        "LEAN, degrees: the second reading with the angle finder turned end for end; read it again"
            + " if they differ by more than 0.4. CROWN: none if no light shows under the"
            + " straightedge. PIVOT HEIGHT: on the old mount, on the bench; below the upper face:"
            + " minus.",
        Form.WORDS);
    return pages(page, head, "tower", "top");
  }

  private static Fragment table(double wide, List<String> names) {
    double box = Math.max(Form.Blank.LEAST, 0.27 * wide);
    List<Fragment> rows = new ArrayList<>();
    List<Form.Cell> like =
        List.of(new Form.Gap(wide - 2 * box), new Form.Blank(box), new Form.Blank(box));
    rows.add(Form.headings(List.of("", "1st", "2nd"), like));
    for (String name : names) {
      rows.add(
          new Form.Row(
              List.of(
                  Form.Says.wrapped(name, Form.NAME, wide - 2 * box),
                  new Form.Blank(box),
                  new Form.Blank(box)),
              ROW));
    }
    return new Fragments.Stack(rows, 0);
  }

  /** Landmarks, spans, straight lines. */
  static List<Page> landmarks(WorksheetHead head) {
    TextPage page = new TextPage(head);
    double wide = page.columnMm();
    page.lead(
        "On the tower FORE and IN count from the old shaft's centre, along the metal. IN is toward"
            + " the middle of the car; outboard is minus.",
        Form.WORDS);
    landmarkRows(page, wide);
    WorksheetStart.heading(page, "SPANS: tick how each was read");
    page.lead("Inside: near edges. Outside: far edges. Or rule from centre to centre.", Form.WORDS);
    spanRows(page, wide);
    WorksheetStart.heading(page, "STRAIGHT LINE: two points of it, far apart");
    lineRows(page, wide);
    return pages(page, head, "landmarks", "landmarks and spans");
  }

  private static void landmarkRows(TextPage page, double wide) {
    double disc = 2 * Form.discMm() + 2.6;
    double box = Math.max(Form.Blank.LEAST, 0.14 * wide);
    double name = wide - disc - 4 * box;
    List<Form.Cell> boxes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      boxes.add(new Form.Blank(box));
    }
    List<Form.Cell> like = new ArrayList<>(List.of(new Form.Gap(disc), new Form.Gap(name)));
    like.addAll(boxes);
    List<Form.Row> rows = new ArrayList<>();
    for (int i = 1; i <= WorksheetPlan.landmarks().size() + 1; i++) {
      List<Form.Cell> cells =
          new ArrayList<>(List.of(new Form.Disc(Integer.toString(i), disc), new Form.Rule(name)));
      cells.addAll(boxes);
      rows.add(new Form.Row(cells, ROW + 0.4));
    }
    page.rows(
        Form.headings(List.of("", "landmark: what it is", "fore", "in", "diameter", "again"), like),
        rows,
        1.0);
  }

  private static void spanRows(TextPage page, double wide) {
    double box = Math.max(Form.Blank.LEAST, 0.14 * wide);
    List<Form.Cell> after = new ArrayList<>();
    for (String word : List.of("inside", "outside", "centres")) {
      after.add(new Form.Tick(word, Form.tickMm(word)));
    }
    double name = wide - 2 * box - after.stream().mapToDouble(Form.Cell::widthMm).sum();
    after.add(new Form.Blank(box));
    after.add(new Form.Blank(box));
    List<Form.Row> rows = new ArrayList<>();
    for (WorksheetPlan.Span span : WorksheetPlan.spans()) {
      rows.add(row(Form.Says.wrapped(words(span), Form.NAME, name), after));
    }
    for (int i = 0; i < BLANK_SPANS; i++) {
      rows.add(row(new Form.Rule(name), after));
    }
    List<Form.Cell> like = new ArrayList<>();
    like.add(new Form.Gap(name));
    like.addAll(after);
    page.rows(Form.headings(List.of("from - to", "", "", "", "1st", "2nd"), like), rows, 1.0);
  }

  private static Form.Row row(Form.Cell first, List<Form.Cell> after) {
    List<Form.Cell> cells = new ArrayList<>(List.of(first));
    cells.addAll(after);
    return new Form.Row(cells, ROW);
  }

  /** A span by the numbers in the figure's discs. */
  static String words(WorksheetPlan.Span span) {
    return end(span.from()) + " - " + end(span.to());
  }

  private static String end(String name) {
    return name.replace("landmark ", "");
  }

  private static void lineRows(TextPage page, double wide) {
    double box = Math.max(Form.Blank.LEAST, 0.14 * wide);
    double name = wide - 4 * box;
    List<Form.Cell> cells = new ArrayList<>();
    cells.add(new Form.Rule(name));
    List<Form.Cell> like = new ArrayList<>();
    like.add(new Form.Gap(name));
    for (int i = 0; i < 4; i++) {
      cells.add(new Form.Blank(box));
      like.add(new Form.Blank(box));
    }
    page.rows(
        Form.headings(List.of("what it is", "from fore", "from in", "to fore", "to in"), like),
        List.of(new Form.Row(cells, ROW), new Form.Row(cells, ROW)),
        1.0);
  }
}
