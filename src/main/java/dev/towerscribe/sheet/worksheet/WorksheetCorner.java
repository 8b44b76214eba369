package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.model.Side;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import dev.towerscribe.sheet.worksheet.FormPieces.Blank;
import dev.towerscribe.sheet.worksheet.FormPieces.Cell;
import dev.towerscribe.sheet.worksheet.FormPieces.Disc;
import dev.towerscribe.sheet.worksheet.FormPieces.Gap;
import dev.towerscribe.sheet.worksheet.FormPieces.Row;
import dev.towerscribe.sheet.worksheet.FormPieces.Rule;
import dev.towerscribe.sheet.worksheet.FormPieces.Says;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Mark;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The worksheet's pages for one strut corner: its figures, its points, its tapes. */
final class WorksheetCorner {
  private static final double POINT_ROW = 13.4;

  /** Rows for distances of the user's own. */
  private static final int BLANKS = 2;

  /** Room for a disc and what keeps clear of it. */
  static final double DISC = 2 * FormPieces.DISC + 2.6;

  private static final double SKETCH_LEAST = 84.0;
  private static final double SKETCH_MOST = 120.0;
  private static final double SKETCH_GAP = 4.0;

  private WorksheetCorner() {}

  private static Side side(WorksheetHead head) {
    return head.side().orElseThrow();
  }

  private static double bodyMm(WorksheetHead head) {
    return head.bodyTopMm() - head.bodyBottomMm();
  }

  /** Which point is which. */
  static List<Page> figures(WorksheetHead head) {
    TextPage page = new TextPage(head);
    page.add(new StrutFigure(side(head), page.columnMm(), bodyMm(head)), 0, false);
    return head.pages(page, "figures", "corner, which point is which");
  }

  /** Floor plot and height of every point, and what is read at the wheel. */
  static List<Page> points(WorksheetHead head) {
    TextPage page = new TextPage(head);
    double wide = page.columnMm();
    double box = Math.max(Blank.LEAST, 0.145 * wide);
    double name = wide - DISC - 3 * box;
    List<Row> rows = new ArrayList<>();
    for (Point point : Point.values()) {
      Says words =
          Says.wrapped(point.words(), FormPieces.NAME, name)
              .then(point.key() + ": " + point.where(), FormPieces.WORDS);
      Disc disc = new Disc(point.sign(), DISC);
      rows.add(FormPieces.row(FormPieces.boxes(3, box, disc, words), POINT_ROW));
    }
    for (int i = 0; i < 2; i++) {
      List<Cell> cells = FormPieces.boxes(3, box, new Gap(DISC), new Rule(name));
      rows.add(FormPieces.row(cells, Row.LEAST + 1));
    }
    List<String> heads = List.of("", "point, and what it is taken at", "fore", "out", "height");
    page.rows(FormPieces.headings(heads, rows.get(0).cells()), rows, 0);
    page.paragraph(
        "Behind the wheel-centre line: minus. No tape checks the fore and the height of point 8:"
            + " take them twice.",
        FormPieces.WORDS);
    WorksheetStart.heading(page, "AT THE WHEEL");
    page.chain(
        List.of(
            wheel("tyre radius, hub's middle to floor", wide),
            wheel("camber, deg: top out +, top in -", wide),
            wheel("toe of this wheel, deg: toe-in +", wide)),
        1.0,
        false);
    return head.pages(page, "points", "corner, points");
  }

  private static Fragment wheel(String words, double wide) {
    double box = Math.max(Blank.LEAST, 0.16 * wide);
    Says says = Says.wrapped(words, FormPieces.NAME, wide - 3 * box);
    return new Row(FormPieces.boxes(3, box, says), Row.LEAST + 0.4);
  }

  /** Distances from point to point. */
  static List<Page> tapes(WorksheetHead head) {
    TextPage page = new TextPage(head);
    String lead =
        "Three times each, letting go of the tape in between. Where it cannot run straight, leave"
            + " the row empty. Knuckle pivot: only with a camber bolt.";
    page.lead(lead, FormPieces.WORDS);
    List<WorksheetPlan.Tape> tapes = WorksheetPlan.between();
    double words =
        TextStyle.wrap(lead, FormPieces.WORDS, page.columnMm()).size()
            * TextStyle.lineMm(FormPieces.WORDS);
    TapeRows rows = fitted(page, bodyMm(head) - words - 4.0, tapes.size());
    page.rows(rows.headings(), rows.rows(tapes, 0, i -> WorksheetPlan.label(side(head), i)), 2.0);
    return head.pages(page, "tapes", "corner, tapes, point to point");
  }

  private static String label(WorksheetHead head, Mark from, Point to) {
    return label(head, WorksheetPlan.fromMarks().indexOf(new WorksheetPlan.Tape(from, to)));
  }

  /** The label of a distance from the marks. */
  private static String label(WorksheetHead head, int row) {
    return WorksheetPlan.label(side(head), WorksheetPlan.between().size() + row);
  }

  /** Rows as high as there is room for. */
  private static TapeRows fitted(TextPage page, double roomMm, int count) {
    TapeRows least = TapeRows.ofOneSide(page.columnMm(), TapeRows.LEAST_ROW);
    double row = (roomMm - least.headings().heightMm()) / count;
    return TapeRows.ofOneSide(
        page.columnMm(), Math.max(TapeRows.LEAST_ROW, Math.min(TapeRows.MOST_ROW, row)));
  }

  /** Distances from the marks, with a sketch, and blank rows. */
  static List<Page> marks(WorksheetHead head) {
    TextPage page = new TextPage(head);
    List<WorksheetPlan.Tape> tapes = WorksheetPlan.fromMarks();
    double half = page.columnMm() * 0.5;
    List<Fragment> words = new ArrayList<>();
    double room = page.columnMm() - half - 4;
    for (Mark mark : Mark.values()) {
      String ends = "to %s: %s".formatted(FloorSketch.tapesFrom(mark), mark.words());
      Says says = Says.wrapped(ends, FormPieces.WORDS, room - DISC);
      words.add(new Row(List.of(new Disc(mark.sign(), DISC), says), 11));
    }
    String hook =
        ("Hook the tape to the mark itself. D is over the engine bay. No straight line for %s: plot"
                + " the fore of 1 twice. For %s: take the height of 4 twice.")
            .formatted(label(head, Mark.D, Point.TOP), label(head, Mark.C, Point.ARM_REAR));
    words.add(new Fragments.Stack(Fragments.lines(hook, FormPieces.WORDS, room, 0), 0));
    Fragment text = new Fragments.Stack(words, 1.0);
    double least = Math.max(text.heightMm(), SKETCH_LEAST);
    int count = tapes.size() + BLANKS;
    TapeRows rows = fitted(page, bodyMm(head) - least - SKETCH_GAP, count);
    page.rows(rows.headings(), rows.rows(tapes, BLANKS, i -> label(head, i)), 0);
    double left =
        bodyMm(head) - rows.headings().heightMm() - count * rows.rowMm() - SKETCH_GAP - 0.1;
    double high = Math.max(least, Math.min(left, SKETCH_MOST));
    page.add(
        new Fragments.Beside(new FloorSketch(Optional.of(side(head)), half, high), text, half + 4),
        SKETCH_GAP,
        false);
    return head.pages(page, "marks", "corner, tapes from the marks");
  }
}
