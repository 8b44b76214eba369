package dev.towerscribe.adjust;

import java.util.Arrays;

/** How errors of figures become errors of what is calculated from them, to first order. */
public final class Propagation {
  private Propagation() {}

  /**
   * The variance of a function of figures.
   *
   * @param g its derivatives by the figures
   * @param covariance of the figures
   * @return g C g'
   */
  public static double variance(double[] g, double[][] covariance) {
    return carried(new double[][] {g}, covariance)[0][0];
  }

  /**
   * Standard deviation of a function of figures.
   *
   * @param g its derivatives by the figures
   * @param covariance of the figures
   * @return root of g C g', not negative
   */
  public static double sd(double[] g, double[][] covariance) {
    return root(variance(g, covariance));
  }

  /**
   * The covariance of several functions of figures.
   *
   * @param a derivatives, a row for each function
   * @param covariance of the figures, as many rows and columns as {@code a} has columns
   * @return A C A'
   */
  public static double[][] carried(double[][] a, double[][] covariance) {
    double[][] out = new double[a.length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < a.length; j++) {
        for (int k = 0; k < covariance.length; k++) {
          for (int l = 0; l < covariance.length; l++) {
            out[i][j] += a[i][k] * covariance[k][l] * a[j][l];
          }
        }
      }
    }
    return out;
  }

  /**
   * The root of a variance.
   *
   * @param variance rounding may have left it a shade below nothing, which counts as nothing
   * @return standard deviation, not negative
   */
  public static double root(double variance) {
    return Math.sqrt(Math.max(0, variance));
  }

  /**
   * Standard deviation of a place in a plane in the direction in which it is known worst: half the
   * longer axis of its error ellipse.
   *
   * @param a variance of one coordinate
   * @param b variance of the other
   * @param ab their covariance
   * @return not negative
   */
  public static double worstSd(double a, double b, double ab) {
    return root((a + b) / 2 + Math.hypot((a - b) / 2, ab));
  }

  /**
   * Refuses a covariance of another size.
   *
   * @param covariance a matrix
   * @param size rows and columns that it must have
   * @throws IllegalArgumentException if it has not
   */
  public static void checkSize(double[][] covariance, int size) {
    if (covariance.length != size || Arrays.stream(covariance).anyMatch(r -> r.length != size)) {
      throw new IllegalArgumentException(
          "the covariance must have %s rows and columns".formatted(size));
    }
  }
}
