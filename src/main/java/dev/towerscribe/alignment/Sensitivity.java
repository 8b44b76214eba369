package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * First derivatives of what a bay reads, exact to rounding: the closed form of {@link Mechanism}
 * gone through once more in numbers that carry their gradient. With respect to the eight measured
 * points and the camber, for the +/-, and to the four choices of a placement.
 *
 * <p>The arm angle is found by iteration, so its gradient comes from the implicit function theorem:
 * one Newton step from the converged angle, in gradient numbers, has the right first derivatives.
 */
public final class Sensitivity {
  /** The measured points in the order of their derivatives, three coordinates each. */
  public enum Input {
    /** Original top pivot. */
    TOP,
    /** Ball joint. */
    BALL_JOINT,
    /** Arm, front. */
    ARM_FRONT,
    /** Arm, rear. */
    ARM_REAR,
    /** Damper axis, lower point. */
    STRUT_LOWER,
    /** Inner tie rod end. */
    TIE_INNER,
    /** Outer tie rod end. */
    TIE_OUTER,
    /** Wheel centre. */
    WHEEL_CENTRE;

    private int at() {
      return 3 * ordinal();
    }
  }

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

  private static final int POINTS = 3 * Input.values().length;
  private static final int CAMBER = POINTS;
  private static final int CHOICES = CAMBER + 1;
  private static final int ALL = CHOICES + Choice.values().length;

  /**
   * One figure with its derivatives.
   *
   * @param value the figure, radians or mm
   * @param byCoordinate derivatives by the points' coordinates, in the order of {@link Input}
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
      double ofCamber = byCamber * sure.camber().radians();
      double squares = ofCamber * ofCamber;
      List<Vec3> points = sure.points();
      for (int i = 0; i < points.size(); i++) {
        Vec3 p = points.get(i);
        squares += square(byCoordinate[3 * i] * p.x());
        squares += square(byCoordinate[3 * i + 1] * p.y());
        squares += square(byCoordinate[3 * i + 2] * p.z());
      }
      return Math.sqrt(squares);
    }

    private static double square(double x) {
      return x * x;
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
      Figure damperMm) {}

  private Sensitivity() {}

  /**
   * Derivatives before the work, by the points; the choices have none.
   *
   * @param job a side with strut points
   * @return figures at the original top pivot
   * @throws NotReached if the linkage cannot get there
   */
  public static Figures before(SideJob job) throws NotReached {
    return figures(job, false, job.mount().settingMm());
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
    return figures(job, true, settingMm);
  }

  private static Figures figures(SideJob job, boolean moved, double settingMm) throws NotReached {
    StrutPoints strut = job.strut().orElseThrow();
    Bay bay = Bay.of(job);
    Vec2 bearing = job.bearing(settingMm);
    Pose pose = moved ? bay.at(bearing) : bay.before();
    Hardpoints h = bay.mechanism().points();
    FieldVector3D<Gradient> top = variable(h.top(), Input.TOP);
    FieldVector3D<Gradient> newTop = moved ? top.add(move(job, settingMm)) : top;
    GradientLinkage linkage =
        new GradientLinkage(
            top,
            variable(h.ballJoint(), Input.BALL_JOINT),
            variable(h.armFront(), Input.ARM_FRONT),
            variable(h.armRear(), Input.ARM_REAR),
            variable(h.strutLower(), Input.STRUT_LOWER),
            variable(h.wheelCentre(), Input.WHEEL_CENTRE),
            spin(strut));
    // The bay holds the measured wheel height, so that its own uncertainty counts.
    Gradient ride = variable(h.wheelCentre(), Input.WHEEL_CENTRE).getZ().add(strut.rideMm());
    GradientPose at =
        linkage.headedAtHeight(
            ride, newTop, strut.toe().radians(), bay.mechanism().armAngle(pose.ballJoint()));
    return new Figures(
        figure(at.caster()),
        figure(at.camber()),
        figure(at.inclination()),
        figure(at.scrub(h.tyreRadiusMm())),
        figure(at.trail(h.tyreRadiusMm())),
        figure(at.damper()));
  }

  private static FieldVector3D<Gradient> variable(Vec3 p, Input input) {
    int i = input.at();
    return new FieldVector3D<>(
        Gradient.variable(ALL, i, p.x()),
        Gradient.variable(ALL, i + 1, p.y()),
        Gradient.variable(ALL, i + 2, p.z()));
  }

  /** {@link Hardpoints#spinAxis} as it depends on the camber; the bay sets the toe. */
  private static FieldVector3D<Gradient> spin(StrutPoints strut) {
    Gradient camber = Gradient.variable(ALL, CAMBER, strut.camber().radians());
    return new FieldVector3D<>(
        camber.cos().multiply(strut.toe().sin()),
        camber.cos().multiply(strut.toe().cos()),
        camber.sin().negate());
  }

  /** The top pivot's move as it depends on the choices. */
  private static FieldVector3D<Gradient> move(SideJob job, double settingMm) {
    Gradient rotation = choice(Choice.ROTATION, job.mount().rotation().radians());
    Gradient along = choice(Choice.SETTING, settingMm).add(job.plate().bearingXMm());
    Gradient fore =
        choice(Choice.REARWARD, job.mount().rearwardMm())
            .negate()
            .subtract(along.multiply(rotation.sin()));
    Gradient in =
        choice(Choice.INBOARD, job.mount().inboardMm()).add(along.multiply(rotation.cos()));
    Lean lean = job.tower().lean();
    double rise = job.plate().bearingHeightMm() - job.tower().pivotHeightMm();
    return scaled(lean.fore(Side.LEFT), fore)
        .add(scaled(lean.in(Side.LEFT), in))
        .add(scaled(lean.normal(Side.LEFT), Gradient.constant(ALL, rise)));
  }

  private static Gradient choice(Choice choice, double value) {
    return Gradient.variable(ALL, CHOICES + choice.ordinal(), value);
  }

  private static FieldVector3D<Gradient> scaled(Vec3 v, Gradient k) {
    return new FieldVector3D<>(k.multiply(v.x()), k.multiply(v.y()), k.multiply(v.z()));
  }

  private static Figure figure(Gradient g) {
    double[] all = g.getGradient();
    return new Figure(
        g.getValue(),
        Arrays.copyOfRange(all, 0, POINTS),
        all[CAMBER],
        Arrays.copyOfRange(all, CHOICES, ALL));
  }
}
