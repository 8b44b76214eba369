package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.Lengths;
import dev.towerscribe.sheet.text.PageHead;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.Table.Cell;
import dev.towerscribe.sheet.text.Table.Column;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The result of every check of one tower, gravest first, each with figure, limit and source. */
public final class FindingsPages {
  private static final double MARK = 9.0;
  private static final double INDENT = 14.0;

  /** Space between findings where there is plenty. */
  static final double AIRY_MM = 5.0;

  /** Space between findings and in the rows of the table, the airiest first. */
  private static final List<Spacing> SPACINGS =
      List.of(new Spacing(AIRY_MM, Table.AIRY_MM), new Spacing(4.0, 0.4), new Spacing(3.2, 0.1));

  private record Spacing(double gapMm, double padMm) {}

  /** The mark of a note in a table. */
  private static final String DOT = "\u2022";

  private FindingsPages() {}

  /**
   * The findings of one tower.
   *
   * @param layout the tower
   * @param info the job; its accepted stops are marked so
   * @return at least one page
   */
  public static List<Page> pages(SideLayout layout, JobInfo info) {
    List<Page> best = List.of();
    for (Spacing spacing : SPACINGS) {
      // A last page of a few lines is one more to print and to lose.
      List<Page> pages = pages(layout, info, spacing);
      if (best.isEmpty() || pages.size() < best.size()) {
        best = pages;
      }
    }
    return best;
  }

  private static List<Page> pages(SideLayout layout, JobInfo info, Spacing spacing) {
    TextPage page =
        new TextPage(
            new PageHead(layout.job().print(), info, Optional.of(layout.side()), "Findings", true));
    Lengths lengths = new Lengths(info.units());
    List<String> accepted = info.acceptedStops().stream().map(Finding::id).toList();
    if (layout.findings().isEmpty()) {
      page.paragraph("No check was made of this tower.", TextStyle.BODY);
    }
    for (Severity severity : Severity.values()) {
      List<Finding> some =
          layout.findings().stream().filter(f -> f.severity() == severity).toList();
      if (severity == Severity.NOTE && !some.isEmpty()) {
        addNotes(page, some, spacing, lengths);
      } else if (!some.isEmpty()) {
        page.band(heading(severity, some.size()));
        some.forEach(f -> add(page, f, accepted.contains(f.id()), spacing.gapMm(), lengths));
      }
    }
    String side = layout.side().word();
    return page.pages(
        side + "-findings",
        TextStyle.titleCase(side) + " tower, findings",
        side.substring(0, 1).toUpperCase(Locale.ROOT) + "-find-",
        false);
  }

  private static String heading(Severity severity, int count) {
    return switch (severity) {
      case STOP -> count + (count == 1 ? " stop" : " stops") + ": do not cut";
      case CAUTION -> count + (count == 1 ? " caution" : " cautions") + ": read before cutting";
      case NOTE -> count + (count == 1 ? " note" : " notes") + ": passed, or for information";
    };
  }

  /**
   * Notes are many. Those that say something are told one by one, in two columns under a heading of
   * the same width, which keeps it with the first; those that only say that a figure passed its
   * limit stand in one table, a line each, with the sources once, below it.
   */
  private static void addNotes(
      TextPage page, List<Finding> notes, Spacing spacing, Lengths lengths) {
    List<Finding> passed = notes.stream().filter(n -> onlyPassed(n, lengths)).toList();
    List<Finding> told = notes.stream().filter(n -> !passed.contains(n)).toList();
    page.columns(told.size() > 1 ? 2 : 1);
    page.band(heading(Severity.NOTE, notes.size()));
    told.forEach(n -> add(page, n, false, spacing.gapMm(), lengths));
    if (passed.isEmpty()) {
      return;
    }
    if (told.size() > 1) {
      page.columns(1);
    }
    List<String> sources =
        passed.stream().map(Finding::source).filter(s -> !s.isEmpty()).distinct().toList();
    List<Column> columns =
        List.of(
            new Column("", 0.2, Align.MIDDLE),
            new Column("Passed", 2.25, Align.START),
            new Column("Found", 1.0, Align.END),
            new Column("Limit", 0.9, Align.END),
            new Column("[source of the limit] id", 2.75, Align.START));
    List<List<Cell>> rows =
        passed.stream()
            .map(
                n ->
                    List.of(
                        Cell.of(DOT),
                        Cell.of(n.where()),
                        Cell.of(lengths.amount(n.figure(), n.unit())),
                        Cell.of(lengths.amount(n.limit(), n.unit())),
                        new Cell(
                            "",
                            n.source().isEmpty()
                                ? n.id()
                                : "[" + (sources.indexOf(n.source()) + 1) + "] " + n.id())))
            .toList();
    page.table(new Table(columns, rows, page.columnMm(), 0, spacing.padMm()), spacing.gapMm());
    page.columns(2);
    for (int i = 0; i < sources.size(); i++) {
      page.paragraph("[" + (i + 1) + "] " + sources.get(i), TextStyle.SMALL);
    }
  }

  /** Whether its sentence says no more than its figure and limit do. */
  private static boolean onlyPassed(Finding note, Lengths lengths) {
    return note.say().startsWith(lengths.amount(note.figure(), note.unit()) + " ")
        || note.unit().equals("deg");
  }

  private static String source(Finding finding) {
    return (finding.source().isEmpty() ? "" : "Limit: " + finding.source() + ". ")
        + "Id: "
        + finding.id();
  }

  /** Adds one finding to a page. */
  static void add(TextPage page, Finding finding, boolean accepted, double gapMm, Lengths lengths) {
    double width = page.columnMm();
    List<Fragment> all = new ArrayList<>();
    all.add(new Lead(finding, accepted, lengths, width));
    all.addAll(Fragments.lines(finding.say(), TextStyle.BODY, width, INDENT));
    all.addAll(Fragments.lines(source(finding), TextStyle.SMALL, width, INDENT));
    page.chain(all, gapMm, false);
  }

  /** Figure and limit in words, in the job's unit. */
  static String figures(Finding finding, Lengths lengths) {
    return "Found "
        + lengths.amount(finding.figure(), finding.unit())
        + ", limit "
        + lengths.amount(finding.limit(), finding.unit())
        + ".";
  }

  /** Mark, severity, what it is about, figure and limit. */
  private static final class Lead implements Fragment {
    private static final double CAP = 3.6;
    private static final String ACCEPTED = "ACCEPTED";
    private static final double TAG = 3.0;

    private final Finding finding;
    private final boolean accepted;
    private final List<String> about;
    private final List<String> figures;
    private final double width;

    Lead(Finding finding, boolean accepted, Lengths lengths, double width) {
      this.finding = finding;
      this.accepted = accepted;
      this.width = width;
      double room = width - INDENT - (accepted ? tagMm() + 3.0 : 0);
      String word = finding.severity().word().toUpperCase(Locale.ROOT);
      about =
          TextStyle.wrap(
              finding.where().isEmpty() ? word : word + ": " + finding.where(), CAP, room);
      figures =
          finding.isMeasured()
              ? TextStyle.wrap(figures(finding, lengths), TextStyle.BODY, width - INDENT)
              : List.of();
    }

    private static double tagMm() {
      return Lettering.width(ACCEPTED, TAG) + 4.0;
    }

    @Override
    public double heightMm() {
      double least = figures.isEmpty() ? 0 : MARK + 1.0;
      return Math.max(
          least,
          about.size() * TextStyle.lineMm(CAP) + figures.size() * TextStyle.lineMm(TextStyle.BODY));
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      mark(new Vec2(leftMm + MARK / 2 + 0.5, topMm - 0.5 - MARK / 2), out);
      double y = topMm;
      if (accepted) {
        double right = leftMm + width;
        out.add(
            TextStyle.box(
                right - tagMm(), y - TextStyle.lineMm(CAP), right, y - 0.4, Pen.NONE, Ink.BLACK));
        out.add(
            TextStyle.white(
                right - tagMm() / 2, TextStyle.baseMm(y, CAP) + 0.2, TAG, Align.MIDDLE, ACCEPTED));
      }
      for (String line : about) {
        out.add(TextStyle.text(leftMm + INDENT, TextStyle.baseMm(y, CAP), CAP, Align.START, line));
        y -= TextStyle.lineMm(CAP);
      }
      for (String line : figures) {
        out.add(
            TextStyle.text(
                leftMm + INDENT,
                TextStyle.baseMm(y, TextStyle.BODY),
                TextStyle.BODY,
                Align.START,
                line));
        y -= TextStyle.lineMm(TextStyle.BODY);
      }
    }

    /** Shapes of road signs, told apart without colour. */
    private void mark(Vec2 at, List<Item> out) {
      switch (finding.severity()) {
        case STOP -> out.add(polygon(at, 8, MARK / 2 / Math.cos(Math.PI / 8), 22.5, Ink.BLACK));
        case CAUTION ->
            out.add(polygon(at.plus(new Vec2(0, -MARK / 10)), 3, MARK * 0.55, 90, Ink.NONE));
        case NOTE -> out.add(new Item.Circle(Layer.NOTES, at, MARK / 8, Pen.NONE, Ink.BLACK));
      }
    }

    private static Item polygon(Vec2 at, int sides, double radius, double startDegrees, Ink fill) {
      List<Vec2> corners = new ArrayList<>();
      for (int i = 0; i < sides; i++) {
        corners.add(at.plus(Vec2.polar(radius, Angle.ofDegrees(startDegrees + 360.0 * i / sides))));
      }
      return new Item.Polyline(
          Layer.NOTES, corners, true, fill == Ink.NONE ? Pen.FINAL_CUT : Pen.NONE, fill);
    }
  }
}
