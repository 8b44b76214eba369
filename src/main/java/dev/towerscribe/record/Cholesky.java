package dev.towerscribe.record;

/** A covariance taken apart, L L' = C, so that vectors can be weighed by its inverse. */
final class Cholesky {
  private final double[][] lower;

  /**
   * Takes a covariance apart.
   *
   * @param covariance symmetric and positive definite: every reading has a doubt of its own
   */
  Cholesky(double[][] covariance) {
    int n = covariance.length;
    lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = covariance[i][j];
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        if (i != j) {
          lower[i][j] = sum / lower[j][j];
        } else if (sum > 0) {
          lower[i][i] = Math.sqrt(sum);
        } else {
          throw new IllegalArgumentException("not a covariance: figure " + i + " has no doubt");
        }
      }
    }
  }

  /** Solves L x = v: figures without correlation and each with a deviation of one. */
  double[] whitened(double[] v) {
    double[] x = v.clone();
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= lower[i][k] * x[k];
      }
      x[i] /= lower[i][i];
    }
    return x;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
