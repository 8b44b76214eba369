package dev.towerscribe.drilled;

import java.util.Comparator;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Looks for the best place of a range: evenly first, then about the best by the golden section. */
final class Narrowed {
  /** Steps of the even look. */
  private static final int PLACES = 64;

  /** Golden sections after it: each leaves 0.618 of two steps. */
  private static final int SECTIONS = 60;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private Narrowed() {}

  /**
   * The best of all that is looked at; of equals, the one that is looked at first.
   *
   * @param from one end of the range
   * @param to the other, not less
   * @param first looked at before anything else
   * @param at what there is at a place
   * @param cost of that: less is better
   */
  static <T> T best(
      double from, double to, double first, DoubleFunction<T> at, ToDoubleFunction<T> cost) {
    double step = (to - from) / PLACES;
    double centre = first;
    T best = at.apply(first);
    for (int i = 0; i <= PLACES; i++) {
      T there = at.apply(from + i * step);
      if (cost.applyAsDouble(there) < cost.applyAsDouble(best)) {
        best = there;
        centre = from + i * step;
      }
    }
    double low = Math.max(from, centre - step);
    double high = Math.min(to, centre + step);
    for (int i = 0; i < SECTIONS; i++) {
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      T one = at.apply(left);
      T two = at.apply(right);
      if (cost.applyAsDouble(one) < cost.applyAsDouble(two)) {
        high = right;
      } else {
        low = left;
      }
      best = Stream.of(best, one, two).min(Comparator.comparingDouble(cost)).orElseThrow();
    }
    return best;
  }
}
