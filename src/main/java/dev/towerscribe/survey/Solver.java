package dev.towerscribe.survey;

import java.util.List;

/**
 * Gauss-Newton for weighted least squares, damped (Levenberg, Marquardt) as long as a full step
 * does not make things better: so it gets down from a poor start, and stays where it is along
 * directions that nothing fixes.
 */
final class Solver {
  /** A start that is of any use is home in a fifth of this. */
  private static final int MOST_STEPS = 100;

  private static final double FIRST_DAMPING = 1e-3;

  /** Left in so that the equations stay solvable where nothing fixes a direction. */
  private static final double LEAST_DAMPING = 1e-9;

  private static final double MOST_DAMPING = 1e12;

  /** What damping is measured against where an unknown has no weight of its own: 10 mm. */
  private static final double LEAST_DIAGONAL = 1e-2;

  /**
   * A step that makes the squares less by this share is the last, and need not prove itself: their
   * rounding would decide. It is 1e-5 standard deviations long, and what it leaves is far less.
   */
  private static final double LAST_GAIN = 1e-10;

  private Solver() {}

  /**
   * A least-squares solution.
   *
   * @param x the unknowns
   * @param cost sum of squared departures of the entries' means, each over its standard deviation
   */
  record Solution(double[] x, double cost) {}

  /** Goes down from a start. */
  static Solution solve(Network net, List<Entry> entries, double[] start) {
    double[] x = start.clone();
    double cost = cost(net, entries, x);
    double damping = FIRST_DAMPING;
    int n = net.unknowns();
    for (int step = 0; step < MOST_STEPS; step++) {
      double[][] normal = new double[n][n];
      double[] right = new double[n];
      equations(net, entries, x, normal, right);
      boolean moved = false;
      while (!moved && damping < MOST_DAMPING) {
        double[] by = Cholesky.solve(damped(normal, damping), right);
        double gain = 0;
        double[] there = x.clone();
        for (int i = 0; i < n; i++) {
          there[i] += by[i];
          gain += by[i] * right[i];
        }
        double after = cost(net, entries, there);
        if (gain < LAST_GAIN * Math.max(1, cost)) {
          return new Solution(there, after);
        }
        moved = after < cost;
        if (moved) {
          x = there;
          cost = after;
          damping = Math.max(LEAST_DAMPING, damping / 10);
        } else {
          damping *= 10;
        }
      }
      if (!moved) {
        break;
      }
    }
    return new Solution(x, cost);
  }

  private static double[][] damped(double[][] normal, double damping) {
    double[][] damped = new double[normal.length][];
    for (int i = 0; i < normal.length; i++) {
      damped[i] = normal[i].clone();
      damped[i][i] += damping * Math.max(normal[i][i], LEAST_DIAGONAL);
    }
    return damped;
  }

  static double cost(Network net, List<Entry> entries, double[] x) {
    double cost = 0;
    for (Entry e : entries) {
      double off = e.reading().mean() - e.measure().value(net, x);
      cost += e.weight() * off * off;
    }
    return cost;
  }

  /** Adds up the normal equations: J'WJ and J'W(read - computed). */
  static void equations(
      Network net, List<Entry> entries, double[] x, double[][] normal, double[] right) {
    for (Entry e : entries) {
      double weight = e.weight();
      double off = e.reading().mean() - e.measure().value(net, x);
      Measure.Row row = e.measure().row(net, x);
      for (int i = 0; i < row.at().length; i++) {
        right[row.at()[i]] += weight * row.by()[i] * off;
        for (int j = 0; j < row.at().length; j++) {
          // Multiplied in this order, the two halves of the matrix are the same to the last bit.
          normal[row.at()[i]][row.at()[j]] += weight * (row.by()[i] * row.by()[j]);
        }
      }
    }
  }
}
