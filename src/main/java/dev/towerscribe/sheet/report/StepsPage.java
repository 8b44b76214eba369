package dev.towerscribe.sheet.report;

import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.report.AlignmentReport;
import dev.towerscribe.report.Phrases;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.PageHead;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.Table.Cell;
import dev.towerscribe.sheet.text.Table.Column;
import dev.towerscribe.sheet.text.TextPage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The order of work on one tower, each step to be ticked, with this job's own figures. The bolt
 * holes come before the opening, while the sheet is whole and stiff, and the opening is cut in
 * small bites (common practice, no source).
 */
public final class StepsPage {
  /** Space above a step, the airiest first. */
  private static final List<Double> GAPS_MM = List.of(5.0, 4.2, 3.4, 2.8);

  private final double gapMm;
  private final Optional<String> expected;
  private final SideLayout layout;
  private final Lengths lengths;
  private final TextPage page;
  private int number;

  private StepsPage(
      SideLayout layout, Optional<SideAlignment> alignment, JobInfo info, double gapMm) {
    this.gapMm = gapMm;
    this.expected = alignment.flatMap(AlignmentReport::expected);
    this.layout = layout;
    this.lengths = Lengths.in(info.units());
    this.page =
        new TextPage(
            new PageHead(layout.job().print(), info, Optional.of(layout.side()), "Steps", true));
  }

  /**
   * The steps for one tower whose alignment is not known.
   *
   * @param layout the tower
   * @param info the job
   * @return at least one page
   */
  public static List<Page> pages(SideLayout layout, JobInfo info) {
    return pages(layout, Optional.empty(), info);
  }

  /**
   * The steps for one tower.
   *
   * @param layout the tower
   * @param alignment what a bay will read there, if known
   * @param info the job
   * @return at least one page
   */
  public static List<Page> pages(
      SideLayout layout, Optional<SideAlignment> alignment, JobInfo info) {
    List<Page> best = List.of();
    for (double gap : GAPS_MM) {
      List<Page> pages = new StepsPage(layout, alignment, info, gap).pages();
      if (best.isEmpty() || pages.size() < best.size()) {
        best = pages;
      }
    }
    return best;
  }

  private List<Page> pages() {
    mark();
    drill();
    cut();
    finish();
    fit();
    String side = layout.side().word();
    return page.pages(
        side + "-steps",
        Phrases.capital(side) + " tower, steps",
        side.substring(0, 1).toUpperCase(Locale.ROOT) + "-steps-",
        false);
  }

  private void heading(String words) {
    page.band(words);
  }

  private void step(String todo, String... details) {
    page.step(++number, todo, List.of(details), gapMm, false);
  }

  private void mark() {
    heading("MARK");
    step("Measure the check bars of every sheet.", checkBars());
    step("Clean the tower top, both faces. Coat it to show a scribed line.");
    step(
        "Lay the underside sheet.",
        landmarks(),
        "Straightedge on the long line: parallel to the car's centre line.",
        "If they do not all agree, stop and measure the tower again.");
    step("Punch lightly through the cross of each hole: " + holeNames() + ".");
    step(
        "Check every pair of marks with calipers.",
        "Centre to centre, by the caliper table. Nothing is drilled until all agree.");
  }

  private String checkBars() {
    Print print = layout.job().print();
    String stop = "If a bar is not as long as it says, do not use the sheet. Print again.";
    if (print.isTrue()) {
      return stop;
    }
    return stop
        + " These sheets are drawn for one printer, which prints "
        + Numbers.fixed(print.scaleAcross(), 4)
        + " across and "
        + Numbers.fixed(print.scaleAlong(), 4)
        + " along"
        + (print.skew().radians() == 0
            ? ""
            : " and " + Numbers.fixed(print.skew().degrees(), 2) + "\u00b0 out of square")
        + ": use no other.";
  }

  private String landmarks() {
    Tower tower = layout.job().tower();
    String marks =
        tower.landmarks().stream()
            .map(l -> l.name() + " (" + lengths.size(l.diameterMm()) + ")")
            .collect(Collectors.joining(", "));
    String lines =
        tower.straightedges().stream().map(s -> s.name()).collect(Collectors.joining(", "));
    return "Match the opening's edge; "
        + marks
        + (lines.isEmpty() ? "." : "; straightedge along " + lines + ".");
  }

  private String holeNames() {
    return layout.holes().stream().map(PlacedHole::name).collect(Collectors.joining(", "));
  }

  private void drill() {
    heading("DRILL: holes first, while the sheet is whole");
    step(
        "Drill the pilots: " + pilots() + ".",
        "Wood clamped behind the sheet. Sharp drill, light hand: let it cut, do not force it"
            + " (NAVEDTRA 14018).");
    step(
        "Check again, from above too.",
        "Calipers across the pilots. Topside sheet laid on: each pilot stands in its cross.");
    page.step(
        ++number,
        "Drill up in steps, by this table.",
        List.of("Deburr both faces after the last."),
        gapMm,
        true);
    page.table(drillTable(), 3.0);
  }

  private String pilots() {
    return layout.holes().stream()
        .map(h -> pilotMm(h))
        .distinct()
        .map(mm -> lengths.size(mm) + " (" + lengths.other().size(mm) + ")")
        .collect(Collectors.joining(", "));
  }

  private static double pilotMm(PlacedHole hole) {
    return hole.drillsMm().isEmpty() ? hole.diameterMm() : hole.drillsMm().get(0);
  }

  private Table drillTable() {
    List<Column> columns =
        List.of(
            new Column("Holes", 1.6, Align.START),
            new Column("Bolt", 0.7, Align.START),
            new Column("Pilot", 0.9, Align.START),
            new Column("Steps, in this order", 2.4, Align.START),
            new Column("Final", 1.0, Align.START));
    Map<List<Object>, List<PlacedHole>> alike = new LinkedHashMap<>();
    for (PlacedHole hole : layout.holes()) {
      List<Object> like = List.of(hole.bolt().thread().name(), hole.diameterMm(), hole.drillsMm());
      alike.computeIfAbsent(like, k -> new ArrayList<>()).add(hole);
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (List<PlacedHole> some : alike.values()) {
      PlacedHole hole = some.get(0);
      List<Double> steps =
          hole.drillsMm().size() < 3
              ? List.of()
              : hole.drillsMm().subList(1, hole.drillsMm().size() - 1);
      rows.add(
          List.of(
              Cell.of(some.stream().map(PlacedHole::name).collect(Collectors.joining(", "))),
              Cell.of(hole.bolt().thread().name()),
              size(pilotMm(hole)),
              new Cell(
                  steps.isEmpty()
                      ? "none"
                      : steps.stream().map(lengths::size).collect(Collectors.joining(", ")),
                  steps.stream().map(lengths.other()::size).collect(Collectors.joining(", "))),
              size(hole.diameterMm())));
    }
    return new Table(columns, rows, page.columnMm(), 0);
  }

  private Cell size(double mm) {
    return new Cell(lengths.size(mm), lengths.other().size(mm));
  }

  private void cut() {
    heading("CUT: a little at a time; none can be put back");
    if (layout.finalCut().isEmpty()) {
      step("Leave the opening as it is.", "Nothing is left to cut inside the mark.");
    } else {
      opening();
    }
    for (Notch notch : layout.notches()) {
      step(
          "Notch the " + notch.bracket().name() + " for " + bolts(notch) + ".",
          "By its own sheet, no more than it shows. "
              + lengths.with(notch.widthLeftMm())
              + " stays at the narrowest; least allowed "
              + lengths.with(notch.bracket().leastWidthMm())
              + ".");
    }
  }

  private static String bolts(Notch notch) {
    return (notch.bolts().size() == 1 ? "bolt " : "bolts ") + String.join(", ", notch.bolts());
  }

  private void opening() {
    if (!layout.starters().isEmpty()) {
      int count = layout.starters().size();
      step(
          "Drill "
              + count
              + (count == 1 ? " starter hole, " : " starter holes, ")
              + lengths.size(layout.starters().get(0).diameterMm())
              + ", in the waste.");
    }
    if (!layout.roughCut().isEmpty()) {
      step(
          "Saw to the dashed line.",
          "It stays "
              + lengths.size(layout.job().cut().roughMm())
              + " inside the final line. Fine blade, 24 to 32 teeth to the inch; wood clamped"
              + " behind; go round in short lengths.");
    }
    step(
        "Offer up the plate.",
        "Every bolt must enter by hand. If one binds, measure with calipers before touching a"
            + " hole.");
    step(
        "File to the thick line, and stop at it.",
        "A little all round, then look. "
            + lengths.size(layout.job().cut().keepMm())
            + " stays standing inside the mark. No inside corner tighter than radius "
            + lengths.size(layout.job().cut().cornerMm())
            + ".");
  }

  private void finish() {
    heading("FINISH");
    step(
        "Deburr and round every edge, holes too.",
        "No nick, notch or burr may stay (FAA AC 43.13-1B, 4-58). Clean out all swarf.");
    step("Zinc-rich primer on all bare metal (ASTM A780). Paint and seal when the fit is proved.");
  }

  private void fit() {
    Plate plate = layout.job().plate();
    heading("FIT");
    step(
        "Trial fit the plate, then calipers once more.",
        "Write every reading into the caliper table.");
    step(
        setting(),
        Stream.concat(Stream.of(whereTheSlotPoints(plate)), expected.stream())
            .toArray(String[]::new));
    step(
        "Sweep the adjuster by hand, end to end.",
        "From "
            + lengths.size(plate.slot().fromMm())
            + " to "
            + lengths.size(plate.slot().toMm())
            + ": "
            + lengths.size(plate.movingClearanceMm())
            + " clear all round what moves, everywhere.");
    step(
        "Fit washers and nuts; torque by the vehicle maker's figure.",
        "Each washer flat on sound metal. Set the adjuster again: "
            + lengths.with(layout.job().mount().settingMm())
            + ".");
    step("Then the other tower, if it is to be done, from its own sheets.");
    step(
        "Bonnet hinges and latch, then wheel alignment, before driving at speed.",
        "Give the alignment bay the rotation"
            + expected
                .map(e -> ", the setting and the alignment page. " + e)
                .orElse(" and the setting."));
  }

  private String setting() {
    double mm = layout.job().mount().settingMm();
    Plate.Slot slot = layout.job().plate().slot();
    if (slot.fromMm() == slot.toMm()) {
      return "The bearing has one place only: nothing to set.";
    }
    int mark = slot.indexMm().indexOf(mm);
    String index = mark < 0 ? "" : ", index mark " + (mark + 1) + " of " + slot.indexMm().size();
    return "Set the adjuster at " + lengths.with(mm) + index + ".";
  }

  private String whereTheSlotPoints(Plate plate) {
    Mount mount = layout.job().mount();
    double degrees = mount.rotation().degrees();
    return "Slot "
        + Numbers.fixed(degrees, 1)
        + " deg rearward from straight across ("
        + Numbers.fixed(90 - degrees, 1)
        + " deg from the car's centre line). "
        + (plate.handed()
            ? "The plates are a mirrored pair: use the " + layout.side().word() + " one."
            : "One part serves both sides, same face up: its holes here are not the mirror of the"
                + " other side's.");
  }
}
