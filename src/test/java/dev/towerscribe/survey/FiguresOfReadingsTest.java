package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.adjust.DataSnooping;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Standard deviations of figures that stand alone, of landmarks together, and of readings among the
 * others. Expected values: independent, worked by hand.
 */
class FiguresOfReadingsTest {
  private static final double ROUNDING = 1e-9;

  private final Findings findings = new Findings("left", Lengths.in(LengthUnit.MM));
  private final SingleFigures scalars = new SingleFigures(Side.LEFT, findings);

  @Test
  void aMeanIsSurerThanAReading() {
    Figure f = scalars.length(new Repeated(List.of(10.0, 10.4, 9.6, 10.0), 0.5), "sheet");
    assertThat(f.value()).isCloseTo(10, within(ROUNDING));
    assertThat(f.sd()).isCloseTo(.25, within(ROUNDING));
    assertThat(findings.inOrder()).isEmpty();
  }

  /**
   * Two readings d apart to 1 mm: chi-square of one is d2 / 2, which passes 10.828 once in a
   * thousand (published: any table): d = 4.6535. Then the readings' own deviation stands in,
   * root(d2 / 2), and that of the mean is d / 2.
   */
  @Test
  void readingsThatContradictEachOtherAreWidenedPastOneInAThousand() {
    Figure agree = scalars.length(new Repeated(List.of(0.0, 4.65), 1), "mark");
    assertThat(agree.sd()).isCloseTo(Math.sqrt(.5), within(ROUNDING));
    assertThat(findings.inOrder()).isEmpty();
    Figure apart =
        scalars
            .length(Optional.of(new Repeated(List.of(0.0, 4.66), 1)), "mark", "Look again. ")
            .orElseThrow();
    assertThat(apart.value()).isCloseTo(2.33, within(ROUNDING));
    assertThat(apart.sd()).isCloseTo(2.33, within(ROUNDING));
    Finding f = findings.inOrder().get(0);
    assertThat(f.id()).isEqualTo("left.scatter.mark");
    assertThat(f.severity()).isEqualTo(Severity.STOP);
    assertThat(f.figure()).isCloseTo(4.66, within(ROUNDING));
    // 3.2905 times root 2.
    assertThat(f.limit()).isCloseTo(4.6535, within(5e-5));
    assertThat(f.unit()).isEqualTo("mm");
    // Root of 4.66 squared over two.
    assertThat(f.say()).contains("4.66 mm").contains("1.00 mm").contains("3.30 mm");
    assertThat(f.say()).contains("Look again.");
  }

  @Test
  void limitsAreInTheReadingsOwnStandardDeviation() {
    // 9.3 apart to 2 mm is as 4.65 to 1 mm.
    scalars.length(new Repeated(List.of(0.0, 9.3), 2), "mark");
    assertThat(findings.inOrder()).isEmpty();
    scalars.length(new Repeated(List.of(0.0, 9.32), 2), "mark");
    assertThat(findings.inOrder().get(0).limit()).isCloseTo(9.307, within(1e-4));
  }

  @Test
  void anglesAreInDegrees() {
    double deg = Math.toRadians(1);
    assertThat(scalars.angle(Optional.empty(), "toe")).isEmpty();
    scalars.angle(Optional.of(new Repeated(List.of(0.0, 5 * deg), deg)), "toe");
    Finding f = findings.inOrder().get(0);
    assertThat(f.figure()).isCloseTo(5, within(ROUNDING));
    assertThat(f.unit()).isEqualTo("deg");
    assertThat(f.say()).contains("5.00 deg");
  }

  @Test
  void covarianceOfAMirroredPoint() {
    PointCovariance s = new PointCovariance(4, 9, 16, 1, 2, 3);
    assertThat(s.mirrored()).isEqualTo(new PointCovariance(4, 9, 16, -1, -2, 3));
    assertThat(s.times(2)).isEqualTo(new PointCovariance(8, 18, 32, 2, 4, 6));
    assertThat(s.sd().x()).isEqualTo(2);
    assertThat(s.sd().y()).isEqualTo(3);
    assertThat(s.sd().z()).isEqualTo(4);
  }

  private static TowerResult.Hole hole(String name, double x, double y, boolean found) {
    return new TowerResult.Hole(name, new Vec2(x, y), Vec2.ZERO, new Figure(8, 0), found);
  }

  /** Unknowns in pairs, the last landmark first. */
  private static Optional<TowerResult.Datum> datum(
      List<TowerResult.Hole> holes, double widened, double[]... shared) {
    int n = 2 * holes.size();
    double[][] one = new double[n][n];
    for (int i = 0; i < n; i++) {
      one[i][i] = 1;
    }
    Covariance c = Covariance.inverse(one);
    for (double[] way : shared) {
      c = c.plus(way);
    }
    return SharedLandmarkErrors.of(
        holes,
        name -> {
          int at = Integer.parseInt(name);
          return new int[] {2 * at, 2 * at + 1};
        },
        c,
        widened);
  }

  @Test
  void landmarksEachForThemselvesShareNothing() {
    // Variances of 1 each and none together: nothing is shared, each is off by 1, widened by 1.5.
    TowerResult.Datum d =
        datum(List.of(hole("0", 30, 0, true), hole("1", -30, 40, true)), 1.5).orElseThrow();
    assertThat(d.turnSd()).isCloseTo(0, within(1e-6));
    assertThat(d.shiftSdMm()).isCloseTo(0, within(1e-6));
    assertThat(d.landmarkSdMm()).isCloseTo(1.5, within(ROUNDING));
  }

  @Test
  void sharedShiftsAndTurnsAreToldApart() {
    // On top of 1 each: all shifted by 3 fore, by 4 in: the mean variance of a way is 12.5.
    List<TowerResult.Hole> holes =
        List.of(hole("0", 30, 0, true), hole("1", -30, 40, true), hole("2", 0, -40, true));
    double[] fore = {3, 0, 3, 0, 3, 0};
    double[] in = {0, 4, 0, 4, 0, 4};
    TowerResult.Datum shifted = datum(holes, 1, fore, in).orElseThrow();
    assertThat(shifted.shiftSdMm()).isCloseTo(Math.sqrt(12.5), within(ROUNDING));
    assertThat(shifted.turnSd()).isCloseTo(0, within(1e-6));
    assertThat(shifted.landmarkSdMm()).isCloseTo(1, within(ROUNDING));
    // A turn of 0.01: each is off by (-y, x) hundredths.
    double[] turn = {0, .3, -.4, -.3, .4, 0};
    TowerResult.Datum turned = datum(holes, 2, turn).orElseThrow();
    assertThat(turned.turnSd()).isCloseTo(.02, within(ROUNDING));
    assertThat(turned.shiftSdMm()).isCloseTo(0, within(1e-6));
    assertThat(turned.landmarkSdMm()).isCloseTo(2, within(ROUNDING));
    // Each off by 3 for itself, widened by 2.
    double ninth = 1 / 9.0;
    Covariance ninths =
        Covariance.inverse(
            new double[][] {
              {ninth, 0, 0, 0}, {0, ninth, 0, 0}, {0, 0, ninth, 0}, {0, 0, 0, ninth}
            });
    TowerResult.Datum own =
        SharedLandmarkErrors.of(
                holes.subList(0, 2),
                Map.of("0", new int[] {0, 1}, "1", new int[] {2, 3})::get,
                ninths,
                2)
            .orElseThrow();
    assertThat(own.landmarkSdMm()).isCloseTo(6, within(ROUNDING));
    TowerResult.Datum all = datum(holes, 2, fore, in, turn).orElseThrow();
    assertThat(all.shiftSdMm()).isCloseTo(2 * Math.sqrt(12.5), within(ROUNDING));
  }

  @Test
  void oneLandmarkAloneIsOffByItself() {
    // Variances 1 + 4 and 1 + 16: their mean is 11.
    TowerResult.Datum d =
        datum(List.of(hole("0", 30, 0, true)), 2, new double[] {2, 4}).orElseThrow();
    assertThat(d.landmarkSdMm()).isCloseTo(2 * Math.sqrt(11), within(ROUNDING));
    assertThat(d.turnSd()).isZero();
    assertThat(d.shiftSdMm()).isZero();
    assertThat(datum(List.of(), 1)).isEmpty();
    assertThat(datum(List.of(hole("0", 30, 0, true), hole("1", 0, 0, false)), 1)).isEmpty();
  }

  private final NamedNetwork named = new NamedNetwork(NamedNetwork.CAR, new HashSet<>());

  private int mark() {
    return named.point(
        new NamedNetwork.Label("both", "mark", false),
        Plausible.anywhere(0, 0, 0),
        0,
        0,
        Network.FREE);
  }

  private void read(Entry.Kind kind, Measure measure, double sd, Double... values) {
    named.read(kind, "a reading", measure, new Repeated(List.of(values), sd), "both", "reading");
  }

  private NetworkReview review() {
    Adjustment a =
        Adjustment.solve(named.net(), named.observations(), new double[named.net().unknowns()]);
    return new NetworkReview(named, a, DataSnooping.LEAST_LIMIT);
  }

  /**
   * Two heights to 2 mm and the tape between them to 1 mm, as in the adjustment's own test: shares
   * of 4/9, 4/9 and 1/9 of an error show. The misclosure is 3, of which the heights take 4/9 each.
   */
  @Test
  void howAReadingFitsAmongTheOthers() {
    int low = mark();
    int high = mark();
    read(Entry.Kind.HEIGHT, new Measure.Coordinate(low, 2, 1), 2, 100.0);
    read(Entry.Kind.HEIGHT, new Measure.Coordinate(high, 2, 1), 2, 107.0);
    read(Entry.Kind.TAPE, new Measure.Distance(low, high), 1, 10.0);
    Adjustment a = Adjustment.solve(named.net(), named.observations(), new double[] {100, 107});
    NetworkReview review = new NetworkReview(named, a, 4);
    List<ReadingResult> all = new ArrayList<>(review.readings());
    ReadingResult first = all.get(0);
    assertThat(first.readMm()).isEqualTo(100);
    assertThat(first.computedMm()).isCloseTo(100 - 4 / 3.0, within(ROUNDING));
    assertThat(first.redundancy()).isCloseTo(4 / 9.0, within(ROUNDING));
    assertThat(first.checked()).isTrue();
    // All of the 3 mm, over root(4 + 4 + 1) = 3.
    assertThat(first.deviations()).isCloseTo(1, within(ROUNDING));
    assertThat(all.get(2).deviations()).isCloseTo(1, within(ROUNDING));
    assertThat(all.get(1).deviations()).isCloseTo(-1, within(ROUNDING));
    // 3 times the limit and what shows: published, 0.8416 of the normal distribution.
    assertThat(first.slipMm()).isCloseTo(3 * (4 + .8416), within(ROUNDING));
    Fit fit = review.fit();
    assertThat(fit.entries()).isEqualTo(3);
    assertThat(fit.freedom()).isEqualTo(1);
    // Squares: 9 x (4 + 1 + 4) / 81 = 1, one to spare.
    assertThat(fit.ratio()).isCloseTo(1, within(ROUNDING));
    assertThat(fit.widened()).isEqualTo(1);
    // Heights share 8/9 of the one to spare, less than one reading: no kind is told.
    assertThat(fit.kinds()).isEmpty();
  }

  @Test
  void kindsOfReadingsFitByThemselves() {
    // Heights 0 and 4 (twice each) to 1 mm, tapes from a mark that is given, of 1, 3 to 2 mm. Mean
    // by weights 4 and 2/4: (8 + 1) / 4.5 = 2.
    int low =
        named.point(
            new NamedNetwork.Label("both", "low", false), Plausible.anywhere(0, 0, 0), 0, 0, 0);
    int p = mark();
    read(Entry.Kind.HEIGHT, new Measure.Coordinate(p, 2, 1), 1, 0.0, 0.0);
    read(Entry.Kind.HEIGHT, new Measure.Coordinate(p, 2, 1), 1, 4.0, 4.0);
    read(Entry.Kind.TAPE, new Measure.Distance(low, p), 2, 1.0, 3.0);
    Adjustment a = Adjustment.solve(named.net(), named.observations(), new double[] {1});
    assertThat(a.x()[0]).isCloseTo(2, within(ROUNDING));
    List<Fit.Kind> kinds = new NetworkReview(named, a, 4).fit().kinds();
    assertThat(kinds).extracting(Fit.Kind::name).containsExactly("heights", "tapes");
    // Of 4 heights 4 x 1/4.5 are spent: 28/9 to spare; squares 4 x 4 = 16.
    assertThat(kinds.get(0).freedom()).isCloseTo(28 / 9.0, within(ROUNDING));
    assertThat(kinds.get(0).ratio()).isCloseTo(Math.sqrt(16 * 9 / 28.0), within(ROUNDING));
    // Of 2 tapes 1/2 / 4.5 = 1/9: 17/9 to spare; scatter 2 x 1/4.
    assertThat(kinds.get(1).freedom()).isCloseTo(17 / 9.0, within(ROUNDING));
    assertThat(kinds.get(1).ratio()).isCloseTo(Math.sqrt(.5 * 9 / 17), within(ROUNDING));
  }

  @Test
  void aReadingThatNothingChecksHasNoDeviations() {
    int p = mark();
    read(Entry.Kind.HEIGHT, new Measure.Coordinate(p, 2, 1), 2, 100.0);
    ReadingResult only = review().readings().get(0);
    assertThat(only.checked()).isFalse();
    assertThat(only.redundancy()).isBetween(0.0, ROUNDING);
    assertThat(only.deviations()).isZero();
    assertThat(only.slipMm()).isZero();
    assertThat(review().fit().kinds()).isEmpty();
    assertThat(review().fit().ratio()).isZero();
  }
}
