package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.Tries;
import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.HoleNetwork.Contradiction;
import dev.towerscribe.drilled.HoleNetwork.Found;
import dev.towerscribe.drilled.SideReadings.HoleSize;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.Tower;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Where holes are found from readings, and what readings have against each other. */
class NetworkTest {
  /** What exact readings must give back: they are solved to 1e-10 mm. */
  private static final double EXACT = 1e-7;

  private static Found hole(HoleNetwork network, String name) {
    return network.holes().stream().filter(h -> h.name().equals(name)).findFirst().orElseThrow();
  }

  private static void truthFound(HoleNetwork network, Drills truth) {
    for (Found f : network.holes()) {
      assertThat(f.at().distanceTo(truth.at.get(f.name()))).as(f.name()).isLessThan(EXACT);
      assertThat(f.diameterMm()).isCloseTo(truth.diameter.get(f.name()), within(EXACT));
    }
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void exactReadingsGiveTheHolesWhereTheyAre(Side side) {
    Drills drills =
        Drills.plain(side).moved("A", 0.4, -0.3).moved("B", -0.2, 0.6).moved("C", 1.1, 0.1);
    drills.diameter.put("B", 9.4);
    HoleNetwork network = drills.allPairs().allTies().network();
    truthFound(network, drills);
    assertThat(network.tied()).isTrue();
    assertThat(network.complete()).isTrue();
    assertThat(network.contradictions()).isEmpty();
    assertThat(network.unchecked()).isEmpty();
    assertThat(network.widened()).isFalse();
    // 12 spans, 3 sizes, 2 landmarks of 3 figures; 5 points of 3 unknowns.
    assertThat(network.spare()).isEqualTo(12 + 3 + 6 - 15);
  }

  @Test
  void nearEdgesAreTheCentresLessBothRadii() {
    // Independent, by hand: 3-4-5. Holes of 9 and 10 whose centres are 50 apart read 40.5 and 59.5.
    Drills drills = Drills.plain(Side.LEFT);
    drills.at.put("B", drills.at.get("A").plus(new Vec2(30, 40)));
    drills.diameter.put("B", 10.0);
    drills.span("A", "B", Edges.INSIDE).span("A", "B", Edges.OUTSIDE);
    assertThat(drills.spans.get(0).length().mean()).isCloseTo(40.5, within(EXACT));
    assertThat(drills.spans.get(1).length().mean()).isCloseTo(59.5, within(EXACT));
  }

  /**
   * Independent: a hole fixed by two centre distances that meet at a right angle. The landmarks are
   * taken as certain, so its +/- is that of each distance along its own direction.
   */
  @Test
  void twoDistancesAtRightAnglesGiveTheirOwnUncertainty() {
    Drills drills = Drills.plain(Side.LEFT);
    // On the circle over the landmarks' distance: the angle in it is a right one (Thales).
    Vec2 l1 = drills.at.get("drain hole");
    Vec2 l2 = drills.at.get("tooling hole");
    Vec2 middle = l1.toward(l2, 0.5);
    double radius = l1.distanceTo(l2) / 2;
    Vec2 planned = drills.at.get("A");
    Vec2 a = middle.plus(planned.minus(middle).unit().times(radius));
    drills.at.put("A", a);
    drills.span("A", "drain hole", Edges.CENTRES).span("A", "tooling hole", Edges.CENTRES);
    HoleNetwork network =
        HoleSolver.of(drills.layout, drills.readings(), Drills.uncertainty(Drills.CALIPER, 0.001));
    Found found = hole(network, "A");
    assertThat(found.at().distanceTo(a)).isLessThan(EXACT);
    // 0.001 of the landmarks adds 1e-6 / 0.05 / 2 = 1e-5.
    assertThat(found.foreSdMm()).isCloseTo(0.05, within(2e-5));
    assertThat(found.inSdMm()).isCloseTo(0.05, within(2e-5));
    assertThat(found.worstSdMm()).isCloseTo(0.05, within(2e-5));
    assertThat(network.hanging()).extracting(h -> h.planned().name()).containsExactly("B", "C");
    assertThat(network.hanging()).extracting(HoleNetwork.Hanging::readings).containsExactly(0, 0);
    assertThat(network.unchecked())
        .contains("A to drain hole (centres)", "A to tooling hole (centres)");
  }

  /**
   * Independent, by hand: the mean of two readings of a size, 0.05 each, is sure to 0.05 / root 2.
   */
  @Test
  void sizesReadTwiceAreSurerByRootTwo() {
    Drills drills = Drills.plain(Side.LEFT);
    for (String[] pair : new String[][] {{"A", "B"}, {"B", "C"}, {"A", "C"}}) {
      drills.span(pair[0], pair[1], Edges.CENTRES);
    }
    HoleNetwork network = drills.network();
    assertThat(hole(network, "A").diameterSdMm()).isCloseTo(0.05 / Math.sqrt(2), within(1e-12));
    assertThat(network.loose()).isEqualTo(3);
  }

  @Test
  void spansBetweenHolesAloneGiveTheShapeOnly() {
    Drills drills = Drills.plain(Side.LEFT).moved("A", 0.4, -0.3).moved("C", 1.1, 0.1);
    HoleNetwork network = drills.allPairs().network();
    assertThat(network.tied()).isFalse();
    assertThat(network.loose()).isEqualTo(3);
    assertThat(network.complete()).isTrue();
    for (String[] pair : new String[][] {{"A", "B"}, {"B", "C"}, {"A", "C"}}) {
      assertThat(hole(network, pair[0]).at().distanceTo(hole(network, pair[1]).at()))
          .isCloseTo(drills.at.get(pair[0]).distanceTo(drills.at.get(pair[1])), within(EXACT));
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 2", "2, 1", "3, 1"})
  void oneLandmarkLeavesThePatternFreeToTurn(int ties, int loose) {
    Drills drills = Drills.plain(Side.LEFT).allPairs();
    for (String hole : List.of("A", "B", "C").subList(0, ties)) {
      drills.span(hole, "drain hole", Edges.CENTRES);
    }
    HoleNetwork network = drills.network();
    assertThat(network.loose()).isEqualTo(loose);
    assertThat(network.complete()).isTrue();
  }

  @Test
  void aHoleWithOneReadingHangs() {
    Drills drills = Drills.plain(Side.LEFT);
    drills.span("A", "B", Edges.INSIDE).span("A", "drain hole", Edges.INSIDE);
    drills.span("A", "tooling hole", Edges.INSIDE).span("B", "drain hole", Edges.INSIDE);
    drills.span("C", "A", Edges.INSIDE).span("C", "A", Edges.OUTSIDE);
    HoleNetwork network = drills.network();
    assertThat(network.holes()).extracting(Found::name).containsExactly("A", "B");
    assertThat(network.hanging()).hasSize(1);
    // Twice, but both along one line.
    assertThat(network.hanging().get(0).readings()).isEqualTo(2);
    assertThat(network.tied()).isTrue();
    truthFound(network, drills);
  }

  @Test
  void withoutSpansNothingIsFound() {
    HoleNetwork network = Drills.plain(Side.LEFT).network();
    assertThat(network.holes()).isEmpty();
    assertThat(network.hanging()).hasSize(3);
  }

  @ParameterizedTest
  @CsvSource({"0.5", "-0.8", "3", "40", "-70"})
  void aReadingThatIsOffIsNamedAndLeftOut(double off) {
    Drills drills = Drills.plain(Side.RIGHT).moved("A", 0.4, -0.3);
    drills.span("A", "B", Edges.INSIDE, off);
    HoleNetwork network = drills.allPairs().allTies().network();
    assertThat(network.contradictions()).hasSize(1);
    Contradiction c = network.contradictions().get(0);
    assertThat(c.readings()).containsExactly("A to B (inside)");
    assertThat(c.leftOut()).isTrue();
    // Two sound readings of that very pair remain, and all the rest.
    assertThat(c.offMm()).isCloseTo(off, within(EXACT));
    assertThat(c.deviations()).isGreaterThan(c.limit());
    truthFound(network, drills);
  }

  /**
   * Six ties are three more than the pattern's place needs, but the landmarks' own uncertainty
   * takes up two: of two ties that bear alike on what is left it cannot always be told which is
   * off.
   */
  @ParameterizedTest
  @CsvSource({"-1.5", "2", "6", "-20", "45", "-45"})
  void aTieThatIsOffIsAmongThoseNamed(double off) {
    for (String hole : List.of("A", "B", "C")) {
      Drills drills = Drills.plain(Side.LEFT).moved("A", 0.4, -0.3).moved(hole, 0.2, 0.3);
      drills.allPairs();
      for (String other : List.of("A", "B", "C")) {
        drills.span(other, "drain hole", Edges.INSIDE, other.equals(hole) ? off : 0);
        drills.span(other, "tooling hole", Edges.INSIDE);
      }
      HoleNetwork network = drills.network();
      assertThat(network.contradictions()).as("%s off by %s", hole, off).hasSize(1);
      Contradiction c = network.contradictions().get(0);
      assertThat(c.readings()).contains(hole + " to drain hole (inside)");
      assertThat(c.leftOut()).isEqualTo(c.readings().size() == 1);
      if (c.leftOut()) {
        assertThat(c.offMm()).isCloseTo(off, within(EXACT));
        truthFound(network, drills);
      }
    }
  }

  /** Whatever is read, the answer is a network: every reading 1 mm, or far too long, or mixed. */
  @Tag("more-tries")
  @Test
  void noReadingsBreakIt() {
    Random random = new Random(8);
    for (int i = 0; i < Tries.of(20, 60); i++) {
      Drills drills = Drills.plain(Side.LEFT);
      List<String> names = List.copyOf(drills.at.keySet());
      int count = random.nextInt(20);
      for (int k = 0; k < count; k++) {
        String from = names.get(random.nextInt(names.size()));
        String to = names.get(random.nextInt(names.size()));
        if (!from.equals(to)) {
          double mm = i % 3 == 0 ? 1 : i % 3 == 1 ? 800 : 1 + 300 * random.nextDouble();
          Edges between = Edges.values()[random.nextInt(3)];
          Repeated length = new Repeated(List.of(mm), i % 2 == 0 ? 0.001 : 2);
          drills.spans.add(new SpanReading(from, to, between, length));
        }
      }
      HoleNetwork network = drills.network();
      assertThat(network.holes().size() + network.hanging().size()).isEqualTo(3);
      for (Found f : network.holes()) {
        assertThat(f.worstSdMm()).isLessThanOrEqualTo(HoleSolver.HANGS_MM);
      }
      for (double[] row : network.covariance()) {
        for (double entry : row) {
          assertThat(entry).isFinite();
        }
      }
    }
  }

  @Test
  void aLandmarkThatIsElsewhereThanTheJobSaysIsFound() {
    Drills drills = Drills.plain(Side.LEFT);
    // The holes are where the readings say; the job's drain hole is 4 mm off, and one reading is
    // left to check each landmark.
    drills.at.put("drain hole", drills.at.get("drain hole").plus(new Vec2(4, 0)));
    HoleNetwork network = drills.allPairs().allTies().network();
    assertThat(network.contradictions()).hasSize(1);
    Contradiction c = network.contradictions().get(0);
    // Two landmarks fix the frame with one figure more than needed: which of them is off cannot be
    // told.
    assertThat(c.leftOut()).isFalse();
    assertThat(c.readings()).allMatch(r -> r.startsWith("the job's "));
    assertThat(c.readings()).anyMatch(r -> r.contains("drain hole"));
    assertThat(c.readings()).anyMatch(r -> r.contains("tooling hole"));
  }

  @Test
  void twoGrossErrorsAreBothNamedWorstFirst() {
    Drills drills = Drills.plain(Side.LEFT);
    drills.span("A", "B", Edges.INSIDE, 0.9).span("C", "drain hole", Edges.INSIDE, -2.5);
    HoleNetwork network = drills.allPairs().allTies().allTies().network();
    assertThat(network.contradictions())
        .extracting(c -> c.readings().get(0))
        .containsExactly("C to drain hole (inside)", "A to B (inside)");
    truthFound(network, drills);
  }

  @Test
  void withOneReadingToSpareItCannotBeToldWhichIsOff() {
    Drills drills = Drills.plain(Side.LEFT);
    drills.span("A", "B", Edges.CENTRES).span("B", "C", Edges.CENTRES);
    drills.span("A", "C", Edges.CENTRES).span("A", "C", Edges.CENTRES, 1.0);
    HoleNetwork network = drills.network();
    assertThat(network.contradictions()).hasSize(1);
    assertThat(network.contradictions().get(0).leftOut()).isFalse();
    assertThat(network.contradictions().get(0).readings())
        .containsExactly("A to C (centres)", "A to C (centres)");
    assertThat(network.widened()).isTrue();
    assertThat(network.unchecked()).containsExactly("A to B (centres)", "B to C (centres)");
  }

  @Test
  void understatedUncertaintiesWidenEveryPlusMinus() {
    // Ten times the stated uncertainty: no single reading is to blame.
    Drills drills = Drills.plain(Side.LEFT).noisy(new Random(11), 10);
    HoleNetwork network = drills.allPairs().allPairs().allTies().network();
    assertThat(network.widened()).isTrue();
    assertThat(network.scatter()).isBetween(3.0, 15.0);
    // At most one span in four, 18 here, is left out.
    assertThat(network.contradictions()).hasSizeLessThanOrEqualTo(4);
  }

  /**
   * Distances from two landmarks are the same for a pattern and for its mirror image in the line
   * through them; a third one tells them apart.
   */
  @Test
  void aSheetTurnedOverIsFoundWhereItsHolesAre() {
    Tower two = SampleJobs.plainTower();
    List<Landmark> more = new ArrayList<>(two.landmarks());
    more.add(new Landmark("seam end", new Vec2(-80, -70), 5));
    Tower three = Drills.with(two, more);
    SideLayout layout =
        Drills.layout(SampleJobs.job(three, SampleJobs.plate(true), s -> s), Side.LEFT);
    Drills drills = new Drills(layout).moved(p -> new Vec2(p.x(), -p.y())).allPairs().allTies();
    HoleNetwork network = drills.network();
    assertThat(network.contradictions()).isEmpty();
    truthFound(network, drills);

    Drills fewer = Drills.plain(Side.LEFT).moved(p -> new Vec2(p.x(), -p.y())).allPairs().allTies();
    Vec2 from = two.landmarks().get(0).at();
    Vec2 along = two.landmarks().get(1).at().minus(from).unit();
    network = fewer.network();
    assertThat(network.contradictions()).isEmpty();
    for (Found f : network.holes()) {
      Vec2 truth = fewer.at.get(f.name());
      Vec2 d = truth.minus(from);
      Vec2 image = from.plus(along.times(2 * d.dot(along))).minus(d);
      assertThat(Math.min(f.at().distanceTo(truth), f.at().distanceTo(image))).isLessThan(EXACT);
      assertThat(f.at().distanceTo(f.planned().at())).isGreaterThan(HoleSolver.FAR_MM);
    }
  }

  @Test
  void unhandedPlatesAreMeasuredWhereTheyWerePlannedOnTheRight() {
    Drills drills = new Drills(Drills.layout(Side.RIGHT, false)).moved("B", 0.3, 0.2);
    truthFound(drills.allPairs().allTies().network(), drills);
  }

  /** Turning everything, landmarks too, turns the answer and keeps its uncertainty. */
  @Test
  void theReadingsKnowNoDirection() {
    // The same distances, planned and found elsewhere: a right tower's plan is a left one's.
    HoleNetwork left = Drills.plain(Side.LEFT).moved("A", 0.7, 0.2).allPairs().allTies().network();
    HoleNetwork right =
        Drills.plain(Side.RIGHT).moved("A", 0.7, 0.2).allPairs().allTies().network();
    for (int i = 0; i < 3; i++) {
      assertThat(left.holes().get(i).at().distanceTo(right.holes().get(i).at())).isLessThan(EXACT);
    }
    assertThat(left.covariance()).isEqualTo(right.covariance());
  }

  /**
   * Independent: seeded simulation. Every reading and every landmark of the job is off by a normal
   * error of its stated uncertainty; two standard deviations should cover 95.4 % of all
   * coordinates.
   */
  @Tag("more-tries")
  @Test
  void twoStandardDeviationsCoverTheTruth() {
    int cases = Tries.of(600, 2000);
    Random random = new Random(20261201);
    int inside = 0;
    int all = 0;
    int sizes = 0;
    int accused = 0;
    for (int i = 0; i < cases; i++) {
      Drills drills = Drills.plain(i % 2 == 0 ? Side.LEFT : Side.RIGHT);
      for (String hole : List.of("A", "B", "C")) {
        drills.moved(hole, random.nextGaussian() / 2, random.nextGaussian() / 2);
      }
      for (String landmark : List.of("drain hole", "tooling hole")) {
        // The job is off from the truth: the truth is off from the job.
        drills.at.computeIfPresent(
            landmark,
            (n, p) -> p.plus(new Vec2(random.nextGaussian(), random.nextGaussian()).times(0.3)));
        drills.diameter.computeIfPresent(
            landmark, (n, d) -> d + Drills.CALIPER * random.nextGaussian());
      }
      HoleNetwork network = drills.noisy(random, 1).allPairs().allTies().network();
      accused += network.contradictions().isEmpty() ? 0 : 1;
      for (Found f : network.holes()) {
        Vec2 off = f.at().minus(drills.at.get(f.name()));
        inside += Math.abs(off.x()) <= 2 * f.foreSdMm() ? 1 : 0;
        inside += Math.abs(off.y()) <= 2 * f.inSdMm() ? 1 : 0;
        all += 2;
        double d = f.diameterMm() - drills.diameter.get(f.name());
        sizes += Math.abs(d) <= 2 * f.diameterSdMm() ? 1 : 0;
      }
    }
    assertThat((double) inside / all).isBetween(0.93, 0.97);
    assertThat((double) sizes / (all / 2)).isBetween(0.93, 0.97);
    // One in a thousand of some 20 readings each: some 2 %, far from every tenth.
    assertThat((double) accused / cases).isLessThan(0.06);
  }

  @Test
  void anUncertaintyOfItsOwnWeighsItsReading() {
    // Independent, by hand: 100 and 101 with uncertainties of 0.1 and 0.2 weigh 4 to 1: 100.2, sure
    // to 0.2 / root 5.
    Drills drills = Drills.plain(Side.LEFT);
    List<SpanReading> spans = new ArrayList<>();
    spans.add(centres("A", "B", 100, 1.0));
    spans.add(centres("A", "B", 101, 2.0));
    spans.add(centres("B", "C", 120, 0.1));
    spans.add(centres("A", "C", 130, 0.1));
    List<HoleSize> sizes = drills.readings().holes();
    HoleNetwork network =
        HoleSolver.of(
            drills.layout,
            new SideReadings(Side.LEFT, sizes, spans, List.of()),
            Drills.UNCERTAINTY);
    assertThat(hole(network, "A").at().distanceTo(hole(network, "B").at()))
        .isCloseTo(100.2, within(EXACT));
  }

  private static SpanReading centres(String from, String to, double mm, double uncertainty) {
    return new SpanReading(from, to, Edges.CENTRES, new Repeated(List.of(mm), uncertainty));
  }
}
