package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.AxisEstimate;
import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateChange;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What holes that lie elsewhere than planned do to the alignment. */
class DrilledAnglesTest {
  /** Turn 0.2 degrees, 0.3 mm, 0.2 mm, and some of it together. */
  private static final MountCovariance SURE =
      new MountCovariance(1.2e-5, 0.09, 0.04, 3e-4, -2e-4, 0.02);

  /** Central differences of the closed form against derivatives, relative. */
  private static final double DIFFERENCES = 1e-6;

  private static SideJob side(Side side) {
    SideJob s = SampleJobs.side(side, SampleJobs.fullTower(), SampleJobs.plate(true));
    return s.with(new Mount(Angle.ofDegrees(55), 8, -3, 4));
  }

  private static SideJob with(SideJob s, Optional<StrutPoints> strut, Optional<MeasuredAxis> axis) {
    return s.withStrut(strut).withAxis(axis);
  }

  private static SideJob axisOnly() {
    return with(
        side(Side.LEFT),
        Optional.empty(),
        Optional.of(
            new MeasuredAxis(Angle.ofDegrees(3.5), Angle.ofDegrees(11), 610, Angle.ofDegrees(-1))));
  }

  private static Mount astray(SideJob job) {
    Mount m = job.mount();
    return new Mount(
        new Angle(m.rotation().radians() + 0.012),
        m.rearwardMm() + 1.3,
        m.inboardMm() - 0.8,
        m.settingMm());
  }

  @Test
  void theAnglesAreThoseOfTheJobWithThatMount() {
    for (Side which : Side.values()) {
      SideJob job = side(which);
      Mount drilled = astray(job);
      DrilledAngles found = DrilledAngles.of(job, drilled, SURE);
      assertThat(found.basis()).isEqualTo(DrilledAngles.Basis.STRUT_POINTS);
      DrilledAngles.Figure caster = found.caster().orElseThrow();
      DrilledAngles.Figure camber = found.camber().orElseThrow();
      var plan = Alignment.of(job).orElseThrow().at().orElseThrow();
      var now = Alignment.of(job.with(drilled)).orElseThrow().at().orElseThrow();
      assertThat(caster.planned()).isEqualTo(plan.caster());
      assertThat(caster.drilled()).isEqualTo(now.caster());
      assertThat(camber.planned()).isEqualTo(plan.camber());
      assertThat(camber.drilled()).isEqualTo(now.camber());
      // Independent, by hand: the bearing goes 1.3 rearward less what the turn by 0.012 takes at 12
      // mm from the
      // plate's centre, 0.08; a millimetre is about 0.1 degrees on an axis of 600 mm.
      assertThat(caster.change().degrees()).isBetween(0.08, 0.16);
      assertThat(camber.change().degrees()).isBetween(0.05, 0.16);
    }
  }

  @Test
  void drilledAsPlannedNothingChanges() {
    SideJob job = side(Side.LEFT);
    DrilledAngles found = DrilledAngles.of(job, job.mount(), MountCovariance.EXACT);
    for (Optional<DrilledAngles.Figure> f : List.of(found.caster(), found.camber(), found.toe())) {
      assertThat(f.orElseThrow().change().radians()).isZero();
      DrilledAngles.Uncertainty uncertainty = f.orElseThrow().uncertainty().orElseThrow();
      assertThat(uncertainty.holes().radians()).isZero();
      assertThat(uncertainty.pointsOfChange().orElseThrow().radians()).isZero();
      assertThat(uncertainty.points().orElseThrow().radians()).isPositive();
    }
    NearestSetting nearest = found.nearest().orElseThrow();
    assertThat(nearest.anywhere().settingMm()).isEqualTo(4);
    assertThat(nearest.anywhere().away().radians()).isZero();
    assertThat(nearest.atMark().orElseThrow().settingMm()).isEqualTo(4);
  }

  @Test
  void bothSidesReadAlike() {
    DrilledAngles left = DrilledAngles.of(side(Side.LEFT), astray(side(Side.LEFT)), SURE);
    DrilledAngles right = DrilledAngles.of(side(Side.RIGHT), astray(side(Side.RIGHT)), SURE);
    for (Function<DrilledAngles, Optional<DrilledAngles.Figure>> f :
        List.<Function<DrilledAngles, Optional<DrilledAngles.Figure>>>of(
            DrilledAngles::caster, DrilledAngles::camber, DrilledAngles::toe)) {
      DrilledAngles.Figure l = f.apply(left).orElseThrow();
      DrilledAngles.Figure r = f.apply(right).orElseThrow();
      assertThat(r.drilled().radians()).isCloseTo(l.drilled().radians(), within(1e-12));
      assertThat(r.uncertainty().orElseThrow().holes().radians())
          .isCloseTo(l.uncertainty().orElseThrow().holes().radians(), within(1e-10));
      assertThat(r.uncertainty().orElseThrow().points().orElseThrow().radians())
          .isCloseTo(l.uncertainty().orElseThrow().points().orElseThrow().radians(), within(1e-10));
    }
  }

  @Test
  void derivativesByTheMountAgainstDifferences() {
    SideJob job = side(Side.LEFT);
    Mount at = astray(job);
    DrilledAngles found = DrilledAngles.of(job, at, SURE);
    check(found.caster(), at, m -> DrilledAngles.of(job, m, SURE).caster());
    check(found.camber(), at, m -> DrilledAngles.of(job, m, SURE).camber());
    check(found.toe(), at, m -> DrilledAngles.of(job, m, SURE).toe());
    SideJob axis = axisOnly();
    DrilledAngles estimate = DrilledAngles.of(axis, at, SURE);
    check(estimate.caster(), at, m -> DrilledAngles.of(axis, m, SURE).caster());
    check(estimate.camber(), at, m -> DrilledAngles.of(axis, m, SURE).camber());
  }

  /** independent: differences of another step, and the sum over the covariance written out. */
  private static void check(
      Optional<DrilledAngles.Figure> found,
      Mount at,
      Function<Mount, Optional<DrilledAngles.Figure>> again) {
    ToDoubleFunction<Mount> angle = m -> again.apply(m).orElseThrow().drilled().radians();
    double h = 1e-3;
    Angle turn = at.rotation();
    double[] d = {
      (angle.applyAsDouble(mount(turn.radians() + 1e-4, at.rearwardMm(), at.inboardMm(), at))
              - angle.applyAsDouble(
                  mount(turn.radians() - 1e-4, at.rearwardMm(), at.inboardMm(), at)))
          / 2e-4,
      (angle.applyAsDouble(mount(turn.radians(), at.rearwardMm() + h, at.inboardMm(), at))
              - angle.applyAsDouble(mount(turn.radians(), at.rearwardMm() - h, at.inboardMm(), at)))
          / (2 * h),
      (angle.applyAsDouble(mount(turn.radians(), at.rearwardMm(), at.inboardMm() + h, at))
              - angle.applyAsDouble(mount(turn.radians(), at.rearwardMm(), at.inboardMm() - h, at)))
          / (2 * h)
    };
    DrilledAngles.Uncertainty uncertainty = found.orElseThrow().uncertainty().orElseThrow();
    DrilledAngles.Slope slope = uncertainty.byMount();
    double size = Math.abs(d[1]) + Math.abs(d[2]);
    assertThat(slope.perRadian()).isCloseTo(d[0], within(100 * DIFFERENCES * size));
    assertThat(slope.perRearwardMm()).isCloseTo(d[1], within(DIFFERENCES * size));
    assertThat(slope.perInboardMm()).isCloseTo(d[2], within(DIFFERENCES * size));
    double[][] c = {
      {SURE.rotation(), SURE.rotationRearward(), SURE.rotationInboard()},
      {SURE.rotationRearward(), SURE.rearward(), SURE.rearwardInboard()},
      {SURE.rotationInboard(), SURE.rearwardInboard(), SURE.inboard()}
    };
    double variance = 0;
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        variance += d[i] * c[i][k] * d[k];
      }
    }
    assertThat(uncertainty.holes().radians())
        .isCloseTo(Math.sqrt(variance), within(1e-4 * Math.sqrt(variance)));
  }

  private static Mount mount(double turn, double rearward, double inboard, Mount m) {
    return new Mount(new Angle(turn), rearward, inboard, m.settingMm());
  }

  @Test
  void withThatToeTheTieRodIsAsLongAsBefore() throws NotReached {
    // Independent: solved with the tie rod's length given; forward: the wheel headed so, and the
    // rod measured.
    for (Side which : Side.values()) {
      for (Mount drilled : List.of(side(which).mount(), astray(side(which)))) {
        SideJob job = side(which).with(drilled);
        Bay bay = Bay.of(job);
        Pose before = bay.before();
        DrilledAngles found = DrilledAngles.of(side(which), drilled, SURE);
        Angle toe = found.toe().orElseThrow().drilled();
        Pose headed =
            bay.mechanism()
                .headedAtHeight(bay.rideZMm(), bay.top(job.bearing(job.mount().settingMm())), toe);
        assertThat(headed.tieOuter().minus(headed.tieInner()).norm())
            .isCloseTo(before.tieOuter().minus(before.tieInner()).norm(), within(1e-8));
        // The strut goes some 10 mm back and in, which a wheel's toe cannot but show.
        assertThat(Math.abs(toe.degrees())).isGreaterThan(0.02);
      }
    }
  }

  @Test
  void aStrutThatDidNotMoveKeepsItsToe() {
    // Independent: nothing moved. The bearing, 12 along the slot, over the strut rod and as high as
    // the old pivot; a toe-in of 0.1.
    SideJob job = side(Side.LEFT);
    Plate p = job.plate();
    Plate low = PlateChange.of(p).withBearing(p.slot(), 8, job.tower().pivotHeightMm()).plate();
    StrutPoints s = job.strut().orElseThrow();
    StrutPoints in = s.withToe(Angle.ofDegrees(0.1)).withRide(25);
    SideJob there =
        with(job.with(low), Optional.of(in), Optional.empty())
            .with(new Mount(Angle.ZERO, 0, -12, 4));
    DrilledAngles.Figure toe = DrilledAngles.of(there, there.mount(), SURE).toe().orElseThrow();
    assertThat(toe.drilled().degrees()).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void howSureTheToeIsAgainstManyStruts() {
    // independent: struts scattered at random, small, so that first order rules.
    SideJob job = side(Side.LEFT);
    StrutPoints s = job.strut().orElseThrow();
    double mm = 0.2;
    double camber = 0.001;
    Vec3 p = new Vec3(mm, 2 * mm, mm / 2);
    PlusMinus sure = new PlusMinus(Collections.nCopies(8, p), new Angle(camber));
    SideJob scattered = with(job, Optional.of(changed(s, sure, null)), Optional.empty());
    Mount drilled = astray(job);
    DrilledAngles.Uncertainty uncertainty =
        DrilledAngles.of(scattered, drilled, SURE).toe().orElseThrow().uncertainty().orElseThrow();
    Random random = new Random(20260331);
    int n = 4000;
    double[] sums = new double[4];
    for (int i = 0; i < n; i++) {
      SideJob one = with(job, Optional.of(changed(s, sure, random)), Optional.empty());
      double toe = ToeBeforeReset.at(one.with(drilled));
      double change = toe - ToeBeforeReset.at(one);
      sums[0] += toe;
      sums[1] += toe * toe;
      sums[2] += change;
      sums[3] += change * change;
    }
    double deviation = Math.sqrt(sums[1] / n - sums[0] / n * sums[0] / n);
    double ofChange = Math.sqrt(sums[3] / n - sums[2] / n * sums[2] / n);
    // A deviation from 4000 is itself sure to 1 / sqrt(8000), 1.1 %: four of these.
    assertThat(uncertainty.points().orElseThrow().radians())
        .isCloseTo(deviation, within(0.045 * deviation));
    assertThat(uncertainty.pointsOfChange().orElseThrow().radians())
        .isCloseTo(ofChange, within(0.045 * ofChange));
    assertThat(ofChange).isLessThan(deviation / 3);
  }

  private static StrutPoints changed(StrutPoints s, PlusMinus sure, Random random) {
    List<Vec3> points = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      points.add(moved(s.points().get(i), sure.points().get(i), random));
    }
    return s.withPoints(points)
        .withCamber(
            new Angle(
                s.camber().radians()
                    + (random == null ? 0 : sure.camber().radians() * random.nextGaussian())))
        .withPlusMinus(sure);
  }

  private static Vec3 moved(Vec3 p, Vec3 by, Random random) {
    return random == null
        ? p
        : p.plus(
            new Vec3(
                by.x() * random.nextGaussian(),
                by.y() * random.nextGaussian(),
                by.z() * random.nextGaussian()));
  }

  @Test
  void aPlateAstrayAlongItsSlotIsSetBack() {
    // Shifted 3 along the slot, the bearing is where it was with the setting 3 less.
    for (SideJob job : List.of(side(Side.LEFT), side(Side.RIGHT), axisOnly())) {
      Mount m = job.mount();
      Mount drilled =
          new Mount(
              m.rotation(),
              m.rearwardMm() + 3 * m.rotation().sin(),
              m.inboardMm() + 3 * m.rotation().cos(),
              m.settingMm());
      NearestSetting nearest = DrilledAngles.of(job, drilled, SURE).nearest().orElseThrow();
      assertThat(nearest.anywhere().settingMm()).isCloseTo(1, within(1e-5));
      assertThat(nearest.anywhere().away().degrees()).isLessThan(1e-6);
      // Of the marks at -8, 4 and 16 the one at 4 is nearest.
      assertThat(nearest.atMark().orElseThrow().settingMm()).isEqualTo(4);
    }
  }

  @Test
  void noOtherSettingIsNearer() {
    SideJob job = side(Side.LEFT);
    Mount drilled = astray(job);
    NearestSetting nearest = DrilledAngles.of(job, drilled, SURE).nearest().orElseThrow();
    var plan = Alignment.of(job).orElseThrow().at().orElseThrow();
    SideJob now = job.with(drilled);
    for (double s = -8; s <= 16; s += 0.25) {
      Mount m = drilled;
      SideJob there = now.with(new Mount(m.rotation(), m.rearwardMm(), m.inboardMm(), s));
      var r = Alignment.of(there).orElseThrow().at().orElseThrow();
      double away =
          Math.hypot(
              r.caster().radians() - plan.caster().radians(),
              r.camber().radians() - plan.camber().radians());
      assertThat(away).isGreaterThanOrEqualTo(nearest.anywhere().away().radians() - 1e-12);
    }
    assertThat(nearest.anywhere().away().radians())
        .isLessThan(
            Math.hypot(
                DrilledAngles.of(job, drilled, SURE).caster().orElseThrow().change().radians(),
                DrilledAngles.of(job, drilled, SURE).camber().orElseThrow().change().radians()));
  }

  @Test
  void theEndOfTheSlotIsTheNearestWhereThePlateIsTooFar() {
    SideJob job = side(Side.LEFT);
    Mount m = job.mount();
    Mount drilled =
        new Mount(
            m.rotation(),
            m.rearwardMm() + 20 * m.rotation().sin(),
            m.inboardMm() + 20 * m.rotation().cos(),
            m.settingMm());
    NearestSetting nearest = DrilledAngles.of(job, drilled, SURE).nearest().orElseThrow();
    assertThat(nearest.anywhere().settingMm()).isEqualTo(-8);
    assertThat(nearest.atMark().orElseThrow().settingMm()).isEqualTo(-8);
  }

  @Test
  void anAxisAloneGivesAnEstimateWithoutToe() {
    SideJob job = axisOnly();
    Mount drilled = astray(job);
    DrilledAngles found = DrilledAngles.of(job, drilled, SURE);
    assertThat(found.basis()).isEqualTo(DrilledAngles.Basis.AXIS_ESTIMATE);
    assertThat(found.toe()).isEmpty();
    AxisEstimate now =
        AxisEstimate.at(
            job.axis().orElseThrow(), job, job.with(drilled).bearing(drilled.settingMm()));
    assertThat(found.caster().orElseThrow().drilled().radians()).isEqualTo(now.caster());
    assertThat(found.camber().orElseThrow().drilled().radians()).isEqualTo(now.camber());
    assertThat(found.caster().orElseThrow().uncertainty().orElseThrow().points()).isEmpty();
  }

  @Test
  void aJobWithoutStrutOrAxisSaysNothing() {
    SideJob job = with(side(Side.LEFT), Optional.empty(), Optional.empty());
    DrilledAngles found = DrilledAngles.of(job, astray(job), SURE);
    assertThat(found.basis()).isEqualTo(DrilledAngles.Basis.NOTHING);
    assertThat(found.caster()).isEmpty();
    assertThat(found.camber()).isEmpty();
    assertThat(found.toe()).isEmpty();
    assertThat(found.nearest()).isEmpty();
  }

  @Test
  void whatIsOutOfReachIsEmpty() {
    SideJob job = side(Side.LEFT);
    StrutPoints s = job.strut().orElseThrow();
    // The plate sent down to the ball joint: 600 rearward and inboard will do as well.
    Mount far = new Mount(job.mount().rotation(), 3000, 3000, job.mount().settingMm());
    DrilledAngles found = DrilledAngles.of(job, far, SURE);
    assertThat(found.basis()).isEqualTo(DrilledAngles.Basis.STRUT_POINTS);
    assertThat(found.toe()).isEmpty();
    // Points that make no linkage: the ball joint on the arm's own axis.
    SideJob none =
        with(job, Optional.of(s.with(StrutPoint.BALL_JOINT, s.armFront())), Optional.empty());
    DrilledAngles nothing = DrilledAngles.of(none, astray(none), SURE);
    assertThat(nothing.caster()).isEmpty();
    assertThat(nothing.camber()).isEmpty();
    assertThat(nothing.toe()).isEmpty();
    assertThat(nothing.nearest()).isEmpty();
  }
}
