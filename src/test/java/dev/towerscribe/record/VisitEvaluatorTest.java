package dev.towerscribe.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Aims;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.record.Explanation.Answer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitEvaluatorTest {
  private static final Optional<Side> LEFT = Optional.of(Side.LEFT);

  /** One Newton solve against another: rounding alone. */
  private static final double SAME_RAD = 1e-10;

  private static Evaluation left(Job job, WheelVisit wheel) {
    return VisitEvaluator.of(job, Visits.visit(Map.of(Side.LEFT, wheel)));
  }

  private static WheelVisit asPredicted(Job job, Side side) {
    return Visits.wheel(job, side, Cause.SETTING, 0.0, Visits.ALL);
  }

  @Test
  void predictionsAreThoseOfAlignWithItsPlusMinus() {
    Job job = Visits.job();
    Evaluation e = left(job, asPredicted(job, Side.LEFT));
    // Independent of this package: what align says of the same job.
    SideAlignment align = Alignment.of(job.sides().get(Side.LEFT)).orElseThrow();
    PlusMinus sure = PlusMinus.all(2);
    for (ReadingStage stage : List.of(ReadingStage.BEFORE, ReadingStage.AFTER)) {
      var reading = (stage == ReadingStage.BEFORE ? align.before() : align.at()).orElseThrow();
      Sensitivity.Figures figures =
          (stage == ReadingStage.BEFORE
                  ? align.strut().orElseThrow().sureBefore()
                  : align.strut().orElseThrow().sureAt())
              .orElseThrow();
      Compared caster = e.of(LEFT, stage, BayFigure.CASTER).orElseThrow();
      assertThat(caster.predicted().radians())
          .isCloseTo(reading.caster().radians(), within(SAME_RAD));
      assertThat(e.of(LEFT, stage, BayFigure.CAMBER).orElseThrow().predicted().radians())
          .isCloseTo(reading.camber().radians(), within(SAME_RAD));
      // The ride height's uncertainty of 2 mm comes on top, but for caster it is next to nothing.
      assertThat(caster.plusMinus().orElseThrow().degrees())
          .isCloseTo(Math.toDegrees(figures.caster().plusMinus(sure)), within(0.005));
    }
  }

  @Test
  void aChangeIsSurerThanItsEndsAndTheSumsAreThoseOfPaperAndPencil() {
    Job job = Visits.job();
    Evaluation e = left(job, asPredicted(job, Side.LEFT));
    Compared after = e.of(LEFT, ReadingStage.AFTER, BayFigure.CASTER).orElseThrow();
    Compared change = e.of(LEFT, ReadingStage.CHANGE, BayFigure.CASTER).orElseThrow();
    // Independent: two readings of 0.15 each, root of 2 * 0.0225 = 0.2121.
    assertThat(change.uncertainty().degrees()).isCloseTo(0.2121, within(5e-5));
    assertThat(change.plusMinus().orElseThrow().degrees())
        .isLessThan(after.plusMinus().orElseThrow().degrees() / 4);
    assertThat(after.sd().degrees())
        .isCloseTo(Math.hypot(0.15, after.plusMinus().orElseThrow().degrees()), within(1e-9));
    assertThat(e.of(LEFT, ReadingStage.CHANGE, BayFigure.TOE)).isEmpty();
  }

  @Test
  void whatIsAsPredictedNeedsNoExplanation() {
    Job job = Visits.job();
    Evaluation e =
        VisitEvaluator.of(
            job,
            Visits.visit(
                Map.of(
                    Side.LEFT,
                    asPredicted(job, Side.LEFT),
                    Side.RIGHT,
                    asPredicted(job, Side.RIGHT))));
    assertThat(e.explanations()).hasSize(3);
    assertThat(e.explanations())
        .allMatch(x -> x.answer() == Answer.NOTHING_TO_EXPLAIN && x.chiSquare() < 1e-12);
    assertThat(e.outside()).isZero();
    assertThat(e.findings()).allMatch(f -> f.severity() == Severity.NOTE);
  }

  @Test
  void twoStandardDeviationsAreWithinAndAHairMoreIsNot() {
    Job job = Visits.job();
    WheelVisit exact = asPredicted(job, Side.LEFT);
    double sd =
        left(job, exact)
            .of(LEFT, ReadingStage.AFTER, BayFigure.CASTER)
            .orElseThrow()
            .sd()
            .degrees();
    for (double sds : new double[] {1.999, 2.001}) {
      BayReading only =
          new BayReading(
              Map.of(BayFigure.CASTER, exact.after().figures().get(BayFigure.CASTER)),
              Optional.empty());
      BayReading off = Visits.off(only, BayFigure.CASTER, sds * sd);
      Evaluation e = left(job, Visits.wheel(BayReading.NONE, off));
      Compared c = e.of(LEFT, ReadingStage.AFTER, BayFigure.CASTER).orElseThrow();
      assertThat(c.sds()).isCloseTo(sds, within(1e-6));
      assertThat(c.within()).isEqualTo(sds < 2);
      Explanation x = Visits.explanation(e, LEFT);
      assertThat(x.answer())
          .isEqualTo(sds < 2 ? Answer.NOTHING_TO_EXPLAIN : Answer.TOO_FEW_FIGURES);
    }
  }

  @Test
  void oneFigureOffIsTooFewToTellCausesApart() {
    Job job = Visits.job();
    BayReading off =
        Visits.off(
            Visits.reading(
                job,
                Side.LEFT,
                ReadingStage.AFTER,
                CauseParameter.RIDE,
                0,
                List.of(BayFigure.CASTER)),
            BayFigure.CASTER,
            -1);
    Explanation x = Visits.explanation(left(job, Visits.wheel(BayReading.NONE, off)), LEFT);
    assertThat(x.answer()).isEqualTo(Answer.TOO_FEW_FIGURES);
    assertThat(x.say().toString()).contains("Too few figures to tell causes apart");
    assertThat(x.explaining()).hasSizeGreaterThan(1);
  }

  @Test
  void aMixOfTwoCausesIsNotExplainedByOne() {
    Job job = Visits.sureJob();
    BayReading before =
        Visits.off(
            Visits.reading(job, Side.LEFT, ReadingStage.BEFORE, CauseParameter.RIDE, 0, Visits.ALL),
            BayFigure.CAMBER,
            0.7);
    BayReading after =
        Visits.reading(job, Side.LEFT, ReadingStage.AFTER, CauseParameter.SETTING, -16, Visits.ALL);
    Explanation x = Visits.explanation(left(job, Visits.wheel(before, after)), LEFT);
    assertThat(x.answer()).isEqualTo(Answer.NO_SINGLE_CAUSE);
    assertThat(x.say().toString()).contains("No single cause looked at explains it", "Nearest:");
    assertThat(x.explaining()).isEmpty();
  }

  @Test
  void whatWasOffBeforeDoesNotClearWorkThatChangedSomethingElse() {
    Job job = Visits.sureJob();
    WheelVisit alike = Visits.wheel(job, Side.LEFT, Cause.POINTS_ALONG, -10, Visits.ALL);
    WheelVisit worse =
        Visits.wheel(alike.before(), Visits.off(alike.after(), BayFigure.CAMBER, 1.5));
    Explanation x = Visits.explanation(left(job, worse), LEFT);
    assertThat(x.alreadyBefore()).extracting(Compared::figure).contains(BayFigure.CASTER);
    assertThat(x.say().toString()).contains("change camber").doesNotContain("not at the work");
  }

  @Test
  void offAlikeBeforeAndAfterIsTheModelNotTheWork() {
    Job job = Visits.sureJob();
    Explanation x =
        Visits.explanation(
            left(job, Visits.wheel(job, Side.LEFT, Cause.POINTS_ALONG, -10, Visits.ALL)), LEFT);
    assertThat(x.alreadyBefore()).extracting(Compared::figure).containsExactly(BayFigure.CASTER);
    assertThat(x.say().toString())
        .contains("Already off in the same way before the work", "not at the work");
    assertThat(x.explaining()).noneMatch(f -> f.cause().isOfTheWork());
  }

  @Test
  void aTieRodLeftAsItCameIsRecognised() {
    // Independent: the readings were made with the rod so much too long.
    Job job = Visits.job();
    double alone = Visits.predictor(job, Side.LEFT).tieLeftAloneMm().orElseThrow();
    assertThat(Math.abs(alone)).isGreaterThan(0.5);
    Explanation x =
        Visits.explanation(
            left(job, Visits.wheel(job, Side.LEFT, Cause.TIE_RODS, alone, Visits.ALL)), LEFT);
    CauseFit best = x.fits().get(0);
    assertThat(best.cause()).isEqualTo(Cause.TIE_RODS);
    assertThat(best.hint().orElseThrow()).contains("left as it came it would be");
  }

  @Test
  void aPlausibleFigureIsAskedFor() {
    Job job = Visits.sureJob();
    // Past the 25 mm that a ride height may be believed to be off.
    Explanation x =
        Visits.explanation(
            left(job, Visits.wheel(job, Side.LEFT, Cause.RIDE, 40, Visits.ALL)), LEFT);
    CauseFit ride =
        x.fits().stream().filter(f -> f.cause() == Cause.RIDE).findFirst().orElseThrow();
    assertThat(ride.value()).isCloseTo(40, within(1e-3));
    assertThat(ride.leaves()).isEmpty();
    assertThat(ride.plausible()).isFalse();
    assertThat(x.explaining()).doesNotContain(ride);
  }

  @Test
  void onlyAfterReadThereIsOneRideHeightAndOneSubframe() {
    Job job = Visits.sureJob();
    Map<Side, WheelVisit> wheels =
        Map.of(
            Side.LEFT,
            Visits.wheel(
                BayReading.NONE,
                Visits.reading(
                    job, Side.LEFT, ReadingStage.AFTER, CauseParameter.SUBFRAME, 9, Visits.ALL)),
            Side.RIGHT,
            Visits.wheel(
                BayReading.NONE,
                Visits.reading(
                    job, Side.RIGHT, ReadingStage.AFTER, CauseParameter.SUBFRAME, 9, Visits.ALL)));
    Evaluation e = VisitEvaluator.of(job, Visits.visit(wheels));
    Explanation both = Visits.explanation(e, Optional.empty());
    assertThat(both.fits().get(0).cause()).isEqualTo(Cause.SUBFRAME);
    assertThat(both.fits().get(0).value()).isCloseTo(9, within(1e-6));
    for (Explanation x : e.explanations()) {
      assertThat(x.fits())
          .extracting(CauseFit::cause)
          .doesNotContain(Cause.RIDE_BEFORE, Cause.RIDE_AFTER, Cause.SUBFRAME_SINCE);
    }
    assertThat(e.compared()).noneMatch(c -> c.stage() == ReadingStage.CHANGE);
  }

  @Test
  void aPlateFoundElsewhereMovesThePredictionAndItsUncertaintyWidensIt() {
    Job job = Visits.sureJob();
    SideJob side = job.sides().get(Side.LEFT);
    Visit visit = Visits.visit(Map.of(Side.LEFT, asPredicted(job, Side.LEFT)));
    List<List<Double>> covariance = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      List<Double> row = new ArrayList<>(Collections.nCopies(4, 0.0));
      if (i == Sensitivity.Choice.REARWARD.ordinal()) {
        row.set(i, 9.0);
      }
      covariance.add(row);
    }
    MountAsMade drilled = new MountAsMade(side.mount(), covariance, "as drilled");
    Compared planned =
        VisitEvaluator.of(job, visit).of(LEFT, ReadingStage.AFTER, BayFigure.CASTER).orElseThrow();
    Evaluation e = VisitEvaluator.of(job, visit, Map.of(Side.LEFT, drilled));
    Compared made = e.of(LEFT, ReadingStage.AFTER, BayFigure.CASTER).orElseThrow();
    double perMm =
        Alignment.of(side)
            .orElseThrow()
            .strut()
            .orElseThrow()
            .sureAt()
            .orElseThrow()
            .caster()
            .byChoice()[Sensitivity.Choice.REARWARD.ordinal()];
    // Independent: 3 mm of uncertainty times the change by one mm that align gives.
    assertThat(made.plusMinus().orElseThrow().radians())
        .isCloseTo(
            Math.hypot(planned.plusMinus().orElseThrow().radians(), 3 * perMm), within(1e-9));
    assertThat(e.of(LEFT, ReadingStage.BEFORE, BayFigure.CASTER).orElseThrow().sd())
        .isEqualTo(
            VisitEvaluator.of(job, visit)
                .of(LEFT, ReadingStage.BEFORE, BayFigure.CASTER)
                .orElseThrow()
                .sd());
  }

  @Test
  void theKnuckleBoltTakesItsCamber() {
    Job plain = Visits.job();
    StrutPoints s = plain.sides().get(Side.LEFT).strut().orElseThrow();
    StrutPoints bolted =
        s.withKnuckleBolt(
            Optional.of(
                new StrutPoints.KnuckleBolt(
                    new dev.towerscribe.geometry.Vec3(-6, 610, 300),
                    Angle.ofDegrees(-2),
                    Angle.ofDegrees(0.5))));
    Job job = SampleJobs.only(plain.sides().get(Side.LEFT).withStrut(Optional.of(bolted)));
    BayReading read =
        new BayReading(Map.of(BayFigure.CAMBER, Angle.ofDegrees(-2.5)), Optional.empty());
    Visit visit =
        Visits.visit(
            Map.of(Side.LEFT, new WheelVisit(BayReading.NONE, read, 16, Angle.ofDegrees(-2))));
    // Independent of this package: the end of the bolt's range that align gives.
    double end =
        Alignment.of(job.sides().get(Side.LEFT))
            .orElseThrow()
            .strut()
            .orElseThrow()
            .reachableAt()
            .orElseThrow()
            .from()
            .radians();
    // The +/- is taken without the bolt's turn: it must not make much of a difference.
    Predictor turned =
        new Predictor(
            job.sides().get(Side.LEFT),
            visit.wheels().get(Side.LEFT),
            MountAsMade.planned(job.sides().get(Side.LEFT)));
    Sensitivity.Figures sure = turned.sure(ReadingStage.AFTER).orElseThrow();
    for (BayFigure figure : List.of(BayFigure.CASTER, BayFigure.INCLINATION)) {
      CauseParameter knob =
          figure == BayFigure.CASTER ? CauseParameter.TOP_FORWARD : CauseParameter.TOP_INBOARD;
      double slope =
          (turned.at(ReadingStage.AFTER, knob, 0.1).orElseThrow().get(figure)
                  - turned.at(ReadingStage.AFTER, knob, -0.1).orElseThrow().get(figure))
              / 0.2;
      double stated =
          figure == BayFigure.CASTER
              ? sure.caster().byCoordinate()[0]
              : -sure.inclination().byCoordinate()[1];
      assertThat(slope / stated).isCloseTo(1, within(0.05));
    }
    Compared c =
        VisitEvaluator.of(job, visit).of(LEFT, ReadingStage.AFTER, BayFigure.CAMBER).orElseThrow();
    assertThat(c.predicted().radians()).isCloseTo(end, within(SAME_RAD));
    // A record may be older than the job: then the bolt is gone, and nothing is predicted.
    Evaluation gone = VisitEvaluator.of(SampleJobs.only(plain.sides().get(Side.LEFT)), visit);
    assertThat(gone.compared()).isEmpty();
    assertThat(gone.findings()).extracting(Finding::id).contains("left.record-not-predicted");
  }

  @Test
  void anAxisAloneGivesAnEstimateWithoutPlusMinusAndWithoutToe() {
    SideJob s = Visits.job().sides().get(Side.LEFT);
    SideJob axis =
        s.withStrut(Optional.empty())
            .withAxis(
                Optional.of(
                    new MeasuredAxis(
                        Angle.ofDegrees(2.7), Angle.ofDegrees(10.4), 612, Angle.ofDegrees(-0.5))))
            .withAims(Optional.empty());
    Job job = SampleJobs.only(axis);
    WheelVisit wheel =
        Visits.wheel(
            Visits.reading(
                job,
                Side.LEFT,
                ReadingStage.BEFORE,
                CauseParameter.TOP_FORWARD,
                -8,
                List.of(BayFigure.CASTER)),
            Visits.reading(
                job,
                Side.LEFT,
                ReadingStage.AFTER,
                CauseParameter.TOP_FORWARD,
                -8,
                List.of(BayFigure.CASTER)));
    BayReading withToe =
        new BayReading(
            Map.of(
                BayFigure.CASTER,
                wheel.after().figures().get(BayFigure.CASTER),
                BayFigure.TOE,
                Angle.ZERO),
            Optional.empty());
    Evaluation e = left(job, Visits.wheel(wheel.before(), withToe));
    Compared c = e.of(LEFT, ReadingStage.AFTER, BayFigure.CASTER).orElseThrow();
    assertThat(c.plusMinus()).isEmpty();
    assertThat(c.sd()).isEqualTo(c.uncertainty());
    assertThat(e.of(LEFT, ReadingStage.AFTER, BayFigure.TOE)).isEmpty();
    assertThat(e.findings()).extracting(Finding::id).contains("left.record-estimate");
    CauseFit best = Visits.explanation(e, LEFT).fits().get(0);
    assertThat(best.cause()).isEqualTo(Cause.POINTS_ALONG);
    assertThat(best.value()).isCloseTo(-8, within(1e-6));
  }

  @Test
  void measuredFiguresAreHeldAgainstAimsLimitAndTheOtherSide() {
    Job plain = Visits.job();
    Aims aims =
        new Aims(
            Aims.Use.ROAD_AND_TRACK,
            Optional.empty(),
            Optional.empty(),
            Optional.of(Angle.ofDegrees(-2.4)),
            Optional.empty());
    Map<Side, SideJob> sides = new java.util.EnumMap<>(Side.class);
    plain.sides().forEach((side, s) -> sides.put(side, s.withAims(Optional.of(aims))));
    Job job = new Job("aims", Optional.empty(), plain.units(), sides);
    Visit visit =
        Visits.visit(
            Map.of(
                Side.LEFT, Visits.wheel(BayReading.NONE, read(6.5, -3.3)),
                Side.RIGHT, Visits.wheel(BayReading.NONE, read(5.5, -2.65))));
    Map<String, Finding> byId = new java.util.TreeMap<>();
    VisitEvaluator.of(job, visit).findings().forEach(f -> byId.put(f.id(), f));
    // Independent: the window 5.5 to 6, the aim -2.4 with 0.25 either way, the limit -3.2, 0.5
    // across.
    assertThat(byId.get("left.record-aim-caster").severity()).isEqualTo(Severity.CAUTION);
    assertThat(byId.get("left.record-aim-caster").limit()).isCloseTo(6, within(1e-9));
    assertThat(byId.get("right.record-aim-caster").severity()).isEqualTo(Severity.NOTE);
    assertThat(byId.get("left.record-camber-limit").severity()).isEqualTo(Severity.CAUTION);
    assertThat(byId.get("right.record-camber-limit").severity()).isEqualTo(Severity.NOTE);
    assertThat(byId.get("left.record-aim-camber").severity()).isEqualTo(Severity.CAUTION);
    assertThat(byId.get("right.record-aim-camber").severity()).isEqualTo(Severity.NOTE);
    assertThat(byId.get("both.record-cross-caster").severity()).isEqualTo(Severity.CAUTION);
    assertThat(byId.get("both.record-cross-caster").figure()).isCloseTo(1.0, within(1e-9));
    assertThat(byId.get("both.record-cross-camber").severity()).isEqualTo(Severity.CAUTION);
  }

  private static BayReading read(double caster, double camber) {
    return new BayReading(
        Map.of(
            BayFigure.CASTER, Angle.ofDegrees(caster), BayFigure.CAMBER, Angle.ofDegrees(camber)),
        Optional.empty());
  }
}
