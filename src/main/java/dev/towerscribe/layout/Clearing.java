package dev.towerscribe.layout;

import dev.towerscribe.finding.Findings;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * Which way to shift something, and how far, until a figure that must not be less than its limit
 * passes. It asks the check's own function and holds the answer against it, so a shift that it
 * gives clears that check, printed digits and all.
 *
 * <p>It follows the figure uphill, which is the shortest way where one edge alone is too near, and
 * looks around in rings where that leads nowhere. Example: a figure of 32.1 that grows by 1 for
 * each mm to the rear and must be 36 gives a shift of 3.9 mm to the rear.
 */
final class Clearing {
  /** Step of a difference quotient, mm: figures are right to about 1e-6 of it. */
  private static final double QUOTIENT_MM = 1e-3;

  /** A distance grows by 1 for each mm; one that hardly grows leads nowhere. */
  private static final double FLAT = 0.2;

  private static final int CLIMBS = 12;

  /** Nobody shifts a plate farther. */
  private static final double MOST_MM = 100.0;

  private static final double FIRST_RING_MM = 1.0;
  private static final int TURNS = 16;
  private static final int HALVINGS = 10;

  /** Steps tried beyond what was found, as rounding may have spoilt it. */
  private static final int FURTHER = 20;

  private final ToDoubleFunction<Vec2> figureMm;
  private final double limitMm;

  private Clearing(ToDoubleFunction<Vec2> figureMm, double limitMm) {
    this.figureMm = figureMm;
    this.limitMm = limitMm;
  }

  /**
   * A shift that makes the figure pass.
   *
   * @param figureMm the figure for a shift from here, plan
   * @param limitMm the least that passes
   * @param stepMm both parts of the shift are whole numbers of this
   * @return the shift, plan; empty if none was found
   */
  static Optional<Vec2> shift(ToDoubleFunction<Vec2> figureMm, double limitMm, double stepMm) {
    Clearing clearing = new Clearing(figureMm, limitMm);
    return clearing
        .climbed()
        .or(clearing::around)
        .flatMap(v -> clearing.whole(v, stepMm))
        .filter(v -> v.norm() > 0);
  }

  /**
   * A shift one way that makes the figure pass.
   *
   * @param way which way, of length one
   * @param figureMm the figure for a shift by so much, mm
   * @param limitMm the least that passes
   * @param stepMm the shift is a whole number of this
   * @return the shift, plan; empty if none was found
   */
  static Optional<Vec2> along(
      Vec2 way, DoubleUnaryOperator figureMm, double limitMm, double stepMm) {
    double missing = away(limitMm - figureMm.applyAsDouble(0), stepMm);
    for (int i = 0; i <= FURTHER; i++) {
      double mm = missing + i * stepMm;
      if (Findings.passes(figureMm.applyAsDouble(mm), limitMm)) {
        return Optional.of(way.times(mm));
      }
    }
    return Optional.empty();
  }

  /**
   * Which way a figure grows most.
   *
   * @param figureMm the figure for a shift from here
   * @return a direction of length one; zero where it grows no way
   */
  static Vec2 uphill(ToDoubleFunction<Vec2> figureMm) {
    Vec2 slope = slope(figureMm, Vec2.ZERO);
    return slope.norm() < FLAT ? Vec2.ZERO : slope.unit();
  }

  private static Vec2 slope(ToDoubleFunction<Vec2> figureMm, Vec2 at) {
    double h = QUOTIENT_MM;
    Vec2 fore = new Vec2(h, 0);
    Vec2 in = new Vec2(0, h);
    double dx = figureMm.applyAsDouble(at.plus(fore)) - figureMm.applyAsDouble(at.minus(fore));
    double dy = figureMm.applyAsDouble(at.plus(in)) - figureMm.applyAsDouble(at.minus(in));
    return Double.isFinite(dx) && Double.isFinite(dy)
        ? new Vec2(dx / (2 * h), dy / (2 * h))
        : Vec2.ZERO;
  }

  private boolean passes(Vec2 v) {
    return Findings.passes(figureMm.applyAsDouble(v), limitMm);
  }

  private Optional<Vec2> climbed() {
    Vec2 v = Vec2.ZERO;
    for (int i = 0; i < CLIMBS && v.norm() <= MOST_MM; i++) {
      double missing = limitMm - figureMm.applyAsDouble(v);
      if (missing <= 0) {
        return Optional.of(v);
      }
      Vec2 slope = slope(figureMm, v);
      if (slope.norm() < FLAT) {
        return Optional.empty();
      }
      v = v.plus(slope.unit().times((missing + Tolerances.SAME_POINT_MM) / slope.norm()));
    }
    return Optional.empty();
  }

  /** The first ring on which it passes somewhere, then as near as it still does. */
  private Optional<Vec2> around() {
    for (double radius = FIRST_RING_MM; radius <= MOST_MM; radius *= 2) {
      Vec2 best = Vec2.ZERO;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < TURNS; i++) {
        Vec2 v = Vec2.polar(radius, Angle.ofDegrees(i * 360.0 / TURNS));
        double figure = figureMm.applyAsDouble(v);
        if (figure > most) {
          best = v;
          most = figure;
        }
      }
      if (passes(best)) {
        return Optional.of(nearer(best));
      }
    }
    return Optional.empty();
  }

  private Vec2 nearer(Vec2 passing) {
    double fails = 0;
    double holds = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double half = (fails + holds) / 2;
      if (passes(passing.times(half))) {
        holds = half;
      } else {
        fails = half;
      }
    }
    return passing.times(holds);
  }

  /** Both parts rounded away from here, and somewhat farther if that does not do. */
  private Optional<Vec2> whole(Vec2 v, double stepMm) {
    for (int i = 0; i <= FURTHER; i++) {
      Vec2 farther = v.norm() == 0 ? v : v.plus(v.unit().times(i * stepMm));
      Vec2 rounded = new Vec2(away(farther.x(), stepMm), away(farther.y(), stepMm));
      if (passes(rounded)) {
        return Optional.of(rounded);
      }
    }
    return Optional.empty();
  }

  private static double away(double mm, double stepMm) {
    // What is a whole number of steps but for rounding stays so.
    return Math.copySign(Math.ceil(Math.abs(mm) / stepMm - 1e-2) * stepMm, mm);
  }
}
