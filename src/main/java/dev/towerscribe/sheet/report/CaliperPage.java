package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.Span;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.Table.Cell;
import dev.towerscribe.sheet.text.Table.Column;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import dev.towerscribe.sheet.tower.KeyDiagram;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What calipers must read between every two holes of one tower, and which hole is which. */
public final class CaliperPage {
  private static final double DIAGRAM_WIDTH = 76.0;
  private static final double DIAGRAM_HEIGHT = 84.0;
  private static final double GUTTER = 6.0;
  private static final double ROW_TO_WRITE_IN = 10.5;

  /** What common workshop calipers open to, mm; common practice, no source. */
  private static final double COMMON_CALIPERS_MM = 150.0;

  private CaliperPage() {}

  /**
   * The caliper table of one tower.
   *
   * @param layout the tower
   * @param info the job
   * @return at least one page
   */
  public static List<Page> pages(SideLayout layout, JobInfo info) {
    TextPage page =
        TextPage.of(layout.job().print(), info, Optional.of(layout.side()), "Caliper table");
    Lengths lengths = Lengths.in(info.units());
    List<String> keys = KeyDiagram.keys(layout.holes());
    double holesWidth = page.columnMm() - DIAGRAM_WIDTH - GUTTER;
    Table holes = holeTable(layout, lengths, keys, holesWidth);
    KeyDiagram diagram = new KeyDiagram(layout, DIAGRAM_WIDTH, DIAGRAM_HEIGHT);
    page.add(new Fragments.Beside(diagram, holes.whole(), DIAGRAM_WIDTH + GUTTER), 0, false);
    instructions(page, layout, lengths);
    page.table(spanTable(layout, lengths, page.columnMm()), 4.0);
    return page.pages(layout.side(), "calipers", "tower, caliper table", "cal");
  }

  private static void instructions(TextPage page, SideLayout layout, Lengths lengths) {
    page.band("Every pair of holes");
    double room = page.columnMm() - JawSketch.WIDTH - GUTTER;
    Fragment points =
        Fragments.points(
            List.of(
                "NEAR edges: outside jaws, one in each hole, closed on the metal between.",
                "FAR edges: inside jaws, one in each hole, spread to touch the far walls.",
                "Centres = half of NEAR + FAR, whatever the drill has left. Compare that with the"
                    + " table: by so much it may be off before the bolts bind."),
            TextStyle.BODY,
            room,
            1.6);
    page.add(new Fragments.Beside(new JawSketch(), points, JawSketch.WIDTH + GUTTER), 3.0, false);
    double longest = layout.spans().stream().mapToDouble(Span::outsideMm).max().orElse(0);
    if (longest > COMMON_CALIPERS_MM) {
      String words = "The longest reading is %s: 150 mm (6 in) calipers will not reach it.";
      page.point(words.formatted(lengths.both(longest)), TextStyle.BODY);
    }
    if (layout.job().tower().crown().isPresent()) {
      page.point(
          "This tower is domed. Calipers read straight across (the plan), the paper lies along"
              + " the skin: both are given. Hold the calipers level with the plate, not along the"
              + " dome.",
          TextStyle.BODY);
    }
  }

  private static Table holeTable(
      SideLayout layout, Lengths lengths, List<String> keys, double width) {
    List<Column> columns =
        List.of(
            new Column("Hole", 1.5, Align.START),
            new Column("Bolt", 0.9, Align.START),
            new Column("Hole\ndiameter", 1.2, Align.END),
            new Column("From rod\ncentre", 1.3, Align.END));
    List<List<Cell>> rows = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      PlacedHole hole = layout.holes().get(i);
      String key = keys.get(i);
      rows.add(
          List.of(
              Cell.of(key.equals(hole.name()) ? key : key + "  " + hole.name()),
              Cell.of(hole.bolt().thread().name()),
              Cell.length(hole.diameterMm(), lengths),
              Cell.length(hole.at().norm(), lengths)));
    }
    return new Table(columns, rows, width, 0);
  }

  private static Table spanTable(SideLayout layout, Lengths lengths, double width) {
    List<String> keys = KeyDiagram.keys(layout.holes());
    boolean domed = layout.job().tower().crown().isPresent();
    String unit = ", " + lengths.unit().symbol();
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("Holes", 1.15, Align.START));
    columns.add(new Column("Centres" + unit, 1.25, Align.END));
    if (domed) {
      columns.add(new Column("Centres on\npaper" + unit, 1.25, Align.END));
    }
    columns.add(new Column("NEAR edges\n(outside jaws)" + unit, 1.45, Align.END));
    columns.add(new Column("FAR edges\n(inside jaws)" + unit, 1.45, Align.END));
    columns.add(new Column("May be off\nby up to" + unit, 1.25, Align.END));
    columns.add(new Column("Measured\nNEAR", 1.3, Align.START));
    columns.add(new Column("Measured\nFAR", 1.3, Align.START));
    List<List<Cell>> rows = new ArrayList<>();
    for (Span span : layout.spans()) {
      List<Cell> row = new ArrayList<>();
      row.add(
          Cell.of(
              keys.get(index(layout, span.from())) + " - " + keys.get(index(layout, span.to()))));
      row.add(both(lengths, span.centresMm()));
      if (domed) {
        row.add(both(lengths, onPaperMm(layout, span)));
      }
      row.add(both(lengths, span.insideMm()));
      row.add(both(lengths, span.outsideMm()));
      row.add(both(lengths, span.toleranceMm()));
      row.add(Cell.of(""));
      row.add(Cell.of(""));
      rows.add(row);
    }
    return new Table(columns, rows, width, ROW_TO_WRITE_IN);
  }

  private static Cell both(Lengths lengths, double mm) {
    return new Cell(lengths.figure(mm), lengths.other().with(mm));
  }

  /** Centre distance as the paper shows it: straight across the flat sheet of paper. */
  private static double onPaperMm(SideLayout layout, Span span) {
    Vec2 from = layout.holes().get(index(layout, span.from())).at();
    Vec2 to = layout.holes().get(index(layout, span.to())).at();
    return layout.onPaper(from).distanceTo(layout.onPaper(to));
  }

  private static int index(SideLayout layout, String name) {
    return layout.holes().stream().map(PlacedHole::name).toList().indexOf(name);
  }
}
