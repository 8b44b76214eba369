package dev.towerscribe.sheet.tower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.Face;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Which way round a sheet is, by coordinates. */
class SheetFrameProperties {
  private static final Vec2 ORIGIN = new Vec2(103.25, 141.5);

  private static SheetFrame frame(Side side, Face face) {
    return new SheetFrame(side, face, Optional.empty(), ORIGIN);
  }

  private static SheetFrame domed(Side side, Face face, double radiusMm) {
    // w = 2 sqrt(2 R h - h^2), from the sagitta; h = 1 mm.
    double across = 2 * Math.sqrt(2 * radiusMm - 1);
    return new SheetFrame(side, face, Optional.of(new Crown(across, 1)), ORIGIN);
  }

  /** Independent: written out from the frames of the package documentation, no frame used. */
  @Example
  void seenFromAboveTheLeftTowersInboardIsToTheRight() {
    Vec2 plan = new Vec2(40, 25); // forward and inboard
    assertThat(frame(Side.LEFT, Face.TOPSIDE).point(plan)).isEqualTo(new Vec2(128.25, 181.5));
    assertThat(frame(Side.LEFT, Face.UNDERSIDE).point(plan)).isEqualTo(new Vec2(78.25, 181.5));
    assertThat(frame(Side.RIGHT, Face.TOPSIDE).point(plan)).isEqualTo(new Vec2(78.25, 181.5));
    assertThat(frame(Side.RIGHT, Face.UNDERSIDE).point(plan)).isEqualTo(new Vec2(128.25, 181.5));
  }

  @Property(seed = "4711", tries = 200)
  void belowIsTheMirrorImageOfAboveAboutTheForeAftLine(
      @ForAll @DoubleRange(min = -150, max = 150) double fore,
      @ForAll @DoubleRange(min = -150, max = 150) double in,
      @ForAll Side side,
      @ForAll boolean crowned) {
    Vec2 plan = new Vec2(fore, in);
    Vec2 above = (crowned ? domed(side, Face.TOPSIDE, 400) : frame(side, Face.TOPSIDE)).point(plan);
    Vec2 below =
        (crowned ? domed(side, Face.UNDERSIDE, 400) : frame(side, Face.UNDERSIDE)).point(plan);
    assertThat(above.x() + below.x()).isCloseTo(2 * ORIGIN.x(), within(Tolerances.COMPUTED_MM));
    assertThat(above.y()).isEqualTo(below.y());
    assertThat(Math.signum(above.y() - ORIGIN.y())).isEqualTo(Math.signum(fore));
  }

  @Property(seed = "4712", tries = 200)
  void leftFromAboveIsRightFromBelow(
      @ForAll @DoubleRange(min = -150, max = 150) double fore,
      @ForAll @DoubleRange(min = -150, max = 150) double in) {
    Vec2 plan = new Vec2(fore, in);
    assertThat(frame(Side.LEFT, Face.TOPSIDE).point(plan))
        .isEqualTo(frame(Side.RIGHT, Face.UNDERSIDE).point(plan));
    assertThat(frame(Side.LEFT, Face.UNDERSIDE).point(plan))
        .isEqualTo(frame(Side.RIGHT, Face.TOPSIDE).point(plan));
    assertThat(frame(Side.LEFT, Face.TOPSIDE).point(plan))
        .isNotEqualTo(frame(Side.RIGHT, Face.TOPSIDE).point(new Vec2(fore, in + 1)));
  }

  @Property(seed = "4713", tries = 200)
  void aFlatTopKeepsEveryDistance(
      @ForAll @DoubleRange(min = -150, max = 150) double a,
      @ForAll @DoubleRange(min = -150, max = 150) double b,
      @ForAll @DoubleRange(min = -150, max = 150) double c,
      @ForAll @DoubleRange(min = -150, max = 150) double d,
      @ForAll Side side,
      @ForAll Face face) {
    Vec2 p = new Vec2(a, b);
    Vec2 q = new Vec2(c, d);
    SheetFrame frame = frame(side, face);
    assertThat(frame.point(p).distanceTo(frame.point(q)))
        .isCloseTo(p.distanceTo(q), within(Tolerances.COMPUTED_MM));
  }

  /**
   * Published: the azimuthal equidistant map takes a point at angle c from the pole to R c (Snyder,
   * USGS Professional Paper 1395, equation 25-1); 300 asin(100 / 300) = 101.951 by hand.
   */
  @Example
  void aDomeStretchesByTheArcLength() {
    SheetFrame frame = domed(Side.LEFT, Face.TOPSIDE, 300);
    Vec2 p = frame.point(Vec2.polar(100, Angle.ofDegrees(37)));
    assertThat(p.distanceTo(ORIGIN)).isCloseTo(101.951, within(0.0005));
    Arc circle = frame.contour(Contour.circle(Vec2.ZERO, 100)).asCircle().orElseThrow();
    assertThat(circle.radius()).isCloseTo(101.951, within(0.0005));
    assertThat(circle.centre()).isEqualTo(ORIGIN);
  }

  @Property(seed = "4714", tries = 50)
  void aCircleOffThePoleIsFollowedFinely(
      @ForAll @DoubleRange(min = -60, max = 60) double fore,
      @ForAll @DoubleRange(min = 5, max = 60) double in,
      @ForAll @DoubleRange(min = 3, max = 60) double radius,
      @ForAll Side side) {
    SheetFrame frame = domed(side, Face.UNDERSIDE, 300);
    Contour plan = Contour.circle(new Vec2(fore, in), radius);
    Contour page = frame.contour(plan);
    assertThat(page.asCircle()).isEmpty();
    for (Vec2 p : plan.flattened(1e-4)) {
      // The points lie on the plan circle, so their images lie on the true curve.
      assertThat(page.distanceTo(frame.point(p))).isLessThan(Tolerances.FLATTEN_MM);
    }
  }

  @Property(seed = "4715", tries = 50)
  void regionsKeepTheirAreaAndTheirWayRound(
      @ForAll Side side, @ForAll Face face, @ForAll boolean crowned) {
    Region ring =
        new Region(
            List.of(
                Contour.circle(new Vec2(3, 4), 50), Contour.circle(new Vec2(3, 4), 30).reversed()));
    SheetFrame frame = crowned ? domed(side, face, 5000) : frame(side, face);
    Region page = frame.region(ring);
    assertThat(page.contours().get(0).signedArea()).isPositive();
    assertThat(page.contours().get(1).signedArea()).isNegative();
    // Independent: pi (50^2 - 30^2); a dome of 5 m stretches areas by less than 1 part in 10 000.
    double area = Math.PI * 1600;
    assertThat(page.area()).isCloseTo(area, within(crowned ? area * 1e-4 : 1e-6));
    assertThat(page.contains(frame.point(new Vec2(43, 4)))).isTrue();
    assertThat(page.contains(frame.point(new Vec2(3, 4)))).isFalse();
  }
}
