package dev.towerscribe.survey;

/** Symmetric positive equations by Cholesky's square root. */
final class Cholesky {
  /** A pivot that rounding has eaten counts as this, relative to the greatest of the diagonal. */
  private static final double LEAST_PIVOT = 1e-15;

  private Cholesky() {}

  /**
   * Solves.
   *
   * @param a symmetric, positive definite; overwritten by its root
   * @param right right-hand side
   * @return the solution
   */
  static double[] solve(double[][] a, double[] right) {
    int n = right.length;
    double greatest = 0;
    for (int i = 0; i < n; i++) {
      greatest = Math.max(greatest, a[i][i]);
    }
    for (int j = 0; j < n; j++) {
      double pivot = a[j][j];
      for (int k = 0; k < j; k++) {
        pivot -= a[j][k] * a[j][k];
      }
      a[j][j] = Math.sqrt(Math.max(pivot, LEAST_PIVOT * greatest));
      for (int i = j + 1; i < n; i++) {
        double sum = a[i][j];
        for (int k = 0; k < j; k++) {
          sum -= a[i][k] * a[j][k];
        }
        a[i][j] = sum / a[j][j];
      }
    }
    double[] x = right.clone();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= a[i][k] * x[k];
      }
      x[i] /= a[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int k = i + 1; k < n; k++) {
        x[i] -= a[k][i] * x[k];
      }
      x[i] /= a[i][i];
    }
    return x;
  }
}
