package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContourTest {
  private static final double MM = Tolerances.COMPUTED_MM;

  @Test
  void areaOfArcsIsExact() {
    Contour half =
        Contour.of(
            List.of(
                new Segment(new Vec2(-5, 3), new Vec2(5, 3)),
                new Arc(new Vec2(0, 3), 5, 0, Math.PI)));
    // independent: half a disc.
    assertThat(half.signedArea()).isCloseTo(12.5 * Math.PI, within(MM));
    assertThat(half.reversed().signedArea()).isCloseTo(-12.5 * Math.PI, within(MM));
    assertThat(half.length()).isCloseTo(10 + 5 * Math.PI, within(MM));
    assertThat(half.bounds().maxY()).isCloseTo(8, within(MM));
    assertThat(half.bounds().minY()).isCloseTo(3, within(MM));
  }

  @Test
  void enclosesPointsOnChordsAndLevelWithCorners() {
    Contour stadium = Contour.sweptDisc(new Vec2(-8, 0), new Vec2(8, 0), 5);
    // The arcs' chords pass through the centres: no point on a chord is on the boundary.
    for (double y : new double[] {-4.9, -2, 0, 1, 4.9}) {
      for (double x : new double[] {-8, 8, 0}) {
        assertThat(stadium.encloses(new Vec2(x, y))).isTrue();
        assertThat(stadium.reversed().encloses(new Vec2(x, y))).isTrue();
      }
    }
    Contour upright = Contour.sweptDisc(new Vec2(0, -8), new Vec2(0, 8), 5);
    for (double x : new double[] {-4.9, -2, 0, 1, 4.9}) {
      for (double y : new double[] {-8, 8, 0}) {
        assertThat(upright.encloses(new Vec2(x, y))).isTrue();
        assertThat(upright.reversed().encloses(new Vec2(x, y))).isTrue();
      }
      assertThat(upright.encloses(new Vec2(x + 10, 8))).isFalse();
      assertThat(upright.encloses(new Vec2(x - 10, -8))).isFalse();
    }
    assertThat(stadium.encloses(new Vec2(12.9, 0))).isTrue();
    assertThat(stadium.encloses(new Vec2(13.1, 0))).isFalse();
    assertThat(stadium.encloses(new Vec2(12.9, 4.9))).isFalse();
  }

  @Test
  void aBiteTakenByAnArcIsOutside() {
    Contour bitten =
        Contour.of(
            List.of(
                new Segment(new Vec2(-10, 0), new Vec2(-4, 0)),
                new Arc(new Vec2(0, 0), 4, Math.PI, -Math.PI),
                new Segment(new Vec2(4, 0), new Vec2(10, 0)),
                new Segment(new Vec2(10, 0), new Vec2(10, 10)),
                new Segment(new Vec2(10, 10), new Vec2(-10, 10)),
                new Segment(new Vec2(-10, 10), new Vec2(-10, 0))));
    assertThat(bitten.encloses(new Vec2(0, 3.9))).isFalse();
    assertThat(bitten.encloses(new Vec2(0, 0.001))).isFalse();
    assertThat(bitten.encloses(new Vec2(0, 4.1))).isTrue();
    // independent: a rectangle less half a disc.
    assertThat(bitten.signedArea()).isCloseTo(200 - 8 * Math.PI, within(MM));
  }

  @Test
  void flatteningKeepsItsSag() {
    // Independent: the sag measured at the middle of every piece.
    for (double sag : new double[] {1e-6, 0.002, 0.5, 100}) {
      List<Vec2> points = Contour.circle(new Vec2(2, 1), 30).flattened(sag);
      for (int i = 0; i < points.size(); i++) {
        Vec2 middle = points.get(i).toward(points.get((i + 1) % points.size()), 0.5);
        assertThat(30 - middle.distanceTo(new Vec2(2, 1))).isBetween(0.0, sag * (1 + 1e-6));
      }
    }
    // A sag that a radius cannot express must not run away.
    assertThat(Contour.circle(Vec2.ZERO, 1e-3).flattened(1e-9)).hasSizeLessThan(10_000);
  }

  @Test
  void edgesMustMeet() {
    assertThatThrownBy(
            () ->
                Contour.of(
                    List.of(
                        new Segment(new Vec2(0, 0), new Vec2(1, 0)),
                        new Segment(new Vec2(1, 0.1), new Vec2(0, 0)))))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Contour.of(List.of())).isInstanceOf(IllegalArgumentException.class);
  }
}
