package dev.towerscribe.adjust;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;

/**
 * Normal equations of weighted least squares at a place: {@code matrix} times the step = {@code
 * right}.
 *
 * @param matrix J'WJ: J the derivatives, W one over the variances; symmetric
 * @param right J'W (read less calculated)
 * @param squares sum of squared misfits, each over its standard deviation
 */
public record NormalEquations(double[][] matrix, double[] right, double squares) {
  /** How far two halves of a matrix that should be alike may differ by rounding, relatively. */
  static final double SYMMETRIC = 1e-12;

  /**
   * Of a network: each observation's mean by its weight.
   *
   * @param net the network
   * @param observations independent of each other
   * @param x the unknowns, mm
   * @return the equations there
   */
  public static NormalEquations of(Network net, List<Observation> observations, double[] x) {
    double[][] matrix = new double[x.length][x.length];
    double[] right = new double[x.length];
    double squares = 0;
    for (Observation o : observations) {
      double weight = o.weight();
      double off = o.reading().mean() - o.measure().value(net, x);
      squares += weight * off * off;
      Row row = o.measure().row(net, x);
      for (int i = 0; i < row.at().length; i++) {
        right[row.at()[i]] += weight * row.by()[i] * off;
        for (int j = 0; j < row.at().length; j++) {
          // Multiplied in this order, the two halves of the matrix are the same to the last bit.
          matrix[row.at()[i]][row.at()[j]] += weight * (row.by()[i] * row.by()[j]);
        }
      }
    }
    return new NormalEquations(matrix, right, squares);
  }

  /**
   * Covariance of the unknowns where all of them are fixed.
   *
   * @return (J'WJ)^-1
   */
  public double[][] inverse() {
    return new CholeskyDecomposition(new Array2DRowRealMatrix(matrix, false), SYMMETRIC, 0)
        .getSolver()
        .getInverse()
        .getData();
  }
}
