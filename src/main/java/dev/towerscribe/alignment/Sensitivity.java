package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldRotation;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * First derivatives of what a bay reads, exact to rounding. With respect to the eight measured
 * points and the camber, for the +/-, and to the four choices of a placement.
 *
 * <p>The pose is that of {@link Bay}. About it the upright may move in six ways, three shifts and
 * three turns, and six conditions hold it: both lengths of the arm, the damper's axis through the
 * top pivot twice, the wheel's heading and its height. By the implicit function theorem the
 * derivatives of the conditions by everything, in numbers that carry their gradient, say how the
 * upright moves with each figure that was measured or chosen.
 */
public final class Sensitivity {
  /** The choices, after the points. */
  public enum Choice {
    /** Rotation, per radian. */
    ROTATION,
    /** Rearward offset, per mm. */
    REARWARD,
    /** Inboard offset, per mm. */
    INBOARD,
    /** Setting, per mm. */
    SETTING
  }

  /** After three coordinates of each point, in the order of {@link StrutPoint}, bolt left out. */
  private static final int CAMBER = 3 * StrutPoint.KNUCKLE_PIVOT.ordinal();

  private static final int CHOICES = CAMBER + 1;

  /** Shifts and turns of the upright about its pose, after all that they depend on. */
  private static final int MOVES = CHOICES + Choice.values().length;

  private static final int ALL = MOVES + 6;

  /**
   * One figure with its derivatives.
   *
   * @param value the figure, radians or mm
   * @param byCoordinate derivatives by the points' coordinates, in the order of {@link StrutPoint}
   * @param byCamber derivative by the camber as measured
   * @param byChoice derivatives in the order of {@link Choice}
   */
  public record Figure(double value, double[] byCoordinate, double byCamber, double[] byChoice) {
    /**
     * Standard deviation from those of the points and the camber as measured.
     *
     * @param sure how far each may be off
     * @return standard deviation of the figure, radians or mm
     */
    public double plusMinus(PlusMinus sure) {
      return Math.sqrt(covariance(this, sure));
    }

    /**
     * Covariance with another figure, or with itself, from the deviations of the points and the
     * camber as measured, all independent of each other.
     *
     * @param other a figure of the same points
     * @param sure how far each point and the camber may be off
     * @return in the units of both figures
     */
    public double covariance(Figure other, PlusMinus sure) {
      double camber = sure.camber().radians();
      double sum = byCamber * other.byCamber * camber * camber;
      double[] sds =
          sure.points().stream()
              .flatMap(p -> Stream.of(p.x(), p.y(), p.z()))
              .mapToDouble(sd -> sd)
              .toArray();
      for (int i = 0; i < sds.length; i++) {
        sum += byCoordinate[i] * other.byCoordinate[i] * sds[i] * sds[i];
      }
      return sum;
    }

    /**
     * Whether it has derivatives at all: at the very end of the linkage's reach it has none.
     *
     * @return true if every number is finite
     */
    public boolean isFinite() {
      return Double.isFinite(value + byCamber)
          && Arrays.stream(byCoordinate).allMatch(Double::isFinite)
          && Arrays.stream(byChoice).allMatch(Double::isFinite);
    }

    @Override
    public boolean equals(Object o) {
      return o instanceof Figure f
          && value == f.value
          && byCamber == f.byCamber
          && Arrays.equals(byCoordinate, f.byCoordinate)
          && Arrays.equals(byChoice, f.byChoice);
    }

    @Override
    public int hashCode() {
      return Double.hashCode(value) + 31 * Arrays.hashCode(byCoordinate);
    }
  }

  /**
   * What a bay reads, each figure with its derivatives.
   *
   * @param caster caster
   * @param camber camber
   * @param inclination kingpin inclination
   * @param scrubMm scrub radius
   * @param trailMm mechanical trail
   * @param damperMm damper length
   */
  public record Figures(
      Figure caster,
      Figure camber,
      Figure inclination,
      Figure scrubMm,
      Figure trailMm,
      Figure damperMm) {
    boolean isFinite() {
      return Stream.of(caster, camber, inclination, scrubMm, trailMm, damperMm)
          .allMatch(Figure::isFinite);
    }
  }

  private final StrutPoints strut;
  private final Rotation turn;
  private final FieldVector3D<Gradient> measuredBall;
  private final FieldVector3D<Gradient> top;
  private final FieldVector3D<Gradient> ball;
  private final FieldVector3D<Gradient> lower;
  private final FieldVector3D<Gradient> wheel;
  private final FieldVector3D<Gradient> spin;

  /** Derivatives of the moves by everything else: six rows. */
  private final RealMatrix moves;

  private Sensitivity(SideJob job, double settingMm, boolean moved) throws NotReached {
    Bay bay = Bay.of(job);
    strut = bay.mechanism().points();
    Pose pose = moved ? bay.at(job.bearing(settingMm)) : bay.before();
    Vec3 measuredSpin = Linkage.spinAxis(strut.camber(), strut.toe());
    turn =
        new Rotation(
            vector(strut.strutLower().minus(strut.ballJoint())),
            vector(measuredSpin),
            vector(pose.strutLower().minus(pose.ballJoint())),
            vector(pose.spin()));
    measuredBall = measured(StrutPoint.BALL_JOINT);
    top = moved ? measured(StrutPoint.TOP).add(move(job, settingMm)) : measured(StrutPoint.TOP);
    ball = variable(MOVES, pose.ballJoint());
    lower = ball.add(turned(measured(StrutPoint.STRUT_LOWER).subtract(measuredBall)));
    wheel = ball.add(turned(measured(StrutPoint.WHEEL_CENTRE).subtract(measuredBall)));
    spin = turned(measuredSpin());
    moves = moves(conditions());
  }

  /**
   * Derivatives before the work, by the points; the choices have none.
   *
   * @param job a side with strut points
   * @return figures at the original top pivot
   * @throws NotReached if the linkage cannot get there
   */
  public static Figures before(SideJob job) throws NotReached {
    return new Sensitivity(job, job.mount().settingMm(), false).figures();
  }

  /**
   * Derivatives with the bearing at a setting.
   *
   * @param job a side with strut points
   * @param settingMm where along the slot
   * @return figures there
   * @throws NotReached if the linkage cannot get there
   */
  public static Figures at(SideJob job, double settingMm) throws NotReached {
    return new Sensitivity(job, settingMm, true).figures();
  }

  private static Vector3D vector(Vec3 v) {
    return new Vector3D(v.x(), v.y(), v.z());
  }

  private static FieldVector3D<Gradient> variable(int i, Vec3 p) {
    return new FieldVector3D<>(
        Gradient.variable(ALL, i, p.x()),
        Gradient.variable(ALL, i + 1, p.y()),
        Gradient.variable(ALL, i + 2, p.z()));
  }

  private FieldVector3D<Gradient> measured(StrutPoint point) {
    return variable(3 * point.ordinal(), strut.points().get(point.ordinal()));
  }

  /** {@link Linkage#spinAxis} as it depends on the camber; the bay sets the toe. */
  private FieldVector3D<Gradient> measuredSpin() {
    Gradient camber = Gradient.variable(ALL, CAMBER, strut.camber().radians());
    return new FieldVector3D<>(
        camber.cos().multiply(strut.toe().sin()),
        camber.cos().multiply(strut.toe().cos()),
        camber.sin().negate());
  }

  /** A direction of the upright as measured, where the pose and the small turns bring it. */
  private FieldVector3D<Gradient> turned(FieldVector3D<Gradient> direction) {
    FieldVector3D<Gradient> there = FieldRotation.applyTo(turn, direction);
    return there.add(variable(MOVES + 3, new Vec3(0, 0, 0)).crossProduct(there));
  }

  /** The top pivot's move as it depends on the choices. */
  private static FieldVector3D<Gradient> move(SideJob job, double settingMm) {
    Gradient rotation = choice(Choice.ROTATION, job.mount().rotation().radians());
    Gradient along = choice(Choice.SETTING, settingMm).add(job.plate().bearingXMm());
    Gradient rearward = choice(Choice.REARWARD, job.mount().rearwardMm());
    Gradient inboard = choice(Choice.INBOARD, job.mount().inboardMm());
    Gradient fore = rearward.negate().subtract(along.multiply(rotation.sin()));
    Gradient in = inboard.add(along.multiply(rotation.cos()));
    Lean lean = job.tower().lean();
    double rise = job.bearingHeightMm() - job.tower().pivotHeightMm();
    return new FieldVector3D<>(
        fore,
        vector(lean.fore(Side.LEFT)),
        in,
        vector(lean.in(Side.LEFT)),
        Gradient.constant(ALL, rise),
        vector(lean.normal(Side.LEFT)));
  }

  private static Gradient choice(Choice choice, double value) {
    return Gradient.variable(ALL, CHOICES + choice.ordinal(), value);
  }

  /** What holds the upright; each is nothing at the pose. */
  private List<Gradient> conditions() {
    FieldVector3D<Gradient> damper =
        turned(measured(StrutPoint.TOP).subtract(measured(StrutPoint.STRUT_LOWER)));
    FieldVector3D<Gradient> offAxis = top.subtract(lower).crossProduct(damper);
    Vector3D aside = damper.toVector3D().orthogonal();
    Vector3D across = damper.toVector3D().normalize().crossProduct(aside);
    // The bay holds the measured wheel height, so that its own uncertainty counts.
    Gradient ride = measured(StrutPoint.WHEEL_CENTRE).getZ().add(strut.rideMm());
    return List.of(
        longer(StrutPoint.ARM_FRONT),
        longer(StrutPoint.ARM_REAR),
        offAxis.dotProduct(aside),
        offAxis.dotProduct(across),
        // The wheel's axis square to where the toe heads it.
        spin.dotProduct(new Vector3D(strut.toe().cos(), -strut.toe().sin(), 0)),
        wheel.getZ().subtract(ride));
  }

  private Gradient longer(StrutPoint arm) {
    FieldVector3D<Gradient> pivot = measured(arm);
    return ball.subtract(pivot).getNormSq().subtract(measuredBall.subtract(pivot).getNormSq());
  }

  /** How the moves answer to everything else, so that the conditions stay met. */
  private static RealMatrix moves(List<Gradient> conditions) {
    RealMatrix by = new Array2DRowRealMatrix(ALL - MOVES, ALL);
    for (int i = 0; i < conditions.size(); i++) {
      by.setRow(i, conditions.get(i).getGradient());
    }
    int last = conditions.size() - 1;
    // At the very end of the linkage's reach it divides by nothing: no derivative is finite there.
    DecompositionSolver solver =
        new LUDecomposition(by.getSubMatrix(0, last, MOVES, ALL - 1), 0).getSolver();
    RealMatrix others = by.getSubMatrix(0, last, 0, MOVES - 1);
    return solver.solve(others).scalarMultiply(-1);
  }

  /** The formulas of {@link Pose}. */
  private Figures figures() {
    FieldVector3D<Gradient> axis = top.subtract(ball);
    Gradient z = spin.getZ();
    FieldVector3D<Gradient> down =
        new FieldVector3D<>(
            spin.getX().multiply(z), spin.getY().multiply(z), z.multiply(z).subtract(1.0));
    FieldVector3D<Gradient> contact =
        wheel.add(down.normalize().scalarMultiply(strut.tyreRadiusMm()));
    // From the contact point to where the steering axis meets its level.
    Gradient part = contact.getZ().subtract(ball.getZ()).divide(axis.getZ());
    FieldVector3D<Gradient> toAxis = ball.add(axis.scalarMultiply(part)).subtract(contact);
    Gradient level = spin.getX().square().add(spin.getY().square()).sqrt();
    Gradient scrub = toAxis.getX().multiply(spin.getX()).add(toAxis.getY().multiply(spin.getY()));
    Gradient trail =
        toAxis.getX().multiply(spin.getY()).subtract(toAxis.getY().multiply(spin.getX()));
    return new Figures(
        figure(axis.getX().negate().atan2(axis.getZ())),
        figure(z.asin().negate()),
        figure(axis.getY().negate().atan2(axis.getZ())),
        figure(scrub.divide(level).negate()),
        figure(trail.divide(level)),
        figure(top.subtract(lower).getNorm()));
  }

  /** A figure's own derivatives, and what the moves add. */
  private Figure figure(Gradient g) {
    double[] own = g.getGradient();
    double[] byMoves = moves.preMultiply(Arrays.copyOfRange(own, MOVES, ALL));
    for (int i = 0; i < MOVES; i++) {
      own[i] += byMoves[i];
    }
    return new Figure(
        g.getValue(),
        Arrays.copyOfRange(own, 0, CAMBER),
        own[CAMBER],
        Arrays.copyOfRange(own, CHOICES, MOVES));
  }
}
