package dev.towerscribe.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LayoutTest {
  private static final double MM = Tolerances.COMPUTED_MM;

  private static void at(SideLayout layout, String hole, double fore, double in) {
    PlacedHole placed =
        layout.holes().stream().filter(h -> h.name().equals(hole)).findFirst().orElseThrow();
    assertThat(placed.at().x()).as(hole + " fore").isCloseTo(fore, within(MM));
    assertThat(placed.at().y()).as(hole + " in").isCloseTo(in, within(MM));
  }

  private static Job asymmetric(boolean handed) {
    return SampleJobs.job(
        SampleJobs.fullTower(),
        SampleJobs.plate(handed),
        right -> right.with(new Mount(Angle.ofDegrees(52.5), 9, -2, 16)));
  }

  @Test
  void holesOfAnAsymmetricJob() throws JobRejected {
    JobLayout layout = Layout.of(asymmetric(true));
    // Independent: complex numbers in a separate script, p -> offset + i e^(iq) x + e^(iq) y.
    SideLayout left = layout.sides().get(Side.LEFT);
    at(left, "A", -68.53482605691022, 43.0492652955465);
    at(left, "B", 60.86910719488051, 29.104299932875897);
    at(left, "C", -15.219418332063256, -76.07448254313314);
    SideLayout right = layout.sides().get(Side.RIGHT);
    at(right, "A", -67.46856957510771, 46.64592862553649);
    at(right, "B", 61.20392895984075, 27.069715488831882);
    at(right, "C", -19.40001120607366, -74.69002522295301);
    assertThat(left.bearing().x()).isCloseTo(-27.6596490629358, within(MM));
    assertThat(left.bearing().y()).isCloseTo(10.765834472425112, within(MM));
    assertThat(right.bearing().x()).isCloseTo(-28.040480166989642, within(MM));
    assertThat(right.bearing().y()).isCloseTo(12.610274296209301, within(MM));
  }

  @Test
  void onePartForBothSidesTurnsItsPatternOverOnTheRight() throws JobRejected {
    JobLayout layout = Layout.of(asymmetric(false));
    at(layout.sides().get(Side.LEFT), "A", -68.53482605691022, 43.0492652955465);
    // Independent: the same script with y negated.
    SideLayout right = layout.sides().get(Side.RIGHT);
    at(right, "A", -71.12113814916002, 41.88580858378908);
    at(right, "B", -18.90907509770689, -77.33558409349467);
    at(right, "C", 58.52145170704259, 26.859202334325097);
  }

  @Test
  void spansDoNotDependOnHandOrPlace() throws JobRejected {
    for (boolean handed : new boolean[] {true, false}) {
      for (SideLayout side : Layout.of(asymmetric(handed)).sides().values()) {
        // Independent: distances of the plate's own points. M8 medium: hole 9.0 (ISO 273).
        Span ab = side.spans().get(0);
        assertThat(ab.centresMm()).isCloseTo(130.15314056910034, within(MM));
        assertThat(ab.insideMm()).isCloseTo(121.15314056910034, within(MM));
        assertThat(ab.outsideMm()).isCloseTo(139.15314056910034, within(MM));
        assertThat(ab.toleranceMm()).isCloseTo(1.0, within(MM));
        assertThat(side.spans().get(1).centresMm()).isCloseTo(130.5105359731543, within(MM));
        assertThat(side.spans().get(2).centresMm()).isCloseTo(129.81540740605485, within(MM));
        assertThat(side.spans()).hasSize(3);
      }
    }
  }

  @Test
  void atNoRotationTheSlotRunsInboardAndItsLeftIsForward() throws JobRejected {
    SideLayout side =
        Layout.of(
                SampleJobs.only(
                    SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true))
                        .with(new Mount(Angle.ZERO, 0, 0, 0))))
            .sides()
            .get(Side.LEFT);
    // Independent: by hand. Plate (76, 3) lies 76 inboard and 3 forward.
    at(side, "A", 3, 76);
    assertThat(
            side.job()
                .bearing(side.job().plate().slot().toMm())
                .minus(side.job().bearing(side.job().plate().slot().fromMm()))
                .x())
        .isCloseTo(0, within(MM));
    assertThat(
            side.job()
                .bearing(side.job().plate().slot().toMm())
                .minus(side.job().bearing(side.job().plate().slot().fromMm()))
                .y())
        .isCloseTo(24, within(MM));
  }

  @Test
  void atNinetyDegreesTheSlotRunsRearward() throws JobRejected {
    SideLayout side =
        Layout.of(
                SampleJobs.only(
                    SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true))
                        .with(new Mount(Angle.ofDegrees(90), 10, 4, 0))))
            .sides()
            .get(Side.LEFT);
    // Independent: by hand. x runs to -fore, y to +in, from (-10, 4).
    at(side, "A", -86, 7);
    assertThat(side.bearing()).isEqualTo(new Vec2(-18, side.bearing().y()));
    assertThat(side.bearing().y()).isCloseTo(4, within(MM));
  }

  @Test
  void circularCutsStayTrueCircles() throws JobRejected {
    SideLayout side = Layout.of(asymmetric(true)).sides().get(Side.LEFT);
    // Independent: by hand. Mark radius 52, keep 3, rough 2.5.
    var finalCut = side.finalCut().contours().get(0).asCircle().orElseThrow();
    var roughCut = side.roughCut().contours().get(0).asCircle().orElseThrow();
    assertThat(finalCut.radius()).isCloseTo(49.0, within(MM));
    assertThat(roughCut.radius()).isCloseTo(46.5, within(MM));
    assertThat(finalCut.centre().norm()).isCloseTo(0, within(MM));
    assertThat(side.finalCut().area()).isCloseTo(Math.PI * 49 * 49, within(1e-6));
  }

  @Test
  void squareMarkIsInsetAndItsCornersRounded() throws JobRejected {
    Tower plain = SampleJobs.plainTower();
    Tower square =
        TowerChange.of(plain)
            .withOpening(plain.opening(), SampleJobs.rectangle(-50, -50, 50, 50))
            .tower();
    SideLayout side =
        Layout.of(
                SampleJobs.only(
                    SampleJobs.side(Side.LEFT, square, SampleJobs.plate(true))
                        .with(new CutRules(3, 2.5, 8, 10))))
            .sides()
            .get(Side.LEFT);
    // Independent: a square of side s with corners of radius r has the area s^2 - (4 - pi) r^2 and
    // the length 4 s - 8 r + 2 pi r.
    double corners = (4 - Math.PI) * 64;
    assertThat(side.finalCut().area()).isCloseTo(94 * 94 - corners, within(1e-6));
    assertThat(side.finalCut().length()).isCloseTo(4 * 94 - 64 + 16 * Math.PI, within(1e-9));
    assertThat(side.roughCut().area()).isCloseTo(89 * 89 - corners, within(1e-6));
  }

  @Test
  void theStrutRodLeansTowardTheStrutsLowerEnd() throws JobRejected {
    SideLayout side = Layout.of(asymmetric(true)).sides().get(Side.LEFT);
    // Independent: vector arithmetic in a separate script, line from the bearing to the strut's
    // lower point cut with the tower plane.
    assertThat(side.sweep().from().x()).isCloseTo(-7.47549715, within(1e-7));
    assertThat(side.sweep().from().y()).isCloseTo(-3.45522683, within(1e-7));
    assertThat(side.sweep().to().x()).isCloseTo(-26.20106083, within(1e-7));
    assertThat(side.sweep().to().y()).isCloseTo(9.65655402, within(1e-7));
    assertThat(side.sweep().slantDegrees()).isCloseTo(5.8129379933812055, within(1e-9));
    double slant = Math.toRadians(5.8129379933812055);
    assertThat(side.sweep().radiusMm())
        .isCloseTo(11 / Math.cos(slant) + 1.4 * Math.tan(slant) + 2, within(MM));
  }

  @Test
  void bothTowersOfAMirroredCarSweepAlike() throws JobRejected {
    var layout =
        Layout.of(SampleJobs.job(SampleJobs.fullTower(), SampleJobs.plate(true), right -> right));
    Sweep left = layout.sides().get(Side.LEFT).sweep();
    Sweep right = layout.sides().get(Side.RIGHT).sweep();
    assertThat(left.from().distanceTo(right.from())).isCloseTo(0, within(MM));
    assertThat(left.to().distanceTo(right.to())).isCloseTo(0, within(MM));
  }

  @Test
  void starterHolesLieInTheWaste() throws JobRejected {
    SideLayout side = Layout.of(asymmetric(true)).sides().get(Side.LEFT);
    assertThat(side.starters()).hasSize(4);
    for (StarterHole starter : side.starters()) {
      // Rough cut 46.5, gap 1, drill 10: centres 40.5 out (independent: by hand).
      assertThat(starter.at().norm()).isCloseTo(40.5, within(1e-9));
      assertThat(starter.at().norm() - 5).isGreaterThan(31);
    }
  }

  @Test
  void drillsGrowInSteps() {
    // Independent: by hand from pilot 3 and steps of at most 3, rounded to half millimetres.
    assertThat(Drills.upTo(9.0)).containsExactly(3.0, 6.0, 9.0);
    assertThat(Drills.upTo(6.6)).containsExactly(3.0, 5.0, 6.6);
    assertThat(Drills.upTo(11.0)).containsExactly(3.0, 5.5, 8.5, 11.0);
    assertThat(Drills.upTo(5.5)).containsExactly(3.0, 5.5);
    assertThat(Drills.upTo(2.5)).containsExactly(2.5);
  }

  @Test
  void nothingLiesPastTheDomesEdge() {
    Tower full = SampleJobs.fullTower();
    Tower steep =
        TowerChange.of(full).withTop(full.lean(), Optional.of(new Crown(140, 60))).tower();
    assertThatThrownBy(
            () ->
                Layout.of(
                    SampleJobs.only(SampleJobs.side(Side.LEFT, steep, SampleJobs.plate(true)))))
        .isInstanceOf(JobRejected.class)
        .hasMessageContaining("left.tower.crown");
  }

  @Test
  void tracedMarkWithReentrantCornerKeepsItsKeepRadius() throws JobRejected {
    // An L: 120 x 120 without one 40 x 40 corner.
    Contour mark =
        Contour.polygon(
            List.of(
                new Vec2(-60, -60),
                new Vec2(60, -60),
                new Vec2(60, 20),
                new Vec2(20, 20),
                new Vec2(20, 60),
                new Vec2(-60, 60)));
    var inset = dev.towerscribe.geometry.Region.inside(mark);
    Cuts cuts =
        Cuts.of(
            inset,
            dev.towerscribe.geometry.Region.inside(Contour.circle(Vec2.ZERO, 20)),
            new CutRules(3, 2, 8, 10));
    // Independent, by hand: the inset square is 114 wide; the missing corner, grown by 3, takes
    // 40 x 40 of it less the rounding of its one re-entrant corner (radius 3, the keep); each of
    // the five other corners loses the rounding of radius 8.
    double rounding = 1 - Math.PI / 4;
    double expected = 114 * 114 - (40 * 40 - 9 * rounding) - 5 * 64 * rounding;
    assertThat(cuts.finalCut().area()).isCloseTo(expected, within(1e-6));
    assertThat(cuts.pieces()).isEqualTo(1);
  }
}
