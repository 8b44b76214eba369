package dev.towerscribe.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bolt A of the sample plate lies at (3, 76) at no rotation and no offset. */
class NotchTest {
  private static final double REACH = 11.6;

  private static SideLayout lay(Bracket... brackets) throws JobRejected {
    Tower t = SampleJobs.plainTower();
    Tower tower = TowerChange.of(t).withObstacles(t.keepOuts(), List.of(brackets)).tower();
    SideJob side =
        SampleJobs.side(Side.LEFT, tower, SampleJobs.plate(true))
            .with(new Mount(Angle.ZERO, 0, 0, 0));
    return Layout.of(SampleJobs.only(side)).sides().get(Side.LEFT);
  }

  private static Bracket bracket(Contour outline, Bracket.Fastener... fasteners) {
    return new Bracket("hinge bracket", outline, 14, 12, List.of(fasteners));
  }

  private static Finding finding(SideLayout layout, String id) {
    return layout.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void noBracketInTheWayNoNotch() throws JobRejected {
    SideLayout layout = lay(bracket(SampleJobs.rectangle(-60, 90, 60, 120)));
    assertThat(layout.notches()).isEmpty();
    // Independent: by hand. 90 - 76 - 9.6.
    assertThat(finding(layout, "left.socket.A.hinge-bracket").figure())
        .isCloseTo(4.4, within(1e-9));
  }

  @Test
  void roomAloneMakesANotch() throws JobRejected {
    // 11 mm from the bolt to the edge: the socket clears, its room does not.
    SideLayout layout = lay(bracket(SampleJobs.rectangle(-60, 87, 60, 130)));
    assertThat(layout.notches()).hasSize(1);
    assertThat(layout.notches().get(0).bolts()).containsExactly("A");
  }

  @Test
  void aStraightEdgeLosesACircularSegmentAndTwoTips() throws JobRejected {
    // The edge runs 5 mm on the bolt's far side from the metal, so the centre is 5 mm inside it.
    SideLayout layout = lay(bracket(SampleJobs.rectangle(-60, 71, 60, 120)));
    Notch notch = layout.notches().get(0);
    // Independent: circular segment r^2 acos(-h/r) + h sqrt(r^2 - h^2) with r 11.6, h 5, and at
    // each mouth corner the piece outside a fillet of radius 1 that touches the line and, from
    // outside, the circle: fillet centre 1 above the line and 12.6 from the bolt.
    double segment = 323.66698239885244;
    double dx = Math.sqrt(12.6 * 12.6 - 16);
    double mouth = Math.sqrt(REACH * REACH - 25);
    Vec2 bolt = new Vec2(0, 5);
    Vec2 fillet = new Vec2(dx, 1);
    Vec2 onCircle = bolt.plus(fillet.minus(bolt).times(REACH / 12.6));
    Vec2 onLine = new Vec2(dx, 0);
    Vec2 corner = new Vec2(mouth, 0);
    // Tip = quadrilateral corner, onLine, fillet, onCircle less the fillet's sector, and the
    // circle's own segment between onCircle and corner lies on the bolt's side of the chord.
    double quad =
        Math.abs(
                corner.cross(onLine)
                    + onLine.cross(fillet)
                    + fillet.cross(onCircle)
                    + onCircle.cross(corner))
            / 2;
    double sector = Math.acos(onLine.minus(fillet).dot(onCircle.minus(fillet))) / 2;
    double turn = Math.acos(onCircle.minus(bolt).unit().dot(corner.minus(bolt).unit()));
    double sliver = REACH * REACH / 2 * (turn - Math.sin(turn));
    double tip = quad - sector - sliver;
    assertThat(tip).isPositive().isLessThan(1.0);
    assertThat(notch.removed().area()).isCloseTo(segment + 2 * tip, within(1e-6));
    assertThat(notch.remaining().area()).isCloseTo(120 * 49 - notch.removed().area(), within(1e-6));
    // Width: from 76 + 11.6 to 120.
    assertThat(notch.widthLeftMm()).isCloseTo(32.4, within(1e-9));
    assertThat(finding(layout, "left.notch-width.hinge-bracket").severity())
        .isEqualTo(Severity.NOTE);
    assertThat(finding(layout, "left.socket.A.hinge-bracket").severity())
        .isEqualTo(Severity.CAUTION);
  }

  @Test
  void aBoltWhollyUnderABracketGetsARoundHole() throws JobRejected {
    SideLayout layout = lay(bracket(SampleJobs.rectangle(-60, 50, 60, 120)));
    Notch notch = layout.notches().get(0);
    assertThat(notch.removed().contours()).hasSize(1);
    assertThat(notch.removed().contours().get(0).asCircle()).isPresent();
    assertThat(notch.removed().area()).isCloseTo(Math.PI * REACH * REACH, within(1e-9));
    // Independent: by hand. 76 - 50 - 11.6, straight toward the edge at 50.
    assertThat(notch.widthLeftMm()).isCloseTo(14.4, within(1e-9));
    Segment narrowest = notch.narrowest().orElseThrow();
    assertThat(narrowest.start().distanceTo(new Vec2(3, 64.4))).isLessThan(1e-9);
    assertThat(narrowest.end().distanceTo(new Vec2(3, 50))).isLessThan(1e-9);
  }

  @Test
  void tooThinAWebIsAStop() throws JobRejected {
    SideLayout layout = lay(bracket(SampleJobs.rectangle(-60, 58, 60, 120)));
    Finding width = finding(layout, "left.notch-width.hinge-bracket");
    assertThat(width.severity()).isEqualTo(Severity.STOP);
    assertThat(width.figure()).isCloseTo(76 - 58 - REACH, within(1e-9));
    // Independent: as the bracket states.
    assertThat(width.limit()).isEqualTo(12.0);
  }

  @Test
  void aWebThinnerThanTwoTipsIsTakenToo() throws JobRejected {
    // 0.4 mm would be left between the circle and the edge: no one can keep such a thread of metal.
    SideLayout layout = lay(bracket(SampleJobs.rectangle(-60, 64, 60, 120)));
    Notch notch = layout.notches().get(0);
    assertThat(notch.removed().area()).isGreaterThan(Math.PI * REACH * REACH + 1);
    assertThat(notch.remaining().parts()).hasSize(1);
    assertThat(notch.removed().bounds().minY()).isCloseTo(64, within(1e-9));
  }

  @Test
  void theBracketsOwnCornersStaySharp() throws JobRejected {
    SideLayout layout = lay(bracket(SampleJobs.rectangle(-60, 71, 60, 120)));
    Notch notch = layout.notches().get(0);
    assertThat(notch.remaining().contains(new Vec2(-59.99, 119.99))).isTrue();
    assertThat(notch.remaining().contains(new Vec2(59.99, 71.01))).isTrue();
  }

  @Test
  void theNotchMustMissTheBracketsOwnFastener() throws JobRejected {
    SideLayout layout =
        lay(
            bracket(
                SampleJobs.rectangle(-60, 71, 60, 120),
                new Bracket.Fastener(new Vec2(20, 80), 10),
                new Bracket.Fastener(new Vec2(-45, 100), 10)));
    Finding near = finding(layout, "left.notch-fastener.hinge-bracket.1");
    // Independent: by hand. From (3, 76) to (20, 80) less both radii.
    assertThat(near.figure()).isCloseTo(Math.hypot(17, 4) - REACH - 5, within(1e-9));
    assertThat(near.severity()).isEqualTo(Severity.STOP);
    assertThat(finding(layout, "left.notch-fastener.hinge-bracket.2").severity())
        .isEqualTo(Severity.NOTE);
  }

  @Test
  void aReentrantCornerOfTheBracketCounts() throws JobRejected {
    Contour outline =
        Contour.polygon(
            List.of(
                new Vec2(-60, 71),
                new Vec2(60, 71),
                new Vec2(60, 120),
                new Vec2(10, 120),
                new Vec2(10, 100),
                new Vec2(-60, 100)));
    Notch notch = lay(bracket(outline)).notches().get(0);
    // Independent: by hand. Straight up from the bolt to the edge at 100 is the nearest section;
    // the corner (10, 100) is a little farther.
    assertThat(notch.widthLeftMm()).isCloseTo(100 - 76 - REACH, within(1e-9));
  }

  @Test
  void aBracketWhollyEatenHasNoWidth() throws JobRejected {
    SideLayout layout = lay(bracket(SampleJobs.rectangle(0, 73, 6, 79)));
    assertThat(layout.notches().get(0).widthLeftMm()).isZero();
    assertThat(layout.notches().get(0).narrowest()).isEmpty();
    assertThat(finding(layout, "left.notch-width.hinge-bracket").severity())
        .isEqualTo(Severity.STOP);
  }
}
