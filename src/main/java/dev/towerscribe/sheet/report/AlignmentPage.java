package dev.towerscribe.sheet.report;

import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.Curves;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.alignment.StrutFigures;
import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
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
import java.util.function.ToDoubleFunction;

/** What an alignment bay will read at one wheel: figures with their +/-, and three small plots. */
public final class AlignmentPage {
  private static final double GAP = 3.0;
  private static final double PLOT_GUTTER = 6.0;

  /** Heights of the plots, the airiest first. */
  private static final List<Double> PLOT_HEIGHTS = List.of(50.0, 46.0, 42.0);

  private static final List<Double> TRAVEL_TICKS = List.of(-80.0, -40.0, 0.0, 40.0, 80.0);
  private static final List<Double> STEER_TICKS =
      List.of(-30.0, -20.0, -10.0, 0.0, 10.0, 20.0, 30.0);
  private static final Pen BEFORE = Pen.HIDDEN;
  private static final Pen AFTER = Pen.FINAL_CUT;

  private final double plotMm;
  private final SideAlignment side;
  private final JobAlignment job;
  private final Lengths lengths;
  private final TextPage page;

  private AlignmentPage(SideAlignment side, JobAlignment job, JobInfo info, double plotMm) {
    this.plotMm = plotMm;
    this.side = side;
    this.job = job;
    this.lengths = new Lengths(info.units());
    this.page =
        new TextPage(
            new PageHead(side.job().print(), info, Optional.of(side.side()), "Alignment", true));
  }

  /**
   * The page of one wheel.
   *
   * @param side its alignment
   * @param job that of the whole job, for the other wheel's curve and left against right
   * @param info the job
   * @return at least one page
   */
  public static List<Page> pages(SideAlignment side, JobAlignment job, JobInfo info) {
    List<Page> best = List.of();
    for (double height : PLOT_HEIGHTS) {
      List<Page> pages = new AlignmentPage(side, job, info, height).pages();
      if (best.isEmpty() || pages.size() < best.size()) {
        best = pages;
      }
    }
    return best;
  }

  /**
   * What to expect at the chosen setting, in one short sentence.
   *
   * @param side a wheel
   * @return for instance "Expect caster 5.3 +/- 0.3 deg, camber -1.5 deg."; empty where the linkage
   *     gives no figures
   */
  static Optional<String> expected(SideAlignment side) {
    return side.at()
        .map(
            r ->
                "Expect caster "
                    + tenth(r.caster().radians())
                    + casterPlusMinus(side)
                    + " deg, camber "
                    + tenth(r.camber().radians())
                    + " deg"
                    + (side.estimate() ? " (an estimate)." : "."));
  }

  /** Camber has next to none: it was measured itself, and only its change is worked out. */
  private static String casterPlusMinus(SideAlignment side) {
    return side.strut()
        .flatMap(s -> s.sureAt().map(f -> f.caster().plusMinus(s.plusMinus())))
        .map(radians -> " +/- " + tenth(radians))
        .orElse("");
  }

  private static String tenth(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), 1);
  }

  private static String degrees(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), 2);
  }

  private List<Page> pages() {
    String word = side.side().word();
    page.paragraph(
        side.estimate()
            ? "AN ESTIMATE from the measured steering axis alone, at ride height. The arm's and the"
                + " tie rod's part is left out, and no +/- can be given."
            : "Predicted from the measured points at ride height, toe set by the tie rod. +/- is"
                + " one standard deviation, from that of the points; camber and toe as measured"
                + " are taken as true.",
        TextStyle.BODY);
    if (side.before().isEmpty() && side.at().isEmpty()) {
      page.paragraph(
          "THE POINTS GIVE NO FIGURES: see the findings for which and why.", TextStyle.BODY);
    }
    page.table(readings(), GAP);
    page.paragraph(
        "Degrees. Caster: top rearward is positive. Camber: wheel's top leaning outward is"
            + " positive. Inclination: top inboard is positive. Measure on an alignment bay before"
            + " driving at speed.",
        TextStyle.SMALL);
    side.strut().ifPresent(this::strut);
    return page.pages(
        word + "-alignment",
        TextStyle.titleCase(word) + " wheel, alignment",
        word.substring(0, 1).toUpperCase(Locale.ROOT) + "-align-",
        false);
  }

  private Table readings() {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("", 2.5, Align.START));
    List<String> heads = new ArrayList<>(List.of("Caster", "Camber", "Inclination"));
    if (!side.estimate()) {
      String unit = lengths.unit().symbol();
      heads.addAll(List.of("Toe", "Scrub, " + unit, "Trail, " + unit, "Damper, " + unit));
    }
    heads.forEach(h -> columns.add(new Column(h, 1.1, Align.END)));
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("Before the work", side.before(), side.strut().flatMap(StrutFigures::sureBefore)));
    rows.add(
        row(
            "CHOSEN: " + lengths.size(side.job().mount().settingMm()),
            side.at(),
            side.strut().flatMap(StrutFigures::sureAt)));
    for (SideAlignment.AtSetting setting : side.settings()) {
      if (setting.settingMm() == side.job().mount().settingMm()) {
        continue;
      }
      rows.add(
          row("Setting " + lengths.size(setting.settingMm()), setting.reading(), Optional.empty()));
    }
    return new Table(columns, rows, page.columnMm(), 0);
  }

  private List<Cell> row(
      String name, Optional<Reading> reading, Optional<Sensitivity.Figures> sure) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(name));
    if (reading.isEmpty()) {
      int figures = side.estimate() ? 3 : 7;
      for (int i = 0; i < figures; i++) {
        cells.add(Cell.of(i == 0 ? "none" : ""));
      }
      return cells;
    }
    Reading r = reading.get();
    cells.add(angle(r.caster().radians(), sure.map(Sensitivity.Figures::caster)));
    cells.add(angle(r.camber().radians(), sure.map(Sensitivity.Figures::camber)));
    cells.add(angle(r.inclination().radians(), sure.map(Sensitivity.Figures::inclination)));
    r.linkage()
        .ifPresent(
            m -> {
              cells.add(new Cell(degrees(m.toe()), sure.isPresent() ? "set" : ""));
              cells.add(length(m.scrubMm(), sure.map(Sensitivity.Figures::scrubMm)));
              cells.add(length(m.trailMm(), sure.map(Sensitivity.Figures::trailMm)));
              cells.add(length(m.damperMm(), sure.map(Sensitivity.Figures::damperMm)));
            });
    return cells;
  }

  private PlusMinus plusMinus() {
    return side.strut().map(StrutFigures::plusMinus).orElse(PlusMinus.all(0));
  }

  private Cell angle(double radians, Optional<Sensitivity.Figure> sure) {
    return new Cell(
        degrees(radians), sure.map(f -> "+/- " + degrees(f.plusMinus(plusMinus()))).orElse(""));
  }

  private Cell length(double mm, Optional<Sensitivity.Figure> sure) {
    return new Cell(
        lengths.figure(mm),
        sure.map(f -> "+/- " + lengths.figure(f.plusMinus(plusMinus()))).orElse(""));
  }

  private void strut(StrutFigures strut) {
    page.columns(2);
    strut.sureAt().ifPresent(f -> page.add(changes(f).whole(), GAP, false));
    List<String> points = new ArrayList<>();
    strut
        .reachableAt()
        .ifPresent(
            r ->
                points.add(
                    "Knuckle bolt: camber "
                        + degrees(r.from().radians())
                        + " to "
                        + degrees(r.to().radians())
                        + strut
                            .reachableBefore()
                            .map(
                                b ->
                                    " (before the work "
                                        + degrees(b.from().radians())
                                        + " to "
                                        + degrees(b.to().radians())
                                        + ")")
                            .orElse("")
                        + "."));
    strut.at().ifPresent(c -> points.add(bumpSteer(c, strut.before())));
    side.damperChangeMm()
        .ifPresent(
            mm ->
                points.add(
                    "Damper "
                        + lengths.with(Math.abs(mm))
                        + (mm < 0 ? " shorter" : " longer")
                        + " at ride height: that much more "
                        + (mm < 0 ? "droop, less bump" : "bump, less droop")
                        + " travel left."));
    side.trackChangeMm()
        .ifPresent(
            mm ->
                points.add(
                    "Tyre contact moves "
                        + lengths.with(Math.abs(mm))
                        + (mm < 0 ? " inward." : " outward.")));
    job.crossAt()
        .ifPresent(
            c ->
                points.add(
                    "Left minus right: caster "
                        + degrees(c.caster().radians())
                        + ", camber "
                        + degrees(c.camber().radians())
                        + "."));
    points.forEach(p -> page.point(p, TextStyle.BODY));
    page.columns(1);
    plots(strut);
  }

  private String bumpSteer(Curves at, Optional<Curves> before) {
    return "Bump steer: "
        + slope(at)
        + " deg toe-in for "
        + (lengths.unit() == LengthUnit.MM ? "10 mm" : "1 in")
        + " of bump at ride height"
        + before.map(b -> " (before the work " + slope(b) + ")").orElse("")
        + "; from "
        + lengths.size(at.bumpSteer().droopMm())
        + " of droop to "
        + lengths.size(at.bumpSteer().bumpMm())
        + " of bump "
        + degrees(at.bumpSteer().peakRad())
        + " deg at most, at "
        + lengths.size(at.bumpSteer().peakAtMm())
        + ".";
  }

  private String slope(Curves curves) {
    double by = lengths.unit() == LengthUnit.MM ? 10 : lengths.unit().toMm(1);
    return Numbers.fixed(by * Math.toDegrees(curves.bumpSteer().slopeRadPerMm()), 3);
  }

  private Table changes(Sensitivity.Figures f) {
    List<Column> columns =
        List.of(
            new Column("One more", 2.0, Align.START),
            new Column("Caster", 1.0, Align.END),
            new Column("Camber", 1.0, Align.END));
    List<List<Cell>> rows = new ArrayList<>();
    boolean mm = lengths.unit() == LengthUnit.MM;
    String step = mm ? "mm " : "0.1 in ";
    double by = mm ? 1.0 : lengths.unit().toMm(0.1);
    for (Sensitivity.Choice choice : Sensitivity.Choice.values()) {
      boolean turn = choice == Sensitivity.Choice.ROTATION;
      double unit = turn ? Math.toRadians(1.0) : by;
      String name =
          switch (choice) {
            case ROTATION -> "deg of rotation";
            case REARWARD -> step + "rearward";
            case INBOARD -> step + "inboard";
            case SETTING -> step + "of setting";
          };
      rows.add(
          List.of(
              Cell.of(name),
              change(unit * f.caster().byChoice()[choice.ordinal()]),
              change(unit * f.camber().byChoice()[choice.ordinal()])));
    }
    return new Table(columns, rows, page.columnMm(), 0);
  }

  private static Cell change(double radians) {
    return Cell.of(Numbers.fixed(Math.toDegrees(radians), 3));
  }

  private void plots(StrutFigures strut) {
    if (strut.before().isEmpty() && strut.at().isEmpty()) {
      return;
    }
    double half = (page.columnMm() - PLOT_GUTTER) / 2;
    page.add(
        new Fragments.Beside(
            travel("Toe over wheel travel", "deg, toe-in positive", Pose::toe, strut, half),
            travel("Camber over wheel travel", "deg", Pose::camber, strut, half),
            half + PLOT_GUTTER),
        GAP,
        false);
    List<Plot.Curve> curves = new ArrayList<>();
    for (Side wheel : Side.values()) {
      wheel(wheel, false).ifPresent(curves::add);
      wheel(wheel, true).ifPresent(curves::add);
    }
    page.add(
        new Plot(
            "Camber over steer, both wheels",
            "deg",
            "deg of the wheel's heading, to the left positive",
            STEER_TICKS,
            -Curves.STEER_DEGREES,
            Curves.STEER_DEGREES,
            curves,
            page.columnMm(),
            plotMm),
        GAP,
        false);
  }

  private Plot travel(
      String title, String units, ToDoubleFunction<Pose> figure, StrutFigures strut, double wide) {
    List<Plot.Curve> curves = new ArrayList<>();
    strut
        .before()
        .ifPresent(c -> curves.add(new Plot.Curve("before", BEFORE, runs(c.travel(), figure, 1))));
    strut
        .at()
        .ifPresent(c -> curves.add(new Plot.Curve("after", AFTER, runs(c.travel(), figure, 1))));
    return new Plot(
        title,
        units,
        "mm, bump positive",
        TRAVEL_TICKS,
        -Curves.TRAVEL_MM,
        Curves.TRAVEL_MM,
        curves,
        wide,
        plotMm);
  }

  /** A wheel over steer; where the other wheel is not worked out, this one's mirror image. */
  private Optional<Plot.Curve> wheel(Side wheel, boolean after) {
    SideAlignment own = job.sides().get(wheel);
    boolean mirrored = own == null || own.strut().isEmpty();
    StrutFigures strut = (mirrored ? side : own).strut().orElseThrow();
    return (after ? strut.at() : strut.before())
        .map(
            c ->
                new Plot.Curve(
                    wheel.word() + (after ? " after" : " before"),
                    after ? AFTER : BEFORE,
                    runs(c.steer(), Pose::camber, mirrored ? -1 : 1)));
  }

  /** Points in degrees, cut where the linkage does not reach; turned about if {@code way} is -1. */
  private static List<List<Vec2>> runs(
      List<Bay.Point> curve, ToDoubleFunction<Pose> figure, int way) {
    List<List<Vec2>> runs = new ArrayList<>();
    List<Vec2> run = new ArrayList<>();
    for (int i = 0; i < curve.size(); i++) {
      Bay.Point p = curve.get(way > 0 ? i : curve.size() - 1 - i);
      if (p.reached()) {
        run.add(new Vec2(way * p.input(), Math.toDegrees(figure.applyAsDouble(p.pose()))));
      } else {
        runs.add(run);
        run = new ArrayList<>();
      }
    }
    runs.add(run);
    return runs;
  }
}
