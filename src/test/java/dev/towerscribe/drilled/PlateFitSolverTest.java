package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.Tries;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whether a plate goes on. All expected figures independent: by hand, or by {@link Brute}. */
class PlateFitSolverTest {
  /** What the search proves, and rounding. */
  private static final double EXACT = 2 * AngleSearch.PROVED_MM;

  private static List<BoltPlay> with(List<BoltPlay> pegs, int i, Vec2 hole) {
    List<BoltPlay> all = new ArrayList<>(pegs);
    BoltPlay p = pegs.get(i);
    all.set(
        i, new BoltPlay(p.name(), hole, p.place(), p.towerHoleMm(), p.plateHoleMm(), p.boltMm()));
    return all;
  }

  private static PlateFitSolver checked(List<BoltPlay> pegs) {
    PlateFitSolver mating = PlateFitSolver.of(pegs);
    // The pose is real, and nothing is better by more than is proved.
    assertThat(Brute.margin(pegs, mating.move())).isCloseTo(mating.slackMm(), within(1e-11));
    assertThat(mating.slackAtMostMm())
        .isBetween(mating.slackMm(), mating.slackMm() + AngleSearch.PROVED_MM);
    return mating;
  }

  @Test
  void drilledAsPlannedTheTightestBoltsPlayIsLeft() {
    List<BoltPlay> pegs = new ArrayList<>(Patterns.ring(4, 60, 0.8));
    assertThat(checked(pegs).slackMm()).isCloseTo(0.8, within(EXACT));
    pegs.set(2, Patterns.peg(2, pegs.get(2).hole(), pegs.get(2).place(), 0.3));
    PlateFitSolver mating = checked(pegs);
    assertThat(mating.slackMm()).isCloseTo(0.3, within(EXACT));
    assertThat(mating.tight()).containsExactly("H3");
    assertThat(mating.goesOn()).isTrue();
    assertThat(mating.move().turn().radians()).isCloseTo(0, within(1e-12));
  }

  @Test
  void oneBoltHasItsPlayAndTurnsFreely() {
    PlateFitSolver mating =
        checked(List.of(Patterns.peg(0, new Vec2(400, -300), new Vec2(20, 30), 0.4)));
    assertThat(mating.slackMm()).isCloseTo(0.4, within(EXACT));
    assertThat(mating.move().turn().radians()).isZero();
    Play play = Play.of(mating).orElseThrow();
    assertThat(play.turnOn().radians()).isEqualTo(Math.PI);
    assertThat(play.turnBack().radians()).isEqualTo(Math.PI);
  }

  @Test
  void twoBoltsShareWhatTheirSpanIsOff() {
    // Span 101.1 instead of 100: each end has half of 0.5 + 0.3 - 1.1.
    List<BoltPlay> pegs =
        List.of(
            Patterns.peg(0, new Vec2(0, 0), new Vec2(0, 0), 0.5),
            Patterns.peg(1, new Vec2(0, 101.1), new Vec2(100, 0), 0.3));
    PlateFitSolver mating = checked(pegs);
    assertThat(mating.slackMm()).isCloseTo((0.5 + 0.3 - 1.1) / 2, within(EXACT));
    assertThat(mating.goesOn()).isFalse();
    assertThat(mating.tight()).containsExactly("H1", "H2");
    assertThat(mating.move().turn().degrees()).isCloseTo(90, within(1e-3));
    assertThat(Play.of(mating)).isEmpty();
    // A hole moved 1 mm along the span changes it by half of that; across it by nothing.
    assertThat(mating.slackByHole(1).y()).isCloseTo(-0.5, within(1e-6));
    assertThat(mating.slackByHole(1).x()).isCloseTo(0, within(1e-4));
    double[][] covariance = new double[4][4];
    covariance[1][1] = 0.04;
    covariance[3][3] = 0.09;
    covariance[1][3] = covariance[3][1] = 0.01;
    // Variance of the span 0.04 + 0.09 - 0.02; half of its square root.
    assertThat(mating.slackPlusMinusMm(covariance)).isCloseTo(Math.sqrt(0.11) / 2, within(1e-6));
  }

  @Test
  void aPatternDrilledTooLargeLosesThatMuchAllRound() {
    for (int n : new int[] {3, 4, 5, 8}) {
      List<BoltPlay> pegs =
          Patterns.ring(n, 60, 0.5).stream()
              .map(p -> new BoltPlay(p.name(), p.place().times(60.7 / 60), p.place(), 8.5, 8.5, 8))
              .toList();
      // The holes' discs lie 0.7 round the middle, which is the deepest point.
      PlateFitSolver mating = checked(pegs);
      assertThat(mating.slackMm()).isCloseTo(0.5 - 0.7, within(EXACT));
      assertThat(mating.tight()).hasSize(n);
    }
  }

  @Test
  void holesDrilledRoundAndBackBindAgainstEachOther() {
    // Neighbours off by 0.4 along the circle, to and fro: no turn helps, no shift helps.
    List<BoltPlay> pegs = Patterns.ring(4, 50, 1.0);
    for (int i = 0; i < 4; i++) {
      Vec2 along = pegs.get(i).place().unit().quarterTurn();
      pegs = with(pegs, i, pegs.get(i).place().plus(along.times(i % 2 == 0 ? 0.4 : -0.4)));
    }
    PlateFitSolver mating = checked(pegs);
    assertThat(mating.slackMm()).isCloseTo(1.0 - 0.4, within(EXACT));
    assertThat(mating.tight()).hasSize(4);
    // On this ridge the gradients balance: a turn or shift of all holes changes nothing.
    double torque = 0;
    Vec2 sum = Vec2.ZERO;
    double weights = 0;
    for (int i = 0; i < 4; i++) {
      torque += pegs.get(i).place().cross(mating.slackByHole(i));
      sum = sum.plus(mating.slackByHole(i));
      weights += mating.slackByPlay(i);
    }
    assertThat(torque).isCloseTo(0, within(1e-3));
    assertThat(sum.norm()).isCloseTo(0, within(1e-9));
    assertThat(weights).isCloseTo(1, within(1e-12));
  }

  @Test
  void hugeTurnsAndFarShiftsAreFound() {
    SplittableRandom random = new SplittableRandom(71);
    for (int i = 0; i < 40; i++) {
      List<BoltPlay> pegs =
          Patterns.random(random, 2 + i % 6, 0, 0).stream()
              .map(p -> Patterns.peg(0, p.place(), p.place(), p.playMm()))
              .toList();
      double turn = random.nextDouble(-3.14, 3.14);
      PlateFitSolver mating =
          checked(
              Patterns.moved(pegs, new Angle(turn), new Vec2(random.nextDouble(-900, 900), 700)));
      double least = pegs.stream().mapToDouble(BoltPlay::playMm).min().orElseThrow();
      assertThat(mating.slackMm()).isCloseTo(least, within(EXACT));
      assertThat(Math.IEEEremainder(mating.move().turn().radians() - turn, 2 * Math.PI))
          .isCloseTo(0, within(0.1));
    }
  }

  @Tag("more-tries")
  @Test
  void againstTryingPoses() {
    SplittableRandom random = new SplittableRandom(20260301);
    int on = 0;
    int off = 0;
    int patterns = Tries.of(120, 560);
    for (int i = 0; i < patterns; i++) {
      // Small errors, large errors, patterns that have nothing to do with each other.
      double error = new double[] {0.3, 0.9, 2, 15, 150}[i % 5];
      int n = 2 + (i / 5) % 6;
      List<BoltPlay> pegs = Patterns.random(random, n, error, i % 3 == 0 ? Math.PI : 0.05);
      double brute = Brute.slack(pegs);
      PlateFitSolver mating = checked(pegs);
      double tolerance = Brute.tolerance(Patterns.radius(pegs), 300);
      assertThat(mating.slackMm()).as("pattern %d", i).isBetween(brute - 1e-9, brute + tolerance);
      if (Math.abs(brute) > tolerance) {
        assertThat(mating.goesOn()).isEqualTo(brute > 0);
      }
      on += mating.goesOn() ? 1 : 0;
      off += mating.goesOn() ? 0 : 1;
    }
    assertThat(on).isGreaterThan(patterns / 7);
    assertThat(off).isGreaterThan(patterns / 7);
  }

  @Test
  void symmetricPatternsAgainstTryingPoses() {
    SplittableRandom random = new SplittableRandom(20260302);
    for (int i = 0; i < 60; i++) {
      List<BoltPlay> pegs = new ArrayList<>(Patterns.ring(2 + i % 5, 55, 0.5));
      for (int k = 0; k < pegs.size(); k++) {
        Vec2 off = new Vec2(random.nextDouble(-0.6, 0.6), random.nextDouble(-0.6, 0.6));
        pegs = with(pegs, k, pegs.get(k).place().plus(off));
      }
      double brute = Brute.slack(pegs);
      assertThat(checked(pegs).slackMm())
          .as("pattern %d", i)
          .isBetween(brute - 1e-9, brute + Brute.tolerance(55, 110));
    }
  }

  @Test
  void holesInOnePlaceAndRepeatedHoles() {
    Vec2 p = new Vec2(10, 20);
    // Two holes planned in one place and drilled 1 apart: half of it each.
    PlateFitSolver mating =
        checked(
            List.of(
                Patterns.peg(0, p, p, 0.7),
                Patterns.peg(1, p.plus(new Vec2(1, 0)), p, 0.7),
                Patterns.peg(2, p, p, 0.7)));
    assertThat(mating.slackMm()).isCloseTo(0.2, within(EXACT));
    assertThat(mating.tight()).containsExactly("H1", "H2", "H3");
  }

  @Test
  void aBoltThatDoesNotGoThroughItsOwnHoleIsNamed() {
    List<BoltPlay> pegs = new ArrayList<>(Patterns.ring(3, 60, 0.5));
    BoltPlay p = pegs.get(1);
    // Wide in the plate, narrow in the tower: play enough, but the bolt does not go in.
    pegs.set(1, new BoltPlay(p.name(), p.hole(), p.place(), 7.9, 9.5, 8));
    PlateFitSolver mating = checked(pegs);
    assertThat(mating.slackMm()).isCloseTo(0.5, within(EXACT));
    assertThat(mating.blocked()).containsExactly("H2");
    assertThat(mating.goesOn()).isFalse();
  }

  @Test
  void theVeryLimitGoesOn() {
    List<BoltPlay> pegs =
        List.of(
            Patterns.peg(0, new Vec2(0, 0), new Vec2(0, 0), 0.5),
            Patterns.peg(1, new Vec2(101, 0), new Vec2(100, 0), 0.5));
    PlateFitSolver mating = checked(pegs);
    assertThat(mating.slackMm()).isCloseTo(0, within(EXACT));
    assertThat(mating.goesOn()).isTrue();
  }

  @Test
  void aMoveIsCarriedToTheMount() {
    // A quarter turn about the plan's origin: 8 rearward, 3 inboard goes from (-8, 3) to (-3, -8).
    Mount moved =
        new RigidMove(Angle.ofDegrees(90), new Vec2(1, 2))
            .of(new Mount(Angle.ofDegrees(35), 8, 3, 12));
    assertThat(moved.rotation().degrees()).isCloseTo(125, within(1e-12));
    assertThat(moved.rearwardMm()).isCloseTo(2, within(1e-12));
    assertThat(moved.inboardMm()).isCloseTo(-6, within(1e-12));
    assertThat(moved.settingMm()).isEqualTo(12);
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> PlateFitSolver.of(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BoltPlay("A", Vec2.ZERO, Vec2.ZERO, 9, 0, 8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("positive");
    assertThatThrownBy(
            () -> PlateFitSolver.of(Patterns.ring(3, 60, 1)).slackPlusMinusMm(new double[5][6]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("6 rows");
  }
}
