package dev.towerscribe.record;

import dev.towerscribe.alignment.AxisEstimate;
import dev.towerscribe.alignment.Mechanism;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.TopPivot;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a bay would read at one wheel as the visit has it: at its ride height, setting and knuckle
 * bolt, the toe set as the job asks. Left-hand signs for both sides; any one thing can be made
 * other than stated.
 */
final class Predictor {
  /** What an estimate from the axis alone knows nothing of. */
  private static final Set<CauseParameter> OF_LINKAGE =
      EnumSet.of(CauseParameter.RIDE, CauseParameter.TIE_ROD, CauseParameter.SUBFRAME);

  private final SideJob job;
  private final WheelVisit wheel;
  private final MountAsMade made;

  Predictor(SideJob job, WheelVisit wheel, MountAsMade made) {
    this.job = job;
    this.wheel = wheel;
    this.made = made;
  }

  /** Whether only the steering axis was measured, so that no +/- can be given. */
  boolean estimate() {
    return job.strut().isEmpty();
  }

  /** Whether a thing has a part in what is predicted at all. */
  boolean knows(CauseParameter knob) {
    return !estimate() || !OF_LINKAGE.contains(knob);
  }

  /** Where the visit says the bearing was left. */
  double settingMm() {
    return wheel.settingMm();
  }

  /** The slot's marks. */
  List<Double> marksMm() {
    return job.plate().slot().indexMm();
  }

  /** The range of a cause's figure that is plausible at this wheel. */
  double[] believed(Cause cause) {
    Plate.Slot slot = job.plate().slot();
    return cause.believed(slot.fromMm() - wheel.settingMm(), slot.toMm() - wheel.settingMm());
  }

  /** Figures as stated; empty where the linkage cannot get there. */
  Optional<Map<BayFigure, Double>> at(ReadingStage stage) {
    return at(stage, CauseParameter.RIDE, 0.0);
  }

  /**
   * Figures with one thing other than stated.
   *
   * @param stage before or after
   * @param knob the thing
   * @param by how far
   * @return radians by figure, without toe for an estimate; empty where the linkage cannot get
   *     there
   */
  Optional<Map<BayFigure, Double>> at(ReadingStage stage, CauseParameter knob, double by) {
    return NotReached.ifReached(
        () -> {
          Map<BayFigure, Double> figures =
              estimate() ? estimated(stage, knob, by) : posed(stage, knob, by);
          if (knob == CauseParameter.CASTER_SCALE) {
            figures.merge(BayFigure.CASTER, 1.0 + by, (a, b) -> a * b);
          }
          return figures;
        });
  }

  private Map<BayFigure, Double> posed(ReadingStage stage, CauseParameter knob, double by)
      throws NotReached {
    Pose pose = pose(stage, knob, by);
    Map<BayFigure, Double> figures = figures(Reading.of(pose));
    figures.put(BayFigure.TOE, pose.toe());
    return figures;
  }

  private static Map<BayFigure, Double> figures(Reading r) {
    return new EnumMap<>(
        Map.of(
            BayFigure.CASTER, r.caster().radians(),
            BayFigure.CAMBER, r.camber().radians(),
            BayFigure.INCLINATION, r.inclination().radians()));
  }

  private Pose pose(ReadingStage stage, CauseParameter knob, double by) throws NotReached {
    SideJob side = changed(stage, knob, by);
    StrutPoints strut = side.strut().orElseThrow().onLeft(side.side());
    Mechanism linkage = new Mechanism(strut);
    Vec3 top = strut.top();
    if (stage == ReadingStage.AFTER) {
      linkage = turned(linkage);
      top = TopPivot.moved(top, side, side.bearing(side.mount().settingMm()));
    }
    if (knob == CauseParameter.SUBFRAME) {
      // Arms and rack to the left are, seen from them, the body's pivot to the right. The right
      // wheel is calculated as its mirror image.
      top = top.plus(new Vec3(0, side.side() == Side.LEFT ? -by : by, 0));
    }
    double height = strut.wheelCentre().z() + strut.rideMm();
    Pose set = linkage.headedAtHeight(height, top, strut.toe());
    return knob == CauseParameter.TIE_ROD
        ? linkage.tiedAtHeight(height, top, set.tieInner(), set.tieRodMm() + by)
        : set;
  }

  private Mechanism turned(Mechanism linkage) {
    return wheel.knuckle().radians() == 0.0
        ? linkage
        : linkage.withKnuckle(
            linkage.points().knuckleBolt().orElseThrow().pivot(), wheel.knuckle());
  }

  /**
   * How much longer the tie rod would be after the work if nobody had touched it, than for the toe
   * that the job asks for.
   *
   * @return mm; empty for an estimate or where the linkage cannot get there
   */
  Optional<Double> tieLeftAloneMm() {
    return estimate()
        ? Optional.empty()
        : NotReached.ifReached(
            () ->
                pose(ReadingStage.BEFORE, CauseParameter.RIDE, 0.0).tieRodMm()
                    - pose(ReadingStage.AFTER, CauseParameter.RIDE, 0.0).tieRodMm());
  }

  /**
   * Figures with their derivatives by points and choices. Where the knuckle bolt is turned they are
   * taken without its turn, which shifts them by some per cent only.
   *
   * @param stage before or after
   * @return empty for an estimate, and where the linkage cannot get there
   */
  Optional<Sensitivity.Figures> sure(ReadingStage stage) {
    if (estimate()) {
      return Optional.empty();
    }
    SideJob side = changed(stage, CauseParameter.RIDE, 0.0);
    return NotReached.ifReached(
        () ->
            stage == ReadingStage.BEFORE
                ? Sensitivity.before(side)
                : Sensitivity.at(side, side.mount().settingMm()));
  }

  /** The side as the visit has it, one thing changed. */
  private SideJob changed(ReadingStage stage, CauseParameter knob, double by) {
    Mount at =
        made.mount()
            .moved(
                on(knob, CauseParameter.ROTATION, by),
                on(knob, CauseParameter.REARWARD, by),
                on(knob, CauseParameter.INBOARD, by))
            .withSetting(wheel.settingMm() + on(knob, CauseParameter.SETTING, by));
    return job.with(at).withStrut(job.strut().map(s -> strut(s, stage, knob, by)));
  }

  private StrutPoints strut(StrutPoints s, ReadingStage stage, CauseParameter knob, double by) {
    double inboard = job.side().inboardSign() * on(knob, CauseParameter.TOP_INBOARD, by);
    double ride = wheel.at(stage).rideMm().orElse(s.rideMm());
    return s.with(
            StrutPoint.TOP,
            s.top().plus(new Vec3(on(knob, CauseParameter.TOP_FORWARD, by), inboard, 0)))
        .withCamber(new Angle(s.camber().radians() + on(knob, CauseParameter.CAMBER_FOUND, by)))
        .withRide(ride + on(knob, CauseParameter.RIDE, by));
  }

  private static double on(CauseParameter turned, CauseParameter wanted, double by) {
    return turned == wanted ? by : 0.0;
  }

  private Map<BayFigure, Double> estimated(ReadingStage stage, CauseParameter knob, double by) {
    MeasuredAxis a = job.axis().orElseThrow();
    double forward = on(knob, CauseParameter.TOP_FORWARD, by);
    double inboard = on(knob, CauseParameter.TOP_INBOARD, by);
    Vec3 up = new Vec3(-a.caster().tan(), -a.inclination().tan(), 1.0).unit().times(a.lengthMm());
    up = up.plus(new Vec3(forward, -inboard, 0));
    MeasuredAxis axis =
        new MeasuredAxis(
            new Angle(Math.atan2(-up.x(), up.z())),
            new Angle(Math.atan2(-up.y(), up.z())),
            up.norm(),
            new Angle(a.camber().radians() + on(knob, CauseParameter.CAMBER_FOUND, by)));
    SideJob side = changed(stage, knob, by);
    return figures(
        Reading.of(
            stage == ReadingStage.BEFORE
                ? AxisEstimate.before(axis)
                : AxisEstimate.at(axis, side, side.bearing(side.mount().settingMm()))));
  }
}
