package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every expected number here is independent: a closed form of school geometry, given beside it. */
class OffsetsTest {
  /** mm2: a boundary of some hundred mm, each point right to COMPUTED_MM. */
  private static final double AREA = 300 * Tolerances.COMPUTED_MM;

  private static final double MM = 10 * Tolerances.COMPUTED_MM;

  @Test
  void circleStaysOneFullCircle() {
    Region inset = Shapes.disc(3, -4, 52).inset(3).inset(2.5);
    // independent: concentric circles.
    assertThat(inset.contours()).hasSize(1);
    Arc arc = inset.contours().get(0).asCircle().orElseThrow();
    assertThat(arc.radius()).isEqualTo(46.5);
    assertThat(arc.centre()).isEqualTo(new Vec2(3, -4));
    assertThat(Shapes.disc(0, 0, 5).opened(4.9).contours().get(0).asCircle().orElseThrow().radius())
        .isCloseTo(5.0, within(MM));
  }

  @Test
  void circleVanishes() {
    assertThat(Shapes.disc(1, 2, 5).inset(5).isEmpty()).isTrue();
    assertThat(Shapes.disc(1, 2, 5).inset(7).isEmpty()).isTrue();
    assertThat(Shapes.disc(1, 2, 5).inset(4.999).isEmpty()).isFalse();
  }

  @Test
  void zeroOffsetIsTheSameRegion() {
    Region square = Shapes.square(10);
    assertThat(square.inset(0)).isEqualTo(square);
    assertThat(square.grown(0)).isEqualTo(square);
    assertThat(Region.EMPTY.inset(3)).isEqualTo(Region.EMPTY);
    assertThatThrownBy(() -> square.inset(-1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> square.grown(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({"100,3,8", "62.5,2.5,1", "40,5,14.9", "104,5.5,8", "10,1,0.001"})
  void squareInsetThenOpened(double a, double k, double r) {
    Region cut = Shapes.square(a).inset(k).opened(r);
    double side = a - 2 * k;
    // independent: a square of side a - 2k whose four corners become quarter circles.
    assertThat(cut.area()).isCloseTo(side * side - (4 - Math.PI) * r * r, within(AREA));
    assertThat(cut.length()).isCloseTo(4 * side - 8 * r + 2 * Math.PI * r, within(MM));
    assertThat(cut.contours()).hasSize(1);
    assertThat(cut.contours().get(0).edges()).hasSize(8);
    assertThat(Shapes.worstJoint(cut)).isLessThan(Tolerances.COMPUTED_MM);
  }

  @Test
  void squareAndRectangleVanishAtHalfTheirWidth() {
    assertThat(Shapes.square(10).inset(5).isEmpty()).isTrue();
    assertThat(Shapes.square(10).inset(6).isEmpty()).isTrue();
    Region wide = Region.inside(Shapes.rectangle(0, 0, 30, 7));
    // independent: what is left is a line, which has no area.
    assertThat(wide.inset(3.5).isEmpty()).isTrue();
    assertThat(wide.inset(3.4).area()).isCloseTo(23.2 * 0.2, within(AREA));
    assertThat(wide.opened(3.5).isEmpty()).isTrue();
  }

  @Test
  void reflexCornerGivesAnArc() {
    Contour ell =
        Contour.polygon(
            List.of(
                new Vec2(0, 0),
                new Vec2(60, 0),
                new Vec2(60, 20),
                new Vec2(25, 20),
                new Vec2(25, 50),
                new Vec2(0, 50)));
    double k = 4;
    Region cut = Region.inside(ell).inset(k);
    // independent: a lower bar 52 x 12, an upper bar 17 x 30, and at the inner corner a k x k
    // square less a quarter disc about (25, 20).
    double lower = (60 - 2 * k) * (20 - 2 * k);
    double upper = (25 - 2 * k) * (50 - 20);
    double corner = k * k - Math.PI * k * k / 4;
    assertThat(cut.area()).isCloseTo(lower + upper + corner, within(AREA));
    assertThat(Shapes.arcs(cut)).isEqualTo(1);
    Arc arc =
        (Arc)
            cut.contours().get(0).edges().stream()
                .filter(Arc.class::isInstance)
                .findFirst()
                .orElseThrow();
    assertThat(arc.radius()).isEqualTo(k);
    assertThat(arc.centre()).isEqualTo(new Vec2(25, 20));
    assertThat(arc.sweep()).isCloseTo(-Math.PI / 2, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 7, 12, 24, 72, 360})
  void steinerFormulaForGrownConvexPolygons(int corners) {
    Region polygon = Region.inside(Shapes.regular(corners, 50));
    for (double d : new double[] {0.001, 1, 7.25, 80}) {
      Region grown = polygon.grown(d);
      // independent: Steiner's formula for the parallel body of a convex body.
      double expected = polygon.area() + polygon.length() * d + Math.PI * d * d;
      assertThat(grown.area()).isCloseTo(expected, within(1e-12 * expected + AREA));
      assertThat(grown.length()).isCloseTo(polygon.length() + 2 * Math.PI * d, within(MM));
      assertThat(Shapes.arcs(grown)).isEqualTo(corners);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 12, 24, 60, 72, 360})
  void regularPolygonShrinksToOneWithALesserApothem(int corners) {
    double half = Math.PI / corners;
    double apothem = 50 * Math.cos(half);
    Region polygon = Region.inside(Shapes.regular(corners, 50));
    for (double share : new double[] {0.01, 0.1, 0.5, 0.9, 0.999}) {
      double left = apothem * (1 - share);
      Region inset = polygon.inset(apothem * share);
      // independent: n tan(pi/n) apothem^2.
      assertThat(inset.area())
          .as("%d corners, share %s", corners, share)
          .isCloseTo(corners * Math.tan(half) * left * left, within(AREA));
      assertThat(inset.contours().get(0).edges()).hasSize(corners);
    }
    assertThat(polygon.inset(apothem).area()).isCloseTo(0, within(AREA));
    assertThat(polygon.inset(apothem * 1.01).isEmpty()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(ints = {12, 16, 24, 36, 60, 72})
  void tracedMarkInsetThenOpenedThenInset(int corners) {
    Region mark = Region.inside(Shapes.regular(corners, 52));
    double half = Math.PI / corners;
    double left = 52 * Math.cos(half) - 3;
    double r = 8;
    Region finalCut = mark.inset(3).opened(r);
    // independent: a regular polygon whose corners are rounded: what is lost is r^2 (n tan - pi).
    double lost = r * r * (corners * Math.tan(half) - Math.PI);
    double area = corners * Math.tan(half) * left * left - lost;
    assertThat(finalCut.area()).isCloseTo(area, within(AREA));
    Region rough = finalCut.inset(2.5);
    // independent: the inset of a rounded convex shape runs Steiner's formula backwards.
    double shrunk = area - finalCut.length() * 2.5 + Math.PI * 2.5 * 2.5;
    assertThat(rough.area()).isCloseTo(shrunk, within(AREA));
    assertThat(rough.contours().get(0).edges()).hasSize(2 * corners);
    assertThat(rough.inset(5.5).contours().get(0).edges()).hasSize(corners);
  }

  @Test
  void stadium() {
    Region stadium = Region.inside(Contour.sweptDisc(new Vec2(-8, 3), new Vec2(16, 10), 11));
    double run = Math.hypot(24, 7);
    // independent: a rectangle and two half discs.
    assertThat(stadium.area()).isCloseTo(run * 22 + Math.PI * 121, within(AREA));
    assertThat(stadium.grown(2).area()).isCloseTo(run * 26 + Math.PI * 169, within(AREA));
    assertThat(stadium.inset(4).area()).isCloseTo(run * 14 + Math.PI * 49, within(AREA));
    assertThat(stadium.opened(10).area()).isCloseTo(stadium.area(), within(AREA));
    assertThat(stadium.inset(11).isEmpty()).isTrue();
    assertThat(stadium.grown(2).contours().get(0).edges()).hasSize(4);
  }

  @Test
  void annulus() {
    Region annulus = Shapes.disc(0, 0, 30).minus(Shapes.disc(0, 0, 10));
    assertThat(annulus.contours()).hasSize(2);
    Region inset = annulus.inset(4);
    // independent: radii 26 and 14, 34 and 6.
    assertThat(inset.area()).isCloseTo(Math.PI * (26 * 26 - 14 * 14), within(AREA));
    assertThat(inset.contours()).allMatch(c -> c.asCircle().isPresent());
    assertThat(inset.contours()).anyMatch(c -> c.signedArea() < 0);
    assertThat(annulus.grown(4).area()).isCloseTo(Math.PI * (34 * 34 - 36), within(AREA));
    assertThat(annulus.grown(10).area()).isCloseTo(Math.PI * 1600, within(AREA));
    assertThat(annulus.inset(10).isEmpty()).isTrue();
    assertThat(annulus.inset(11).isEmpty()).isTrue();
  }

  @Test
  void dumbbellSplitsAtItsNeck() {
    Region bell =
        Shapes.disc(-30, 0, 15)
            .union(Shapes.disc(30, 0, 15))
            .union(Region.inside(Shapes.rectangle(-30, -4, 30, 4)));
    assertThat(bell.contours()).hasSize(1);
    for (double k : new double[] {4, 5, 9}) {
      Region split = bell.inset(k);
      assertThat(split.contours()).hasSize(2);
      assertThat(split.parts()).hasSize(2);
    }
    Region whole = bell.inset(3.9);
    assertThat(whole.contours()).hasSize(1);
    Region opened = bell.opened(6);
    assertThat(opened.contours()).hasSize(2);
    assertThat(opened.contains(new Vec2(0, 0))).isFalse();
    assertThat(opened.minus(bell).area()).isCloseTo(0, within(AREA));
  }

  @Test
  void dilationClosesAGapAndMergesParts() {
    Region two =
        Region.inside(Shapes.rectangle(0, 0, 10, 10))
            .union(Region.inside(Shapes.rectangle(14, 0, 24, 10)));
    assertThat(two.contours()).hasSize(2);
    assertThat(two.grown(1.9).contours()).hasSize(2);
    Region merged = two.grown(3);
    assertThat(merged.contours()).hasSize(1);
    // independent: two rounded squares less their overlap: a 2 x 10 bar and at each end half of the
    // lens of two discs of radius 3 whose centres are 4 apart.
    double one = 100 + 40 * 3 + 9 * Math.PI;
    double lens = 2 * 9 * Math.acos(2.0 / 3) - 2 * Math.sqrt(36 - 16);
    assertThat(merged.area()).isCloseTo(2 * one - 2 * 10 - lens, within(AREA));
    // independent: two parts that just touch.
    assertThat(two.grown(2).area()).isCloseTo(2 * (100 + 80 + 4 * Math.PI), within(AREA));
  }

  @Test
  void pointsOnAStraightSideDoNotMatter() {
    Contour withPoints =
        Contour.polygon(
            List.of(
                new Vec2(0, 0),
                new Vec2(10, 0),
                new Vec2(20, 0),
                new Vec2(30, 0),
                new Vec2(30, 20),
                new Vec2(7, 20),
                new Vec2(0, 20)));
    Region inset = Region.inside(withPoints).inset(2);
    // independent: 26 x 16.
    assertThat(inset.area()).isCloseTo(26 * 16, within(AREA));
    assertThat(inset.contours().get(0).edges()).hasSize(4);
    assertThat(Region.inside(withPoints).opened(3).area())
        .isCloseTo(600 - (4 - Math.PI) * 9, within(AREA));
  }

  @Test
  void cuspBetweenTouchingCircles() {
    // A disc of 20 less a disc of 10 that touches it from inside: a crescent with a cusp.
    Region crescent = Shapes.disc(0, 0, 20).minus(Shapes.disc(10, 0, 10));
    // independent: pi (400 - 100); grown by 1: discs of 21 and 9.
    assertThat(crescent.area()).isCloseTo(300 * Math.PI, within(AREA));
    // independent: what is within 18 of (0, 0) and not within 12 of (10, 0): a lens is taken away.
    double big = 18;
    double small = 12;
    double alpha = Math.acos((100 + big * big - small * small) / (20 * big));
    double beta = Math.acos((100 + small * small - big * big) / (20 * small));
    double lens =
        big * big * (alpha - Math.sin(2 * alpha) / 2)
            + small * small * (beta - Math.sin(2 * beta) / 2);
    assertThat(crescent.inset(2).area()).isCloseTo(Math.PI * big * big - lens, within(AREA));
    assertThat(crescent.grown(1).area()).isCloseTo(Math.PI * (441 - 81), within(AREA));
  }

  @Test
  void aTracedMarkOfManyPointsIsInsetOnTheExactWay() {
    double[] radii = new double[400];
    for (int i = 0; i < radii.length; i++) {
      radii[i] = 52 + 2 * Math.sin(3 * 2 * Math.PI * i / 400) + 0.05 * ((i * 7919) % 11);
    }
    Region mark = Region.inside(Shapes.clock(radii));
    Region cut = mark.inset(3);
    assertThat(Offsets.exact(mark, 3, SnapDistance.TRIES.get(0))).contains(cut.contours());
    assertThat(Offsets.exact(cut, 8, SnapDistance.TRIES.get(0))).isPresent();
    assertThat(cut.opened(8).minus(cut).area()).isCloseTo(0, within(AREA));
  }
}
