package dev.towerscribe.survey;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * A network at its least-squares solution: the covariance (J'WJ)^-1 from the doubts as stated, over
 * the directions that the readings fix, and the directions that they do not.
 */
final class Adjustment {
  /**
   * A direction known no better than this is one that nothing fixes, mm: it is the size of the
   * things measured. Exactly singular directions come out of the arithmetic far above it.
   */
  static final double UNKNOWN_MM = 300;

  private final Network net;
  private final List<Entry> entries;
  private final double[] x;
  private final double cost;
  private final double[][] covariance;
  private final List<double[]> unfixed = new ArrayList<>();

  private Adjustment(Network net, List<Entry> entries, Solver.Solution solution) {
    this.net = net;
    this.entries = List.copyOf(entries);
    this.x = solution.x();
    this.cost = solution.cost();
    int n = net.unknowns();
    covariance = new double[n][n];
    if (n == 0) {
      return;
    }
    double[][] normal = new double[n][n];
    Solver.equations(net, entries, x, normal, new double[n]);
    EigenDecompositionSymmetric eigen =
        new EigenDecompositionSymmetric(new Array2DRowRealMatrix(normal, false));
    double[] values = eigen.getEigenvalues();
    for (int k = 0; k < n; k++) {
      double[] vector = eigen.getEigenvector(k).toArray();
      if (values[k] < 1 / (UNKNOWN_MM * UNKNOWN_MM)) {
        unfixed.add(vector);
        continue;
      }
      for (int i = 0; i < n; i++) {
        double scaled = vector[i] / values[k];
        for (int j = 0; j < n; j++) {
          covariance[i][j] += scaled * vector[j];
        }
      }
    }
  }

  /** An adjustment at a solution. */
  static Adjustment at(Network net, List<Entry> entries, Solver.Solution solution) {
    return new Adjustment(net, entries, solution);
  }

  Network net() {
    return net;
  }

  List<Entry> entries() {
    return entries;
  }

  double[] x() {
    return x;
  }

  /** Directions, each of length one over all unknowns, that the readings leave open. */
  List<double[]> unfixed() {
    return unfixed;
  }

  /** Covariance of two unknowns, mm2. */
  double covariance(int i, int j) {
    return covariance[i][j];
  }

  /** Covariance of two functions of the unknowns. */
  double covariance(Measure.Row a, Measure.Row b) {
    double sum = 0;
    for (int i = 0; i < a.at().length; i++) {
      for (int j = 0; j < b.at().length; j++) {
        sum += a.by()[i] * b.by()[j] * covariance[a.at()[i]][b.at()[j]];
      }
    }
    return sum;
  }

  /** Degrees of freedom: readings less what they had to fix. */
  int freedom() {
    int readings = 0;
    for (Entry e : entries) {
      readings += e.count();
    }
    return readings - (net.unknowns() - unfixed.size());
  }

  /** Sum of squared residuals of all readings, each over its doubt. */
  double squares() {
    double sum = cost;
    for (Entry e : entries) {
      sum += e.reading().scatter();
    }
    return sum;
  }
}
