package dev.towerscribe.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Covariance of a visit's differences: what predictions share, and what stays each one's own.
 * Expected values: independent, worked by hand from derivatives that are small whole numbers.
 */
class ComparisonTest {
  private static final double ROUNDING = 1e-12;
  private static final Vec3 EXACT = new Vec3(0, 0, 0);

  /** Of the first point 2, 3 and 5, of the camber 0.5; all else is exact. */
  private static final PlusMinus SURE =
      new PlusMinus(
          List.of(new Vec3(2, 3, 5), EXACT, EXACT, EXACT, EXACT, EXACT, EXACT, EXACT),
          new Angle(.5));

  private static Job job(boolean alike) {
    Map<Side, SideJob> sides = new EnumMap<>(Side.class);
    SampleJobs.job(SampleJobs.plainTower(), SampleJobs.plate(true), s -> s)
        .sides()
        .forEach(
            (side, s) -> {
              StrutPoints points = s.strut().orElseThrow().withPlusMinus(SURE);
              boolean other = side == Side.RIGHT && !alike;
              Angle more = new Angle(points.camber().radians() + (other ? .01 : 0));
              sides.put(side, s.withStrut(Optional.of(points.withCamber(more))));
            });
    return new Job(
        "a job",
        Optional.empty(),
        SampleJobs.job(SampleJobs.plainTower(), SampleJobs.plate(true), s -> s).units(),
        sides);
  }

  /** Derivatives by the first point's coordinates, by the camber, and by the mount. */
  private static Optional<Sensitivity.Figure> by(
      double x, double y, double z, double camber, double... mount) {
    double[] points = new double[24];
    points[0] = x;
    points[1] = y;
    points[2] = z;
    double[] choices = new double[4];
    System.arraycopy(mount, 0, choices, 0, mount.length);
    return Optional.of(new Sensitivity.Figure(0, points, camber, choices));
  }

  private static FigureRow row(
      Side side,
      ReadingStage stage,
      BayFigure figure,
      double uncertainty,
      double byRide,
      Optional<Sensitivity.Figure> sure) {
    return new FigureRow(side, stage, figure, 1, 11, uncertainty, byRide, sure);
  }

  private static MountAsMade exact() {
    return made(new double[4][4]);
  }

  private static MountAsMade made(double[][] covariance) {
    List<List<Double>> rows = new ArrayList<>();
    for (double[] row : covariance) {
      rows.add(Arrays.stream(row).boxed().toList());
    }
    return new MountAsMade(job(true).sides().get(Side.LEFT).mount(), rows, "by hand");
  }

  private static Comparison of(boolean alike, MountAsMade left, FigureRow... rows) {
    return new Comparison(job(alike), Map.of(Side.LEFT, left, Side.RIGHT, exact()), List.of(rows));
  }

  @Test
  void beforeAndAfterShareThePoints() {
    // Before: 1 x 2, 2 x 3, 0, 4 x 0.5 = 2, 6, 0, 2. After: 3 x 2, 1 x 3, 2 x 5, 2 x 0.5 = 6, 3,
    // 10,
    // 1. Squares 44 and 146, product 12 + 18 + 0 + 2 = 32. Readings to 3 and 4 add 9 and 16.
    Comparison c =
        of(
            true,
            exact(),
            row(Side.LEFT, ReadingStage.BEFORE, BayFigure.CASTER, 3, 0, by(1, 2, 0, 4)),
            row(Side.LEFT, ReadingStage.AFTER, BayFigure.CASTER, 4, 0, by(3, 1, 2, 2)));
    assertThat(c.covariance()[0]).containsExactly(53, 32);
    assertThat(c.covariance()[1]).containsExactly(32, 162);
    // The change is surer than the sum of both: 53 + 162 - 64 = 151, of which 25 are the readings'.
    Comparison.Judged change = c.judged().get(2);
    assertThat(change.stage()).isEqualTo(ReadingStage.CHANGE);
    assertThat(c.sd(change)).isCloseTo(Math.sqrt(151), within(ROUNDING));
    Compared told = c.compared(change);
    assertThat(told.uncertainty().radians()).isCloseTo(5, within(ROUNDING));
    assertThat(told.plusMinus().orElseThrow().radians())
        .isCloseTo(Math.sqrt(126), within(ROUNDING));
    assertThat(told.predicted().radians()).isZero();
    assertThat(told.measured().radians()).isZero();
    assertThat(told.name()).isEqualTo("left change caster");
    assertThat(c.compared(c.judged().get(0)).uncertainty().radians()).isEqualTo(3);
    assertThat(c.compared(c.judged().get(0)).predicted().radians()).isEqualTo(1);
    assertThat(c.compared(c.judged().get(0)).measured().radians()).isEqualTo(11);
    assertThat(c.compared(c.judged().get(0)).sd().radians())
        .isCloseTo(Math.sqrt(53), within(ROUNDING));
  }

  @Test
  void leftAndRightShareThePointsWhereOneIsTheOthersMirrorImage() {
    for (boolean alike : new boolean[] {true, false}) {
      Comparison c =
          of(
              alike,
              exact(),
              row(Side.LEFT, ReadingStage.AFTER, BayFigure.CAMBER, 1, 0, by(1, 2, 0, 4)),
              row(Side.RIGHT, ReadingStage.AFTER, BayFigure.CAMBER, 1, 0, by(3, 1, 2, 2)));
      assertThat(c.covariance()[0]).containsExactly(45, alike ? 32 : 0);
      Comparison.Judged across = c.judged().get(2);
      assertThat(across.side()).isEmpty();
      // 45 + 147 less twice 32, or nothing.
      assertThat(c.sd(across)).isCloseTo(Math.sqrt(alike ? 128 : 192), within(ROUNDING));
      assertThat(c.compared(across).name()).isEqualTo("left-right after camber");
    }
  }

  @Test
  void theMountCountsWithItsCovarianceAndOnlyOnItsSide() {
    // Of rotation, rearward, inboard, setting; 2 and 1 by the first two: 4 x 9 + 2 x 2 x 3 + 4 =
    // 52.
    // Of 2, 1 and of 1, -1: 2 x 9 + (1 - 2) x 3 - 4 = 11.
    MountAsMade made =
        made(new double[][] {{9, 3, 0, 0}, {3, 4, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}});
    Comparison c =
        of(
            true,
            made,
            row(Side.LEFT, ReadingStage.AFTER, BayFigure.CASTER, 1, 0, by(0, 0, 0, 0, 2, 1)),
            row(Side.LEFT, ReadingStage.AFTER, BayFigure.CAMBER, 1, 0, by(0, 0, 0, 0, 1, -1)),
            row(Side.RIGHT, ReadingStage.AFTER, BayFigure.CAMBER, 1, 0, by(0, 0, 0, 0, 1, -1)));
    assertThat(c.covariance()[0]).containsExactly(53, 11, 0);
    // 9 - 2 x 3 + 4 and 1 of the reading; the right plate lies exactly.
    assertThat(c.covariance()[1]).containsExactly(11, 8, 0);
    assertThat(c.covariance()[2]).containsExactly(0, 0, 1);
    assertThat(c.only(Side.RIGHT).rows()).hasSize(1);
    assertThat(c.only(Side.LEFT).covariance()[1]).containsExactly(11, 8);
  }

  @Test
  void rideHeightIsSharedByTheFiguresOfOneStageAlone() {
    // 2 x 3 within a stage; read anew after the work. Without known points that is all.
    Comparison c =
        of(
            true,
            exact(),
            row(Side.LEFT, ReadingStage.BEFORE, BayFigure.CASTER, 1, 2, Optional.empty()),
            row(Side.LEFT, ReadingStage.BEFORE, BayFigure.TOE, 1, 3, Optional.empty()),
            row(Side.LEFT, ReadingStage.AFTER, BayFigure.CASTER, 1, 4, by(1, 0, 0, 0)),
            row(Side.RIGHT, ReadingStage.BEFORE, BayFigure.CASTER, 1, 5, by(1, 0, 0, 0)));
    assertThat(c.covariance()[0]).containsExactly(5, 6, 0, 0);
    assertThat(c.covariance()[1]).containsExactly(6, 10, 0, 0);
    // 16 of the ride, 4 of the point, 1 of the reading; the point is the right side's as well.
    assertThat(c.covariance()[2]).containsExactly(0, 0, 21, 4);
    // An estimate has no uncertainty of its own, but toe is set, not predicted.
    assertThat(c.compared(c.judged().get(0)).plusMinus()).isEmpty();
    assertThat(c.compared(c.judged().get(1)).plusMinus().orElseThrow().radians())
        .isCloseTo(3, within(ROUNDING));
  }

  @Test
  void whatIsJudged() {
    List<FigureRow> rows = new ArrayList<>();
    for (ReadingStage stage : List.of(ReadingStage.BEFORE, ReadingStage.AFTER)) {
      for (Side side : Side.values()) {
        for (BayFigure figure : List.of(BayFigure.CASTER, BayFigure.TOE)) {
          rows.add(row(side, stage, figure, 1, 0, Optional.empty()));
        }
      }
    }
    Comparison c = of(true, exact(), rows.toArray(new FigureRow[0]));
    // Eight figures; of caster the change of either wheel; left less right before and after.
    assertThat(c.judged()).hasSize(12);
    assertThat(c.judged().stream().map(j -> c.compared(j).name()).toList())
        .endsWith(
            "left change caster",
            "right change caster",
            "left-right before caster",
            "left-right after caster");
    assertThat(Comparison.of(c.judged().get(0), new double[] {7, 0, 0, 0, 0, 0, 0, 0}))
        .isEqualTo(7);
    assertThat(Comparison.of(c.judged().get(8), new double[] {7, 0, 0, 0, 9, 0, 0, 0}))
        .isEqualTo(2);
    assertThat(c.differences()).hasSize(8).containsOnly(10);
    assertThat(of(true, exact(), rows.get(2), rows.get(4)).judged()).hasSize(2);
  }

  private static Compared compared(double measured, double sd) {
    return new Compared(
        Optional.empty(),
        ReadingStage.AFTER,
        BayFigure.CASTER,
        new Angle(1),
        Optional.empty(),
        new Angle(measured),
        new Angle(sd),
        new Angle(sd));
  }

  @Test
  void withinTwoStandardDeviations() {
    assertThat(compared(4, 2).difference().radians()).isEqualTo(3);
    assertThat(compared(4, 2).sds()).isEqualTo(1.5);
    assertThat(compared(-4, 2).sds()).isEqualTo(2.5);
    assertThat(compared(-4, 2).within()).isFalse();
    assertThat(compared(5, 2).within()).isTrue();
    assertThat(compared(5.001, 2).within()).isFalse();
    assertThat(compared(-3, 2).within()).isTrue();
    // Rounding of a figure that was calculated.
    assertThat(Compared.isWithin(2 + 5e-10)).isTrue();
    assertThat(Compared.isWithin(2 + 2e-9)).isFalse();
  }

  private static CauseFit fit(double value, List<String> leaves) {
    return new CauseFit(
        Cause.RIDE, List.of(Side.LEFT), value, 1, -5, 15, 0, 1, leaves, "", Optional.empty());
  }

  @Test
  void aFigureMayBeBelievedInItsRange() {
    assertThat(fit(-5, List.of()).plausible()).isTrue();
    assertThat(fit(15, List.of()).plausible()).isTrue();
    assertThat(fit(15 + 1e-8, List.of()).plausible()).isTrue();
    assertThat(fit(15 + 1e-7, List.of()).plausible()).isFalse();
    assertThat(fit(-5 - 1e-8, List.of()).plausible()).isTrue();
    assertThat(fit(-5 - 1e-7, List.of()).plausible()).isFalse();
    assertThat(fit(3, List.of()).explains()).isTrue();
    assertThat(fit(3, List.of("left after caster")).explains()).isFalse();
    assertThat(fit(16, List.of()).explains()).isFalse();
    assertThat(fit(16, List.of()).acting()).containsExactly(Side.LEFT);
  }

  /**
   * By hand: one figure, read to u, that a cause moves by s for each unit: the cause is known to u
   * / s, and what it takes to make up the difference is the difference over s.
   */
  @Test
  void aCauseIsKnownByWhatItMoves() {
    Job job = Visits.sureJob();
    Predictor predictor = Visits.predictor(job, Side.LEFT);
    double step = .01;
    double now = predictor.at(ReadingStage.AFTER).orElseThrow().get(BayFigure.CASTER);
    double slope = (caster(predictor, step) - caster(predictor, -step)) / (2 * step);
    double uncertainty = Math.toRadians(.02);
    FigureRow read =
        new FigureRow(
            Side.LEFT,
            ReadingStage.AFTER,
            BayFigure.CASTER,
            now,
            now + .001,
            uncertainty,
            0,
            Optional.empty());
    Comparison c = new Comparison(job, Map.of(Side.LEFT, exact()), List.of(read));
    CauseFitter fitter =
        new CauseFitter(c, Map.of(Side.LEFT, predictor), Lengths.in(LengthUnit.MM));
    CauseFit fit = fitter.fit(Cause.REARWARD, Set.of(Side.LEFT)).orElseThrow();
    // A figure bends by some thousandths over a few millimetres.
    assertThat(fit.plusMinus()).isCloseTo(uncertainty / Math.abs(slope), withinPercentage(1));
    assertThat(fit.value()).isCloseTo(.001 / slope, withinPercentage(1));
    assertThat(fitter.chiSquare()).isCloseTo(Math.pow(.001 / uncertainty, 2), within(1e-9));
    assertThat(fit.explained()).isCloseTo(1, within(1e-6));
  }

  private static double caster(Predictor predictor, double by) {
    return predictor
        .at(ReadingStage.AFTER, Cause.REARWARD.knob(), by)
        .orElseThrow()
        .get(BayFigure.CASTER);
  }
}
