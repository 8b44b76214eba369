package dev.towerscribe.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec2;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoltGroupTest {
  /** Forces of thousands of newtons through a few dozen roundings of 1e-16 each. */
  private static final double N = 1e-9;

  private static BoltGroup rectangle(double x, double y) {
    return BoltGroup.of(
        List.of(new Vec2(x, y), new Vec2(x, -y), new Vec2(-x, -y), new Vec2(-x, y)));
  }

  @Test
  void bracketOfATextbook() {
    // Published: Shigley, Mechanical Engineering Design, Ex. 8-7: 16 kN, bolts (+-75, +-60) mm, arm
    // 425 mm (inputs partly from memory): r 96.05, F' 4.00, F'' 17.70, 20.97 and 14.79 kN. Each
    // holds to half of its last digit.
    BoltGroup group = rectangle(75, 60);
    List<BoltGroup.InPlane> shares = group.inPlane(new Vec2(0, -16), new Vec2(425, 0));
    assertThat(group.bolts().get(0).distanceTo(group.centroid())).isCloseTo(96.05, within(5e-3));
    for (BoltGroup.InPlane share : shares) {
      assertThat(share.directN().norm()).isCloseTo(4.00, within(5e-3));
      assertThat(share.secondaryN().norm()).isCloseTo(17.70, within(5e-3));
    }
    assertThat(shares.get(0).totalN().norm()).isCloseTo(20.97, within(5e-3));
    assertThat(shares.get(1).totalN().norm()).isCloseTo(20.97, within(5e-3));
    assertThat(shares.get(2).totalN().norm()).isCloseTo(14.79, within(5e-3));
    assertThat(shares.get(3).totalN().norm()).isCloseTo(14.79, within(5e-3));
  }

  @Test
  void fourBoltsOfAWorkedExample() {
    // Independent, by hand: 100 kN at 200 mm, bolts (+-50, +-50). 25 kN each directly; the turn's
    // 20 kN m over the squared distances' 4 * 5000 mm2 gives (50, 50): root(50^2 + 75^2) = 90.14.
    List<BoltGroup.InPlane> shares = rectangle(50, 50).inPlane(new Vec2(0, -100), new Vec2(200, 0));
    assertThat(shares.get(0).totalN().norm()).isCloseTo(90.14, within(5e-3));
    // Independent: root(50^2 + 25^2).
    assertThat(shares.get(2).totalN().norm()).isCloseTo(Math.sqrt(3125), within(N));
  }

  @Test
  void aLoadThroughTheCentroidIsSharedEvenly() {
    // Independent: by symmetry.
    for (BoltGroup.InPlane share : rectangle(40, 70).inPlane(new Vec2(300, -120), new Vec2(0, 0))) {
      assertThat(share.totalN()).isEqualTo(new Vec2(75, -30));
    }
  }

  @Test
  void threeBoltsCarryAnAxialLoadByItsPlaceInTheirTriangle() {
    // Independent: three supports are statically determinate, so the shares are the load's
    // barycentric coordinates whatever the stiffness; at (20, 30) in this triangle 0.3, 0.2, 0.5.
    BoltGroup group = BoltGroup.of(List.of(new Vec2(0, 0), new Vec2(100, 0), new Vec2(0, 60)));
    Vec2 at = new Vec2(20, 30);
    BoltGroup.Axial axial = group.axial(1000, at.minus(group.centroid()).times(1000));
    assertThat(axial.sharesN().get(0)).isCloseTo(300, within(N));
    assertThat(axial.sharesN().get(1)).isCloseTo(200, within(N));
    assertThat(axial.sharesN().get(2)).isCloseTo(500, within(N));
    assertThat(axial.uncarriedNmm()).isEqualTo(Vec2.ZERO);
  }

  @Test
  void anEccentricAxialLoadOnARectangle() {
    // Independent: by hand, 1000/4 +- 1000 * 10 * 50 / (4 * 50^2) = 250 +- 50.
    BoltGroup group = rectangle(50, 80);
    List<Double> shares = group.axial(1000, new Vec2(10_000, 0)).sharesN();
    assertThat(shares.get(0)).isCloseTo(300, within(N));
    assertThat(shares.get(1)).isCloseTo(300, within(N));
    assertThat(shares.get(2)).isCloseTo(200, within(N));
    assertThat(shares.get(3)).isCloseTo(200, within(N));
  }

  @Test
  void aPushAboveThePlaneLiftsTheEdgeItComesFrom() {
    // Independent: by hand. 200 N forward at 50 mm over the plane tips the plate forward: its rear
    // bolts are pulled by 200 * 50 * 50 / (4 * 50^2) = 50 each, its front ones pressed as much.
    BoltGroup group = rectangle(50, 80);
    Vec2 tipping = group.tippingNmm(new PlaneForce(0, new Vec2(200, 0)), new Vec2(7, -3), 50);
    List<Double> shares = group.axial(0, tipping).sharesN();
    assertThat(shares.get(0)).isCloseTo(-50, within(N));
    assertThat(shares.get(2)).isCloseTo(50, within(N));
  }

  @Test
  void aSlantingLoadTipsAsWhereItsLineMeetsThePlane() {
    // Independent: a load (60, -30, 600) at height 20 over (12, 5) meets the plane at (10, 6).
    BoltGroup group = rectangle(50, 80);
    Vec2 tipping = group.tippingNmm(new PlaneForce(600, new Vec2(60, -30)), new Vec2(12, 5), 20);
    assertThat(tipping.distanceTo(new Vec2(6000, 3600))).isCloseTo(0, within(N));
  }

  @Test
  void boltsOnOneLineLeaveTheMomentAboutIt() {
    // Independent: by hand. Line along (3, 4)/5, bolts 100 apart; the moment (0, 1000) has 800
    // along
    // it, shared as 800 / 100, and 600 across it, which nothing holds.
    BoltGroup group = BoltGroup.of(List.of(new Vec2(10, 20), new Vec2(70, 100)));
    assertThat(group.inLine()).isTrue();
    BoltGroup.Axial axial = group.axial(0, new Vec2(0, 1000));
    assertThat(axial.sharesN().get(0)).isCloseTo(-8, within(N));
    assertThat(axial.sharesN().get(1)).isCloseTo(8, within(N));
    assertThat(axial.uncarriedNmm().distanceTo(new Vec2(-480, 360))).isCloseTo(0, within(N));
    assertThat(rectangle(50, 80).inLine()).isFalse();
  }

  @Test
  void noGroup() {
    assertThatThrownBy(() -> BoltGroup.of(List.of(new Vec2(1, 2))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two bolts");
    assertThatThrownBy(() -> BoltGroup.of(List.of(new Vec2(1, 2), new Vec2(1, 2))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("one place");
  }
}
