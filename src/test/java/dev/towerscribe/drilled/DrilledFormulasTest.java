package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.NormalEquations;
import dev.towerscribe.adjust.Observation;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.adjust.Row;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Standard deviations of drilled patterns where errors hang together. Expected values: independent,
 * worked by hand.
 */
class DrilledFormulasTest {
  private static final double ROUNDING = 1e-12;

  private static final List<Vec2> PAIR = List.of(new Vec2(10, 0), new Vec2(-10, 0));

  /** Of x1, y1, x2, y2: variances 1, 4, 1, 9; y1 with y2 2, x1 with y1 a half. */
  private static final double[][] C = {{1, .5, 0, 0}, {.5, 4, 0, 2}, {0, 0, 1, 0}, {0, 2, 0, 9}};

  @Test
  void aPairOfHolesTurnsByItsDifferenceAndShiftsByItsMean() {
    // Turn (y1 - y2) / 20: (4 + 9 - 4) / 400 = .0225; fore (x1 + x2) / 2: .5; in: (4 + 9 + 4) / 4.
    RigidFit fit = RigidFit.plain(PAIR, PAIR, C);
    double[][] middle = fit.covarianceAt(Vec2.ZERO).orElseThrow();
    assertThat(middle[0][0]).isCloseTo(.0225, within(ROUNDING));
    assertThat(middle[1][1]).isCloseTo(.5, within(ROUNDING));
    assertThat(middle[2][2]).isCloseTo(4.25, within(ROUNDING));
    // Turn with fore .5 / 40; with in (4 + 2 - 2 - 9) / 40; fore with in .5 / 4.
    assertThat(middle[0][1]).isCloseTo(.0125, within(ROUNDING));
    assertThat(middle[0][2]).isCloseTo(-.125, within(ROUNDING));
    assertThat(middle[1][2]).isCloseTo(.125, within(ROUNDING));
    // At a hole it is the hole's own inward variance; beside the pair the turn shifts it back.
    assertThat(fit.covarianceAt(PAIR.get(0)).orElseThrow()[2][2]).isCloseTo(4, within(ROUNDING));
    assertThat(fit.covarianceAt(PAIR.get(1)).orElseThrow()[2][2]).isCloseTo(9, within(ROUNDING));
    double[][] beside = fit.covarianceAt(new Vec2(0, 20)).orElseThrow();
    // .5 - 2 x 20 x .0125 + 400 x .0225.
    assertThat(beside[1][1]).isCloseTo(9, within(ROUNDING));
    assertThat(beside[2][2]).isCloseTo(4.25, within(ROUNDING));
    assertThat(fit.chiSquare()).isEmpty();
  }

  @Test
  void aPairThatIsReadTooFarApartStretchesNothing() {
    // Each is off by 1 along the line, which no turn or shift takes up: the residuals.
    RigidFit fit =
        RigidFit.weighted(
            PAIR,
            List.of(new Vec2(11, 0), new Vec2(-11, 0)),
            new double[][] {{2, 0, 1, 0}, {0, 1, 0, 0}, {1, 0, 2, 0}, {0, 0, 0, 1}});
    assertThat(fit.residuals().get(0).x()).isCloseTo(1, within(1e-9));
    assertThat(fit.residuals().get(1).x()).isCloseTo(-1, within(1e-9));
    assertThat(fit.meanSquareMm2()).isCloseTo(1, within(1e-9));
    // Of x1 - x2 = 2 the variance is 2 + 2 - 2 = 2: chi-square 4 / 2.
    assertThat(fit.chiSquare().orElseThrow()).isCloseTo(2, within(1e-9));
    // Fore, the mean, has (2 + 2 + 2) / 4.
    assertThat(fit.covarianceAt(Vec2.ZERO).orElseThrow()[1][1]).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void flippedIsSaidPastThreeTimes() {
    // Turned over, the pattern fits exactly; as it is, some millimetres are left.
    List<Vec2> planned = List.of(new Vec2(0, 0), new Vec2(40, 0), new Vec2(0, 30));
    List<Vec2> over = planned.stream().map(p -> new Vec2(p.x(), -p.y())).toList();
    RigidFit fit = RigidFit.plain(planned, over);
    double left = Math.sqrt(fit.meanSquareMm2());
    assertThat(fit.looksFlipped(left / 3.001)).isTrue();
    assertThat(fit.looksFlipped(left / 2.999)).isFalse();
    assertThat(RigidFit.plain(planned, planned).looksFlipped(0)).isFalse();
  }

  @Test
  void derivativesByTheMount() {
    // 2 of the rotation, 3 of rearward, -5 of inboard.
    DrilledAngles.Slope slope =
        DrilledAngles.slope(
            new Mount(Angle.ofDegrees(40), 12, -5, 3),
            m -> 2 * m.rotation().radians() + 3 * m.rearwardMm() - 5 * m.inboardMm());
    assertThat(slope.perRadian()).isCloseTo(2, within(1e-8));
    assertThat(slope.perRearwardMm()).isCloseTo(3, within(1e-8));
    assertThat(slope.perInboardMm()).isCloseTo(-5, within(1e-8));
    // 4 x 4 + 9 x 9 + 25 x 16 + 2 (6 x 1 - 10 x -2 - 15 x 3) = 497 + 2 x -19.
    MountCovariance sure = new MountCovariance(4, 9, 16, 1, -2, 3);
    assertThat(new DrilledAngles.Slope(2, 3, -5).plusMinus(sure).radians())
        .isCloseTo(Math.sqrt(459), within(ROUNDING));
  }

  @Test
  void whatTwoBoltsHaveLeftHangsOnTheirSpan() {
    // Drilled 0.4 too far apart, a play of 1: 0.8 left, by half of x1 - x2.
    PlateFitSolver m =
        PlateFitSolver.of(
            List.of(
                new BoltPlay("A", new Vec2(30.2, 0), new Vec2(30, 0), 9, 9, 8),
                new BoltPlay("B", new Vec2(-30.2, 0), new Vec2(-30, 0), 9, 9, 8)));
    assertThat(m.slackMm()).isCloseTo(.8, within(1e-8));
    // (.04 + .09 - 2 x .03) / 4: errors in common shift the plate and cost nothing.
    double[][] c = {{.04, 0, .03, 0}, {0, 1, 0, 0}, {.03, 0, .09, 0}, {0, 0, 0, 1}};
    assertThat(m.slackPlusMinusMm(c)).isCloseTo(Math.sqrt(.0175), within(1e-8));
    assertThat(m.slackByHole(0).x()).isCloseTo(-.5, within(1e-8));
    assertThat(m.slackByHole(1).x()).isCloseTo(.5, within(1e-8));
    assertThat(m.slackByPlay(0) + m.slackByPlay(1)).isCloseTo(1, within(1e-8));
    assertThat(m.tight()).containsExactly("A", "B");
    assertThatThrownBy(() -> m.slackPlusMinusMm(new double[2][2]))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private final Network net = new Network();
  private final List<Observation> read = new ArrayList<>();

  private void read(Measure measure, double value, double sd) {
    read.add(Observation.of(read.size(), measure, Repeated.once(value, sd)));
  }

  private Covariance held(int holes, double... x) {
    return Pattern.held(net, holes, NormalEquations.of(net, read, x).matrix(), x);
  }

  private int hole() {
    return net.node(Network.FREE, Network.FREE, 0);
  }

  @Test
  void movesOfTheWholePatternAreHeldWhereNothingResistsThem() {
    // A span of 100 to 2 mm alone: fore, in and turn are held with the mean weight, (2 / 4) / 4.
    read(new Measure.Distance(hole(), hole()), 100, 2);
    Covariance c = held(2, -50, 0, 50, 0);
    assertThat(c.open()).isEmpty();
    // Half of (x1 + x2), weight 1/8: 8 / 2; half of the span's 4 / 2: 4 + 1, and 4 - 1 together.
    double[][] m = c.matrix();
    assertThat(m[0][0]).isCloseTo(5, within(ROUNDING * 100));
    assertThat(m[0][2]).isCloseTo(3, within(ROUNDING * 100));
    // Inward: both in and turn are held.
    assertThat(m[1][1]).isCloseTo(8, within(ROUNDING * 100));
    assertThat(m[1][3]).isCloseTo(0, within(ROUNDING * 100));
    // The span keeps its own: 5 + 5 - 6.
    assertThat(c.sd(new Row(new int[] {0, 2}, new double[] {-1, 1})))
        .isCloseTo(2, within(ROUNDING * 100));
  }

  @Test
  void aSlantedPatternIsHeldAboutItsMiddle() {
    // 60 and 80 apart, the first at (20, 10): along the span half is 1, across it 8 is 8.
    read(new Measure.Distance(hole(), hole()), 100, 2);
    double[][] m = held(2, 20, 10, 80, 90).matrix();
    // Along (.6, .8) 5, across it 8: xx = .36 x 5 + .64 x 8; xy = .48 (5 - 8).
    assertThat(m[0][0]).isCloseTo(6.92, within(ROUNDING * 100));
    assertThat(m[1][1]).isCloseTo(6.08, within(ROUNDING * 100));
    assertThat(m[0][1]).isCloseTo(-1.44, within(ROUNDING * 100));
  }

  @Test
  void whatResistsAMoveIsNotHeld() {
    // The first hole read fore to 1, and the span: 1, 1 + 4, and 1 together.
    int first = hole();
    read(new Measure.Distance(first, hole()), 100, 2);
    read(new Measure.Coordinate(first, 0, 1), -50, 1);
    double[][] m = held(2, -50, 0, 50, 0).matrix();
    assertThat(m[0][0]).isCloseTo(1, within(ROUNDING * 100));
    assertThat(m[0][2]).isCloseTo(1, within(ROUNDING * 100));
    assertThat(m[2][2]).isCloseTo(5, within(ROUNDING * 100));
  }

  @Test
  void oneHoleAloneHasNoTurn() {
    int only = hole();
    read(new Measure.Coordinate(only, 0, 1), 7, 2);
    read(new Measure.Coordinate(only, 1, 1), 8, 3);
    double[][] m = held(1, 7, 8).matrix();
    assertThat(m[0][0]).isCloseTo(4, within(ROUNDING * 100));
    assertThat(m[1][1]).isCloseTo(9, within(ROUNDING * 100));
    assertThat(Adjustment.solve(net, read, new double[2]).freedom()).isZero();
  }

  @Test
  void placesThatDoNotGoTogetherAreRefused() {
    List<Vec2> three = List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(0, 1));
    List<Vec2> same = List.of(Vec2.ZERO, Vec2.ZERO);
    assertThatThrownBy(() -> RigidFit.plain(PAIR, three, C)).hasMessageContaining("cannot fit");
    assertThatThrownBy(() -> RigidFit.weighted(PAIR, three, C)).hasMessageContaining("cannot fit");
    assertThatThrownBy(() -> RigidFit.plain(PAIR, PAIR, new double[3][3]))
        .hasMessageContaining("4 rows");
    assertThatThrownBy(() -> RigidFit.plain(same, PAIR, C)).hasMessageContaining("turn");
    RigidFit over = RigidFit.plain(PAIR, List.of(new Vec2(11, 0), new Vec2(-11, 0)), C);
    // A pair is its own mirror image, and fits as badly turned over.
    assertThat(over.mirroredMeanSquareMm2()).isCloseTo(1, within(ROUNDING));
  }
}
