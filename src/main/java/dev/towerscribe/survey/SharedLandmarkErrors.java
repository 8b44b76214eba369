package dev.towerscribe.survey;

import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.adjust.Propagation;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Parts what all landmarks of a tower are off together from what each is off by itself. */
final class SharedLandmarkErrors {
  /** A turn and two shifts. */
  private static final int WAYS = 3;

  private SharedLandmarkErrors() {}

  /**
   * The turn and shift that all landmarks share are those that fit their errors best by least
   * squares; what is left of the variances without their share is each landmark's own. The two ways
   * of shifting count alike, and what little ties them to the turn is left out.
   *
   * @param holes landmarks
   * @param unknown a landmark's unknowns: fore, in
   * @param sure covariance of the network of their tower
   * @param widened what deviations are multiplied by
   * @return the parts; everything as its own where there is one landmark; nothing where a landmark
   *     was not found or there is none
   */
  static Optional<TowerResult.Datum> of(
      List<TowerResult.Hole> holes,
      Function<String, int[]> unknown,
      Covariance sure,
      double widened) {
    if (holes.isEmpty() || !holes.stream().allMatch(TowerResult.Hole::found)) {
      return Optional.empty();
    }
    int n = holes.size();
    int[] at = new int[2 * n];
    RealMatrix ways = new Array2DRowRealMatrix(2 * n, WAYS);
    for (int i = 0; i < n; i++) {
      int[] u = unknown.apply(holes.get(i).name());
      Vec2 p = holes.get(i).at();
      at[2 * i] = u[0];
      at[2 * i + 1] = u[1];
      ways.setRow(2 * i, new double[] {-p.y(), 1, 0});
      ways.setRow(2 * i + 1, new double[] {p.x(), 0, 1});
    }
    RealMatrix errors = new Array2DRowRealMatrix(sure.of(at));
    if (n == 1) {
      return Optional.of(new TowerResult.Datum(0, 0, widened * Math.sqrt(errors.getTrace() / 2)));
    }
    RealMatrix inverse =
        new CholeskyDecomposition(ways.transposeMultiply(ways)).getSolver().getInverse();
    RealMatrix fit = inverse.multiplyTransposed(ways);
    RealMatrix shared = fit.multiply(errors).multiplyTransposed(fit);
    double left = errors.getTrace() - ways.multiply(fit).multiply(errors).getTrace();
    double own = Math.max(0, left / (2 * n - WAYS));
    // Landmarks that are off each by itself are on the average off together, too: that much of the
    // shared variances is not stated twice.
    RealMatrix more = shared.subtract(inverse.scalarMultiply(own));
    return Optional.of(
        new TowerResult.Datum(
            widened * Propagation.root(more.getEntry(0, 0)),
            widened * Propagation.root((more.getEntry(1, 1) + more.getEntry(2, 2)) / 2),
            widened * Math.sqrt(own)));
  }
}
