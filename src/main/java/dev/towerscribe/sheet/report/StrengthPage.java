package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Seat;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.Table.Cell;
import dev.towerscribe.sheet.text.Table.Column;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import dev.towerscribe.strength.BoltFigures;
import dev.towerscribe.strength.Loads;
import dev.towerscribe.strength.Pressure;
import dev.towerscribe.strength.StrengthReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Advisory strength figures of one tower: the load, each bolt's share and what it is proved for,
 * the pressure before and after, and everything that was assumed.
 */
public final class StrengthPage {
  private static final double GAP = 3.0;
  private static final double GUTTER = 6.0;

  /** Rows, each of a few lines at most, that surely fit the smallest page. */
  private static final int MOST_TOGETHER = 6;

  private static final String NO_FIGURE = "no figure";

  private final StrengthReport report;
  private final JobInfo info;
  private final Lengths lengths;
  private final TextPage page;

  private StrengthPage(StrengthReport report, Print print, JobInfo info) {
    this.report = report;
    this.info = info;
    this.lengths = Lengths.in(info.units());
    this.page = TextPage.of(print, info, Optional.of(report.side()), "Strength: ADVISORY ONLY");
  }

  /**
   * The page of one tower.
   *
   * @param report its figures
   * @param print paper and margin
   * @param info the job
   * @return at least one page
   */
  public static List<Page> pages(StrengthReport report, Print print, JobInfo info) {
    return new StrengthPage(report, print, info).pages();
  }

  private List<Page> pages() {
    warning();
    page.band("Load on the strut top");
    loads();
    page.band("Bolts: shares of that load");
    together(shares());
    page.paragraph(
        "Forward and inboard: the share along the tower, together SHEAR. Up: the share square to"
            + " it, of which PULL is what the bolt must hold. Proof in shear: proof load / root 3."
            + " USE is the sum of the two; preload is not in it.",
        TextStyle.SMALL);
    page.band("Bolts: clamping");
    together(clamping());
    page.band("Mean pressure on the tower");
    pressure();
    page.band("What was assumed");
    report.assumptions().forEach(words -> page.point(words, TextStyle.SMALL));
    return page.pages(report.side(), "strength", "tower, strength (advisory)", "str");
  }

  private void warning() {
    double width = page.columnMm();
    double inside = Fragments.Warning.insideMm(width);
    List<Fragment> lines = new ArrayList<>(Fragments.lines(StrengthReport.DEFER, 3.0, inside, 0));
    alarms().forEach(a -> lines.addAll(Fragments.lines(a, TextStyle.HEADING, inside, 0)));
    String title = "ADVISORY - NOT A CERTIFICATION";
    Fragment said = new Fragments.Stack(lines, 0);
    page.add(Fragments.Warning.of(title, TextStyle.TITLE, said, width), 0, false);
  }

  /** What must not be overlooked among the figures. */
  private List<String> alarms() {
    List<String> all = new ArrayList<>();
    if (!info.acceptedStops().isEmpty()) {
      List<String> ids = info.acceptedStops().stream().map(Finding::id).toList();
      all.add("CALCULATED WITH ACCEPTED STOPS: %s.".formatted(String.join(", ", ids)));
    }
    for (BoltFigures bolt : report.bolts()) {
      bolt.use()
          .filter(use -> use > 1)
          .map(
              use ->
                  "BOLT %s WOULD TAKE %s OF ITS PROOF LOAD.".formatted(bolt.name(), percent(use)))
          .ifPresent(all::add);
      bolt.clampUse()
          .filter(use -> use >= 1)
          .map(use -> "THE PLATE WOULD LIFT AT BOLT %s.".formatted(bolt.name()))
          .ifPresent(all::add);
    }
    if (report.group().inLine()) {
      all.add("BOLTS ON ONE LINE: TIPPING ABOUT IT IS NOT CHECKED.");
    }
    return all;
  }

  /** On one page while that can be; a plate of very many bolts goes on over the next. */
  private void together(Table table) {
    if (table.rows().size() <= MOST_TOGETHER) {
      page.add(table.whole(), GAP / 2, false);
    } else {
      page.table(table, GAP / 2);
    }
  }

  private void loads() {
    Loads loads = report.input().loads();
    double half = (page.columnMm() - GUTTER) / 2;
    Table given =
        pairs(
            half,
            "As given",
            List.of(
                cells("Static load", newtons(loads.staticN())),
                cells("Spring rate", Numbers.plain(loads.springNPerMm(), 2) + " N/mm"),
                cells("Full bump", loads.bumpMm()),
                cells("Load at full bump", newtons(loads.fullBumpN())),
                cells("Dynamic factor", Numbers.plain(loads.factor(), 2)),
                cells("LOAD USED", newtons(loads.cornerN()))));
    Table split =
        pairs(
            half,
            "On the bolts",
            List.of(
                cells("Square to the tower, up", newtons(report.force().normalN())),
                cells("Along it, forward", newtons(report.force().inPlaneN().x())),
                cells("Along it, inboard", newtons(report.force().inPlaneN().y())),
                cells("Bearing over the joint", report.bearingHeightMm()),
                cells("Turning moment", moment(report.inPlaneMomentNmm())),
                cells("Tipping moment", moment(report.tippingNmm().norm()))));
    page.add(new Fragments.Beside(given.whole(), split.whole(), half + GUTTER), GAP / 2, false);
    String lies =
        "The plate lies %s. Negative: rearward, outboard. Moments are about the bolts' common"
            + " middle.";
    page.paragraph(lies.formatted(report.input().seat().words()), TextStyle.SMALL);
  }

  private static Table pairs(double width, String head, List<List<Cell>> rows) {
    return new Table(
        List.of(new Column(head, 1.5, Align.START), new Column("", 1.0, Align.END)),
        rows,
        width,
        0);
  }

  private static List<Cell> cells(String what, String figure) {
    return List.of(Cell.of(what), Cell.of(figure));
  }

  private List<Cell> cells(String what, double mm) {
    return List.of(Cell.of(what), Cell.length(mm, lengths));
  }

  private Table shares() {
    List<Column> columns =
        List.of(
            new Column("Bolt", 0.9, Align.START),
            new Column("Thread,\nclass", 1.1, Align.START),
            new Column("Forward,\nN", 1.1, Align.END),
            new Column("Inboard,\nN", 1.1, Align.END),
            new Column("SHEAR,\nN", 1.1, Align.END),
            new Column("Up,\nN", 1.1, Align.END),
            new Column("PULL,\nN", 1.1, Align.END),
            new Column("Pull, % of\nproof load", 1.35, Align.END),
            new Column("Shear, % of\nits proof", 1.35, Align.END),
            new Column("USE,\n%", 0.9, Align.END));
    List<List<Cell>> rows = new ArrayList<>();
    for (BoltFigures bolt : report.bolts()) {
      rows.add(
          List.of(
              Cell.of(bolt.name()),
              new Cell(bolt.thread().name(), report.input().propertyClass().word()),
              Cell.of(whole(bolt.inPlane().totalN().x())),
              Cell.of(whole(bolt.inPlane().totalN().y())),
              Cell.of(whole(bolt.shearN())),
              Cell.of(whole(bolt.axialN())),
              Cell.of(whole(bolt.pullN())),
              ratio(bolt.tensionUse()),
              ratio(bolt.shearUse()),
              ratio(bolt.use())));
    }
    return new Table(columns, rows, page.columnMm(), 0);
  }

  private Table clamping() {
    String friction = Numbers.plain(report.input().friction(), 2);
    List<Column> columns =
        List.of(
            new Column("Bolt", 0.9, Align.START),
            new Column("Proof load, kN\n(ISO 898-1)", 1.3, Align.END),
            new Column("Preload, kN\n(friction " + friction + ")", 1.3, Align.END),
            new Column("Torque, N m\n(friction " + friction + ")", 1.3, Align.END),
            new Column("Pull, % of\npreload", 1.1, Align.END),
            new Column("Friction that would\nhold the shear", 1.7, Align.END),
            new Column("Pull under the\nwasher, MPa", 1.4, Align.END));
    List<List<Cell>> rows = new ArrayList<>();
    for (BoltFigures bolt : report.bolts()) {
      rows.add(
          List.of(
              Cell.of(bolt.name()),
              figure(bolt.strength().map(s -> s.proofN() / 1000), 1),
              figure(bolt.tightening().map(t -> t.preloadN() / 1000), 1),
              figure(bolt.tightening().map(t -> t.torqueNm()), 1),
              ratio(bolt.clampUse()),
              bolt.tightening().isPresent() && bolt.frictionNeeded().isEmpty()
                  ? Cell.of("plate lifts")
                  : figure(bolt.frictionNeeded(), 2),
              figure(bolt.washerMPa(), 1)));
    }
    return new Table(columns, rows, page.columnMm(), 0);
  }

  private void pressure() {
    if (report.pressure().isEmpty()) {
      page.paragraph(
          "NO FIGURE: there is no ring left by the old mount, or no sound metal under the plate.",
          TextStyle.BODY);
      return;
    }
    Pressure p = report.pressure().get();
    List<Column> columns =
        List.of(
            new Column("", 2.2, Align.START),
            new Column("Area, mm\u00b2", 1.0, Align.END),
            new Column("Mean pressure, MPa", 1.2, Align.END));
    List<List<Cell>> rows =
        List.of(
            row("Before: ring of the old mount", whole(p.originalMm2()), p.originalMPa()),
            row("After: sound metal under the plate", whole(p.contactMm2()), p.contactMPa()),
            row("After over before", "", p.ratio()));
    page.table(new Table(columns, rows, page.columnMm(), 0), GAP / 2);
    if (report.input().seat() == Seat.ON_TOP) {
      page.paragraph(
          "AREAS COMPARED ONLY: a plate on top is pulled off the tower, not pressed on it. See the"
              + " pull under the washers.",
          TextStyle.BODY);
    }
  }

  private static List<Cell> row(String name, String area, double figure) {
    return List.of(Cell.of(name), Cell.of(area), Cell.of(Numbers.fixed(figure, 2)));
  }

  private static String whole(double value) {
    return Numbers.fixed(value, 0);
  }

  private static String newtons(double value) {
    return whole(value) + " N";
  }

  private static String moment(double nmm) {
    return Numbers.fixed(nmm / 1000, 1) + " N m";
  }

  private static String percent(double ratio) {
    return Numbers.fixed(100 * ratio, 0) + " %";
  }

  private static Cell ratio(Optional<Double> ratio) {
    return figure(ratio.map(r -> 100 * r), 1);
  }

  private static Cell figure(Optional<Double> value, int decimals) {
    return Cell.of(value.map(v -> Numbers.fixed(v, decimals)).orElse(NO_FIGURE));
  }
}
