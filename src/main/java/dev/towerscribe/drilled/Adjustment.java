package dev.towerscribe.drilled;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Weighted least squares: the unknowns that agree best with observations, each weighted by the
 * inverse of its variance (Ghilani and Wolf, Adjustment Computations, ch. 14; Gauss-Newton steps,
 * damped as by Levenberg and Marquardt). Motions of the whole pattern that no observation resists
 * are left where the start had them; variances are then those about the pattern's own middle (inner
 * constraints).
 *
 * @param observations what was read
 * @param x the unknowns found, mm
 * @param covariance of the unknowns, mm2
 * @param chi2 sum of the squared residuals, each over its standard deviation
 * @param loose motions of the whole pattern that nothing resists: 3 without any tie to the tower, 1
 *     where it can still turn about one landmark, 0 where it is fixed
 */
record Adjustment(
    List<Observation> observations, double[] x, RealMatrix covariance, double chi2, int loose) {
  private static final int MOST_STEPS = 200;

  /** Far below any reading, far above the rounding of a length of some hundred mm. */
  private static final double SETTLED_MM = 1e-10;

  private static final double FIRST_DAMPING = 1e-6;

  /** Vanishes beside one, so that the last steps are Gauss and Newton's own. */
  private static final double LEAST_DAMPING = 1e-16;

  /**
   * A motion counts as not resisted where a millimetre of it changes the readings by less than a
   * hundred-thousandth of their doubt; squared.
   */
  private static final double NO_RESISTANCE = 1e-10;

  /** The same against rounding: of the sum of all stiffnesses. */
  private static final double ROUNDING = 1e-12;

  /** How far two halves of a matrix that should be alike may differ, relatively. */
  private static final double SYMMETRIC = 1e-6;

  /**
   * Solves.
   *
   * @param observations at least as many as are needed to fix all points
   * @param start where the unknowns begin, mm
   * @param holes how many of the points, from the first on, are the pattern; the others are fixed
   *     to the tower
   */
  static Adjustment solve(List<Observation> observations, double[] start, int holes) {
    double[] x = start.clone();
    double chi2 = chi2(observations, x);
    double damping = FIRST_DAMPING;
    for (int step = 0; step < MOST_STEPS; step++) {
      RealMatrix n = normal(observations, x);
      RealVector pull = pull(observations, x);
      RealMatrix held = held(n, free(n, x, holes));
      boolean better = false;
      double moved = Double.POSITIVE_INFINITY;
      while (!better && moved > SETTLED_MM) {
        RealMatrix damped = held.copy();
        for (int k = 0; k < x.length; k++) {
          damped.multiplyEntry(k, k, 1 + damping);
        }
        RealVector d = solver(damped).map(s -> s.solve(pull)).orElse(null);
        if (d != null) {
          double[] next = d.add(MatrixUtils.createRealVector(x)).toArray();
          moved = d.getLInfNorm();
          double nextChi2 = chi2(observations, next);
          better = nextChi2 <= chi2;
          if (better) {
            x = next;
            chi2 = nextChi2;
          }
        }
        damping = better ? Math.max(LEAST_DAMPING, damping / 10) : damping * 10;
      }
      if (moved <= SETTLED_MM) {
        break;
      }
    }
    RealMatrix n = normal(observations, x);
    List<RealVector> free = free(n, x, holes);
    RealMatrix covariance = inverse(held(n, free));
    // Taking the hold out again leaves the variances that the readings themselves give.
    for (RealVector motion : free) {
      covariance = covariance.subtract(motion.outerProduct(motion).scalarMultiply(1 / hold(n)));
    }
    return new Adjustment(observations, x, covariance, chi2, free.size());
  }

  /**
   * Stiffness of the unknowns at a start, all motions of the whole pattern held: of a symmetric
   * matrix that is not negative, singular values and vectors are the characteristic ones.
   */
  static SingularValueDecomposition stiffness(
      List<Observation> observations, double[] x, int holes) {
    RealMatrix n = normal(observations, x);
    return new SingularValueDecomposition(held(n, free(n, x, holes)));
  }

  /** Misfit of one observation: read minus expected, mm. */
  double residual(Observation o) {
    return o.value() - o.expected(x);
  }

  /** Variance of what an observation is expected to read, mm2. */
  double expectedVariance(Observation o) {
    RealVector g = MatrixUtils.createRealVector(o.gradient(x));
    return Math.max(0.0, g.dotProduct(covariance.operate(g)));
  }

  /** Share of an error of an observation that shows in its own residual, 0 to 1. */
  double redundancy(Observation o) {
    return Math.max(0.0, 1 - expectedVariance(o) / (o.sd() * o.sd()));
  }

  private static RealMatrix normal(List<Observation> observations, double[] x) {
    RealMatrix n = MatrixUtils.createRealMatrix(x.length, x.length);
    for (Observation o : observations) {
      double[] g = o.gradient(x);
      for (int row = 0; row < g.length; row++) {
        for (int k = 0; g[row] != 0 && k < g.length; k++) {
          if (g[k] != 0) {
            n.addToEntry(row, k, g[row] * g[k] / (o.sd() * o.sd()));
          }
        }
      }
    }
    return n;
  }

  /** What each unknown is pulled by. */
  private static RealVector pull(List<Observation> observations, double[] x) {
    double[] pull = new double[x.length];
    for (Observation o : observations) {
      double[] g = o.gradient(x);
      double v = (o.value() - o.expected(x)) / (o.sd() * o.sd());
      for (int k = 0; k < g.length; k++) {
        pull[k] += g[k] * v;
      }
    }
    return MatrixUtils.createRealVector(pull);
  }

  private static double chi2(List<Observation> observations, double[] x) {
    double sum = 0;
    for (Observation o : observations) {
      double v = (o.value() - o.expected(x)) / o.sd();
      sum += v * v;
    }
    return sum;
  }

  private static double hold(RealMatrix n) {
    return n.getTrace() / n.getColumnDimension();
  }

  private static RealMatrix held(RealMatrix n, List<RealVector> free) {
    RealMatrix held = n.copy();
    for (RealVector motion : free) {
      held = held.add(motion.outerProduct(motion).scalarMultiply(hold(n)));
    }
    return held;
  }

  /** Empty for a matrix that is not positive definite: something hangs in the air. */
  private static Optional<DecompositionSolver> solver(RealMatrix m) {
    try {
      return Optional.of(new CholeskyDecomposition(m, SYMMETRIC, 0.0).getSolver());
    } catch (MathIllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** With what hangs in the air held just firmly enough, so that its variance comes out as vast. */
  private static RealMatrix inverse(RealMatrix m) {
    Optional<DecompositionSolver> solver = solver(m);
    for (double by = LEAST_DAMPING; solver.isEmpty(); by *= 10) {
      RealMatrix held = m.copy();
      for (int k = 0; k < m.getColumnDimension(); k++) {
        held.addToEntry(k, k, by * m.getTrace());
      }
      solver = solver(held);
    }
    return solver.get().getInverse();
  }

  /** The rigid motions, orthonormal, that the readings do not resist. */
  private static List<RealVector> free(RealMatrix n, double[] x, int holes) {
    List<RealVector> rigid = rigid(x, holes);
    RealMatrix small = MatrixUtils.createRealMatrix(rigid.size(), rigid.size());
    for (int a = 0; a < rigid.size(); a++) {
      RealVector resisted = n.operate(rigid.get(a));
      for (int b = 0; b <= a; b++) {
        small.setEntry(a, b, resisted.dotProduct(rigid.get(b)));
        small.setEntry(b, a, small.getEntry(a, b));
      }
    }
    EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(small);
    double least = Math.max(NO_RESISTANCE, ROUNDING * n.getTrace());
    List<RealVector> free = new ArrayList<>();
    for (int k = 0; k < rigid.size(); k++) {
      if (eigen.getEigenvalues()[k] < least) {
        RealVector motion = MatrixUtils.createRealVector(new double[x.length]);
        for (int a = 0; a < rigid.size(); a++) {
          motion = motion.add(rigid.get(a).mapMultiply(eigen.getEigenvector(k).getEntry(a)));
        }
        free.add(motion);
      }
    }
    return free;
  }

  /** Forward, inboard, and a turn about their middle of the holes alone; orthonormal. */
  private static List<RealVector> rigid(double[] x, int holes) {
    double cx = 0;
    double cy = 0;
    for (int p = 0; p < holes; p++) {
      cx += x[2 * p] / holes;
      cy += x[2 * p + 1] / holes;
    }
    double[] fore = new double[x.length];
    double[] in = new double[x.length];
    double[] turn = new double[x.length];
    for (int p = 0; p < holes; p++) {
      fore[2 * p] = 1;
      in[2 * p + 1] = 1;
      turn[2 * p] = cy - x[2 * p + 1];
      turn[2 * p + 1] = x[2 * p] - cx;
    }
    List<RealVector> motions = new ArrayList<>();
    for (double[] motion : List.of(fore, in, turn)) {
      RealVector v = MatrixUtils.createRealVector(motion);
      // One hole alone has no turn.
      if (v.getNorm() > SETTLED_MM) {
        motions.add(v.mapDivide(v.getNorm()));
      }
    }
    return motions;
  }
}
