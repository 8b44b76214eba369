package dev.towerscribe.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Equilibrium and symmetry of the shares of any group of bolts. */
class BoltGroupProperties {
  /** Of the loads below, about 1e4 N at some 100 mm, after some hundred roundings. */
  private static final double N = 1e-6;

  private static final double NMM = 1e-4;

  @Provide
  Arbitrary<Vec2> points() {
    Arbitrary<Double> mm = Arbitraries.doubles().between(-120, 120).ofScale(2);
    return Combinators.combine(mm, mm).as(Vec2::new);
  }

  /** Groups that spread both ways: nearly lined up ones lose digits in proportion. */
  @Provide
  Arbitrary<List<Vec2>> groups() {
    return points()
        .list()
        .ofMinSize(3)
        .ofMaxSize(8)
        .filter(b -> b.stream().distinct().count() > 2)
        .filter(b -> BoltGroup.of(b).minorMm2() > 100);
  }

  @Property(seed = "20270301", tries = 300)
  void sharesInThePlaneAddUpToTheLoadAndItsMoment(
      @ForAll("groups") List<Vec2> bolts,
      @ForAll("points") Vec2 at,
      @ForAll @DoubleRange(min = -9000, max = 9000) double vx,
      @ForAll @DoubleRange(min = -9000, max = 9000) double vy) {
    Vec2 load = new Vec2(vx, vy);
    List<BoltGroup.InPlane> shares = BoltGroup.of(bolts).inPlane(load, at);
    Vec2 sum = Vec2.ZERO;
    double moment = 0;
    for (int i = 0; i < bolts.size(); i++) {
      Vec2 share = shares.get(i).totalN();
      sum = sum.plus(share);
      // About the origin, not the centroid that the program works with.
      moment += bolts.get(i).cross(share);
    }
    assertThat(sum.distanceTo(load)).isCloseTo(0, within(N));
    assertThat(moment).isCloseTo(at.cross(load), within(NMM));
  }

  @Property(seed = "20270301", tries = 300)
  void axialSharesAddUpToTheLoadAndItsMoment(
      @ForAll("groups") List<Vec2> bolts,
      @ForAll("points") Vec2 at,
      @ForAll @DoubleRange(min = -9000, max = 9000) double normal,
      @ForAll @DoubleRange(min = -9000, max = 9000) double hx,
      @ForAll @DoubleRange(min = -60, max = 60) double height) {
    BoltGroup group = BoltGroup.of(bolts);
    PlaneForce force = new PlaneForce(normal, new Vec2(hx, -hx / 3));
    List<Double> shares = group.axial(normal, group.tippingNmm(force, at, height)).sharesN();
    double sum = 0;
    Vec2 moment = Vec2.ZERO;
    for (int i = 0; i < bolts.size(); i++) {
      sum += shares.get(i);
      moment = moment.plus(bolts.get(i).times(shares.get(i)));
    }
    Vec2 expected = at.times(normal).minus(force.inPlaneN().times(height));
    assertThat(sum).isCloseTo(normal, within(N));
    assertThat(moment.distanceTo(expected)).isCloseTo(0, within(NMM));
  }

  @Property(seed = "20270301", tries = 300)
  void turningOrMirroringAllChangesNoShare(
      @ForAll("groups") List<Vec2> bolts,
      @ForAll("points") Vec2 at,
      @ForAll @DoubleRange(min = -180, max = 180) double degrees,
      @ForAll boolean mirrored,
      @ForAll("points") Vec2 shift) {
    Angle turn = Angle.ofDegrees(degrees);
    Vec2 load = new Vec2(4000, -2500);
    PlaneForce force = new PlaneForce(7000, load);
    PlaneForce turnedForce = new PlaneForce(7000, turned(load, turn, mirrored));
    BoltGroup one = BoltGroup.of(bolts);
    BoltGroup two =
        BoltGroup.of(bolts.stream().map(b -> turned(b, turn, mirrored).plus(shift)).toList());
    Vec2 there = turned(at, turn, mirrored).plus(shift);
    List<BoltGroup.InPlane> before = one.inPlane(load, at);
    List<BoltGroup.InPlane> after = two.inPlane(turnedForce.inPlaneN(), there);
    List<Double> axialBefore = one.axial(7000, one.tippingNmm(force, at, 25)).sharesN();
    List<Double> axialAfter = two.axial(7000, two.tippingNmm(turnedForce, there, 25)).sharesN();
    for (int i = 0; i < bolts.size(); i++) {
      Vec2 expected = turned(before.get(i).totalN(), turn, mirrored);
      assertThat(after.get(i).totalN().distanceTo(expected)).isCloseTo(0, within(N));
      assertThat(axialAfter.get(i)).isCloseTo(axialBefore.get(i), within(N));
    }
  }

  private static Vec2 turned(Vec2 p, Angle turn, boolean mirrored) {
    Vec2 q = p.rotated(turn);
    return mirrored ? new Vec2(-q.x(), q.y()) : q;
  }
}
