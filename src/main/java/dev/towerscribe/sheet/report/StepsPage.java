package dev.towerscribe.sheet.report;

import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.layout.Margins;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Lip;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Straightedge;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.report.AlignmentReport;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.Table.Cell;
import dev.towerscribe.sheet.text.Table.Column;
import dev.towerscribe.sheet.text.TextPage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
    this.page = TextPage.of(layout.job().print(), info, Optional.of(layout.side()), "Steps");
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
    return TextPage.fewest(GAPS_MM, gap -> new StepsPage(layout, alignment, info, gap).pages());
  }

  private List<Page> pages() {
    mark();
    drill();
    cut();
    finish();
    fit();
    return page.pages(layout.side(), "steps", "tower, steps", "steps");
  }

  private void step(String todo, String... details) {
    page.step(++number, todo, List.of(details), gapMm, false);
  }

  private void mark() {
    page.band("MARK");
    step("Measure the check bars of every sheet.", checkBars());
    step("Clean the tower top, both faces. Coat it to show a scribed line.");
    step(
        "Lay the underside sheet.",
        Stream.of(
                lip(Lip.Turned.DOWN).stream(),
                Stream.of(
                    landmarks(),
                    "Straightedge on the long line: parallel to the car's centre line.",
                    "If they do not all agree, stop and measure the tower again."))
            .flatMap(lines -> lines)
            .toArray(String[]::new));
    step(
        "Punch lightly through the cross of each hole: %s."
            .formatted(joined(layout.holes(), PlacedHole::name)));
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
    String skew = " and %s\u00b0 out of square".formatted(Lengths.degrees(print.skew()));
    return "%s These sheets are drawn for one printer, which prints %s across and %s along%s: use no other."
        .formatted(
            stop,
            Numbers.fixed(print.scaleAcross(), 4),
            Numbers.fixed(print.scaleAlong(), 4),
            print.skew().radians() == 0 ? "" : skew);
  }

  /** Paper cannot lie flat over a lip that stands out from the face it is laid on. */
  private Optional<String> lip(Lip.Turned turned) {
    return layout
        .job()
        .tower()
        .lip()
        .filter(lip -> lip.turned() == turned)
        .map(
            lip ->
                "The lip stands in its way: first cut the paper out along \"lip: flat from here\"."
                    + " Then landmarks and straightedge place it, not the opening's edge.");
  }

  private String landmarks() {
    Tower tower = layout.job().tower();
    String marks =
        joined(tower.landmarks(), l -> "%s (%s)".formatted(l.name(), lengths.size(l.diameterMm())));
    String lines = joined(tower.straightedges(), Straightedge::name);
    return "Match %s%s%s."
        .formatted(
            lip(Lip.Turned.DOWN).isPresent() ? "" : "the opening's edge; ",
            marks,
            lines.isEmpty() ? "" : "; straightedge along " + lines);
  }

  private static <T> String joined(Collection<T> things, Function<T, String> words) {
    return things.stream().map(words).collect(Collectors.joining(", "));
  }

  private void drill() {
    page.band("DRILL: holes first, while the sheet is whole");
    step(
        "Drill the pilots: %s.".formatted(pilots()),
        Stream.concat(
                Stream.of(
                    "Wood clamped behind the sheet. Sharp drill, light hand: let it cut, do not"
                        + " force it (NAVEDTRA 14018)."),
                twoSheets().stream())
            .toArray(String[]::new));
    step(
        "Check again, from above too.",
        Stream.concat(
                lip(Lip.Turned.UP).stream(),
                Stream.of(
                    "Calipers across the pilots. Topside sheet laid on: each pilot stands in its"
                        + " cross."))
            .toArray(String[]::new));
    page.step(
        ++number,
        "Drill up in steps, by this table.",
        List.of("Deburr both faces after the last."),
        gapMm,
        true);
    page.table(drillTable(), 3.0);
  }

  private Optional<String> twoSheets() {
    Tower tower = layout.job().tower();
    return tower
        .secondSkin()
        .map(
            skin ->
                "Two sheets, %s in all: one drill through both, square to the top, in one go."
                    .formatted(lengths.with(tower.throughMm())));
  }

  private String pilots() {
    return joined(
        layout.holes().stream().map(StepsPage::pilotMm).distinct().toList(),
        mm -> "%s (%s)".formatted(lengths.size(mm), lengths.other().size(mm)));
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
              Cell.of(joined(some, PlacedHole::name)),
              Cell.of(hole.bolt().thread().name()),
              size(pilotMm(hole)),
              new Cell(
                  steps.isEmpty() ? "none" : joined(steps, lengths::size),
                  joined(steps, lengths.other()::size)),
              size(hole.diameterMm())));
    }
    return new Table(columns, rows, page.columnMm(), 0);
  }

  private Cell size(double mm) {
    return new Cell(lengths.size(mm), lengths.other().size(mm));
  }

  private void cut() {
    page.band("CUT: a little at a time; none can be put back");
    if (layout.finalCut().isEmpty()) {
      step("Leave the opening as it is.", "Nothing is left to cut inside the mark.");
    } else {
      opening();
    }
    for (Notch notch : layout.notches()) {
      step(
          "Notch the %s for %s.".formatted(notch.bracket().name(), bolts(notch)),
          "By its own sheet, no more than it shows. %s stays at the narrowest; least allowed %s."
              .formatted(
                  lengths.with(notch.widthLeftMm()),
                  lengths.with(Margins.leastWidthMm(notch.bracket()))));
    }
  }

  private static String bolts(Notch notch) {
    return (notch.bolts().size() == 1 ? "bolt " : "bolts ") + String.join(", ", notch.bolts());
  }

  private void opening() {
    if (!layout.starters().isEmpty()) {
      int count = layout.starters().size();
      step(
          "Drill %s starter %s, %s, in the waste."
              .formatted(
                  count,
                  count == 1 ? "hole" : "holes",
                  lengths.size(layout.starters().get(0).diameterMm())));
    }
    if (!layout.roughCut().isEmpty()) {
      step(
          "Saw to the dashed line.",
          ("It stays %s inside the final line. Fine blade, 24 to 32 teeth to the inch; wood"
                  + " clamped behind; go round in short lengths.")
              .formatted(lengths.size(layout.job().cut().roughMm())));
    }
    step(
        "Offer up the plate, %s.".formatted(layout.job().seating().seat().words()),
        "Every bolt must enter by hand. If one binds, measure with calipers before touching a"
            + " hole.");
    step(
        "File to the thick line, and stop at it.",
        ("A little all round, then look. %s stays standing inside the mark. No inside corner"
                + " tighter than radius %s.")
            .formatted(
                lengths.size(layout.job().cut().keepMm()),
                lengths.size(layout.job().cut().cornerMm())));
  }

  private void finish() {
    page.band("FINISH");
    step(
        "Deburr and round every edge, holes too.",
        "No nick, notch or burr may stay (FAA AC 43.13-1B, 4-58, on aluminium: by analogy). Clean"
            + " out all swarf.");
    step(
        "Zinc-rich primer on all bare metal. Paint and seal when the fit is proved.",
        "By the paint maker's sheet. Where hot-dip galvanising was cut, ASTM A780 says how it is"
            + " repaired; it covers nothing else.");
  }

  private void fit() {
    Plate plate = layout.job().plate();
    page.band("FIT");
    BoltStep bolts = new BoltStep(layout, lengths);
    page.step(++number, bolts.todo(), bolts.details(), gapMm, true);
    page.table(bolts.table(page.columnMm()), 3.0);
    step(
        "Trial fit the plate, then calipers once more.",
        "Write every reading into the caliper table.");
    step(
        setting(),
        Stream.concat(Stream.of(whereTheSlotPoints(plate)), expected.stream())
            .toArray(String[]::new));
    step(
        "Sweep the adjuster by hand, end to end.",
        "From %s to %s: %s clear all round what moves, everywhere."
            .formatted(
                lengths.size(plate.slot().fromMm()),
                lengths.size(plate.slot().toMm()),
                lengths.size(plate.movingClearanceMm())));
    step(
        "Fit washers and nuts; torque by the plate's maker or an engineer.",
        "Strut and wheel nuts by the vehicle maker's figures. Each washer flat on sound metal. Set the adjuster again: %s."
            .formatted(lengths.with(layout.job().mount().settingMm())));
    step("Then the other tower, if it is to be done, from its own sheets.");
    step(
        "Bonnet hinges and latch, then wheel alignment, before driving at speed.",
        "Give the alignment bay the rotation%s"
            .formatted(
                expected
                    .map(e -> ", the setting and the alignment page. " + e)
                    .orElse(" and the setting.")));
  }

  private String setting() {
    double mm = layout.job().mount().settingMm();
    Plate.Slot slot = layout.job().plate().slot();
    if (slot.fromMm() == slot.toMm()) {
      return "The bearing has one place only: nothing to set.";
    }
    int mark = slot.indexMm().indexOf(mm);
    String index = ", index mark %s of %s".formatted(mark + 1, slot.indexMm().size());
    return "Set the adjuster at %s%s.".formatted(lengths.with(mm), mark < 0 ? "" : index);
  }

  private String whereTheSlotPoints(Plate plate) {
    Mount mount = layout.job().mount();
    double degrees = mount.rotation().degrees();
    return "Slot %s deg rearward from straight across (%s deg from the car's centre line). %s"
        .formatted(
            Numbers.fixed(degrees, 1),
            Numbers.fixed(90 - degrees, 1),
            plate.handed()
                ? "The plates are a mirrored pair: use the %s one.".formatted(layout.side().word())
                : "One part serves both sides, same face up: its holes here are not the mirror of"
                    + " the other side's.");
  }
}
