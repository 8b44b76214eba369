package dev.towerscribe.drilled;

import dev.towerscribe.adjust.CorrelatedErrors;
import dev.towerscribe.adjust.GaussNewton;
import dev.towerscribe.adjust.NormalEquations;
import dev.towerscribe.adjust.Propagation;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/**
 * The rigid move, a turn and a shift without scale or reflection, that takes planned places nearest
 * to measured ones. Closed form (Kabsch 1976, Umeyama 1991): about both middles, turn = atan2(sum
 * of cross products, sum of dot products).
 */
public final class RigidFit {
  /**
   * A flipped pattern must fit so many times better to be called one. Our own choice, no source.
   */
  public static final double MUCH_BETTER = 3.0;

  /** A turn is known when the patterns pull toward it with this part of their size squared. */
  private static final double TURN_KNOWN = 1e-9;

  private final Pair pair;
  private final RigidMove move;
  private final List<Vec2> residuals;
  private final double mirroredMeanSquare;
  // Of the turn and of the planned middle's place; empty where it is not specified how sure the
  // places are.
  private final Optional<double[][]> covariance;
  private final Optional<Double> chiSquare;

  private RigidFit(
      Pair pair, RigidMove move, Optional<double[][]> covariance, Optional<Double> chiSquare) {
    this.pair = pair;
    this.move = move;
    this.covariance = covariance;
    this.chiSquare = chiSquare;
    residuals = pair.residuals(move);
    Pair over =
        new Pair(pair.planned.stream().map(p -> new Vec2(p.x(), -p.y())).toList(), pair.measured);
    mirroredMeanSquare = meanSquare(over.residuals(over.closed()));
  }

  /** Two lists of places that go together, and what they come to about their middles. */
  private static final class Pair {
    final List<Vec2> planned;
    final List<Vec2> measured;
    final Vec2 middle;
    final Vec2 there;
    private double dot;
    private double cross;
    private double size;

    Pair(List<Vec2> planned, List<Vec2> measured) {
      if (planned.isEmpty() || planned.size() != measured.size()) {
        throw new IllegalArgumentException(
            "cannot fit %s measured to %s planned places"
                .formatted(measured.size(), planned.size()));
      }
      this.planned = List.copyOf(planned);
      this.measured = List.copyOf(measured);
      middle = Vec2.mean(planned);
      there = Vec2.mean(measured);
      for (int i = 0; i < planned.size(); i++) {
        Vec2 p = planned.get(i).minus(middle);
        Vec2 m = measured.get(i).minus(there);
        dot += p.dot(m);
        cross += p.cross(m);
        size += p.dot(p) + m.dot(m);
      }
    }

    boolean turnKnown() {
      return Math.hypot(dot, cross) > TURN_KNOWN * size;
    }

    /** From the middle to a planned place, turned. */
    Vec2 arm(int i, Angle turn) {
      return planned.get(i).minus(middle).rotated(turn);
    }

    RigidMove closed() {
      Angle turn = turnKnown() ? new Angle(Math.atan2(cross, dot)) : Angle.ZERO;
      return new RigidMove(turn, there.minus(middle.rotated(turn)));
    }

    List<Vec2> residuals(RigidMove by) {
      return IntStream.range(0, planned.size())
          .mapToObj(i -> measured.get(i).minus(by.of(planned.get(i))))
          .toList();
    }

    /** With a covariance of the measured places that goes with them. */
    Pair sure(double[][] covariance) {
      Propagation.checkSize(covariance, 2 * planned.size());
      if (!turnKnown()) {
        throw new IllegalArgumentException("these places do not say a turn");
      }
      return this;
    }
  }

  /**
   * All points alike.
   *
   * @param planned planned places, at least one
   * @param measured measured places of the same points in the same order
   * @return the fit; {@link #turnKnown} false and no turn where the places do not say one
   * @throws IllegalArgumentException if the lists do not go together
   */
  public static RigidFit plain(List<Vec2> planned, List<Vec2> measured) {
    Pair pair = new Pair(planned, measured);
    return new RigidFit(pair, pair.closed(), Optional.empty(), Optional.empty());
  }

  /**
   * All points alike, and how sure that fit is, to first order.
   *
   * @param planned planned places
   * @param measured measured places
   * @param covariance of the measured places x1, y1, x2, y2 and so on, mm2; may be singular
   * @return the fit
   * @throws IllegalArgumentException if the lists or the covariance do not go together, or the
   *     places do not say a turn
   */
  public static RigidFit plain(List<Vec2> planned, List<Vec2> measured, double[][] covariance) {
    Pair pair = new Pair(planned, measured).sure(covariance);
    RigidMove move = pair.closed();
    // The turn's equation, sum of (measured - middle) x R (planned - middle) = 0, and the middle's.
    int n = planned.size();
    double pull = 0;
    RealMatrix by = new Array2DRowRealMatrix(3, 2 * n);
    for (int i = 0; i < n; i++) {
      Vec2 arm = pair.arm(i, move.turn());
      pull += arm.dot(measured.get(i).minus(pair.there));
      by.setColumn(2 * i, new double[] {-arm.y(), 1.0 / n, 0});
      by.setColumn(2 * i + 1, new double[] {arm.x(), 0, 1.0 / n});
    }
    by.setRowVector(0, by.getRowVector(0).mapDivide(pull));
    return new RigidFit(
        pair, move, Optional.of(Propagation.carried(by.getData(), covariance)), Optional.empty());
  }

  /**
   * Each point by how sure it is: generalised least squares with the full covariance of the
   * measured places, by Gauss and Newton from the closed form.
   *
   * @param planned planned places
   * @param measured measured places
   * @param covariance of the measured places x1, y1, x2, y2 and so on, mm2
   * @return the fit, with its covariance
   * @throws IllegalArgumentException if the lists or the covariance do not go together, the
   *     covariance is not symmetric and positive definite, or the places do not say a turn
   */
  public static RigidFit weighted(List<Vec2> planned, List<Vec2> measured, double[][] covariance) {
    Pair pair = new Pair(planned, measured).sure(covariance);
    CorrelatedErrors errors = new CorrelatedErrors(covariance);
    RigidMove start = pair.closed();
    Vec2 there = start.of(pair.middle);
    GaussNewton.Solution solution =
        GaussNewton.solve(
            x -> Optional.of(equations(errors, pair, x)),
            new double[] {start.turn().radians(), there.x(), there.y()});
    double[] x = solution.x();
    Angle turn = new Angle(Math.IEEEremainder(x[0], 2 * Math.PI));
    return new RigidFit(
        pair,
        new RigidMove(turn, new Vec2(x[1], x[2]).minus(pair.middle.rotated(turn))),
        Optional.of(solution.equations().inverse()),
        Optional.of(solution.squares()));
  }

  /** Of the turn and of where the planned middle goes. */
  private static NormalEquations equations(CorrelatedErrors errors, Pair pair, double[] x) {
    int n = pair.planned.size();
    double[][] design = new double[2 * n][];
    double[] off = new double[2 * n];
    for (int i = 0; i < n; i++) {
      Vec2 arm = pair.arm(i, new Angle(x[0]));
      design[2 * i] = new double[] {-arm.y(), 1, 0};
      design[2 * i + 1] = new double[] {arm.x(), 0, 1};
      off[2 * i] = pair.measured.get(i).x() - arm.x() - x[1];
      off[2 * i + 1] = pair.measured.get(i).y() - arm.y() - x[2];
    }
    return errors.equations(design, off);
  }

  private static double meanSquare(List<Vec2> residuals) {
    return residuals.stream().mapToDouble(r -> r.dot(r)).reduce(0, Double::sum) / residuals.size();
  }

  /**
   * Where the planned pattern went.
   *
   * @return turn and shift
   */
  public RigidMove move() {
    return move;
  }

  /**
   * Whether the places say a turn: at least two planned places that differ, and measured ones that
   * answer to them.
   *
   * @return false where the turn was left at none
   */
  public boolean turnKnown() {
    return pair.turnKnown();
  }

  /**
   * What is left: measured place less moved planned place.
   *
   * @return mm, plan, in the points' order
   */
  public List<Vec2> residuals() {
    return residuals;
  }

  /**
   * Mean of the residuals' squared lengths.
   *
   * @return mm2
   */
  public double meanSquareMm2() {
    return meanSquare(residuals);
  }

  /**
   * The same for the pattern flipped, fitted as well as it can be, all points alike.
   *
   * @return mm2
   */
  public double mirroredMeanSquareMm2() {
    return mirroredMeanSquare;
  }

  /**
   * Whether the holes look like those of the plate flipped: the mirrored pattern fits at least
   * {@link #MUCH_BETTER} times better, and the pattern itself worse by as much than its places are
   * sure.
   *
   * @param plusMinusMm one standard deviation of a place, roughly
   * @return true if so; never for a pattern on one line, which is its own mirror image
   */
  public boolean looksFlipped(double plusMinusMm) {
    double as = Math.sqrt(meanSquareMm2());
    return as > MUCH_BETTER * plusMinusMm && as > MUCH_BETTER * Math.sqrt(mirroredMeanSquare);
  }

  /**
   * Sum of weighted squares of a weighted fit: on the average as many as there are coordinates less
   * three, if nothing but the stated uncertainty parts measured from planned.
   *
   * @return without a unit; empty for a plain fit
   */
  public Optional<Double> chiSquare() {
    return chiSquare;
  }

  /**
   * How sure the turn and the place of a point of the pattern are.
   *
   * @param plannedPoint the point as planned, plan
   * @return covariance of turn (radians), fore and in (mm) of where it goes; empty where the
   *     measured places came without a covariance
   */
  public Optional<double[][]> covarianceAt(Vec2 plannedPoint) {
    Vec2 arm = plannedPoint.minus(pair.middle).rotated(move.turn());
    double[][] by = {{1, 0, 0}, {-arm.y(), 1, 0}, {arm.x(), 0, 1}};
    return covariance.map(c -> Propagation.carried(by, c));
  }

  /**
   * How sure a mount is that was moved by this fit.
   *
   * @param plan the mount as planned
   * @return covariance of rotation, rearward and inboard offset; empty likewise
   */
  public Optional<MountCovariance> mountCovariance(Mount plan) {
    return covarianceAt(RigidMove.centre(plan))
        .map(c -> new MountCovariance(c[0][0], c[1][1], c[2][2], -c[0][1], c[0][2], -c[1][2]));
  }
}
