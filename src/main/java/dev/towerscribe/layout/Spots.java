package dev.towerscribe.layout;

import dev.towerscribe.finding.Spot;
import dev.towerscribe.finding.Spot.Mover;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Gap;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import java.util.Comparator;
import java.util.function.ToDoubleFunction;

/**
 * Places of failing checks: the two points that a figure is measured between, and the shift that
 * clears it. Figures come from {@link Margins}, {@link HoleMargin} and the checks; only points are
 * found here.
 */
final class Spots {
  /** Sag of the chords among whose corners the deepest point is taken: far below a pen's width. */
  private static final double SAG_MM = 0.01;

  private Spots() {}

  /**
   * A place where something that moves is too near something that stays.
   *
   * @param nearest the shortest way between their edges; from the one that moves
   * @param lessMm what of that way the figure leaves out, at the end that moves
   * @param mover what moves
   * @param figureMm the figure for a shift of it, plan
   * @param limitMm the least that passes
   * @param lengths the shift is a round figure of their unit
   * @return the place
   */
  static Spot of(
      Gap nearest,
      double lessMm,
      Mover mover,
      ToDoubleFunction<Vec2> figureMm,
      double limitMm,
      Lengths lengths) {
    Vec2 toward = lessMm == 0 ? Vec2.ZERO : Clearing.uphill(figureMm).times(-lessMm);
    return new Spot(
        nearest.from().plus(toward),
        nearest.to(),
        mover,
        Clearing.shift(figureMm, limitMm, lengths.stepMm(Fineness.PLACE)));
  }

  /** A hole, or the washer or nut on it. */
  static Spot of(HoleMargin m, PlacedHole hole, Lengths lengths) {
    Vec2 at = hole.at();
    return of(
        gap(at, m.region().nearest(at)),
        m.lessMm(),
        Mover.PLATE,
        v -> m.figureMm(at.x() + v.x(), at.y() + v.y()),
        m.limitMm(),
        lengths);
  }

  /** The way between two points. */
  static Gap gap(Vec2 from, Vec2 to) {
    return new Gap(from.distanceTo(to), from, to);
  }

  /** Where {@link Region#marginAround} is found; from the inner region to the outer. */
  static Gap around(Region outer, Region inner) {
    Gap gap = inner.boundaryGap(outer);
    Vec2 farthest = farthest(inner, outer, 1);
    return outer.depth(farthest) >= 0 ? gap : gap(farthest, outer.nearest(farthest));
  }

  /** Where {@link Margins#between} is found; from the region to the other. */
  static Gap between(Region region, Contour other) {
    Region second = Region.inside(other);
    Vec2 intruder = farthest(second, region, -1);
    Vec2 intruding = farthest(region, second, -1);
    double in = region.depth(intruder);
    double into = second.depth(intruding);
    if (Math.max(in, into) <= 0) {
      return region.boundaryGap(second);
    }
    return in > into
        ? gap(region.nearest(intruder), intruder)
        : gap(intruding, second.nearest(intruding));
  }

  /** The boundary point of one region that lies farthest out of the other; -1: farthest in. */
  private static Vec2 farthest(Region of, Region other, int out) {
    return of.contours().stream()
        .flatMap(c -> c.flattened(SAG_MM).stream())
        .min(Comparator.comparingDouble(p -> out * other.depth(p)))
        .orElseThrow();
  }
}
