package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.Tries;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The least drilling out that lets a plate on. */
class EnlargementTest {
  /** Diameters are that near to the least, and radii half of it; with what the search proves. */
  private static final double NEAR = Enlargement.NEAR_MM;

  private static BoltPlay peg(String name, Vec2 hole, Vec2 place, double tower, double plate) {
    return new BoltPlay(name, hole, place, tower, plate, 8);
  }

  @Test
  void twoHolesOfAWrongSpan() {
    List<BoltPlay> pegs =
        List.of(
            peg("A", new Vec2(0, 0), new Vec2(0, 0), 9, 9),
            peg("B", new Vec2(102.6, 0), new Vec2(100, 0), 9, 9));
    Enlargement e = Enlargement.of(PlateFitSolver.of(pegs));
    // Independent, by hand: 2.6 off, 2 of play; 0.6 more of play is 1.2 more of one hole's
    // diameter.
    for (Enlargement.One one : e.each()) {
      assertThat(one.byMm().orElseThrow()).isCloseTo(1.2, within(NEAR));
      assertThat(one.diameterMm().orElseThrow()).isCloseTo(10.2, within(NEAR));
    }
    assertThat(e.best().orElseThrow().name()).isEqualTo("A");
    assertThat(e.allByMm().orElseThrow()).isCloseTo(0.6, within(NEAR));
  }

  @Test
  void oneHoleAstrayIsDrilledOutAlone() {
    List<BoltPlay> pegs = new ArrayList<>(Patterns.ring(4, 60, 0.5));
    BoltPlay c = pegs.get(2);
    pegs.set(2, Patterns.peg(2, c.hole().plus(new Vec2(3, 0)), c.place(), 0.5));
    Enlargement e = Enlargement.of(PlateFitSolver.of(pegs));
    Enlargement.One best = e.best().orElseThrow();
    assertThat(best.name()).isEqualTo("H3");
    // Independent, straight: shift all by 0.5 toward it, its own play is 0.5, 2 are left: 4 in
    // diameter. A turn
    // cannot help, as the stray lies along the hole's radius.
    assertThat(best.byMm().orElseThrow()).isCloseTo(4.0, within(1e-6));
  }

  @Test
  void noHoleAloneDoesItWhereTwoAreAstray() {
    List<BoltPlay> pegs = new ArrayList<>(Patterns.ring(6, 60, 0.3));
    for (int i : new int[] {0, 1, 3}) {
      BoltPlay p = pegs.get(i);
      pegs.set(i, Patterns.peg(i, p.place().times(1.05), p.place(), 0.3));
    }
    PlateFitSolver mating = PlateFitSolver.of(pegs);
    Enlargement e = Enlargement.of(mating);
    assertThat(e.best()).isEmpty();
    assertThat(e.each()).hasSize(6).allMatch(o -> o.byMm().isEmpty());
    assertThat(e.allByMm().orElseThrow()).isCloseTo(-2 * mating.slackMm(), within(1e-12));
    assertThat(grown(mating, e.allByMm().orElseThrow()).slackMm()).isCloseTo(0, within(2e-9));
  }

  private static PlateFitSolver grown(PlateFitSolver mating, double by) {
    return PlateFitSolver.of(
        mating.pegs().stream().map(p -> p.drilledTo(p.towerHoleMm() + by)).toList());
  }

  @Test
  void aPlateThatGoesOnNeedsNone() {
    Enlargement e = Enlargement.of(PlateFitSolver.of(Patterns.ring(3, 50, 0.4)));
    assertThat(e.allByMm()).contains(0.0);
    assertThat(e.each()).allMatch(o -> o.byMm().orElseThrow() == 0.0);
  }

  @Test
  void aHoleNarrowerThanItsBolt() {
    // Independent: 8 less 7.8.
    List<BoltPlay> pegs = new ArrayList<>(Patterns.ring(3, 60, 0.5));
    pegs.set(1, peg("H2", pegs.get(1).hole(), pegs.get(1).place(), 7.8, 9));
    Enlargement e = Enlargement.of(PlateFitSolver.of(pegs));
    // Only the narrow hole helps, and it must let its bolt through.
    assertThat(e.each().get(0).byMm()).isEmpty();
    assertThat(e.each().get(1).diameterMm().orElseThrow()).isCloseTo(8, within(1e-12));
    assertThat(e.best().orElseThrow().name()).isEqualTo("H2");
    assertThat(e.allByMm().orElseThrow()).isCloseTo(0.2, within(1e-12));
    assertThat(grown(PlateFitSolver.of(pegs), e.allByMm().orElseThrow()).goesOn()).isTrue();
    // A plate's hole that is too narrow no drilling of the tower mends.
    pegs.set(0, peg("H1", pegs.get(0).hole(), pegs.get(0).place(), 9, 7.8));
    Enlargement none = Enlargement.of(PlateFitSolver.of(pegs));
    assertThat(none.best()).isEmpty();
    assertThat(none.allByMm()).isEmpty();
  }

  @Test
  void oneBoltTooTight() {
    List<BoltPlay> pegs = List.of(new BoltPlay("A", Vec2.ZERO, Vec2.ZERO, 7.5, 8, 8));
    assertThat(
            Enlargement.of(PlateFitSolver.of(pegs)).best().orElseThrow().diameterMm().orElseThrow())
        .isCloseTo(8, within(NEAR));
  }

  @Tag("more-tries")
  @Test
  void drilledOutItGoesOnAndALittleLessItDoesNot() {
    SplittableRandom random = new SplittableRandom(20260311);
    int done = 0;
    int none = 0;
    int cases = Tries.of(50, 150);
    for (int i = 0; i < cases; i++) {
      List<BoltPlay> pegs = Patterns.random(random, 2 + i % 5, 1.2, 0.2);
      PlateFitSolver mating = PlateFitSolver.of(pegs);
      if (mating.goesOn()) {
        continue;
      }
      Enlargement e = Enlargement.of(mating);
      for (int k = 0; k < pegs.size(); k++) {
        if (e.each().get(k).byMm().isEmpty()) {
          if (i % 3 == 0) {
            // independent: however wide, the others do not let it on.
            List<BoltPlay> wide = new ArrayList<>(pegs);
            wide.set(k, pegs.get(k).drilledTo(1000));
            assertThat(Brute.slack(wide)).isLessThan(1e-9);
          }
          none++;
          continue;
        }
        double d = e.each().get(k).diameterMm().orElseThrow();
        List<BoltPlay> changed = new ArrayList<>(pegs);
        changed.set(k, pegs.get(k).drilledTo(d));
        assertThat(PlateFitSolver.of(changed).goesOn()).isTrue();
        assertThat(PlateFitSolver.of(changed).slackMm()).isCloseTo(0, within(NEAR));
        changed.set(k, pegs.get(k).drilledTo(d - 2 * NEAR));
        assertThat(PlateFitSolver.of(changed).slackMm()).as("case %d", i).isNegative();
        // independent: by trying poses, a hundredth less does not let it on.
        if (k == 0) {
          changed.set(k, pegs.get(k).drilledTo(d - 0.01));
          assertThat(Brute.slack(changed)).isNegative();
        }
        done++;
      }
      assertThat(e.allByMm().orElseThrow())
          .isLessThanOrEqualTo(
              e.best().map(b -> b.byMm().orElseThrow()).orElse(Double.POSITIVE_INFINITY));
    }
    assertThat(done).isGreaterThan(cases / 3);
    assertThat(none).isGreaterThan(cases / 8);
  }
}
