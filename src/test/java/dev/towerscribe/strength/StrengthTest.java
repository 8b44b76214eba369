package dev.towerscribe.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.BoltClass;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateChange;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Thread;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StrengthTest {
  /** Forces of some 1e4 N, areas of some 1e4 mm2, a few hundred roundings of 1e-16 each. */
  private static final double ROUNDING = 1e-8;

  /** 4000 + 30 * 60 = 5800 N, doubled: 11600 N. */
  private static final Loads LOADS = new Loads(30, 60, 4000, 2);

  private static final Vec3 UP = new Vec3(0, 0, 1);

  private static StrengthInput input(Vec3 toward, Seat seat) {
    return new StrengthInput(LOADS, toward, "a test", seat, BoltClass.CLASS_8_8, 0.12);
  }

  private static SideLayout laidOut(SideJob job) throws JobRejected {
    return Layout.of(SampleJobs.only(job)).sides().get(job.side());
  }

  private static SideLayout plain(Side side) throws JobRejected {
    return laidOut(SampleJobs.side(side, SampleJobs.plainTower(), SampleJobs.plate(true)));
  }

  private static Plate withBolts(List<Bolt> bolts) {
    Plate p = SampleJobs.plate(true);
    return PlateChange.of(p).withShape(p.outline(), bolts).plate();
  }

  @Test
  void theCornerLoad() {
    // Independent: by hand.
    assertThat(LOADS.fullBumpN()).isEqualTo(5800);
    assertThat(LOADS.cornerN()).isEqualTo(11600);
    assertThatThrownBy(() -> new Loads(30, 60, 4000, 0.5)).hasMessageContaining("dynamic factor");
    assertThatThrownBy(() -> new Loads(-1, 60, 4000, 2)).hasMessageContaining("spring rate");
    assertThatThrownBy(() -> new Loads(30, -1, 4000, 2)).hasMessageContaining("bump");
    assertThatThrownBy(() -> new Loads(30, 60, Double.NaN, 2)).hasMessageContaining("static");
  }

  @Test
  void anUprightStrutOnALevelTowerPullsByTheBearingsPlaceInTheTriangle() throws JobRejected {
    SideLayout layout = plain(Side.LEFT);
    StrengthReport report = Strength.of(layout, input(UP, Seat.ON_TOP));
    assertThat(report.force().normalN()).isCloseTo(11600, within(ROUNDING));
    assertThat(report.force().inPlaneN().norm()).isCloseTo(0, within(ROUNDING));
    // Independent: areas of the triangles that the bearing makes with two bolts at a time. In the
    // plate's frame the bearing is at (8 + 16, 0).
    Vec2 a = new Vec2(76, 3);
    Vec2 b = new Vec2(-38, 65.8);
    Vec2 c = new Vec2(-36, -64);
    Vec2 p = new Vec2(24, 0);
    double whole = b.minus(a).cross(c.minus(a));
    List<Double> expected =
        List.of(
            11600 * b.minus(p).cross(c.minus(p)) / whole,
            11600 * c.minus(p).cross(a.minus(p)) / whole,
            11600 * a.minus(p).cross(b.minus(p)) / whole);
    for (int i = 0; i < 3; i++) {
      BoltFigures bolt = report.bolts().get(i);
      assertThat(bolt.axialN()).isCloseTo(expected.get(i), within(ROUNDING));
      assertThat(bolt.pullN()).isCloseTo(expected.get(i), within(ROUNDING));
      assertThat(bolt.shearN()).isCloseTo(0, within(ROUNDING));
      // Independent: M8 8.8 has 21 200 N; washer 16 over a hole of 9.
      assertThat(bolt.use().orElseThrow()).isCloseTo(expected.get(i) / 21200, within(1e-12));
      assertThat(bolt.washerMPa().orElseThrow())
          .isCloseTo(expected.get(i) / (Math.PI * (64 - 20.25)), within(1e-9));
    }
    assertThat(report.mostUsed().orElseThrow().name()).isEqualTo("A");
  }

  @Test
  void underneathTheSameStrutPullsOnNothing() throws JobRejected {
    // Independent: the bearing lies inside the bolts' triangle, so every share presses.
    StrengthReport report = Strength.of(plain(Side.LEFT), input(UP, Seat.UNDERNEATH));
    for (BoltFigures bolt : report.bolts()) {
      assertThat(bolt.axialN()).isPositive();
      assertThat(bolt.pullN()).isZero();
    }
    // Independent: bearing 18 over the upper face of 1.4 mm sheet.
    assertThat(report.bearingHeightMm()).isCloseTo(19.4, within(1e-12));
    assertThat(Strength.of(plain(Side.LEFT), input(UP, Seat.ON_TOP)).bearingHeightMm())
        .isEqualTo(18);
  }

  @Test
  void aShareTheOtherWayPullsOnlyUnderneath() {
    assertThat(Seat.UNDERNEATH.pullN(-120)).isEqualTo(120);
    assertThat(Seat.UNDERNEATH.pullN(120)).isZero();
    assertThat(Seat.ON_TOP.pullN(120)).isEqualTo(120);
    assertThat(Seat.ON_TOP.pullN(-120)).isZero();
  }

  @Test
  void useOfABoltIsPullAndShearAdded() {
    // Independent: by hand, 2120 / 21200 + 0.3 = 0.1 + 0.3; preload 18.62 kN from the table below.
    BoltStrength m8 =
        BoltStrength.find(Thread.find("M8").orElseThrow(), BoltClass.CLASS_8_8).orElseThrow();
    double shear = 0.3 * 21200 / Math.sqrt(3);
    BoltFigures bolt =
        new BoltFigures(
            "A",
            Thread.find("M8").orElseThrow(),
            Vec2.ZERO,
            new BoltGroup.InPlane(new Vec2(shear, 0), Vec2.ZERO),
            2120,
            2120,
            Optional.empty(),
            Optional.of(m8),
            Optional.of(new Tightening(BoltClass.CLASS_8_8, 0.12, 10_600, 20)));
    assertThat(bolt.tensionUse().orElseThrow()).isCloseTo(0.1, within(1e-12));
    assertThat(bolt.shearUse().orElseThrow()).isCloseTo(0.3, within(1e-12));
    assertThat(bolt.use().orElseThrow()).isCloseTo(0.4, within(1e-12));
    assertThat(bolt.clampUse().orElseThrow()).isCloseTo(0.2, within(1e-12));
    assertThat(bolt.frictionNeeded().orElseThrow()).isCloseTo(shear / 8480, within(1e-12));
  }

  @Test
  void pressureOfCircles() throws JobRejected {
    // Independent: by hand. Mark 104 and opening 62 before; plate 186, cut 98 (3 kept inside the
    // mark), three holes of 9 after.
    Pressure p =
        Strength.of(plain(Side.RIGHT), input(UP, Seat.UNDERNEATH)).pressure().orElseThrow();
    double before = Math.PI * (52 * 52 - 31 * 31);
    double after = Math.PI * (93 * 93 - 49 * 49 - 3 * 4.5 * 4.5);
    assertThat(p.originalMm2()).isCloseTo(before, within(ROUNDING));
    assertThat(p.contactMm2()).isCloseTo(after, within(ROUNDING));
    assertThat(p.originalMPa()).isCloseTo(11600 / before, within(ROUNDING));
    assertThat(p.contactMPa()).isCloseTo(11600 / after, within(ROUNDING));
    assertThat(p.ratio()).isCloseTo(p.contactMPa() / p.originalMPa(), within(1e-12));
  }

  @Test
  void pressureCountsOnlyMetalOnTheLand() {
    // Independent: half a disc of radius 80 less half the opening of radius 20.
    Region disc = Region.inside(Contour.circle(Vec2.ZERO, 80));
    Region gone = Region.inside(Contour.circle(Vec2.ZERO, 20));
    Region half = Region.inside(SampleJobs.rectangle(0, -100, 100, 100));
    Region ring = Region.inside(Contour.circle(Vec2.ZERO, 50)).minus(gone);
    Pressure p = Pressure.of(-900, ring, disc, Optional.of(half), gone, List.of()).orElseThrow();
    assertThat(p.contactMm2()).isCloseTo(Math.PI * (6400 - 400) / 2, within(ROUNDING));
    assertThat(p.loadN()).isEqualTo(900);
    assertThat(Pressure.of(900, Region.EMPTY, disc, Optional.empty(), gone, List.of())).isEmpty();
    assertThat(Pressure.of(900, ring, gone, Optional.empty(), disc, List.of())).isEmpty();
  }

  @Test
  void bothTowersOfACarAlike() throws JobRejected {
    // Independent: the car is its own mirror image, and so must its figures be.
    SideJob left = SampleJobs.side(Side.LEFT, SampleJobs.fullTower(), SampleJobs.plate(true));
    SideJob right = SampleJobs.side(Side.RIGHT, SampleJobs.fullTower(), SampleJobs.plate(true));
    Vec3 up = StrutLine.of(left).orElseThrow();
    assertThat(StrutLine.of(right).orElseThrow().minus(up.mirroredAcross()).norm())
        .isCloseTo(0, within(1e-12));
    StrengthReport one = Strength.of(laidOut(left), input(up, Seat.ON_TOP));
    StrengthReport two = Strength.of(laidOut(right), input(up.mirroredAcross(), Seat.ON_TOP));
    for (int i = 0; i < 3; i++) {
      BoltFigures a = one.bolts().get(i);
      BoltFigures b = two.bolts().get(i);
      assertThat(a.axialN()).isCloseTo(b.axialN(), within(ROUNDING));
      assertThat(a.inPlane().totalN().distanceTo(b.inPlane().totalN()))
          .isCloseTo(0, within(ROUNDING));
    }
    assertThat(one.inPlaneMomentNmm()).isCloseTo(two.inPlaneMomentNmm(), within(1e-6));
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void aStrutLeaningInboardPushesInboard(Side side) {
    // Independent: by hand. On a level tower a lean of 10 degrees inboard and 0 rearward pushes
    // sin 10 of the load inboard; on a tower that leans as much, all of it is square to the plane.
    Vec3 up = new Lean(Angle.ofDegrees(10), Angle.ZERO).normal(side);
    PlaneForce level = PlaneForce.of(1000, up, Lean.LEVEL, side);
    assertThat(level.inPlaneN().x()).isCloseTo(0, within(ROUNDING));
    assertThat(level.inPlaneN().y())
        .isCloseTo(1000 * Math.sin(Math.toRadians(10)), within(ROUNDING));
    assertThat(level.normalN()).isCloseTo(1000 * Math.cos(Math.toRadians(10)), within(ROUNDING));
    PlaneForce along = PlaneForce.of(1000, up, new Lean(Angle.ofDegrees(10), Angle.ZERO), side);
    assertThat(along.normalN()).isCloseTo(1000, within(ROUNDING));
    Vec3 back = new Lean(Angle.ZERO, Angle.ofDegrees(6)).normal(side);
    assertThat(PlaneForce.of(1000, back, Lean.LEVEL, side).inPlaneN().x())
        .isCloseTo(-1000 * Math.sin(Math.toRadians(6)), within(ROUNDING));
  }

  @Test
  void theStrutsLineFromItsPoints() {
    // Independent: by hand. Level tower, left: bearing at fore -8 - 24 sin 55, in -3 + 24 cos 55,
    // 18 - 12 above the old pivot (-20, 545, 790); lower point (-4, 590, 420).
    SideJob job = SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true));
    double q = Math.toRadians(55);
    Vec3 expected =
        new Vec3(-20 - 8 - 24 * Math.sin(q) + 4, 545 - (-3 + 24 * Math.cos(q)) - 590, 790 + 6 - 420)
            .unit();
    assertThat(StrutLine.of(job).orElseThrow().minus(expected).norm()).isCloseTo(0, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    // Published: ISO 898-1, stress areas and proof loads of classes 8.8 and 10.9, coarse thread.
    "M5, 14.2, 8230, 11800",
    "M6, 20.1, 11600, 16700",
    "M8, 36.6, 21200, 30400",
    "M10, 58, 33700, 48100",
    "M12, 84.3, 48900, 70000",
    "M14, 115, 66700, 95500",
    "M16, 157, 91000, 130000",
  })
  void proofLoads(String size, double area, double proof88, double proof109) {
    Thread thread = Thread.find(size).orElseThrow();
    BoltStrength one = BoltStrength.find(thread, BoltClass.CLASS_8_8).orElseThrow();
    BoltStrength two = BoltStrength.find(thread, BoltClass.CLASS_10_9).orElseThrow();
    assertThat(one.stressAreaMm2()).isEqualTo(area);
    assertThat(one.proofN()).isEqualTo(proof88);
    assertThat(two.proofN()).isEqualTo(proof109);
    // Published: proof stresses of the same standard, 580 MPa to M16 and 830 MPa; its loads are
    // rounded to three digits, so half of the third is what they may differ by.
    assertThat(proof88 / area).isCloseTo(580, within(580 * 0.005));
    assertThat(proof109 / area).isCloseTo(830, within(830 * 0.005));
    // Published: Shigley ch. 8, shear yield 0.577 of that in tension.
    assertThat(one.shearProofN() / one.proofN()).isCloseTo(0.577, within(5e-4));
  }

  @ParameterizedTest
  @CsvSource({
    // Independent: the formula of VDI 2230 worked out apart from the program, class 8.8, medium
    // holes; kN and N m to the digits given.
    "M6, 0.12, 6.6, 10.2, 10.1",
    "M8, 0.12, 9, 18.6, 24.5",
    "M10, 0.12, 11, 29.6, 48.3",
    "M12, 0.12, 13.5, 43.1, 83.4",
    "M6, 0.14, 6.6, 9.9, 11.2",
    "M8, 0.14, 9, 18.1, 27.2",
    "M10, 0.14, 11, 28.8, 53.7",
    "M12, 0.14, 13.5, 42.0, 92.8",
  })
  void preloadAndTorque(String size, double friction, double hole, double kN, double newtonMetres) {
    Tightening t =
        Tightening.of(Thread.find(size).orElseThrow(), BoltClass.CLASS_8_8, friction, hole)
            .orElseThrow();
    assertThat(t.preloadN() / 1000).isCloseTo(kN, within(0.05));
    assertThat(t.torqueNm()).isCloseTo(newtonMetres, within(0.05));
    // Independent: both go with the yield, 940 over 640.
    Tightening strong =
        Tightening.of(Thread.find(size).orElseThrow(), BoltClass.CLASS_10_9, friction, hole)
            .orElseThrow();
    assertThat(strong.preloadN() / t.preloadN()).isCloseTo(940.0 / 640, within(1e-12));
    assertThat(strong.torqueNm() / t.torqueNm()).isCloseTo(940.0 / 640, within(1e-12));
  }

  @Test
  void noFigureIsSaidInsteadOfGuessed() throws JobRejected {
    Thread inch = Thread.find("5/16").orElseThrow();
    Thread m14 = Thread.find("M14").orElseThrow();
    Plate plate =
        withBolts(
            List.of(
                new Bolt("A", new Vec2(76, 3), inch, 13, 22),
                new Bolt("B", new Vec2(-38, 65.8), m14, 21, 28),
                new Bolt("C", new Vec2(-36, -64), m14, 21, 28)));
    SideLayout layout = laidOut(SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), plate));
    StrengthReport report = Strength.of(layout, input(UP, Seat.ON_TOP));
    assertThat(report.bolts().get(0).use()).isEmpty();
    assertThat(report.bolts().get(1).use()).isPresent();
    assertThat(report.bolts().get(1).tightening()).isEmpty();
    assertThat(report.mostUsed()).isEmpty();
    assertThat(report.assumptions())
        .contains("NO FIGURE: no published proof load is held for bolt A (5/16).")
        .contains(
            "NO FIGURE: no checked preload or torque is held for bolt A (5/16), bolt B (M14), bolt"
                + " C (M14).");
    assertThatThrownBy(() -> Tightening.of(inch, BoltClass.CLASS_8_8, 0.9, 9))
        .hasMessageContaining("friction");
  }

  @Test
  void whatIsAssumedFollowsTheTower() throws JobRejected {
    String flat = said(SampleJobs.plainTower(), SampleJobs.plate(true), Seat.UNDERNEATH);
    String domed = said(SampleJobs.fullTower(), SampleJobs.plate(true), Seat.ON_TOP);
    assertThat(flat).contains("underneath").doesNotContain("domed").doesNotContain("NO FIGURE");
    assertThat(domed).contains("on top").contains("domed").contains("only compare areas");
    Tower t = SampleJobs.plainTower();
    Tower noLand = TowerChange.of(t).withBounds(Optional.empty(), t.wall()).tower();
    assertThat(flat).doesNotContain("No bolting face was measured");
    assertThat(said(noLand, SampleJobs.plate(true), Seat.ON_TOP))
        .contains("No bolting face was measured");
    Thread m8 = Thread.find("M8").orElseThrow();
    Plate two =
        withBolts(
            List.of(
                new Bolt("A", new Vec2(76, 3), m8, 13, 16),
                new Bolt("B", new Vec2(-76, 3), m8, 13, 16)));
    assertThat(said(SampleJobs.plainTower(), two, Seat.ON_TOP)).contains("ON ONE LINE");
    assertThat(StrengthReport.ADVISORY).contains("not a certification");
  }

  private static String said(Tower tower, Plate plate, Seat seat) throws JobRejected {
    SideLayout layout = laidOut(SampleJobs.side(Side.LEFT, tower, plate));
    return String.join(" ", Strength.of(layout, input(UP, seat)).assumptions());
  }
}
