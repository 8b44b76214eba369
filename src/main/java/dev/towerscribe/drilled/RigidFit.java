package dev.towerscribe.drilled;

import dev.towerscribe.adjust.CorrelatedErrors;
import dev.towerscribe.adjust.GaussNewton;
import dev.towerscribe.adjust.NormalEquations;
import dev.towerscribe.adjust.Propagation;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

  private final List<Vec2> planned;
  private final RigidMove move;
  private final boolean turnKnown;
  private final List<Vec2> residuals;
  private final double mirroredMeanSquare;
  // Of the turn and of the planned middle's place; null where it is not specified how sure the
  // places are.
  private final double[][] covariance;
  private final Optional<Double> chiSquare;

  private RigidFit(
      List<Vec2> planned,
      List<Vec2> measured,
      RigidMove move,
      boolean turnKnown,
      double[][] covariance,
      Optional<Double> chiSquare) {
    this.planned = planned;
    this.move = move;
    this.turnKnown = turnKnown;
    this.covariance = covariance;
    this.chiSquare = chiSquare;
    residuals = residuals(planned, measured, move);
    List<Vec2> over = planned.stream().map(p -> new Vec2(p.x(), -p.y())).toList();
    mirroredMeanSquare = meanSquare(residuals(over, measured, closed(over, measured)));
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
    check(planned, measured);
    return new RigidFit(
        List.copyOf(planned),
        measured,
        closed(planned, measured),
        turnKnown(planned, measured),
        null,
        Optional.empty());
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
    check(planned, measured);
    Propagation.checkSize(covariance, 2 * planned.size());
    checkTurn(planned, measured);
    RigidMove move = closed(planned, measured);
    // The turn's equation, sum of (measured - middle) x R (planned - middle) = 0, and the middle's.
    int n = planned.size();
    Vec2 middle = middle(planned);
    Vec2 there = middle(measured);
    double pull = 0;
    double[][] by = new double[3][2 * n];
    for (int i = 0; i < n; i++) {
      Vec2 arm = planned.get(i).minus(middle).rotated(move.turn());
      pull += arm.dot(measured.get(i).minus(there));
      by[0][2 * i] = -arm.y();
      by[0][2 * i + 1] = arm.x();
      by[1][2 * i] = 1.0 / n;
      by[2][2 * i + 1] = 1.0 / n;
    }
    for (int k = 0; k < 2 * n; k++) {
      by[0][k] /= pull;
    }
    return new RigidFit(
        List.copyOf(planned),
        measured,
        move,
        true,
        Propagation.carried(by, covariance),
        Optional.empty());
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
    check(planned, measured);
    int n = planned.size();
    Propagation.checkSize(covariance, 2 * n);
    checkTurn(planned, measured);
    CorrelatedErrors errors = new CorrelatedErrors(covariance);
    Vec2 middle = middle(planned);
    RigidMove start = closed(planned, measured);
    Vec2 there = start.of(middle);
    GaussNewton.Solution solution =
        GaussNewton.solve(
            x -> Optional.of(equations(errors, planned, measured, x)),
            new double[] {start.turn().radians(), there.x(), there.y()});
    double[] x = solution.x();
    Angle turn = new Angle(Math.IEEEremainder(x[0], 2 * Math.PI));
    return new RigidFit(
        List.copyOf(planned),
        measured,
        new RigidMove(turn, new Vec2(x[1], x[2]).minus(middle.rotated(turn))),
        true,
        solution.equations().inverse(),
        Optional.of(solution.squares()));
  }

  /** Of the turn and of where the planned middle goes. */
  private static NormalEquations equations(
      CorrelatedErrors errors, List<Vec2> planned, List<Vec2> measured, double[] x) {
    int n = planned.size();
    Vec2 middle = middle(planned);
    double[][] design = new double[2 * n][];
    double[] off = new double[2 * n];
    for (int i = 0; i < n; i++) {
      Vec2 arm = planned.get(i).minus(middle).rotated(new Angle(x[0]));
      design[2 * i] = new double[] {-arm.y(), 1, 0};
      design[2 * i + 1] = new double[] {arm.x(), 0, 1};
      off[2 * i] = measured.get(i).x() - arm.x() - x[1];
      off[2 * i + 1] = measured.get(i).y() - arm.y() - x[2];
    }
    return errors.equations(design, off);
  }

  private static void check(List<Vec2> planned, List<Vec2> measured) {
    if (planned.isEmpty() || planned.size() != measured.size()) {
      throw new IllegalArgumentException(
          "cannot fit " + measured.size() + " measured to " + planned.size() + " planned places");
    }
  }

  private static void checkTurn(List<Vec2> planned, List<Vec2> measured) {
    if (!turnKnown(planned, measured)) {
      throw new IllegalArgumentException("these places do not say a turn");
    }
  }

  private static Vec2 middle(List<Vec2> points) {
    Vec2 sum = Vec2.ZERO;
    for (Vec2 p : points) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / points.size());
  }

  /** Sum of dot products, sum of cross products, sum of squares of both. */
  private static double[] sums(List<Vec2> planned, List<Vec2> measured) {
    Vec2 middle = middle(planned);
    Vec2 there = middle(measured);
    double[] sums = new double[3];
    for (int i = 0; i < planned.size(); i++) {
      Vec2 p = planned.get(i).minus(middle);
      Vec2 m = measured.get(i).minus(there);
      sums[0] += p.dot(m);
      sums[1] += p.cross(m);
      sums[2] += p.dot(p) + m.dot(m);
    }
    return sums;
  }

  private static boolean turnKnown(List<Vec2> planned, List<Vec2> measured) {
    double[] sums = sums(planned, measured);
    return Math.hypot(sums[0], sums[1]) > TURN_KNOWN * sums[2];
  }

  private static RigidMove closed(List<Vec2> planned, List<Vec2> measured) {
    double[] sums = sums(planned, measured);
    boolean known = Math.hypot(sums[0], sums[1]) > TURN_KNOWN * sums[2];
    Angle turn = known ? new Angle(Math.atan2(sums[1], sums[0])) : Angle.ZERO;
    return new RigidMove(turn, middle(measured).minus(middle(planned).rotated(turn)));
  }

  private static List<Vec2> residuals(List<Vec2> planned, List<Vec2> measured, RigidMove move) {
    List<Vec2> left = new ArrayList<>();
    for (int i = 0; i < planned.size(); i++) {
      left.add(measured.get(i).minus(move.of(planned.get(i))));
    }
    return List.copyOf(left);
  }

  private static double meanSquare(List<Vec2> residuals) {
    double sum = 0;
    for (Vec2 r : residuals) {
      sum += r.dot(r);
    }
    return sum / residuals.size();
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
    return turnKnown;
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
    if (covariance == null) {
      return Optional.empty();
    }
    Vec2 arm = plannedPoint.minus(middle(planned)).rotated(move.turn());
    double[][] by = {{1, 0, 0}, {-arm.y(), 1, 0}, {arm.x(), 0, 1}};
    return Optional.of(Propagation.carried(by, covariance));
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
