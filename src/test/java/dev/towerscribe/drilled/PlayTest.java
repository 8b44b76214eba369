package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** How far a plate that goes on can still be moved. */
class PlayTest {
  private static Play play(List<BoltPlay> pegs) {
    return Play.of(PlateFitSolver.of(pegs)).orElseThrow();
  }

  @Test
  void twoBoltsTurnUntilBothBind() {
    List<BoltPlay> pegs =
        List.of(
            Patterns.peg(0, new Vec2(0, 0), new Vec2(0, 0), 0.5),
            Patterns.peg(1, new Vec2(100, 0), new Vec2(100, 0), 0.3));
    // Independent, by hand: a turn parts the two shifts by the chord 2 * 100 sin(turn / 2), at most
    // 0.8.
    double most = 2 * Math.asin(0.8 / 200);
    Play play = play(pegs);
    assertThat(play.turnOn().radians()).isCloseTo(most, within(Play.TURN_NEAR));
    assertThat(play.turnBack().radians()).isCloseTo(most, within(Play.TURN_NEAR));
    assertThat(play.greatest(1, Vec2.ZERO, Vec2.ZERO).value())
        .isCloseTo(most, within(Play.TURN_NEAR));
    // Along the line of the holes the tighter one stops it. A turn that the wider one allows draws
    // the holes together by u: (0.3 + u)^2 + 100^2 - (100 - u)^2 = 0.5^2, of which the middle has
    // half. Pushing the tighter one aside a little as well gains some 1e-6 more.
    assertThat(play.greatest(0, new Vec2(1, 0), new Vec2(50, 0)).value())
        .isCloseTo(50.3 + 0.16 / 200.6 / 2, within(2e-6));
    // Across it the middle goes as far as both together: half of each. The turn that this takes
    // pulls the holes 1e-6 of their distance together, which costs second order only.
    assertThat(play.greatest(0, new Vec2(0, 1), new Vec2(50, 0)).value())
        .isCloseTo(0.4, within(1e-5));
  }

  @Test
  void aFittedStudIsAPivot() {
    Vec2 stud = new Vec2(30, 10);
    List<BoltPlay> pegs =
        List.of(
            new BoltPlay("S", stud, stud, 8, 8, 8),
            Patterns.peg(1, stud.plus(new Vec2(0, 80)), stud.plus(new Vec2(0, 80)), 0.4));
    PlateFitSolver mating = PlateFitSolver.of(pegs);
    assertThat(mating.slackMm()).isCloseTo(0, within(1e-12));
    Play play = Play.of(mating).orElseThrow();
    // Independent, by hand: the other hole moves by the chord 160 sin(turn / 2), at most 0.4.
    double most = 2 * Math.asin(0.4 / 160);
    assertThat(play.turnOn().radians()).isCloseTo(most, within(Play.TURN_NEAR));
    assertThat(play.turnBack().radians()).isCloseTo(most, within(Play.TURN_NEAR));
    assertThat(play.greatest(0, new Vec2(1, 0), stud).value()).isCloseTo(30, within(1e-6));
  }

  @Test
  void equalHolesShiftByTheirPlay() {
    // Independent: geometry of a circle.
    Play play = play(Patterns.ring(5, 60, 0.7));
    for (int i = 0; i < 12; i++) {
      Vec2 way = Vec2.polar(1, Angle.ofDegrees(30 * i));
      assertThat(play.greatest(0, way, Vec2.ZERO).value()).isCloseTo(0.7, within(1e-6));
    }
    // A turn moves every hole by the chord 120 sin(turn / 2).
    assertThat(play.turnOn().radians()).isCloseTo(2 * Math.asin(0.7 / 120), within(Play.TURN_NEAR));
  }

  @Test
  void theEndsAreEnds() {
    SplittableRandom random = new SplittableRandom(95);
    int on = 0;
    for (int i = 0; i < 150; i++) {
      List<BoltPlay> pegs = Patterns.random(random, 2 + i % 5, 0.4, 0.3);
      PlateFitSolver mating = PlateFitSolver.of(pegs);
      if (!mating.goesOn()) {
        assertThat(Play.of(mating)).isEmpty();
        continue;
      }
      on++;
      Play play = Play.of(mating).orElseThrow();
      double turn = mating.move().turn().radians();
      double from = turn - play.turnBack().radians();
      double to = turn + play.turnOn().radians();
      // independent: Brute finds a shift everywhere between, and none past the ends. A turn of
      // 1e-5 moves a hole by 1e-3 mm and must show, unless the bolt only grazes.
      for (int k = 0; k <= 10; k++) {
        assertThat(Brute.depth(pegs, from + k * (to - from) / 10, 43)).isGreaterThan(-1e-6);
      }
      assertThat(Brute.depth(pegs, to + 1e-5, 43)).as("case %d", i).isNegative();
      assertThat(Brute.depth(pegs, from - 1e-5, 43)).as("case %d", i).isNegative();
    }
    assertThat(on).isGreaterThan(60);
  }

  @Test
  void noPoseThatGoesOnIsFarther() {
    SplittableRandom random = new SplittableRandom(96);
    int tried = 0;
    for (int i = 0; i < 40; i++) {
      List<BoltPlay> pegs = Patterns.random(random, 3 + i % 3, 0.2, 0.1);
      PlateFitSolver mating = PlateFitSolver.of(pegs);
      if (!mating.goesOn()) {
        continue;
      }
      Play play = Play.of(mating).orElseThrow();
      Vec2 point = new Vec2(random.nextDouble(-60, 60), random.nextDouble(-60, 60));
      double perRadian = random.nextDouble(-80, 80);
      Vec2 perMm = new Vec2(random.nextDouble(-1, 1), random.nextDouble(-1, 1));
      Play.Extreme most = play.greatest(perRadian, perMm, point);
      // The extreme is a pose that goes on, and has the value.
      assertThat(Brute.margin(pegs, most.move())).isGreaterThan(-1e-7);
      assertThat(most.value())
          .isCloseTo(
              perRadian * most.move().turn().radians() + perMm.dot(most.move().of(point)),
              within(1e-9));
      double turn = mating.move().turn().radians();
      for (int k = 0; k < 20_000; k++) {
        double angle =
            turn
                + random.nextDouble(-1, 1)
                    * Math.max(play.turnOn().radians(), play.turnBack().radians());
        Angle there = new Angle(angle);
        Vec2 middle = mating.move().of(point);
        Vec2 shift =
            middle
                .minus(point.rotated(there))
                .plus(new Vec2(random.nextDouble(-1.5, 1.5), random.nextDouble(-1.5, 1.5)));
        RigidMove move = new RigidMove(there, shift);
        if (Brute.margin(pegs, move) >= 0) {
          tried++;
          // Second order of turns of some hundredths on 100 mm.
          assertThat(perRadian * angle + perMm.dot(move.of(point)))
              .as("case %d", i)
              .isLessThan(most.value() + 1e-3);
        }
      }
    }
    assertThat(tried).isGreaterThan(5000);
  }
}
