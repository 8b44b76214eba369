package dev.towerscribe.adjust;

import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Figures whose errors hang together, weighed by the inverse of their covariance. */
public final class CorrelatedErrors {
  /** Rounding leaves a calculated covariance unsymmetric by no more than this part. */
  private static final double UNSYMMETRIC = 1e-9;

  private final DecompositionSolver weights;

  /**
   * Takes a covariance.
   *
   * @param covariance symmetric and positive definite: every figure has an error of its own
   * @throws IllegalArgumentException if it is not
   */
  public CorrelatedErrors(double[][] covariance) {
    RealMatrix given = new Array2DRowRealMatrix(covariance);
    RealMatrix even = given.add(given.transpose()).scalarMultiply(0.5);
    for (int i = 0; i < covariance.length; i++) {
      for (int k = 0; k < i; k++) {
        double size = Math.sqrt(Math.abs(covariance[i][i] * covariance[k][k]));
        if (Math.abs(covariance[i][k] - covariance[k][i]) > UNSYMMETRIC * size) {
          throw new IllegalArgumentException("the covariance is not symmetric");
        }
      }
    }
    try {
      weights = new CholeskyDecomposition(even, UNSYMMETRIC, 0).getSolver();
    } catch (MathIllegalArgumentException e) {
      throw new IllegalArgumentException("the covariance is not positive definite", e);
    }
  }

  /**
   * Sum of weighted squares.
   *
   * @param off what each figure is off
   * @return v' C^-1 v: chi-square, on the average as many as there are figures
   */
  public double squares(double[] off) {
    RealVector v = new ArrayRealVector(off, false);
    return v.dotProduct(weights.solve(v));
  }

  /**
   * Normal equations of a fit to the figures.
   *
   * @param design derivatives of the calculated figures, a row for each figure, a column for each
   *     unknown
   * @param off read less calculated
   * @return the equations
   */
  public NormalEquations equations(double[][] design, double[] off) {
    RealMatrix j = new Array2DRowRealMatrix(design, false);
    RealMatrix weighted = weights.solve(j).transpose();
    RealMatrix matrix = weighted.multiply(j);
    // The two halves differ by rounding alone.
    return new NormalEquations(
        matrix.add(matrix.transpose()).scalarMultiply(0.5).getData(),
        weighted.operate(off),
        squares(off));
  }
}
