package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every expected number here is independent: a closed form of school geometry, given beside it. */
class OverlayTest {
  private static final double AREA = 300 * Tolerances.COMPUTED_MM;

  @Test
  void lensOfTwoCircles() {
    Region a = Shapes.disc(0, 0, 10);
    Region b = Shapes.disc(12, 5, 7);
    double d = 13;
    // independent: sum of two circular segments.
    double alpha = Math.acos((d * d + 100 - 49) / (2 * d * 10));
    double beta = Math.acos((d * d + 49 - 100) / (2 * d * 7));
    double lens = 100 * (alpha - Math.sin(2 * alpha) / 2) + 49 * (beta - Math.sin(2 * beta) / 2);
    assertThat(a.intersection(b).area()).isCloseTo(lens, within(AREA));
    assertThat(a.union(b).area()).isCloseTo(149 * Math.PI - lens, within(AREA));
    assertThat(a.minus(b).area()).isCloseTo(100 * Math.PI - lens, within(AREA));
    assertThat(b.minus(a).area()).isCloseTo(49 * Math.PI - lens, within(AREA));
    assertThat(a.intersection(b).contours().get(0).edges()).hasSize(2);
  }

  @Test
  void discLessAHalfPlane() {
    double r = 31;
    double h = 12;
    Region left = Region.inside(Shapes.rectangle(-100, -100, h, 100));
    Region segment = Shapes.disc(0, 0, r).minus(left);
    // independent: circular segment of height r - h.
    double expected = r * r * Math.acos(h / r) - h * Math.sqrt(r * r - h * h);
    assertThat(segment.area()).isCloseTo(expected, within(AREA));
    assertThat(segment.contours().get(0).edges()).hasSize(2);
  }

  @Test
  void discInsideAPolygonStaysTheFullCircle() {
    Region disc = Shapes.disc(3, 4, 10);
    Region square = Shapes.square(60);
    assertThat(disc.intersection(square)).isEqualTo(disc);
    assertThat(square.intersection(disc)).isEqualTo(disc);
    assertThat(square.union(disc)).isEqualTo(square);
    Region ring = square.minus(disc);
    assertThat(ring.area()).isCloseTo(3600 - 100 * Math.PI, within(AREA));
    assertThat(ring.contours()).hasSize(2);
    assertThat(disc.minus(square).isEmpty()).isTrue();
    assertThat(ring.contains(new Vec2(3, 4))).isFalse();
    assertThat(ring.union(disc).area()).isCloseTo(3600, within(AREA));
  }

  @Test
  void discThatTouchesItsSquare() {
    Region disc = Shapes.disc(0, 0, 10);
    Region square = Shapes.square(20);
    // independent: inscribed circle.
    assertThat(disc.intersection(square).area()).isCloseTo(100 * Math.PI, within(AREA));
    assertThat(disc.intersection(square).contours().get(0).asCircle()).isPresent();
    assertThat(disc.union(square).area()).isCloseTo(400, within(AREA));
    assertThat(square.minus(disc).area()).isCloseTo(400 - 100 * Math.PI, within(AREA));
    assertThat(square.minus(disc).parts()).hasSize(4);
    assertThat(disc.minus(square).isEmpty()).isTrue();
  }

  @Test
  void sameRegionAndSharedEdges() {
    Region a = Region.inside(Shapes.rectangle(0, 0, 10, 10));
    Region right = Region.inside(Shapes.rectangle(10, 2, 20, 8));
    Region half = Region.inside(Shapes.rectangle(0, 0, 5, 10));
    assertThat(a.union(a).area()).isCloseTo(100, within(AREA));
    assertThat(a.intersection(a).area()).isCloseTo(100, within(AREA));
    assertThat(a.minus(a).isEmpty()).isTrue();
    assertThat(a.union(right).area()).isCloseTo(160, within(AREA));
    assertThat(a.union(right).contours()).hasSize(1);
    assertThat(a.intersection(right).isEmpty()).isTrue();
    assertThat(a.minus(right).area()).isCloseTo(100, within(AREA));
    assertThat(a.minus(half).area()).isCloseTo(50, within(AREA));
    assertThat(a.minus(half).contours().get(0).edges()).hasSize(4);
    assertThat(a.union(half).area()).isCloseTo(100, within(AREA));
    assertThat(a.union(half).contours().get(0).edges()).hasSize(4);
    Region disc = Shapes.disc(1, 1, 4);
    assertThat(disc.union(disc).contours().get(0).asCircle()).isPresent();
    assertThat(disc.minus(Shapes.disc(1, 1, 4)).isEmpty()).isTrue();
  }

  @Test
  void circlesThatTouch() {
    Region a = Shapes.disc(0, 0, 10);
    Region outside = Shapes.disc(15, 0, 5);
    Region within = Shapes.disc(0, 6, 4);
    assertThat(a.union(outside).area()).isCloseTo(125 * Math.PI, within(AREA));
    assertThat(a.intersection(outside).isEmpty()).isTrue();
    assertThat(a.minus(outside).area()).isCloseTo(100 * Math.PI, within(AREA));
    assertThat(a.intersection(within).area()).isCloseTo(16 * Math.PI, within(AREA));
    assertThat(a.minus(within).area()).isCloseTo(84 * Math.PI, within(AREA));
    assertThat(a.union(within).area()).isCloseTo(100 * Math.PI, within(AREA));
  }

  @Test
  void partsThatTouchOnAnEdgeOfTheOther() {
    // A disc touches a bar from below; the other shape's side runs along the bar's and so through
    // the point of touch.
    Region bar = Region.inside(Shapes.rectangle(0, 0, 20, 5));
    Region touching = bar.union(Shapes.disc(10, -2, 2));
    Region other = Region.inside(Shapes.rectangle(5, 0, 25, 8));
    // independent: rectangles and a disc that the other shape only touches.
    for (SnapDistance room : SnapDistance.TRIES) {
      assertThat(Overlay.exact(touching, other, OverlayKind.MINUS, room)).isPresent();
    }
    assertThat(touching.minus(other).area()).isCloseTo(25 + 4 * Math.PI, within(AREA));
    assertThat(touching.intersection(other).area()).isCloseTo(75, within(AREA));
    assertThat(touching.union(other).area()).isCloseTo(25 + 160 + 4 * Math.PI, within(AREA));
    assertThat(other.minus(touching).area()).isCloseTo(85, within(AREA));
  }

  @Test
  void emptyAndApart() {
    Region a = Shapes.disc(0, 0, 10);
    Region far = Shapes.disc(50, 0, 10);
    assertThat(a.intersection(Region.EMPTY).isEmpty()).isTrue();
    assertThat(a.union(Region.EMPTY)).isEqualTo(a);
    assertThat(Region.EMPTY.union(a)).isEqualTo(a);
    assertThat(a.minus(Region.EMPTY)).isEqualTo(a);
    assertThat(a.intersection(far).isEmpty()).isTrue();
    assertThat(a.union(far).contours()).hasSize(2);
    assertThat(a.minus(far)).isEqualTo(a);
  }

  @Test
  void partsComeLargestFirstWithTheirHoles() {
    Region big = Shapes.square(60).minus(Shapes.disc(-10, 0, 8)).minus(Shapes.disc(15, 0, 9));
    Region island = Shapes.disc(15, 0, 3);
    Region apart = Shapes.disc(100, 0, 20);
    List<Region> parts = island.union(apart).union(big).parts();
    // independent: 3600 - 145 pi = 3144 > 400 pi > 9 pi.
    assertThat(parts).hasSize(3);
    assertThat(parts.get(0).contours()).hasSize(3);
    assertThat(parts.get(0).area()).isCloseTo(3600 - 145 * Math.PI, within(AREA));
    assertThat(parts.get(0).contours().get(0).signedArea()).isPositive();
    assertThat(parts.get(1).area()).isCloseTo(400 * Math.PI, within(AREA));
    assertThat(parts.get(2).area()).isCloseTo(9 * Math.PI, within(AREA));
    assertThat(Region.EMPTY.parts()).isEmpty();
  }
}
