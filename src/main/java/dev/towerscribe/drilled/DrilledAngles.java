package dev.towerscribe.drilled;

import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.AxisEstimate;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.alignment.StrutFigures;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.hipparchus.util.MathArrays;

/**
 * What holes that lie elsewhere than planned do to one side's alignment.
 *
 * @param basis what the figures rest on
 * @param caster caster at ride height; empty without a basis, or where the linkage does not get
 *     there or is none, of which the alignment's findings say more
 * @param camber camber at ride height; empty likewise
 * @param toe this wheel's toe before it is reset: with the tie rod left as it was before the work;
 *     empty likewise, and for an estimate from the axis alone
 * @param nearest the setting that comes nearest to what was planned; empty without a basis, or
 *     where no setting of the slot is reached
 */
public record DrilledAngles(
    Basis basis,
    Optional<Figure> caster,
    Optional<Figure> camber,
    Optional<Figure> toe,
    Optional<NearestSetting> nearest) {
  /** Turn by which an estimate's derivative is calculated, radians: its error is past 1e-10. */
  private static final double TURN_STEP = 1e-5;

  /** Shift by which it is calculated, mm. */
  private static final double SHIFT_STEP = 1e-2;

  /** What the figures rest on. */
  public enum Basis {
    /** The strut's measured points. */
    STRUT_POINTS,
    /** The measured steering axis only: an estimate, without toe. */
    AXIS_ESTIMATE,
    /** The job gives neither, so that nothing can be said. */
    NOTHING
  }

  /**
   * One angle.
   *
   * @param planned with the mount as planned
   * @param drilled with the mount as drilled
   * @param uncertainty how sure that is; empty at the very end of the linkage's reach, where
   *     nothing can be said of it
   */
  public record Figure(Angle planned, Angle drilled, Optional<Uncertainty> uncertainty) {
    /**
     * What the drilling changed.
     *
     * @return as drilled less as planned
     */
    public Angle change() {
      return new Angle(drilled.radians() - planned.radians());
    }
  }

  /**
   * How sure a figure is, one standard deviation each, to first order.
   *
   * @param byMount how the figure as drilled depends on the mount
   * @param holes of the figure as drilled and of the change, from where the holes were measured
   * @param points of the figure as drilled, from the strut's points and camber; empty for an
   *     estimate, whose axis comes without one
   * @param pointsOfChange of the change from the same, much less, as most of it is in both figures
   *     alike; empty likewise
   */
  public record Uncertainty(
      Slope byMount, Angle holes, Optional<Angle> points, Optional<Angle> pointsOfChange) {}

  /**
   * Derivatives of a figure by the mount.
   *
   * @param perRadian by the rotation, radians per radian
   * @param perRearwardMm by the rearward offset, radians per mm
   * @param perInboardMm by the inboard offset, radians per mm
   */
  public record Slope(double perRadian, double perRearwardMm, double perInboardMm) {
    Angle plusMinus(MountCovariance sure) {
      return new Angle(sure.plusMinus(perRadian, perRearwardMm, perInboardMm));
    }
  }

  /**
   * Works it out.
   *
   * @param planned the side as planned
   * @param drilled its mount as drilled; the setting stays as planned
   * @param sure how sure that mount is
   * @return the angles, as far as the job gives something to work them out from
   */
  public static DrilledAngles of(SideJob planned, Mount drilled, MountCovariance sure) {
    SideJob now = planned.with(drilled.withSetting(planned.mount().settingMm()));
    if (planned.strut().isPresent()) {
      return fromPoints(planned, now, sure);
    }
    if (planned.axis().isPresent()) {
      return estimate(planned, now, planned.axis().get(), sure);
    }
    return new DrilledAngles(
        Basis.NOTHING, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static DrilledAngles fromPoints(SideJob planned, SideJob now, MountCovariance sure) {
    SideAlignment plan = Alignment.of(planned).orElseThrow();
    SideAlignment drilled = Alignment.of(now).orElseThrow();
    boolean reached = plan.at().isPresent() && drilled.at().isPresent();
    return new DrilledAngles(
        Basis.STRUT_POINTS,
        figure(plan, drilled, Reading::caster, Sensitivity.Figures::caster, sure),
        figure(plan, drilled, Reading::camber, Sensitivity.Figures::camber, sure),
        reached ? toe(planned, now, sure) : Optional.empty(),
        plan.at().flatMap(want -> NearestSetting.of(now, want)));
  }

  private static Optional<Figure> figure(
      SideAlignment plan,
      SideAlignment drilled,
      Function<Reading, Angle> reading,
      Function<Sensitivity.Figures, Sensitivity.Figure> sensitivity,
      MountCovariance sure) {
    if (plan.at().isEmpty() || drilled.at().isEmpty()) {
      return Optional.empty();
    }
    Optional<Sensitivity.Figure> then = plan.strut().flatMap(StrutFigures::sureAt).map(sensitivity);
    Optional<Sensitivity.Figure> now =
        drilled.strut().flatMap(StrutFigures::sureAt).map(sensitivity);
    PlusMinus points = drilled.job().strut().orElseThrow().plusMinus();
    return Optional.of(
        new Figure(
            reading.apply(plan.at().get()),
            reading.apply(drilled.at().get()),
            then.flatMap(t -> now.map(n -> uncertainty(t, n, points, sure)))));
  }

  private static Uncertainty uncertainty(
      Sensitivity.Figure then, Sensitivity.Figure now, PlusMinus points, MountCovariance sure) {
    double[] by = now.byChoice();
    Slope slope =
        new Slope(
            by[Sensitivity.Choice.ROTATION.ordinal()],
            by[Sensitivity.Choice.REARWARD.ordinal()],
            by[Sensitivity.Choice.INBOARD.ordinal()]);
    Sensitivity.Figure change =
        new Sensitivity.Figure(
            now.value() - then.value(),
            MathArrays.ebeSubtract(now.byCoordinate(), then.byCoordinate()),
            now.byCamber() - then.byCamber(),
            MathArrays.ebeSubtract(now.byChoice(), then.byChoice()));
    return new Uncertainty(
        slope,
        slope.plusMinus(sure),
        Optional.of(new Angle(now.plusMinus(points))),
        Optional.of(new Angle(change.plusMinus(points))));
  }

  /** Before anybody touches the tie rod; empty where the linkage does not get there. */
  private static Optional<Figure> toe(SideJob planned, SideJob now, MountCovariance sure) {
    double then = ToeBeforeReset.at(planned);
    double drilled = ToeBeforeReset.at(now);
    return Double.isNaN(then + drilled)
        ? Optional.empty()
        : Optional.of(
            new Figure(new Angle(then), new Angle(drilled), toeUncertainty(planned, now, sure)));
  }

  private static Optional<Uncertainty> toeUncertainty(
      SideJob planned, SideJob now, MountCovariance sure) {
    Slope slope = slope(now.mount(), mount -> ToeBeforeReset.at(now.with(mount)));
    PlusMinus points = now.strut().orElseThrow().plusMinus();
    double[] drilled = ToeBeforeReset.effects(now, points);
    double[] change = MathArrays.ebeSubtract(drilled, ToeBeforeReset.effects(planned, points));
    boolean known =
        DoubleStream.concat(
                DoubleStream.of(slope.perRadian(), slope.perRearwardMm(), slope.perInboardMm()),
                Arrays.stream(change))
            .allMatch(Double::isFinite);
    return known
        ? Optional.of(
            new Uncertainty(
                slope,
                slope.plusMinus(sure),
                Optional.of(length(drilled)),
                Optional.of(length(change))))
        : Optional.empty();
  }

  private static Angle length(double[] effects) {
    return new Angle(Math.sqrt(Arrays.stream(effects).map(e -> e * e).sum()));
  }

  private static DrilledAngles estimate(
      SideJob planned, SideJob now, MeasuredAxis axis, MountCovariance sure) {
    AxisEstimate want = estimate(planned, axis);
    return new DrilledAngles(
        Basis.AXIS_ESTIMATE,
        Optional.of(estimated(planned, now, axis, AxisEstimate::caster, sure)),
        Optional.of(estimated(planned, now, axis, AxisEstimate::camber, sure)),
        Optional.empty(),
        NearestSetting.of(now, Reading.of(want)));
  }

  private static Figure estimated(
      SideJob planned,
      SideJob now,
      MeasuredAxis axis,
      ToDoubleFunction<AxisEstimate> angle,
      MountCovariance sure) {
    Slope slope = slope(now.mount(), mount -> angle.applyAsDouble(estimate(now.with(mount), axis)));
    return new Figure(
        new Angle(angle.applyAsDouble(estimate(planned, axis))),
        new Angle(angle.applyAsDouble(estimate(now, axis))),
        Optional.of(
            new Uncertainty(slope, slope.plusMinus(sure), Optional.empty(), Optional.empty())));
  }

  private static AxisEstimate estimate(SideJob job, MeasuredAxis axis) {
    return AxisEstimate.at(axis, job, job.bearing(job.mount().settingMm()));
  }

  /** Derivatives by the mount from differences of a closed form to both sides. */
  static Slope slope(Mount at, ToDoubleFunction<Mount> figure) {
    return new Slope(
        central(by -> figure.applyAsDouble(at.moved(by, 0, 0)), TURN_STEP),
        central(by -> figure.applyAsDouble(at.moved(0, by, 0)), SHIFT_STEP),
        central(by -> figure.applyAsDouble(at.moved(0, 0, by)), SHIFT_STEP));
  }

  private static double central(DoubleUnaryOperator figure, double step) {
    return (figure.applyAsDouble(step) - figure.applyAsDouble(-step)) / (2 * step);
  }
}
