package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Poses a second: the closed form against a general least-squares solver on the six constraint
 * equations, in turn within one process, on the demo job's left strut with its top pivot moved at
 * random and the wheel anywhere in 80 mm of travel. The solver is given every help: it starts at
 * the pose of the same strut at a neighbouring wheel height and stops at its usual tolerances.
 *
 * <p>After {@code mvn test-compile}; docs/performance.md has the command.
 */
public final class SolveBenchmark {
  private static final int CASES = 4096;
  private static final int ROUNDS = 15;
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private SolveBenchmark() {}

  /** Something that solves one case and gives a number that depends on the whole answer. */
  private interface Solver {
    double solve(int i) throws NotReached;
  }

  /**
   * Runs and prints the table.
   *
   * @param args the job file
   * @throws Exception if it cannot be read or a pose is not reached
   */
  public static void main(String[] args) throws Exception {
    SideJob job =
        new JobReader(c -> true).read(Path.of(args[0])).sides().values().iterator().next();
    Bay bay = Bay.of(job);
    Mechanism m = bay.mechanism();
    StrutPoints p = m.points();
    QuickStrut quick = new QuickStrut(job, 80, 80, 21);
    Random random = new Random(20261125);
    Vec3[] tops = new Vec3[CASES];
    double[][] bearings = new double[CASES][];
    double[] heights = new double[CASES];
    double[] arms = new double[CASES];
    double[][] starts = new double[CASES][];
    Equations[] equations = new Equations[CASES];
    for (int i = 0; i < CASES; i++) {
      bearings[i] = new double[] {-40 + 50 * random.nextDouble(), 30 * random.nextDouble() - 10};
      tops[i] = bay.top(new dev.towerscribe.geometry.Vec2(bearings[i][0], bearings[i][1]));
      heights[i] = bay.rideZMm() + 160 * random.nextDouble() - 80;
      Pose pose = m.tiedAtHeight(heights[i], tops[i], p.tieInner(), m.tieLengthMm());
      arms[i] = m.armAngle(pose.ballJoint());
      equations[i] = new Equations(p, tops[i], heights[i]);
      starts[i] = new Equations(p, tops[i], heights[i] - 4).solve(new double[6]);
    }
    Map<String, Solver> solvers = new LinkedHashMap<>();
    solvers.put(
        "least squares, six equations, from a pose 4 mm off",
        i -> equations[i].solve(starts[i])[0]);
    solvers.put(
        "closed form at a wheel height (tiedAtHeight)",
        i -> m.tiedAtHeight(heights[i], tops[i], p.tieInner(), m.tieLengthMm()).wheelCentre().y());
    solvers.put(
        "closed form at an arm angle (tied)",
        i -> m.tied(arms[i], tops[i], p.tieInner(), m.tieLengthMm()).wheelCentre().y());
    solvers.put(
        "search: ride height and 21 travels, for each of the 22",
        i -> quick.set(bearings[i][0], bearings[i][1]) ? quick.bumpSteer() : 0.0);
    Map<String, double[]> nanos = new LinkedHashMap<>();
    solvers.keySet().forEach(name -> nanos.put(name, new double[ROUNDS]));
    double sum = 0.0;
    for (int round = -5; round < ROUNDS; round++) {
      for (Map.Entry<String, Solver> solver : solvers.entrySet()) {
        // The thread's own time: what else the machine does is not counted.
        long start = CLOCK.getCurrentThreadCpuTime();
        for (int i = 0; i < CASES; i++) {
          sum += solver.getValue().solve(i);
        }
        double each = (CLOCK.getCurrentThreadCpuTime() - start) / (double) CASES;
        // The first rounds are for the compiler.
        if (round >= 0) {
          nanos.get(solver.getKey())[round] =
              solver.getKey().startsWith("search") ? each / 22 : each;
        }
      }
    }
    print(nanos, sum);
  }

  private static void print(Map<String, double[]> nanos, double sum) {
    nanos.values().forEach(Arrays::sort);
    double[] solver = nanos.values().iterator().next();
    System.out.println("medians of " + ROUNDS + " rounds, Java " + Runtime.version());
    nanos.forEach(
        (name, taken) ->
            System.out.printf(
                java.util.Locale.ROOT,
                "%-56s median %7.0f ns, %7.1f times; least %7.0f ns, %7.1f times%n",
                name,
                taken[ROUNDS / 2],
                solver[ROUNDS / 2] / taken[ROUNDS / 2],
                taken[0],
                solver[0] / taken[0]));
    System.out.println("(" + sum + ")");
  }

  /** The six equations of a rigid upright, with forward differences for the derivatives. */
  private static final class Equations {
    private final StrutPoints p;
    private final Vec3 top;
    private final double wheelZ;
    private final Vec3 f;
    private final Vec3 g;

    Equations(StrutPoints p, Vec3 top, double wheelZ) {
      this.p = p;
      this.top = top;
      this.wheelZ = wheelZ;
      Vec3 axis = p.top().minus(p.strutLower()).unit();
      f = axis.cross(new Vec3(1, 0, 0)).unit();
      g = axis.cross(f);
    }

    private static Vec3 turned(double[] x, Vec3 v) {
      Vec3 w = new Vec3(x[3], x[4], x[5]);
      double angle = w.norm();
      if (angle == 0.0) {
        return v;
      }
      Vec3 k = w.times(1 / angle);
      double c = Math.cos(angle);
      return v.times(c).plus(k.cross(v).times(Math.sin(angle))).plus(k.times(k.dot(v) * (1 - c)));
    }

    private Vec3 placed(double[] x, Vec3 point) {
      return p.ballJoint()
          .plus(turned(x, point.minus(p.ballJoint())))
          .plus(new Vec3(x[0], x[1], x[2]));
    }

    private double[] residuals(double[] x) {
      Vec3 ball = placed(x, p.ballJoint());
      Vec3 lower = placed(x, p.strutLower());
      return new double[] {
        ball.minus(p.armFront()).norm() - p.ballJoint().minus(p.armFront()).norm(),
        ball.minus(p.armRear()).norm() - p.ballJoint().minus(p.armRear()).norm(),
        top.minus(lower).dot(turned(x, f)),
        top.minus(lower).dot(turned(x, g)),
        placed(x, p.tieOuter()).minus(p.tieInner()).norm()
            - p.tieOuter().minus(p.tieInner()).norm(),
        placed(x, p.wheelCentre()).z() - wheelZ
      };
    }

    double[] solve(double[] start) {
      MultivariateJacobianFunction model =
          point -> {
            double[] x = point.toArray();
            double[] at = residuals(x);
            RealMatrix j = new Array2DRowRealMatrix(6, 6);
            for (int k = 0; k < 6; k++) {
              double h = k < 3 ? 1e-5 : 1e-7;
              double before = x[k];
              x[k] += h;
              double[] there = residuals(x);
              x[k] = before;
              for (int i = 0; i < 6; i++) {
                j.setEntry(i, k, (there[i] - at[i]) / h);
              }
            }
            return new Pair<RealVector, RealMatrix>(new ArrayRealVector(at, false), j);
          };
      return new LevenbergMarquardtOptimizer()
          .optimize(
              new LeastSquaresBuilder()
                  .start(start)
                  .model(model)
                  .target(new double[6])
                  .maxEvaluations(100)
                  .maxIterations(100)
                  .build())
          .getPoint()
          .toArray();
    }
  }
}
