package dev.towerscribe.adjust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.util.MathArrays;

/**
 * Covariance of unknowns and of functions of them: (J'WJ)^-1 over the directions that the
 * observations fix. Directions that they leave open have no part in it, so that what does not
 * depend on them keeps its own standard deviation (inner constraints).
 */
public final class Covariance {
  /**
   * A direction known no better than this is one that nothing fixes, mm: the size of the things
   * measured. Exactly singular directions come out of the arithmetic far above it. Our own choice,
   * no source.
   */
  public static final double OPEN_MM = 300;

  private final double[][] matrix;
  private final List<double[]> open;

  private Covariance(double[][] matrix, List<double[]> open) {
    this.matrix = matrix;
    this.open = open;
  }

  /**
   * From normal equations.
   *
   * @param normal J'WJ, symmetric, mm
   * @return its inverse, and what it leaves open
   */
  public static Covariance inverse(double[][] normal) {
    int n = normal.length;
    double[][] matrix = new double[n][n];
    List<double[]> open = new ArrayList<>();
    if (n == 0) {
      return new Covariance(matrix, open);
    }
    EigenDecompositionSymmetric eigen =
        new EigenDecompositionSymmetric(new Array2DRowRealMatrix(normal, false));
    for (int k = 0; k < n; k++) {
      double[] vector = eigen.getEigenvector(k).toArray();
      if (eigen.getEigenvalue(k) < 1 / (OPEN_MM * OPEN_MM)) {
        open.add(vector);
      } else {
        add(matrix, vector, 1 / eigen.getEigenvalue(k));
      }
    }
    return new Covariance(matrix, open);
  }

  private static void add(double[][] matrix, double[] way, double variance) {
    for (int i = 0; i < way.length; i++) {
      for (int j = 0; j < way.length; j++) {
        matrix[i][j] += variance * way[i] * way[j];
      }
    }
  }

  /**
   * With an error more, which moves all unknowns together and is independent of the rest.
   *
   * @param way what one standard deviation of it does to each unknown
   * @return the sum; the same directions stay open
   */
  public Covariance plus(double[] way) {
    double[][] sum = matrix();
    add(sum, way, 1);
    return new Covariance(sum, open);
  }

  /**
   * Multiplied.
   *
   * @param factor what every variance is multiplied by, not negative
   * @return the product; the same directions stay open
   */
  public Covariance times(double factor) {
    return new Covariance(
        Arrays.stream(matrix).map(row -> MathArrays.scale(factor, row)).toArray(double[][]::new),
        open);
  }

  /**
   * The part of it that belongs to some unknowns.
   *
   * @param unknowns their numbers, in the order wanted
   * @return variances and covariances of these
   */
  public double[][] of(int... unknowns) {
    return Arrays.stream(unknowns)
        .mapToObj(i -> Arrays.stream(unknowns).mapToDouble(j -> matrix[i][j]).toArray())
        .toArray(double[][]::new);
  }

  /**
   * All of it.
   *
   * @return a copy
   */
  public double[][] matrix() {
    return Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
  }

  /**
   * Covariance of two functions of the unknowns, to first order.
   *
   * @param a derivatives of the one
   * @param b derivatives of the other; the same for a variance
   * @return a C b'
   */
  public double of(Row a, Row b) {
    double sum = 0;
    for (int i = 0; i < a.at().length; i++) {
      for (int j = 0; j < b.at().length; j++) {
        sum += a.by()[i] * b.by()[j] * matrix[a.at()[i]][b.at()[j]];
      }
    }
    return sum;
  }

  /**
   * Standard deviation of a function of the unknowns, to first order.
   *
   * @param row its derivatives
   * @return not negative
   */
  public double sd(Row row) {
    return Propagation.root(of(row, row));
  }

  /**
   * Standard deviation of an unknown.
   *
   * @param unknown its number; {@link Network#NONE} for a coordinate that is given
   * @return not negative; 0 for what is given
   */
  public double sd(int unknown) {
    return unknown == Network.NONE ? 0 : Propagation.root(matrix[unknown][unknown]);
  }

  /**
   * Directions that the observations leave open.
   *
   * @return vectors over all unknowns, of length one and square to each other
   */
  public List<double[]> open() {
    return open;
  }
}
