package dev.towerscribe.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.Tries;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Aims;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.StrutRodReach;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class AlignmentTest {
  /** Rounding of angles found by some hundred operations, degrees. */
  private static final double DEG = 1e-9;

  private static final StrutPoints.KnuckleBolt BOLT =
      new StrutPoints.KnuckleBolt(
          new Vec3(-6, 610, 300), Angle.ofDegrees(-2), Angle.ofDegrees(0.5));

  private static Aims aims(Aims.Use use) {
    return new Aims(use, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static SideJob side(
      Side side, StrutPoints strut, Optional<MeasuredAxis> axis, Optional<Aims> aims) {
    SideJob s = SampleJobs.side(side, SampleJobs.fullTower(), SampleJobs.plate(true));
    return s.withStrut(Optional.ofNullable(strut)).withAxis(axis).withAims(aims);
  }

  private static SideJob demo(Aims.Use use) {
    return side(
        Side.LEFT,
        SampleJobs.strut().withKnuckleBolt(Optional.of(BOLT)),
        Optional.empty(),
        Optional.of(aims(use)));
  }

  private static StrutPoints with(StrutPoints s, Vec3 ball, Vec3 tieInner, Vec3 tieOuter) {
    return s.with(StrutPoint.BALL_JOINT, ball)
        .with(StrutPoint.TIE_INNER, tieInner)
        .with(StrutPoint.TIE_OUTER, tieOuter);
  }

  private static Finding finding(SideAlignment side, String id) {
    return side.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void demoCarIsAsTheTradeExpects() {
    // Common practice, no source: starts below 3 degrees of caster, its reachable camber does not
    // reach -2.5; the plate brings about one degree more camber.
    SideAlignment a = Alignment.of(demo(Aims.Use.ROAD_AND_TRACK)).orElseThrow();
    Reading before = a.before().orElseThrow();
    Reading at = a.at().orElseThrow();
    assertThat(before.caster().degrees()).isLessThan(3);
    assertThat(before.camber().degrees()).isCloseTo(-0.5, within(DEG));
    StrutFigures s = a.strut().orElseThrow();
    assertThat(s.reachableBefore().orElseThrow().from().degrees()).isGreaterThan(-2.5);
    assertThat(at.camber().degrees() - before.camber().degrees()).isBetween(-1.5, -0.5);
    assertThat(at.caster().degrees()).isGreaterThan(5);
    // Independent: caster and inclination before are plain angles of the two points.
    assertThat(before.caster().degrees())
        .isCloseTo(Math.toDegrees(Math.atan2(28, 600)), within(DEG));
    assertThat(before.inclination().degrees())
        .isCloseTo(Math.toDegrees(Math.atan2(110, 600)), within(DEG));
    assertThat(before.includedAngle().degrees())
        .isCloseTo(before.inclination().degrees() - 0.5, within(DEG));
  }

  @Test
  void settingsAreTheIndexMarksAndBothEndsOnce() {
    // Independent: marks and ends of the slots given here, in order and once each.
    assertThat(
            SlotSettings.of(new dev.towerscribe.model.Plate.Slot(-8, 16, List.of(-8.0, 4.0, 16.0))))
        .containsExactly(-8.0, 4.0, 16.0);
    assertThat(SlotSettings.of(new dev.towerscribe.model.Plate.Slot(-10, 20, List.of(5.0, -0.0))))
        .containsExactly(-10.0, 0.0, 5.0, 20.0);
    SideAlignment a = Alignment.of(demo(Aims.Use.ROAD)).orElseThrow();
    assertThat(a.settings())
        .extracting(SideAlignment.AtSetting::settingMm)
        .containsExactly(-8.0, 4.0, 16.0);
    // The chosen setting is the last of them.
    assertThat(a.settings().get(2).reading()).isEqualTo(a.at());
  }

  @Test
  void knuckleBoltAloneMovesCamberByAboutItsTurn() {
    // Independent: the bolt gives 2.5 degrees; the wheel centre is held, so the arm moves too and
    // less
    // arrives at the wheel, some 2.0 with this arm.
    StrutFigures s = Alignment.of(demo(Aims.Use.ROAD)).orElseThrow().strut().orElseThrow();
    StrutFigures.Reachable r = s.reachableAt().orElseThrow();
    assertThat(r.to().degrees() - r.from().degrees()).isBetween(1.5, 2.5);
    assertThat(r.nearest(Angle.ofDegrees(-9))).isEqualTo(r.from());
    assertThat(r.nearest(Angle.ofDegrees(9))).isEqualTo(r.to());
    assertThat(r.nearest(Angle.ofDegrees(-2))).isEqualTo(Angle.ofDegrees(-2));
  }

  @Test
  void bothSidesOfAMirroredCarReadAlikeAndSteerOppositely() {
    SideAlignment left = Alignment.of(demo(Aims.Use.ROAD)).orElseThrow();
    SideAlignment right =
        Alignment.of(
                side(
                    Side.RIGHT,
                    SampleJobs.mirrored(SampleJobs.strut().withKnuckleBolt(Optional.of(BOLT))),
                    Optional.empty(),
                    Optional.of(aims(Aims.Use.ROAD))))
            .orElseThrow();
    assertThat(right.at().orElseThrow().caster().degrees())
        .isCloseTo(left.at().orElseThrow().caster().degrees(), within(DEG));
    List<Bay.Point> l = left.strut().orElseThrow().at().orElseThrow().steer();
    List<Bay.Point> r = right.strut().orElseThrow().at().orElseThrow().steer();
    assertThat(l).hasSize(15);
    for (int i = 0; i < l.size(); i++) {
      assertThat(r.get(r.size() - 1 - i).pose().camber())
          .isCloseTo(l.get(i).pose().camber(), within(Math.toRadians(DEG)));
    }
    // A left wheel with caster leans outward when it is the inner one, steered to the left.
    assertThat(l.get(14).pose().camber()).isGreaterThan(l.get(0).pose().camber());
  }

  @Test
  void curvesHoldTheirPoseInTheMiddleAndTheSlopeIsTheirs() {
    Curves c =
        Alignment.of(demo(Aims.Use.ROAD))
            .orElseThrow()
            .strut()
            .orElseThrow()
            .before()
            .orElseThrow();
    assertThat(c.travel()).hasSize(17);
    assertThat(c.travel().get(8).input()).isZero();
    assertThat(c.travel().get(8).pose().camber())
        .isCloseTo(c.set().camber(), within(Math.toRadians(DEG)));
    // Independent: a parabola through three of the curve's points, 10 mm apart, has the middle
    // one's slope up to a sixth of the third derivative times 100 mm2; 2 % here.
    double secant = (c.travel().get(9).pose().toe() - c.travel().get(7).pose().toe()) / 20;
    assertThat(c.bumpSteer().slopeRadPerMm()).isCloseTo(secant, within(Math.abs(secant) * 0.02));
    // Independent: the curve goes on to 80 mm, but the peak is told of the job's own travel only.
    assertThat(c.bumpSteer().droopMm()).isEqualTo(60);
    assertThat(c.bumpSteer().bumpMm()).isEqualTo(60);
    double most =
        c.travel().stream()
            .filter(p -> Math.abs(p.input()) <= 60)
            .mapToDouble(p -> Math.abs(p.pose().toe() - c.set().toe()))
            .max()
            .orElseThrow();
    assertThat(Math.abs(c.bumpSteer().peakRad())).isEqualTo(most);
    assertThat(Math.abs(c.bumpSteer().steepestRadPerMm()))
        .isGreaterThanOrEqualTo(Math.abs(c.bumpSteer().slopeRadPerMm()));
  }

  @Test
  void bumpSteerIsThatOfTheJobsOwnTravel() throws NotReached {
    for (double[] travel : new double[][] {{30, 90}, {0, 0}, {12.5, 0}}) {
      StrutPoints s = SampleJobs.strut();
      StrutPoints limited =
          s.withLimits(new StrutPoints.Limits(travel[0], travel[1], Angle.ofDegrees(35)));
      SideJob job = side(Side.LEFT, limited, Optional.empty(), Optional.empty());
      Curves c = Alignment.of(job).orElseThrow().strut().orElseThrow().before().orElseThrow();
      Bay bay = Bay.of(job);
      // Independent: the farthest from rest of 400 steps between the two ends.
      double peak = 0;
      double at = 0;
      for (int i = 0; i <= 400; i++) {
        double mm = -travel[1] + (travel[0] + travel[1]) * i / 400;
        double away = bay.travel(c.set(), mm).pose().toe() - c.set().toe();
        if (Math.abs(away) > Math.abs(peak) + 1e-12) {
          peak = away;
          at = mm;
        }
      }
      // Looked at every 5 mm: an inner peak is missed by half the bend over 2.5 mm, far below this.
      assertThat(c.bumpSteer().peakRad()).isCloseTo(peak, within(Math.toRadians(0.002)));
      assertThat(c.bumpSteer().peakAtMm()).isCloseTo(at, within(5.0));
      assertThat(c.bumpSteer().peakAtMm()).isBetween(-travel[1], travel[0]);
      // A search sees the same.
      QuickStrut quick = new QuickStrut(job, travel[1], travel[0], 21);
      assertThat(quick.set(-20, 5)).isTrue();
      Pose there = bay.at(new Vec2(-20, 5));
      double most = 0;
      for (int i = 0; i <= 400; i++) {
        double mm = -travel[1] + (travel[0] + travel[1]) * i / 400;
        most = Math.max(most, Math.abs(bay.travel(there, mm).pose().toe() - there.toe()));
      }
      assertThat(quick.bumpSteer()).isCloseTo(most, within(0.01 * most + 1e-12));
    }
  }

  @Test
  void idsCountTheSettingsInEveryUnit() {
    var slot = new dev.towerscribe.model.Plate.Slot(-7.62, 15.24, List.of(0.0, 15.24));
    assertThat(SlotSettings.id(slot, 15.24)).isEqualTo("setting-3");
    assertThat(SlotSettings.id(slot, -0.0)).isEqualTo("setting-2");
    assertThat(SlotSettings.words(slot, -7.62)).isEqualTo("setting 1 of 3");
  }

  @Test
  void damperAndTrackChangesAreDifferencesOfTheReadings() {
    SideAlignment a = Alignment.of(demo(Aims.Use.ROAD)).orElseThrow();
    Pose old = a.before().orElseThrow().linkage().orElseThrow();
    Pose now = a.at().orElseThrow().linkage().orElseThrow();
    assertThat(a.damperChangeMm()).contains(now.damperMm() - old.damperMm());
    assertThat(a.trackChangeMm()).contains(now.contactYMm() - old.contactYMm());
  }

  @Test
  void onlyTheAxisGivesAnEstimateByHand() {
    MeasuredAxis axis =
        new MeasuredAxis(Angle.ofDegrees(3), Angle.ofDegrees(11), 600, Angle.ofDegrees(-0.5));
    SideJob level =
        SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true))
            .with(new Mount(Angle.ofDegrees(90), 0, 0, 2))
            .withStrut(Optional.empty())
            .withAxis(Optional.of(axis))
            .withAims(Optional.of(aims(Aims.Use.ROAD)));
    SideAlignment a = Alignment.of(level).orElseThrow();
    assertThat(a.estimate()).isTrue();
    assertThat(a.strut()).isEmpty();
    assertThat(a.at().orElseThrow().linkage()).isEmpty();
    // Independent, by hand: at rotation 90 the bearing (x 8 + setting 2) lies 10 mm rearward; level
    // tower, bearing 6 mm above the old pivot. u = (-tan 3, -tan 11, 1)/norm * 600.
    double norm =
        Math.sqrt(
            1
                + Math.pow(Math.tan(Math.toRadians(3)), 2)
                + Math.pow(Math.tan(Math.toRadians(11)), 2));
    double z = 600 / norm + 6;
    double rearward = 600 / norm * Math.tan(Math.toRadians(3)) + 10;
    double inboard = 600 / norm * Math.tan(Math.toRadians(11));
    assertThat(a.at().orElseThrow().caster().degrees())
        .isCloseTo(Math.toDegrees(Math.atan(rearward / z)), within(DEG));
    double inclination = Math.toDegrees(Math.atan(inboard / z));
    assertThat(a.at().orElseThrow().inclination().degrees()).isCloseTo(inclination, within(DEG));
    assertThat(a.at().orElseThrow().camber().degrees())
        .isCloseTo(-0.5 - (inclination - 11), within(DEG));
    assertThat(finding(a, "left.alignment-estimate").severity()).isEqualTo(Severity.NOTE);
  }

  @Test
  void noPointsAndNoAxisGiveNothing() {
    assertThat(Alignment.of(side(Side.LEFT, null, Optional.empty(), Optional.empty()))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    // Frozen: caster by common practice, camber by our own choice, no source for either.
    "ROAD, 4.0, , -1.8",
    "ROAD_AND_TRACK, 5.5, 6.0, -2.4",
    "TRACK, 5.5, , -2.75",
  })
  void useFillsTheAims(Aims.Use use, double from, Double to, double camber) {
    AlignmentTargets goals = AlignmentTargets.of(aims(use));
    assertThat(goals.casterFrom().degrees()).isCloseTo(from, within(DEG));
    assertThat(goals.casterTo().map(Angle::degrees).orElse(null))
        .satisfies(t -> assertThat(t == null).isEqualTo(to == null));
    assertThat(goals.camber().degrees()).isCloseTo(camber, within(DEG));
    assertThat(goals.camberLimit().degrees()).isCloseTo(-3.2, within(DEG));
    assertThat(goals.casterSource()).endsWith("common practice, no source");
    assertThat(goals.camberSource()).endsWith("our own choice, no source");
    assertThat(goals.limitSource()).endsWith("our own choice, no source");
    AlignmentTargets own =
        AlignmentTargets.of(
            new Aims(
                use,
                Optional.of(Angle.ofDegrees(7)),
                Optional.of(Angle.ofDegrees(8)),
                Optional.of(Angle.ofDegrees(-3.5)),
                Optional.empty()));
    assertThat(own.casterWords()).isEqualTo("7 to 8 deg");
    // The usual limit gives way to an aim beyond it.
    assertThat(own.camberLimit()).isEqualTo(own.camber());
  }

  @ParameterizedTest
  @EnumSource(Aims.Use.class)
  void aimsAreFindingsThatNeverStop(Aims.Use use) {
    SideAlignment a = Alignment.of(demo(use)).orElseThrow();
    double caster = a.at().orElseThrow().caster().degrees();
    Finding f = finding(a, "left.aim-caster");
    assertThat(f.figure()).isCloseTo(caster, within(DEG));
    assertThat(f.severity()).isEqualTo(use == Aims.Use.ROAD ? Severity.NOTE : Severity.CAUTION);
    Finding camber = finding(a, "left.aim-camber");
    assertThat(camber.severity()).isEqualTo(Severity.NOTE);
    assertThat(camber.figure()).isEqualTo(camber.limit());
    assertThat(a.findings()).noneMatch(Finding::isStop);
  }

  @Test
  void aSettingPastTheLimitIsNamed() {
    // Independent: the limit is the one stated here, -1 degree.
    Aims tight =
        new Aims(
            Aims.Use.ROAD,
            Optional.empty(),
            Optional.empty(),
            Optional.of(Angle.ofDegrees(-0.5)),
            Optional.of(Angle.ofDegrees(-1.0)));
    SideAlignment a =
        Alignment.of(side(Side.LEFT, SampleJobs.strut(), Optional.empty(), Optional.of(tight)))
            .orElseThrow();
    Finding past = finding(a, "left.camber-limit.setting-3");
    assertThat(past.severity()).isEqualTo(Severity.CAUTION);
    assertThat(past.figure()).isLessThan(-1.0);
    assertThat(a.findings()).noneMatch(f -> f.id().equals("left.camber-limit.setting-2"));
    // No bolt: the camber at the setting itself is judged, and is 0.96 off.
    assertThat(finding(a, "left.aim-camber").severity()).isEqualTo(Severity.CAUTION);
  }

  @Test
  void crossFiguresAreLeftMinusRight() {
    SideJob left = demo(Aims.Use.ROAD);
    StrutPoints other =
        SampleJobs.mirrored(
            with(
                SampleJobs.strut(),
                new Vec3(22, 655, 190),
                SampleJobs.strut().tieInner(),
                SampleJobs.strut().tieOuter()));
    Map<Side, SideJob> sides = new EnumMap<>(Side.class);
    sides.put(Side.LEFT, left);
    sides.put(Side.RIGHT, side(Side.RIGHT, other, Optional.empty(), Optional.empty()));
    JobAlignment a = Alignment.of(new Job("two", Optional.empty(), LengthUnit.MM, sides));
    // Independent: 14 mm further forward at the ball joint, 600 mm below the top.
    double wanted = Math.toDegrees(Math.atan2(28, 600) - Math.atan2(42, 600));
    assertThat(a.crossBefore().orElseThrow().caster().degrees()).isCloseTo(wanted, within(DEG));
    Finding f = a.findings().get(0);
    assertThat(f.id()).isEqualTo("both.cross-caster");
    assertThat(f.severity()).isEqualTo(Severity.CAUTION);
    assertThat(f.say()).contains("Left minus right: -1.");
  }

  @Test
  void aTieRodTooShortForTheTravelNamesItAndTheTravel() {
    StrutPoints s = SampleJobs.strut();
    // An inner end 60 mm from the outer one, which moves up and down by more than that.
    StrutPoints odd =
        s.with(StrutPoint.TIE_INNER, s.tieOuter().plus(new Vec3(0, -30, 0)))
            .withRide(0)
            .withLimits(new StrutPoints.Limits(150, 150, Angle.ofDegrees(35)));
    SideAlignment a =
        Alignment.of(side(Side.LEFT, odd, Optional.empty(), Optional.empty())).orElseThrow();
    Finding f = finding(a, "left.reach-travel");
    assertThat(f.severity()).isEqualTo(Severity.CAUTION);
    assertThat(f.where()).contains("tie_inner, tie_outer");
    assertThat(f.say()).containsPattern("Before full (droop|bump) the tie rod");
    assertThat(f.figure()).isLessThan(150);
    // The point before is reached: independent, by asking the linkage.
    Bay bay = Bay.of(a.job());
    int sign = f.say().contains("droop") ? -1 : 1;
    Pose set = a.strut().orElseThrow().at().orElseThrow().set();
    assertThat(bay.travel(set, sign * (f.figure() - 1), sign * f.figure() + 0.0, 1.0 * sign))
        .extracting(Bay.Point::reached)
        .containsExactly(true, false);
  }

  @Test
  void pointsInALineAreAStopThatNamesThemAndNoFigureIsMade() {
    StrutPoints s = SampleJobs.strut();
    Vec3 onArmAxis = s.armFront().plus(s.armRear()).times(0.5);
    SideAlignment a =
        Alignment.of(
                side(
                    Side.LEFT,
                    with(s, onArmAxis, s.tieInner(), s.tieOuter()),
                    Optional.empty(),
                    Optional.of(aims(Aims.Use.ROAD))))
            .orElseThrow();
    assertThat(a.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.isStop()).isTrue();
              assertThat(f.where()).contains("arm_front, arm_rear, ball_joint");
            });
    assertThat(a.at()).isEmpty();
    Vec3 onSteeringAxis = s.ballJoint().plus(s.top()).times(0.5);
    SideAlignment b =
        Alignment.of(
                side(
                    Side.LEFT,
                    with(s, s.ballJoint(), s.tieInner(), onSteeringAxis),
                    Optional.empty(),
                    Optional.empty()))
            .orElseThrow();
    assertThat(b.findings())
        .singleElement()
        .satisfies(f -> assertThat(f.where()).contains("tie_outer"));
    assertThat(StrutRodPoses.of(b.job())).isEmpty();
  }

  @Test
  void aRideHeightThatTheArmCannotReachIsAStop() {
    StrutPoints s = SampleJobs.strut();
    // An arm 60 mm long cannot go up by 120.
    StrutPoints shortArm =
        s.with(StrutPoint.ARM_FRONT, new Vec3(20, 595, 205))
            .with(StrutPoint.ARM_REAR, new Vec3(-290, 595, 212))
            .withRide(150);
    SideAlignment a =
        Alignment.of(side(Side.LEFT, shortArm, Optional.empty(), Optional.empty())).orElseThrow();
    assertThat(a.before()).isEmpty();
    assertThat(finding(a, "left.reach-at").isStop()).isTrue();
    assertThat(finding(a, "left.reach-setting-1").severity()).isEqualTo(Severity.CAUTION);
  }

  @Test
  void strutRodPointsFromTheBearingToItsLowerEndAtEveryPose() {
    SideJob job = demo(Aims.Use.ROAD);
    StrutRodReach reach = StrutRodPoses.of(job).orElseThrow();
    // Five places of the slot, three of the bolt, five of travel and of steer.
    assertThat(reach.rays()).hasSize(5 * 3 * 5 * 5);
    // Independent: at ride height, straight ahead, the ray through strut_lower as the bay has it.
    Bay bay = Bay.of(job);
    Vec3 lower;
    Vec3 top = bay.top(job.bearing(16));
    try {
      lower = bay.at(job.bearing(16)).strutLower();
    } catch (NotReached e) {
      throw new AssertionError(e);
    }
    Vec3 down = lower.minus(top);
    var lean = job.tower().lean();
    double depth = -down.dot(lean.normal(Side.LEFT));
    Vec2 wanted =
        new Vec2(down.dot(lean.fore(Side.LEFT)) / depth, down.dot(lean.in(Side.LEFT)) / depth);
    assertThat(reach.rays())
        .anySatisfy(
            r -> {
              assertThat(r.settingMm()).isEqualTo(16);
              // Lengths of 400 mm, so 1e-12 per mm is rounding.
              assertThat(r.perMm().distanceTo(wanted)).isLessThan(1e-11);
            });
    assertThat(StrutRodPoses.of(side(Side.LEFT, null, Optional.empty(), Optional.empty())))
        .isEmpty();
  }

  @Tag("more-tries")
  @Test
  void noPointsWhateverGiveAnythingButFiguresOrFindings() {
    Random random = new Random(41);
    StrutPoints s = SampleJobs.strut();
    int stopped = 0;
    int read = 0;
    int cases = Tries.of(600, 3000);
    for (int i = 0; i < cases; i++) {
      // From small slips to points that lie anywhere, some of them in one line or one place.
      double by = i % 3 == 0 ? 20 : i % 3 == 1 ? 150 : 500;
      Vec3 ball = moved(s.ballJoint(), by, random);
      Vec3 front = moved(s.armFront(), by, random);
      StrutPoints odd =
          new StrutPoints(
              moved(s.top(), by, random),
              ball,
              front,
              i % 7 == 0 ? ball.plus(ball.minus(front)) : moved(s.armRear(), by, random),
              moved(s.strutLower(), by, random),
              moved(s.tieInner(), by, random),
              i % 11 == 0 ? ball.plus(new Vec3(0, 0, 100)) : moved(s.tieOuter(), by, random),
              moved(s.wheelCentre(), by, random),
              290,
              Angle.ofDegrees(-10 + 20 * random.nextDouble()),
              Angle.ofDegrees(-10 + 20 * random.nextDouble()),
              -150 + 300 * random.nextDouble(),
              PlusMinus.all(2),
              Optional.of(BOLT),
              new StrutPoints.Limits(200, 200, Angle.ofDegrees(50)));
      SideJob job = side(Side.LEFT, odd, Optional.empty(), Optional.of(aims(Aims.Use.TRACK)));
      // Points, angles and findings refuse what is not a number when they are made.
      SideAlignment a = Alignment.of(job).orElseThrow();
      StrutRodPoses.of(job);
      if (a.at().isEmpty()) {
        assertThat(a.findings()).anyMatch(Finding::isStop);
        stopped++;
      } else {
        Pose m = a.at().get().linkage().orElseThrow();
        assertThat(List.of(m.caster(), m.camber(), m.toe(), m.scrubMm(), m.trailMm(), m.damperMm()))
            .allMatch(Double::isFinite);
        read++;
      }
    }
    // Both ends of the road were taken.
    assertThat(stopped).isGreaterThan(cases / 10);
    assertThat(read).isGreaterThan(cases / 3);
  }

  private static Vec3 moved(Vec3 p, double by, Random random) {
    return p.plus(
        new Vec3(
            by * (2 * random.nextDouble() - 1),
            by * (2 * random.nextDouble() - 1),
            by * (2 * random.nextDouble() - 1)));
  }
}
