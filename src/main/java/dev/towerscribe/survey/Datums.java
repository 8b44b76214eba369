package dev.towerscribe.survey;

import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Parts what all landmarks of a tower are off together from what each is off by itself. */
final class Datums {
  private Datums() {}

  /**
   * The common turn is the least-squares one, sum of p x e over sum of p^2 for places p and errors
   * e. What is left of the variances once its share is taken out counts as each landmark's own.
   *
   * @param holes landmarks
   * @param unknown a landmark's unknowns: fore, in
   * @param a the network of their tower
   * @param widened what deviations are multiplied by
   * @return both parts, or nothing where a landmark was not found or there is none
   */
  static Optional<TowerResult.Datum> of(
      List<TowerResult.Hole> holes, Function<String, int[]> unknown, Adjustment a, double widened) {
    if (holes.isEmpty() || !holes.stream().allMatch(TowerResult.Hole::found)) {
      return Optional.empty();
    }
    int n = holes.size();
    int[] at = new int[2 * n];
    double[] by = new double[2 * n];
    double arms = 0;
    double variances = 0;
    for (int i = 0; i < n; i++) {
      int[] u = unknown.apply(holes.get(i).name());
      Vec2 p = holes.get(i).at();
      at[2 * i] = u[0];
      at[2 * i + 1] = u[1];
      by[2 * i] = -p.y();
      by[2 * i + 1] = p.x();
      arms += p.dot(p);
      variances += a.covariance(u[0], u[0]) + a.covariance(u[1], u[1]);
    }
    double turn = 0;
    for (int i = 0; i < 2 * n; i++) {
      for (int j = 0; j < 2 * n; j++) {
        turn += by[i] * by[j] * a.covariance(at[i], at[j]) / (arms * arms);
      }
    }
    // Of the 2n ways in which the landmarks can be off, the turn is one.
    double own = Math.max(0, variances - turn * arms) / (2 * n - 1);
    return Optional.of(
        new TowerResult.Datum(widened * Math.sqrt(Math.max(0, turn)), widened * Math.sqrt(own)));
  }
}
