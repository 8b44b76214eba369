package dev.towerscribe.sheet.report;

import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.Curves;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.alignment.StrutFigures;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.AlignmentReport;
import dev.towerscribe.report.Block;
import dev.towerscribe.sheet.text.BlockSetter;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What an alignment bay will read at one wheel: figures, how near they are, and three small plots.
 */
public final class AlignmentPage {
  private static final double GAP = 3.0;
  private static final double PLOT_GUTTER = 6.0;

  /** Heights of the plots and lettering of the rest, the airiest first. */
  private static final List<Spacing> SPACINGS =
      List.of(
          new Spacing(50.0, BlockSetter.Style.AIRY),
          new Spacing(46.0, BlockSetter.Style.AIRY),
          new Spacing(42.0, BlockSetter.Style.AIRY),
          new Spacing(46.0, new BlockSetter.Style(TextStyle.SMALL, 0.3, 0)),
          new Spacing(42.0, new BlockSetter.Style(TextStyle.SMALL, 0.1, 0)));

  private record Spacing(double plotMm, BlockSetter.Style style) {}

  private static final List<Double> TRAVEL_TICKS = List.of(-80.0, -40.0, 0.0, 40.0, 80.0);
  private static final List<Double> STEER_TICKS =
      List.of(-30.0, -20.0, -10.0, 0.0, 10.0, 20.0, 30.0);

  /** Of what a step changes, its name, caster and camber: there is no room for more. */
  private static final int SHOWN_CHANGES = 3;

  private static final Pen BEFORE = Pen.HIDDEN;
  private static final Pen AFTER = Pen.FINAL_CUT;

  private final Spacing spacing;
  private final SideAlignment side;
  private final JobAlignment job;
  private final Lengths lengths;
  private final AlignmentReport words;
  private final TextPage page;

  private AlignmentPage(SideAlignment side, JobAlignment job, JobInfo info, Spacing spacing) {
    this.spacing = spacing;
    this.side = side;
    this.job = job;
    this.lengths = Lengths.in(info.units());
    this.words = new AlignmentReport(lengths);
    this.page = TextPage.of(side.job().print(), info, Optional.of(side.side()), "Alignment");
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
    return TextPage.fewest(SPACINGS, way -> new AlignmentPage(side, job, info, way).pages());
  }

  private List<Page> pages() {
    blocks(new Block.Paragraph(AlignmentReport.basis(side), false));
    if (side.before().isEmpty() && side.at().isEmpty()) {
      page.paragraph(
          "THE POINTS GIVE NO FIGURES: see the findings for which and why.", TextStyle.BODY);
    }
    blocks(words.readings(side), new Block.Paragraph(words.signs(side.strut().isPresent()), true));
    side.strut().ifPresent(this::strut);
    return page.pages(side.side(), "alignment", "wheel, alignment", "align");
  }

  private void blocks(Block... blocks) {
    page.blocks(List.of(blocks), lengths, spacing.style());
  }

  private void strut(StrutFigures strut) {
    page.columns(2);
    words.changes(side).ifPresent(table -> blocks(table.firstColumns(SHOWN_CHANGES)));
    List<String> points = new ArrayList<>(words.points(side));
    AlignmentReport.cross(job).ifPresent(points::add);
    blocks(new Block.Points(points));
    page.columns(1);
    plots(strut);
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
            spacing.plotMm()),
        GAP,
        false);
  }

  private Plot travel(
      String title, String units, ToDoubleFunction<Pose> figure, StrutFigures strut, double wide) {
    List<Plot.Curve> curves =
        Stream.of(
                strut
                    .before()
                    .map(c -> new Plot.Curve("before", BEFORE, runs(c.travel(), figure, 1))),
                strut.at().map(c -> new Plot.Curve("after", AFTER, runs(c.travel(), figure, 1))))
            .flatMap(Optional::stream)
            .toList();
    return new Plot(
        title,
        units,
        "mm, bump positive",
        TRAVEL_TICKS,
        -Curves.TRAVEL_MM,
        Curves.TRAVEL_MM,
        curves,
        wide,
        spacing.plotMm());
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
