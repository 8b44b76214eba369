package dev.towerscribe.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MechanismTest {
  private static final double MM = 1e-9;
  private static final double RAD = 1e-9;
  private static final int STRUTS = 1000;

  private static void same(String what, Vec3 a, Vec3 b, double tolerance) {
    assertThat(a.minus(b).norm()).as(what).isLessThan(tolerance);
  }

  private static void agrees(String what, Pose pose, SixEquations other, StrutPoints p) {
    double[] x = other.solve();
    assertThat(other.worst(x)).as(what + " residual").isLessThan(1e-10);
    same(what + " ball joint", pose.ballJoint(), other.placed(x, p.ballJoint()), MM);
    same(what + " wheel centre", pose.wheelCentre(), other.placed(x, p.wheelCentre()), MM);
    same(what + " tie rod", pose.tieOuter(), other.placed(x, p.tieOuter()), MM);
    same(what + " strut lower", pose.strutLower(), other.placed(x, p.strutLower()), MM);
    // A unit vector's change is its angle.
    same(what + " wheel axis", pose.spin(), SixEquations.turned(x, Struts.spin(p)), RAD);
  }

  @Test
  void closedFormAgreesWithSixEquationsOverTravel() throws NotReached {
    // Independent: Hipparchus least squares on the constraint equations, started from rest.
    Random random = new Random(20261125);
    for (int i = 0; i < STRUTS; i++) {
      StrutPoints p = Struts.random(random);
      Mechanism mechanism = new Mechanism(p);
      Vec3 top = i % 2 == 0 ? p.top() : Struts.movedTop(p, random);
      double travel = i % 5 == 0 ? -80 + 160 * (i / 5 % 2) : -80 + 160 * random.nextDouble();
      double z = p.wheelCentre().z() + travel;
      Pose pose = mechanism.tiedAtHeight(z, top, p.tieInner(), mechanism.tieLengthMm());
      agrees("strut " + i + " travel " + travel, pose, new SixEquations(p, top, z, null), p);
    }
  }

  @Test
  void closedFormAgreesWithSixEquationsOverSteer() throws NotReached {
    Random random = new Random(20261126);
    for (int i = 0; i < STRUTS; i++) {
      StrutPoints p = Struts.random(random);
      Mechanism mechanism = new Mechanism(p);
      Vec3 top = i % 2 == 0 ? p.top() : Struts.movedTop(p, random);
      double steer = i % 5 == 0 ? -35 + 70 * (i / 5 % 2) : -35 + 70 * random.nextDouble();
      double toe = -Math.toRadians(steer);
      double z = p.wheelCentre().z() - 30 + 60 * random.nextDouble();
      Pose pose = mechanism.headedAtHeight(z, top, new Angle(toe));
      agrees("strut " + i + " steer " + steer, pose, new SixEquations(p, top, z, toe), p);
    }
  }

  @Test
  void everyConstraintHoldsInEveryPose() throws NotReached {
    // Solve, then forward: the lengths that must not change, and the point that must be met.
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      StrutPoints p = Struts.random(random);
      Mechanism mechanism = new Mechanism(p);
      Vec3 top = Struts.movedTop(p, random);
      double z = p.wheelCentre().z() - 80 + 160 * random.nextDouble();
      Pose pose = mechanism.tiedAtHeight(z, top, p.tieInner(), mechanism.tieLengthMm());
      for (Vec3 pivot : new Vec3[] {p.armFront(), p.armRear()}) {
        assertThat(pose.ballJoint().minus(pivot).norm())
            .isCloseTo(p.ballJoint().minus(pivot).norm(), within(MM));
      }
      assertThat(pose.tieOuter().minus(p.tieInner()).norm())
          .isCloseTo(mechanism.tieLengthMm(), within(MM));
      assertThat(pose.wheelCentre().z()).isCloseTo(z, within(MM));
      // The upright is rigid.
      assertThat(pose.wheelCentre().minus(pose.tieOuter()).norm())
          .isCloseTo(p.wheelCentre().minus(p.tieOuter()).norm(), within(MM));
      assertThat(pose.strutLower().minus(pose.ballJoint()).norm())
          .isCloseTo(p.strutLower().minus(p.ballJoint()).norm(), within(MM));
      assertThat(pose.spin().norm()).isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void atRestNothingMoves() throws NotReached {
    StrutPoints p = Struts.demo();
    Mechanism mechanism = new Mechanism(p);
    Pose tied = mechanism.tied(0, p.top(), p.tieInner(), mechanism.tieLengthMm());
    same("ball joint", tied.ballJoint(), p.ballJoint(), MM);
    same("wheel", tied.wheelCentre(), p.wheelCentre(), MM);
    same("tie", tied.tieOuter(), p.tieOuter(), MM);
    same("spin", tied.spin(), Struts.spin(p), 1e-12);
    Pose headed = mechanism.headed(0, p.top(), Angle.ZERO);
    same("wheel", headed.wheelCentre(), p.wheelCentre(), MM);
  }

  /** Generic strut of an open general-purpose multibody library, left side, mm. */
  private static StrutPoints published() {
    List<Vec3> points =
        List.of(
            new Vec3(-115, 785, 579),
            new Vec3(-21.65371, 940.57703, -174.02826),
            new Vec3(220, 520, -156),
            new Vec3(-300, 507, -137),
            new Vec3(-74.02507, 853.2915, 248.4536),
            new Vec3(-300, 520, -59),
            new Vec3(-237.3756, 894.95045, -16.05418),
            new Vec3(-40.00403, 1099.99965, -26.02507));
    return StrutPoints.of(
        points,
        330,
        Angle.ZERO,
        Angle.ZERO,
        0,
        PlusMinus.all(2),
        Optional.empty(),
        StrutPoints.Limits.USUAL);
  }

  @ParameterizedTest
  @CsvSource({
    // Published hardpoints: the MacPherson strut of Project Chrono's vehicle data (BSD); the table
    // was solved from them by an independent root finder in six unknowns.
    "-40, 0.687, 1.245, 6.635, 10.833",
    "-20, 0.319, 0.639, 6.844, 11.273",
    "0, 0, 0, 7.066, 11.673",
    "20, -0.265, -0.678, 7.304, 12.031",
    "40, -0.468, -1.401, 7.559, 12.343",
  })
  void openHardpoints(double travel, double camber, double toe, double caster, double inclination)
      throws NotReached {
    StrutPoints p = published();
    Mechanism mechanism = new Mechanism(p);
    Pose pose =
        mechanism.tiedAtHeight(
            p.wheelCentre().z() + travel, p.top(), p.tieInner(), mechanism.tieLengthMm());
    double printed = 5e-4;
    assertThat(Math.toDegrees(pose.camber())).isCloseTo(camber, within(printed));
    assertThat(Math.toDegrees(pose.toe())).isCloseTo(toe, within(printed));
    assertThat(Math.toDegrees(pose.caster())).isCloseTo(caster, within(printed));
    assertThat(Math.toDegrees(pose.inclination())).isCloseTo(inclination, within(printed));
  }

  @Test
  void theSweepTellsItsOwnCaster() throws NotReached {
    // Closed form of the caster sweep: tan t = (sin g+ - sin g-) / (2 u_z cos g0 sin phi), phi the
    // turn about the steering axis, whatever the static camber g0 at zero toe.
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      StrutPoints p = Struts.random(random);
      StrutPoints straight =
          p.withCamber(Angle.ofDegrees(-3 + 4 * random.nextDouble())).withToe(Angle.ZERO);
      Mechanism mechanism = new Mechanism(straight);
      Vec3 axis = straight.top().minus(straight.ballJoint()).unit();
      double phi = Math.toRadians(20);
      // Where the axis turned by phi heads the wheel, by Rodrigues' formula (independent).
      double plus = headingAfter(Struts.spin(straight), axis, phi);
      double minus = headingAfter(Struts.spin(straight), axis, -phi);
      Pose left = mechanism.headed(0, straight.top(), new Angle(plus));
      Pose right = mechanism.headed(0, straight.top(), new Angle(minus));
      double g0 = mechanism.headed(0, straight.top(), Angle.ZERO).camber();
      double tan =
          (Math.sin(left.camber()) - Math.sin(right.camber()))
              / (2 * axis.z() * Math.cos(g0) * Math.sin(phi));
      assertThat(Math.atan(tan)).isCloseTo(left.caster(), within(1e-12));
    }
  }

  private static double headingAfter(Vec3 spin, Vec3 axis, double phi) {
    Vec3 s =
        spin.times(Math.cos(phi))
            .plus(axis.cross(spin).times(Math.sin(phi)))
            .plus(axis.times(axis.dot(spin) * (1 - Math.cos(phi))));
    return Math.atan2(s.x(), s.y());
  }

  @ParameterizedTest
  @CsvSource({
    // Computed from the closed form of the sweep: caster, inclination, static camber, and the
    // camber of a left wheel turned 20 degrees to the left and to the right about its axis.
    "5, 12, 0, 2.36916, -0.97333",
    "8, 14, -2, 1.45165, -3.84370",
  })
  void casterSweepTable(
      double caster, double inclination, double camber, double toLeft, double toRight)
      throws NotReached {
    StrutPoints d = Struts.demo();
    Vec3 up =
        new Vec3(-Math.tan(Math.toRadians(caster)), -Math.tan(Math.toRadians(inclination)), 1);
    Vec3 top = d.ballJoint().plus(up.times(600));
    StrutPoints p =
        d.with(StrutPoint.TOP, top).withCamber(Angle.ofDegrees(camber)).withToe(Angle.ZERO);
    Mechanism mechanism = new Mechanism(p);
    double phi = Math.toRadians(20);
    Vec3 axis = up.unit();
    Pose left = mechanism.headed(0, top, new Angle(headingAfter(Struts.spin(p), axis, phi)));
    Pose right = mechanism.headed(0, top, new Angle(headingAfter(Struts.spin(p), axis, -phi)));
    assertThat(Math.toDegrees(left.camber())).isCloseTo(toLeft, within(5e-6));
    assertThat(Math.toDegrees(right.camber())).isCloseTo(toRight, within(5e-6));
  }

  private static Pose pose(Vec3 top, Vec3 ball, Vec3 spin) {
    return new Pose(top, ball, ball, ball, ball, new Vec3(0, 720, 300), spin, 300);
  }

  @Test
  void signsOfIso8855OneByOne() {
    // Published signs: ISO 8855:2011. Independent figures, left wheel, worked by hand: X forward, Y
    // left, Z up.
    Vec3 ball = new Vec3(0, 650, 200);
    Vec3 out = new Vec3(0, 1, 0);
    // Caster is positive when the upper pivot lies rearward.
    assertThat(pose(new Vec3(-60, 650, 800), ball, out).caster())
        .isCloseTo(Math.atan2(60, 600), within(1e-12));
    assertThat(pose(new Vec3(60, 650, 800), ball, out).caster()).isNegative();
    // Kingpin inclination is positive when it lies inboard: toward Y = 0.
    assertThat(pose(new Vec3(0, 540, 800), ball, out).inclination())
        .isCloseTo(Math.atan2(110, 600), within(1e-12));
    // Camber is positive when the wheel's top leans outward: its axis points out and down.
    Vec3 leaning = new Vec3(0, Math.cos(0.02), -Math.sin(0.02));
    assertThat(pose(new Vec3(0, 540, 800), ball, leaning).camber()).isCloseTo(0.02, within(1e-12));
    assertThat(pose(new Vec3(0, 540, 800), ball, leaning).contact().y())
        .as("the contact point swings inboard when the top leans outward")
        .isCloseTo(720 - 300 * Math.sin(0.02), within(1e-9));
    // Toe-in is positive: the wheel's front points to the car's middle, its axis forward.
    Vec3 toeIn = new Vec3(Math.sin(0.01), Math.cos(0.01), 0);
    assertThat(pose(new Vec3(0, 540, 800), ball, toeIn).toe()).isCloseTo(0.01, within(1e-12));
    // The axis meets the ground at 650 + 110 / 3 = 686.67, inboard of the contact point at 720.
    assertThat(pose(new Vec3(0, 540, 800), ball, out).scrubMm())
        .isCloseTo(720 - (650 + 110 / 3.0), within(1e-9));
    // With caster it meets the ground ahead of it: 200 tan(caster) = 20.
    assertThat(pose(new Vec3(-60, 540, 800), ball, out).trailMm()).isCloseTo(20, within(1e-9));
    assertThat(Linkage.spinAxis(new Angle(0.02), new Angle(0.01)).x()).isPositive();
    assertThat(Linkage.spinAxis(new Angle(0.02), new Angle(0.01)).z()).isNegative();
  }

  @Test
  void movingTheTopInboardAndRearwardDoesWhatTheTradeSays() throws NotReached {
    // Independent: common practice, no source: 10 mm inboard at the top is about a degree of
    // camber, 10 mm
    // rearward about a degree of caster on an axis of 600 mm.
    StrutPoints p = Struts.demo();
    Mechanism mechanism = new Mechanism(p);
    double z = p.wheelCentre().z();
    Pose before = mechanism.headedAtHeight(z, p.top(), Angle.ZERO);
    Pose in = mechanism.headedAtHeight(z, p.top().plus(new Vec3(0, -10, 0)), Angle.ZERO);
    Pose back = mechanism.headedAtHeight(z, p.top().plus(new Vec3(-10, 0, 0)), Angle.ZERO);
    assertThat(Math.toDegrees(in.camber() - before.camber())).isBetween(-1.2, -0.8);
    assertThat(Math.toDegrees(back.caster() - before.caster())).isBetween(0.8, 1.2);
  }

  @Test
  void theKnuckleBoltLeansTheWheelTheWayItSays() throws NotReached {
    // Independent: less than the 2 degrees of the bolt arrive at the wheel, and more than half.
    StrutPoints p = Struts.demo();
    Vec3 pivot = new Vec3(-6, 610, 300);
    Mechanism mechanism = new Mechanism(p);
    double z = p.wheelCentre().z();
    double before = mechanism.headedAtHeight(z, p.top(), Angle.ZERO).camber();
    double leaned =
        mechanism
            .withKnuckle(pivot, Angle.ofDegrees(-2))
            .headedAtHeight(z, p.top(), Angle.ZERO)
            .camber();
    assertThat(Math.toDegrees(leaned - before)).isBetween(-2.0, -1.2);
    double same =
        mechanism.withKnuckle(pivot, Angle.ZERO).headedAtHeight(z, p.top(), Angle.ZERO).camber();
    assertThat(same).isCloseTo(before, within(1e-12));
  }

  @Test
  void whatCannotBeReachedSaysWhy() {
    StrutPoints p = Struts.demo();
    Mechanism mechanism = new Mechanism(p);
    assertThatThrownBy(() -> mechanism.tied(0, p.top(), p.tieInner(), 20))
        .isInstanceOfSatisfying(
            NotReached.class, e -> assertThat(e.reason()).isEqualTo(NotReached.Reason.TIE_ROD));
    assertThatThrownBy(() -> mechanism.headedAtHeight(5000, p.top(), Angle.ZERO))
        .isInstanceOf(NotReached.class);
    assertThatThrownBy(() -> mechanism.headed(0, p.ballJoint().plus(new Vec3(0, 0, 1)), Angle.ZERO))
        .isInstanceOfSatisfying(
            NotReached.class,
            e -> assertThat(e.reason()).isEqualTo(NotReached.Reason.TOP_TOO_CLOSE));
  }
}
