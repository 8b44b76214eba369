package dev.towerscribe.sheet.report;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drilled.DrilledAngles;
import dev.towerscribe.drilled.DrilledSide;
import dev.towerscribe.drilled.DrilledSide.AsDrilled;
import dev.towerscribe.drilled.DrilledSide.EdgeMetal;
import dev.towerscribe.drilled.DrilledSide.Hole;
import dev.towerscribe.drilled.Enlargement;
import dev.towerscribe.drilled.NearestSetting;
import dev.towerscribe.drilled.PlateFit;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
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
import dev.towerscribe.sheet.tower.KeyDiagram;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One tower as it was drilled, for the record: whether the plate goes on in large words, where the
 * holes are, the metal beside them, and what rotation, offset and alignment the tower now has.
 */
public final class DrilledPage {
  private static final double GAP = 3.0;
  private static final double INNER_GAP = 1.2;
  private static final double GUTTER = 6.0;
  private static final double SKETCH_WIDTH = 78.0;

  /** Heights of the sketch, the largest first: the first that leaves one page. */
  private static final List<Double> SKETCH_HEIGHTS = List.of(92.0, 86.0, 80.0);

  private static final double VERDICT = 6.0;

  /** Stands by metal that is too little. */
  private static final String SHORT = "SHORT";

  /** Space above and below what a row of holes says. */
  private static final double ROW_PAD = 0.5;

  private final DrilledSide side;
  private final Optional<DrilledAngles> angles;
  private final JobInfo info;
  private final Lengths lengths;
  private final double sketchMm;
  private final TextPage page;

  private DrilledPage(
      DrilledSide side,
      Optional<DrilledAngles> angles,
      Print print,
      JobInfo info,
      double sketchMm) {
    this.side = side;
    this.angles = angles;
    this.info = info;
    this.lengths = new Lengths(info.units());
    this.sketchMm = sketchMm;
    this.page =
        new TextPage(
            new PageHead(print, info, Optional.of(side.side()), "Drilled holes: record", true));
  }

  /**
   * The page of one tower.
   *
   * @param side the tower as drilled
   * @param angles what that does to its alignment; empty where its mount is not known
   * @param print paper and margin
   * @param info the job, its accepted stops those of the readings
   * @return one page, more where a plate has very many bolts or there is much to say
   */
  public static List<Page> pages(
      DrilledSide side, Optional<DrilledAngles> angles, Print print, JobInfo info) {
    List<Page> best = List.of();
    for (double height : SKETCH_HEIGHTS) {
      List<Page> pages = new DrilledPage(side, angles, print, info, height).pages();
      if (best.isEmpty() || pages.size() < best.size()) {
        best = pages;
      }
    }
    return best;
  }

  private List<Page> pages() {
    verdict();
    double beside = page.columnMm() - SKETCH_WIDTH - GUTTER;
    List<Fragment> right = new ArrayList<>(mount(beside));
    right.addAll(alignment(beside));
    page.add(
        new Fragments.Beside(
            sketch(), new Fragments.Stack(right, INNER_GAP), SKETCH_WIDTH + GUTTER),
        GAP,
        false);
    page.table(holes(), GAP);
    page.paragraph(holeWords(), TextStyle.SMALL);
    said();
    String word = side.side().word();
    return page.pages(
        word + "-drilled",
        TextStyle.titleCase(word) + " tower, drilled holes",
        word.substring(0, 1).toUpperCase(Locale.ROOT) + "-drill-",
        false);
  }

  // The verdict.

  private void verdict() {
    double width = page.columnMm();
    double inside = Fragments.Warning.insideMm(width);
    List<Fragment> lines = new ArrayList<>();
    String title;
    if (side.fit().isPresent()) {
      PlateFit fit = side.fit().get();
      title = fit.verdict().words();
      double slack = fit.mating().slackMm();
      List<String> blocked = fit.mating().blocked();
      if (!blocked.isEmpty()) {
        lines.addAll(
            Fragments.lines(
                "Does not enter its hole: " + String.join(", ", blocked) + ".",
                TextStyle.HEADING,
                inside,
                0));
      }
      lines.addAll(
          Fragments.lines(
              (slack < 0 ? "Too little play by " : "To spare: ")
                  + lengths.both(Math.abs(slack))
                  + " +/- "
                  + lengths.figure(fit.slackSdMm())
                  + (slack < 0 ? "" : " either way")
                  + ", tightest at "
                  + String.join(", ", fit.mating().tight())
                  + "."
                  + remedy(fit),
              TextStyle.HEADING,
              inside,
              0));
    } else {
      title = "NOT KNOWN WHETHER THE PLATE GOES ON";
      lines.addAll(
          Fragments.lines("A hole is not fixed by the readings.", TextStyle.HEADING, inside, 0));
    }
    if (!side.network().tied()) {
      lines.addAll(
          Fragments.lines(
              "Nothing ties the holes to the tower firmly: rotation and offset are not known.",
              TextStyle.HEADING,
              inside,
              0));
    }
    page.add(
        new Fragments.Warning(
            TextStyle.wrap(title, VERDICT, inside), VERDICT, new Fragments.Stack(lines, 0), width),
        0,
        false);
  }

  private String remedy(PlateFit fit) {
    return fit.enlargement()
        .flatMap(Enlargement::best)
        .map(
            one ->
                " Least work: open hole "
                    + one.name()
                    + " to "
                    + lengths.with(one.diameterMm().orElseThrow())
                    + " at the very least.")
        .orElse("");
  }

  // Beside the sketch.

  private Fragment sketch() {
    boolean tied = side.network().tied();
    List<Vec2> errors = new ArrayList<>();
    for (var hole : side.planned().holes()) {
      errors.add(
          side.holes().stream()
              .filter(h -> h.found().name().equals(hole.name()))
              .findFirst()
              .flatMap(h -> tied ? h.error() : h.left())
              .orElse(Vec2.ZERO));
    }
    return new KeyDiagram(
        side.planned(),
        errors,
        tied ? "errors" : "errors within the pattern",
        SKETCH_WIDTH,
        sketchMm);
  }

  private List<Fragment> mount(double width) {
    List<Fragment> all = new ArrayList<>();
    all.add(new Fragments.Band(List.of("The plate's place"), TextStyle.HEADING, width));
    if (side.asDrilled().isEmpty()) {
      all.add(lines("Not known from these readings.", TextStyle.BODY, width));
      return all;
    }
    AsDrilled as = side.asDrilled().get();
    Mount planned = side.planned().job().mount();
    List<List<Cell>> rows =
        List.of(
            List.of(
                Cell.of("Rotation, deg"),
                Cell.of(degrees(planned.rotation().radians())),
                Cell.of(degrees(as.mount().rotation().radians())),
                Cell.of(degrees(as.rotationSd()))),
            row("Rearward", planned.rearwardMm(), as.mount().rearwardMm(), as.rearwardSdMm()),
            row("Inboard", planned.inboardMm(), as.mount().inboardMm(), as.inboardSdMm()));
    all.add(table(lengths.unit().symbol(), rows, width));
    return all;
  }

  private List<Cell> row(String name, double planned, double now, double sd) {
    return List.of(
        Cell.of(name),
        Cell.of(lengths.figure(planned)),
        Cell.of(lengths.figure(now)),
        Cell.of(lengths.figure(sd)));
  }

  private static Fragment table(String head, List<List<Cell>> rows, double width) {
    return new Table(
            List.of(
                new Column(head, 1.5, Align.START),
                new Column("Planned", 1.0, Align.END),
                new Column("As drilled", 1.1, Align.END),
                new Column("+/-", 0.8, Align.END)),
            rows,
            width,
            0)
        .whole();
  }

  private List<Fragment> alignment(double width) {
    List<Fragment> all = new ArrayList<>();
    if (angles.isEmpty() || angles.get().caster().isEmpty() || angles.get().camber().isEmpty()) {
      return all;
    }
    DrilledAngles a = angles.get();
    all.add(
        new Fragments.Band(
            List.of("Alignment at setting " + lengths.size(planned().settingMm())),
            TextStyle.HEADING,
            width));
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("Caster", a.caster().get()));
    rows.add(row("Camber", a.camber().get()));
    a.toe().ifPresent(t -> rows.add(row("Toe, not reset", t)));
    all.add(table("deg", rows, width));
    String words =
        a.basis() == DrilledAngles.Basis.AXIS_ESTIMATE
            ? "An estimate from the steering axis alone. "
            : "";
    words += "+/- from the holes' places alone. Set toe again before driving.";
    all.add(lines(words, TextStyle.SMALL, width));
    a.nearest().ifPresent(n -> all.add(lines(nearest(n), TextStyle.BODY, width)));
    return all;
  }

  private static Fragment lines(String words, double cap, double width) {
    return new Fragments.Stack(Fragments.lines(words, cap, width, 0), 0);
  }

  private Mount planned() {
    return side.planned().job().mount();
  }

  private static List<Cell> row(String name, DrilledAngles.Figure f) {
    return List.of(
        Cell.of(name),
        Cell.of(degrees(f.planned().radians())),
        Cell.of(degrees(f.drilled().radians())),
        Cell.of(f.uncertainty().map(d -> degrees(d.holes().radians())).orElse("-")));
  }

  private String nearest(NearestSetting n) {
    NearestSetting.Setting s = n.atMark().orElse(n.anywhere());
    return "Nearest to the planned angles: "
        + (n.atMark().isPresent() ? "mark " : "setting ")
        + lengths.size(s.settingMm())
        + ", caster "
        + degrees(s.caster().radians())
        + ", camber "
        + degrees(s.camber().radians())
        + ".";
  }

  private static String degrees(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), 2);
  }

  // Tables.

  private Table holes() {
    boolean tied = side.network().tied();
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("Hole", 0.9, Align.START));
    columns.add(new Column("Size\n(drawn)", 1.0, Align.END));
    if (tied) {
      columns.add(new Column("FOUND fore\n(planned)", 1.25, Align.END));
      columns.add(new Column("FOUND in\n(planned)", 1.25, Align.END));
      columns.add(new Column("OFF\nfore", 1.05, Align.END));
      columns.add(new Column("OFF\nin", 1.05, Align.END));
      columns.add(new Column("OFF\nby", 0.85, Align.END));
    }
    columns.add(new Column("Off the\npattern", 0.95, Align.END));
    columns.add(new Column("METAL\nneeded", 0.95, Align.END));
    columns.add(new Column("to planned\ncut", 1.15, Align.END));
    columns.add(new Column("to cut\nas read", 1.05, Align.END));
    return new Table(
        columns, side.edges().stream().map(this::row).toList(), page.columnMm(), 0, ROW_PAD);
  }

  private List<Cell> row(EdgeMetal e) {
    Optional<Hole> hole =
        side.holes().stream().filter(h -> h.found().name().equals(e.hole())).findFirst();
    List<Cell> row = new ArrayList<>();
    row.add(Cell.of(key(e.hole())));
    PlacedHole planned =
        side.planned().holes().stream()
            .filter(h -> h.name().equals(e.hole()))
            .findFirst()
            .orElseThrow();
    row.add(
        new Cell(
            hole.map(h -> lengths.figure(h.found().diameterMm())).orElse("-"),
            "(" + lengths.figure(planned.diameterMm()) + ")"));
    if (side.network().tied()) {
      Optional<Vec2> at = hole.map(h -> h.found().at());
      row.add(found(at.map(Vec2::x), planned.at().x()));
      row.add(found(at.map(Vec2::y), planned.at().y()));
      Optional<Vec2> off = hole.flatMap(Hole::error);
      row.add(sure(off.map(Vec2::x), hole.map(h -> h.found().foreSdMm()).orElse(0.0), false));
      row.add(sure(off.map(Vec2::y), hole.map(h -> h.found().inSdMm()).orElse(0.0), false));
      row.add(Cell.of(off.map(v -> lengths.figure(v.norm())).orElse("-")));
    }
    row.add(Cell.of(hole.flatMap(Hole::left).map(v -> lengths.figure(v.norm())).orElse("-")));
    row.add(Cell.of(lengths.figure(e.limitMm())));
    row.add(sure(e.toPlannedMm(), e.toPlannedSdMm(), e.toPlannedMm().orElse(0.0) < e.limitMm()));
    row.add(
        sure(
            e.toCut().map(Repeated::mean),
            e.toCut().map(Repeated::meanSd).orElse(0.0),
            e.toCut().map(Repeated::mean).orElse(0.0) < e.limitMm()));
    return row;
  }

  /** What stands for a hole in sketch and table. */
  private String key(String hole) {
    List<String> names = side.planned().holes().stream().map(PlacedHole::name).toList();
    return KeyDiagram.keys(side.planned().holes()).get(names.indexOf(hole));
  }

  /** Names too long for the sketch, each after its number. */
  private String longNames() {
    List<String> names = side.planned().holes().stream().map(PlacedHole::name).toList();
    List<String> numbered =
        names.stream().filter(n -> !key(n).equals(n)).map(n -> key(n) + " = " + n).toList();
    return numbered.isEmpty() ? "" : "Holes: " + String.join(", ", numbered) + ". ";
  }

  private Cell found(Optional<Double> mm, double plannedMm) {
    return new Cell(mm.map(lengths::figure).orElse("-"), "(" + lengths.figure(plannedMm) + ")");
  }

  private Cell sure(Optional<Double> mm, double sdMm, boolean tooLittle) {
    return mm.map(
            value ->
                new Cell(
                    lengths.figure(value), tooLittle ? SHORT : "\u00B1 " + lengths.figure(sdMm)))
        .orElse(Cell.of("-"));
  }

  private String holeWords() {
    return longNames()
        + "Lengths in "
        + (lengths.unit() == LengthUnit.MM ? "mm" : "inches")
        + "; \u00B1 is one standard deviation. "
        + (side.network().tied()
            ? "fore is forward, in is toward the car's middle, from the original shaft centre. "
            : "")
        + "Off the pattern: what is left once the planned pattern is laid on the holes as well as"
        + " it goes. Metal: from the hole's edge; needed is "
        + side.planned().job().holes().edgeRule().source()
        + ", less the hole's radius; "
        + SHORT
        + " is less than that.";
  }

  /** Accepted stops and cautions, and what only looking can tell. */
  private void said() {
    List<String> accepted = info.acceptedStops().stream().map(Finding::id).toList();
    List<Finding> told =
        side.findings().stream()
            .filter(f -> f.severity() != Severity.NOTE || f.id().contains(".drilled-mirror"))
            .toList();
    if (told.isEmpty()) {
      return;
    }
    page.add(
        new Fragments.Band(List.of("To be known"), TextStyle.HEADING, page.columnMm()), GAP, true);
    for (Finding f : told) {
      String word =
          f.isStop() ? accepted.contains(f.id()) ? "ACCEPTED STOP" : "STOP" : f.severity().word();
      page.point(
          word + " " + f.id() + ": " + f.say(), f.isStop() ? TextStyle.BODY : TextStyle.SMALL);
    }
  }
}
