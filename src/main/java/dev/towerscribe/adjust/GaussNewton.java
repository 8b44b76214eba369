package dev.towerscribe.adjust;

import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.MathArrays;

/**
 * Gauss-Newton for weighted least squares, damped (Levenberg, Marquardt) as long as a full step
 * does not make things better: so it gets down from a poor start, and stays where it is along
 * directions that nothing fixes.
 */
public final class GaussNewton {
  /** A start that is of any use is home in a tenth of this. */
  private static final int MOST_STEPS = 300;

  private static final double FIRST_DAMPING = 1e-3;

  /** Left in so that the equations stay solvable where nothing fixes a direction. */
  private static final double LEAST_DAMPING = 1e-9;

  private static final double MOST_DAMPING = 1e12;

  /** What damping is measured against where an unknown has no weight of its own: 10 mm. */
  private static final double LEAST_DIAGONAL = 1e-2;

  /**
   * A step that makes the squares less by this share need not prove itself: their rounding would
   * decide. It is 1e-5 standard deviations long.
   */
  private static final double SMALL_GAIN = 1e-10;

  /** So many small steps: the first leaves far less than it is long, the last rounding alone. */
  private static final int SMALL_STEPS = 3;

  private GaussNewton() {}

  /** What is to be fitted. */
  @FunctionalInterface
  public interface Model {
    /**
     * Linearises.
     *
     * @param x the unknowns
     * @return normal equations there; empty where there is nothing to compare
     */
    Optional<NormalEquations> at(double[] x);
  }

  /**
   * A least-squares solution.
   *
   * @param x the unknowns
   * @param equations the equations there
   */
  public record Solution(double[] x, NormalEquations equations) {
    /**
     * What is left of the sum of squares.
     *
     * @return no unit, not negative
     */
    public double squares() {
      return equations.squares();
    }
  }

  /**
   * Goes down from a start.
   *
   * @param model what is to be fitted
   * @param start the unknowns to begin at
   * @return the lowest place found
   * @throws IllegalArgumentException if the model has no equations at the start
   */
  public static Solution solve(Model model, double[] start) {
    Solution here =
        moved(model, start.clone())
            .orElseThrow(() -> new IllegalArgumentException("no equations at the start"));
    double damping = FIRST_DAMPING;
    int smallSteps = 0;
    for (int step = 0; step < MOST_STEPS && damping < MOST_DAMPING; step++) {
      Solution from = here;
      RealVector right = new ArrayRealVector(from.equations().right(), false);
      Optional<RealVector> by = step(from.equations(), damping);
      Optional<Solution> there =
          by.flatMap(b -> moved(model, MathArrays.ebeAdd(from.x(), b.toArray())));
      double small = SMALL_GAIN * Math.max(1, from.squares());
      boolean unproven = by.filter(b -> b.dotProduct(right) < small).isPresent();
      if (there.filter(t -> unproven || t.squares() < from.squares()).isPresent()) {
        here = there.get();
        damping = Math.max(LEAST_DAMPING, damping / 10);
        smallSteps += unproven ? 1 : 0;
        if (smallSteps == SMALL_STEPS) {
          break;
        }
      } else {
        damping *= 10;
      }
    }
    return here;
  }

  private static Optional<Solution> moved(Model model, double[] x) {
    return model.at(x).map(equations -> new Solution(x, equations));
  }

  /** The damped step; empty where rounding leaves the matrix not positive definite. */
  private static Optional<RealVector> step(NormalEquations here, double damping) {
    int n = here.right().length;
    double[][] damped = new double[n][];
    for (int i = 0; i < n; i++) {
      damped[i] = here.matrix()[i].clone();
      damped[i][i] += damping * Math.max(damped[i][i], LEAST_DIAGONAL);
    }
    try {
      DecompositionSolver solver =
          new CholeskyDecomposition(
                  new Array2DRowRealMatrix(damped, false), NormalEquations.SYMMETRIC, 0)
              .getSolver();
      return Optional.of(solver.solve(new ArrayRealVector(here.right(), false)));
    } catch (MathIllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
