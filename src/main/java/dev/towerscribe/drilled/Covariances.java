package dev.towerscribe.drilled;

/** Small sums over covariance matrices. */
final class Covariances {
  private Covariances() {}

  static void checkSize(double[][] covariance, int size) {
    boolean square = covariance.length == size;
    for (double[] row : covariance) {
      square &= row.length == size;
    }
    if (!square) {
      throw new IllegalArgumentException("the covariance must have " + size + " rows and columns");
    }
  }

  /** g' C g. */
  static double variance(double[] g, double[][] covariance) {
    double sum = 0;
    for (int i = 0; i < g.length; i++) {
      for (int k = 0; k < g.length; k++) {
        sum += g[i] * covariance[i][k] * g[k];
      }
    }
    return sum;
  }

  /** a C a', for a with one row for each result. */
  static double[][] carried(double[][] a, double[][] covariance) {
    double[][] half = new double[a.length][covariance.length];
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < covariance.length; k++) {
        for (int l = 0; l < covariance.length; l++) {
          half[i][k] += a[i][l] * covariance[l][k];
        }
      }
    }
    double[][] out = new double[a.length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < a.length; k++) {
        for (int l = 0; l < covariance.length; l++) {
          out[i][k] += half[i][l] * a[k][l];
        }
      }
    }
    return out;
  }
}
