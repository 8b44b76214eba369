package dev.towerscribe.drilled;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Invented hole patterns for tests. */
final class Patterns {
  static final double BOLT = 8.0;

  private Patterns() {}

  static BoltPlay peg(int i, Vec2 hole, Vec2 place, double play) {
    return new BoltPlay("H" + (i + 1), hole, place, BOLT + play, BOLT + play, BOLT);
  }

  /** Evenly on a circle, drilled where planned. */
  static List<BoltPlay> ring(int n, double radius, double play) {
    List<BoltPlay> pegs = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec2 p = Vec2.polar(radius, new Angle(2 * Math.PI * i / n));
      pegs.add(peg(i, p, p, play));
    }
    return pegs;
  }

  /** Anywhere within 100 mm, drilled with an error of about that size, plays up to 1 mm. */
  static List<BoltPlay> random(SplittableRandom random, int n, double errorMm, double mostTurn) {
    double turn = mostTurn * (2 * random.nextDouble() - 1);
    Vec2 shift = new Vec2(random.nextDouble(-5, 5), random.nextDouble(-5, 5));
    List<BoltPlay> pegs = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec2 place =
          Vec2.polar(100 * Math.sqrt(random.nextDouble()), new Angle(random.nextDouble(0, 6.28)));
      Vec2 error = Vec2.polar(errorMm * random.nextDouble(), new Angle(random.nextDouble(0, 6.28)));
      Vec2 hole = place.rotated(new Angle(turn)).plus(shift).plus(error);
      pegs.add(peg(i, hole, place, random.nextDouble()));
    }
    return pegs;
  }

  static List<BoltPlay> moved(List<BoltPlay> pegs, Angle turn, Vec2 shift) {
    return pegs.stream()
        .map(
            p ->
                new BoltPlay(
                    p.name(),
                    p.hole().rotated(turn).plus(shift),
                    p.place(),
                    p.towerHoleMm(),
                    p.plateHoleMm(),
                    p.boltMm()))
        .toList();
  }

  static List<BoltPlay> mirrored(List<BoltPlay> pegs) {
    return pegs.stream()
        .map(
            p ->
                new BoltPlay(
                    p.name(),
                    new Vec2(p.hole().x(), -p.hole().y()),
                    new Vec2(p.place().x(), -p.place().y()),
                    p.towerHoleMm(),
                    p.plateHoleMm(),
                    p.boltMm()))
        .toList();
  }

  /** Greatest distance of the pattern's places from their middle. */
  static double radius(List<BoltPlay> pegs) {
    Vec2 sum = Vec2.ZERO;
    for (BoltPlay p : pegs) {
      sum = sum.plus(p.place());
    }
    Vec2 middle = sum.times(1.0 / pegs.size());
    return pegs.stream().mapToDouble(p -> p.place().distanceTo(middle)).max().orElseThrow();
  }
}
