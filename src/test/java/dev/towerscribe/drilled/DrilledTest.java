package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.DrilledSide.Hole;
import dev.towerscribe.drilled.SideReadings.EdgeGap;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A drilled tower as a whole: fit, mount, edges, and the findings with their severity. */
class DrilledTest {
  private static final double EXACT = 1e-6;

  /** Two landmarks that no hole comes near, so that the plan has no stop of its own. */
  private static final List<Landmark> TWO =
      List.of(
          new Landmark("drain hole", new Vec2(38, -52), 9),
          new Landmark("tooling hole", new Vec2(-60, 90), 6));

  private static final Job JOB = job(TWO, true);

  private static Job job(List<Landmark> landmarks, boolean handed) {
    return SampleJobs.job(
        Drills.with(SampleJobs.plainTower(), landmarks), SampleJobs.plate(handed), s -> s);
  }

  private static final JobLayout LAYOUT = laidOut(JOB);

  private static JobLayout laidOut(Job job) {
    try {
      return Layout.of(job);
    } catch (JobRejected e) {
      throw new IllegalStateException(e);
    }
  }

  private static DrilledSide side(JobLayout layout, Side side, SideReadings readings)
      throws JobRejected {
    Readings all =
        new Readings(
            "test", Optional.empty(), LengthUnit.MM, Drills.UNCERTAINTY, Map.of(side, readings));
    return Drilled.of(layout, all, Layout::of).sides().get(side);
  }

  private static DrilledSide side(Drills drills) throws JobRejected {
    return side(LAYOUT, drills.layout.side(), drills.readings());
  }

  private static Drills drills(Side side) {
    return new Drills(LAYOUT.sides().get(side));
  }

  private static Optional<Finding> finding(DrilledSide side, String check) {
    return side.findings().stream()
        .filter(f -> f.id().equals(side.side().word() + ".drilled-" + check))
        .findFirst();
  }

  private static List<String> stops(DrilledSide side) {
    return side.findings().stream().filter(Finding::isStop).map(Finding::id).toList();
  }

  /**
   * Independent, by hand: holes of 9 in tower and plate leave a bolt of 8 the sum of both radial
   * clearances.
   */
  @ParameterizedTest
  @CsvSource({"LEFT", "RIGHT"})
  void holesAsPlannedLetThePlateOnWithItsWholePlay(Side which) throws Exception {
    // Independent: holes of 9, bolts of 8, and the place that the job states.
    DrilledSide side = side(drills(which).allPairs().allTies());
    PlateFit fit = side.fit().orElseThrow();
    assertThat(fit.verdict()).isEqualTo(PlateFit.Verdict.GOES_ON);
    assertThat(fit.mating().slackMm()).isCloseTo(1.0, within(EXACT));
    assertThat(fit.enlargement()).isEmpty();
    assertThat(fit.play()).isPresent();
    Mount now = side.asDrilled().orElseThrow().mount();
    assertThat(now.rotation().degrees()).isCloseTo(55, within(EXACT));
    assertThat(now.rearwardMm()).isCloseTo(8, within(EXACT));
    assertThat(now.inboardMm()).isCloseTo(-3, within(EXACT));
    assertThat(stops(side)).isEmpty();
    for (Hole h : side.holes()) {
      assertThat(h.error().orElseThrow().norm()).isLessThan(EXACT);
      assertThat(h.left().orElseThrow().norm()).isLessThan(EXACT);
    }
  }

  /**
   * Independent, by hand: a plate drilled 2 mm rearward, 1 mm inboard and 1.5 degrees on is mounted
   * there.
   */
  @ParameterizedTest
  @CsvSource({"LEFT, true", "RIGHT, true", "LEFT, false", "RIGHT, false"})
  void aPatternMovedAsAWholeIsAMountMoved(Side which, boolean handed) throws Exception {
    // Independent: the holes were laid out anew for the mount that must be found.
    JobLayout planned = laidOut(job(TWO, handed));
    Mount there = new Mount(Angle.ofDegrees(56.5), 10, -2, 16);
    JobLayout moved = laidOut(planned.job().with(there));
    Drills drills = new Drills(planned.sides().get(which));
    moved.sides().get(which).holes().forEach(h -> drills.at.put(h.name(), h.at()));
    DrilledSide side = side(planned, which, drills.allPairs().allTies().readings());
    Mount now = side.asDrilled().orElseThrow().mount();
    assertThat(now.rotation().degrees()).isCloseTo(56.5, within(EXACT));
    assertThat(now.rearwardMm()).isCloseTo(10, within(EXACT));
    assertThat(now.inboardMm()).isCloseTo(-2, within(EXACT));
    assertThat(now.settingMm()).isEqualTo(16);
    assertThat(side.fit().orElseThrow().mating().slackMm()).isCloseTo(1.0, within(EXACT));
    for (Hole h : side.holes()) {
      assertThat(h.left().orElseThrow().norm()).isLessThan(EXACT);
    }
  }

  /**
   * By hand: two bolts whose holes are 3 mm too far apart, with play of 1 mm each, are 0.5 mm short
   * each way; one hole opened by 1 mm of radius, from 9 to 11, lets them in.
   */
  @Test
  void holesTooFarApartNeedOneOpened() throws Exception {
    Drills drills = drills(Side.LEFT);
    Vec2 way = drills.at.get("A").minus(drills.at.get("B")).unit();
    drills.moved("A", 3 * way.x(), 3 * way.y());
    // C goes along so that it does not decide: it lies in the middle of what the others want.
    Vec2 half = way.times(1.5);
    drills.moved("C", half.x(), half.y());
    DrilledSide side = side(drills.allPairs().allTies());
    PlateFit fit = side.fit().orElseThrow();
    assertThat(fit.verdict()).isEqualTo(PlateFit.Verdict.DOES_NOT);
    assertThat(fit.mating().slackMm()).isCloseTo(-0.5, within(0.05));
    assertThat(fit.mating().tight()).contains("A", "B");
    assertThat(stops(side)).containsExactly("left.drilled-fit");
    assertThat(fit.enlargement().orElseThrow().best().orElseThrow().diameterMm().orElseThrow())
        .isBetween(10.5, 11.1);
    assertThat(finding(side, "fit").orElseThrow().say()).contains("open hole");
  }

  @Test
  void withinTheUncertaintyItIsTooCloseToTell() throws Exception {
    Drills drills = drills(Side.LEFT);
    Vec2 way = drills.at.get("A").minus(drills.at.get("B")).unit();
    // 1.95 of 2 mm of play used up; the centres are known to some 0.03.
    drills.moved("A", 1.95 * way.x(), 1.95 * way.y());
    drills.span("A", "B", Edges.CENTRES).span("A", "C", Edges.CENTRES);
    DrilledSide side = side(drills.span("B", "C", Edges.CENTRES));
    PlateFit fit = side.fit().orElseThrow();
    assertThat(fit.mating().slackMm()).isBetween(0.0, 2 * fit.slackSdMm());
    assertThat(fit.verdict()).isEqualTo(PlateFit.Verdict.CLOSE);
    assertThat(finding(side, "fit").orElseThrow().severity()).isEqualTo(Severity.CAUTION);
  }

  @Test
  void withoutLandmarksTheFitIsKnownAndThePlaceIsNot() throws Exception {
    DrilledSide side = side(drills(Side.LEFT).moved("A", 0.3, 0.2).allPairs());
    assertThat(side.fit()).isPresent();
    assertThat(side.asDrilled()).isEmpty();
    assertThat(side.holes()).allSatisfy(h -> assertThat(h.error()).isEmpty());
    assertThat(side.holes()).allSatisfy(h -> assertThat(h.left()).isPresent());
    Finding untied = finding(side, "untied").orElseThrow();
    assertThat(untied.severity()).isEqualTo(Severity.CAUTION);
    assertThat(untied.say())
        .contains("Nothing ties the holes to the tower", "NOT assumed to be as planned");
  }

  @Test
  void aHoleThatIsNotFixedStopsAndLeavesTheFitOpen() throws Exception {
    Drills drills = drills(Side.RIGHT).span("A", "B", Edges.INSIDE);
    drills.span("A", "drain hole", Edges.INSIDE).span("A", "tooling hole", Edges.INSIDE);
    drills.span("B", "drain hole", Edges.INSIDE).span("B", "C", Edges.INSIDE);
    DrilledSide side = side(drills);
    assertThat(side.fit()).isEmpty();
    assertThat(stops(side)).containsExactly("right.drilled-few.C");
    assertThat(finding(side, "few.C").orElseThrow().figure()).isEqualTo(1);
  }

  @Test
  void aReadingThatIsOffStopsByItsName() throws Exception {
    Drills drills = drills(Side.LEFT).span("A", "B", Edges.INSIDE, 0.8);
    DrilledSide side = side(drills.allPairs().allTies());
    assertThat(stops(side)).containsExactly("left.drilled-off.A-to-B-inside");
    assertThat(finding(side, "off.A-to-B-inside").orElseThrow().say())
        .contains("The reading A to B (inside) is 0.80 mm more than the rest say", "left out");
  }

  @Test
  void repeatedReadingsFarApartStop() throws Exception {
    Drills drills = drills(Side.LEFT).allPairs().allTies();
    SpanReading first = drills.spans.get(0);
    double mm = first.length().mean();
    // Independent, by hand: 0.3 from the mean; 3.2905 x 0.05 / root 2 = 0.11634 allowed.
    Repeated apart = new Repeated(List.of(mm - 0.3, mm + 0.3), 0.05);
    drills.spans.set(0, new SpanReading("A", "B", first.edges(), apart));
    DrilledSide side = side(drills);
    assertThat(stops(side)).containsExactly("left.drilled-repeat.A-to-B-inside");
    assertThat(finding(side, "repeat.A-to-B-inside").orElseThrow().limit())
        .isCloseTo(0.11634, within(1e-5));
  }

  @Test
  void holeSizesAreJudgedByTheirBolt() throws Exception {
    Drills drills = drills(Side.LEFT);
    drills.diameter.put("A", 7.8);
    drills.diameter.put("B", 10.6);
    DrilledSide side = side(drills.allPairs().allTies());
    assertThat(finding(side, "size.A").orElseThrow().severity()).isEqualTo(Severity.STOP);
    // Published: ISO 273 coarse for M8, 10.
    assertThat(finding(side, "size.B").orElseThrow().severity()).isEqualTo(Severity.CAUTION);
    assertThat(finding(side, "size.B").orElseThrow().limit()).isEqualTo(10.0);
    assertThat(finding(side, "size.C").orElseThrow().severity()).isEqualTo(Severity.NOTE);
    assertThat(side.fit().orElseThrow().verdict()).isEqualTo(PlateFit.Verdict.DOES_NOT);
    assertThat(finding(side, "fit").orElseThrow().say()).contains("no bolt goes through at A");
  }

  /**
   * Independent, by hand: M8 strict needs 16 to the centre; a hole of 9 needs 11.5 of metal beside
   * it.
   */
  @Test
  void metalAsCutIsJudgedByTheEdgeRule() throws Exception {
    Drills drills = drills(Side.LEFT).allPairs().allTies();
    drills.edges.add(new EdgeGap("A", new Repeated(List.of(11.3), 0.2)));
    drills.edges.add(new EdgeGap("B", new Repeated(List.of(11.7), 0.2)));
    drills.edges.add(new EdgeGap("C", new Repeated(List.of(14.0), 0.2)));
    DrilledSide side = side(drills);
    assertThat(finding(side, "edge-read.A").orElseThrow().severity()).isEqualTo(Severity.STOP);
    assertThat(finding(side, "edge-read.A").orElseThrow().limit()).isCloseTo(11.5, within(EXACT));
    assertThat(finding(side, "edge-read.B").orElseThrow().severity()).isEqualTo(Severity.CAUTION);
    assertThat(finding(side, "edge-read.C").orElseThrow().severity()).isEqualTo(Severity.NOTE);
  }

  /**
   * Independent, by hand: the final cut is a circle of 49; metal is the hole's distance from it.
   */
  @Test
  void metalToThePlannedCutIsCalculatedFromWhereTheHoleIs() throws Exception {
    Drills drills = drills(Side.LEFT);
    Vec2 out = drills.at.get("B").unit();
    drills.at.put("B", out.times(64.8));
    DrilledSide side = side(drills.allPairs().allTies());
    assertThat(side.edges().get(1).toPlannedMm().orElseThrow())
        .isCloseTo(64.8 - 49 - 4.5, within(EXACT));
    // 15.8 from the centre where 16 is needed.
    assertThat(finding(side, "edge-cut.B").orElseThrow().severity()).isEqualTo(Severity.STOP);
    assertThat(finding(side, "edge-cut.B").orElseThrow().figure()).isCloseTo(15.8, within(EXACT));
  }

  @Test
  void aSheetTurnedOverStops() throws Exception {
    Drills drills = drills(Side.LEFT).moved(p -> new Vec2(p.x(), -p.y())).allPairs().allTies();
    DrilledSide side = side(drills);
    assertThat(stops(side)).anyMatch(id -> id.startsWith("left.drilled-off-plan."));
  }

  /** A third landmark, off the line of the others, leaves no mirror image to believe in. */
  @Test
  void namesMixedUpLookTurnedOver() throws Exception {
    JobLayout three =
        laidOut(
            job(List.of(TWO.get(0), TWO.get(1), new Landmark("seam", new Vec2(85, 80), 5)), true));
    Drills drills = new Drills(three.sides().get(Side.LEFT));
    Vec2 b = drills.at.get("B");
    drills.at.put("B", drills.at.get("C"));
    drills.at.put("C", b);
    DrilledSide side = side(three, Side.LEFT, drills.allPairs().allTies().readings());
    assertThat(stops(side)).contains("left.drilled-turned-over", "left.drilled-off-plan.B");
    assertThat(finding(side, "mirror")).isEmpty();
  }

  @Test
  void twoLandmarksAskForALookAtTheirOtherSide() throws Exception {
    Drills drills = drills(Side.LEFT);
    DrilledSide side = side(drills.allPairs().allTies());
    Finding mirror = finding(side, "mirror").orElseThrow();
    assertThat(mirror.severity()).isEqualTo(Severity.NOTE);
    // Independent, by hand: the line runs from (38, -52) to (-60, 90); B, near (60, 29), lies
    // farthest from it,
    // some 66 mm along its normal (0.82, 0.57), which points forward more than inboard.
    assertThat(drills.at.get("B").distanceTo(new Vec2(60, 29))).isLessThan(2);
    assertThat(mirror.say()).contains("hole B lies forward of that line");
  }

  /**
   * Independent: seeded simulation of the mount, the same way as for the holes: 2 standard
   * deviations of rotation and offset cover where the true holes' best fit lies in 93 to 97 %.
   */
  @Tag("simulation")
  @Test
  void twoStandardDeviationsCoverTheMount() throws Exception {
    int cases = 400;
    Random random = new Random(52);
    int inside = 0;
    for (int i = 0; i < cases; i++) {
      Drills drills = drills(Side.LEFT);
      for (String hole : List.of("A", "B", "C")) {
        drills.moved(hole, random.nextGaussian() / 4, random.nextGaussian() / 4);
      }
      List<Vec2> planned = drills.layout.holes().stream().map(h -> h.at()).toList();
      List<Vec2> truth = drills.layout.holes().stream().map(h -> drills.at.get(h.name())).toList();
      Mount wanted = RigidFit.plain(planned, truth).move().of(drills.layout.job().mount());
      for (String landmark : List.of("drain hole", "tooling hole")) {
        drills.at.computeIfPresent(
            landmark,
            (n, p) -> p.plus(new Vec2(random.nextGaussian(), random.nextGaussian()).times(0.3)));
      }
      DrilledSide.AsDrilled as =
          side(drills.noisy(random, 1).allPairs().allTies()).asDrilled().orElseThrow();
      double turn = as.mount().rotation().radians() - wanted.rotation().radians();
      inside += Math.abs(turn) <= 2 * as.rotationSd() ? 1 : 0;
      inside +=
          Math.abs(as.mount().rearwardMm() - wanted.rearwardMm()) <= 2 * as.rearwardSdMm() ? 1 : 0;
      inside +=
          Math.abs(as.mount().inboardMm() - wanted.inboardMm()) <= 2 * as.inboardSdMm() ? 1 : 0;
    }
    assertThat(inside / (3.0 * cases)).isBetween(0.93, 0.975);
  }

  /** Independent: the slack's +/- against the scatter of the slack over seeded readings. */
  @Tag("simulation")
  @Test
  void theSlacksPlusMinusIsItsScatter() throws Exception {
    Random random = new Random(53);
    int cases = 200;
    int inside = 0;
    for (int i = 0; i < cases; i++) {
      Drills drills = drills(Side.RIGHT).moved("A", 0.6, -0.3).moved("B", -0.2, 0.5);
      double truth = side(drills.allPairs().allTies()).fit().orElseThrow().mating().slackMm();
      drills.spans.clear();
      PlateFit fit = side(drills.noisy(random, 1).allPairs().allTies()).fit().orElseThrow();
      inside += Math.abs(fit.mating().slackMm() - truth) <= 2 * fit.slackSdMm() ? 1 : 0;
    }
    // 95.4 % give or take three standard deviations of a count of 200.
    assertThat((double) inside / cases).isBetween(0.91, 0.995);
  }

  @Test
  void everyIdIsOfThisCommandAndOnce() throws Exception {
    Drills drills = drills(Side.LEFT).span("A", "B", Edges.INSIDE, 0.9);
    drills.span("A", "B", Edges.INSIDE, 1.8);
    DrilledSide side = side(drills.allPairs().allTies().allPairs());
    assertThat(side.findings()).extracting(Finding::id).doesNotHaveDuplicates();
    assertThat(side.findings()).allSatisfy(f -> assertThat(f.id()).startsWith("left.drilled-"));
    assertThat(stops(side))
        .contains("left.drilled-off.A-to-B-inside", "left.drilled-off.A-to-B-inside-2");
  }
}
