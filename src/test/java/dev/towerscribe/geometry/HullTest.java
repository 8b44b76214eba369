package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HullTest {
  /** Some hundred roundings on lengths of tens of mm. */
  private static final double ROUNDING = 1e-9;

  @Test
  void hullOfDiscsHasTheAreaOfSteinersFormula() {
    List<Vec2> centres =
        List.of(
            new Vec2(0, 0),
            new Vec2(30, 0),
            new Vec2(30, 20),
            new Vec2(0, 20),
            new Vec2(10, 10),
            new Vec2(15, 0),
            new Vec2(30, 0));
    Contour hull = Contour.hullOfDiscs(centres, 5);
    // Independent: A + L d + pi d^2 of the rectangle 30 x 20 (Steiner, from memory).
    assertThat(hull.signedArea()).isCloseTo(600 + 100 * 5 + Math.PI * 25, within(ROUNDING));
    assertThat(hull.length()).isCloseTo(100 + 2 * Math.PI * 5, within(ROUNDING));
  }

  @Test
  void oneCentreIsACircleAndALineASweptDisc() {
    Vec2 a = new Vec2(1, 2);
    Vec2 b = new Vec2(4, 6);
    assertThat(Contour.hullOfDiscs(List.of(a, a), 3)).isEqualTo(Contour.circle(a, 3));
    assertThat(Contour.hullOfDiscs(List.of(a, b, a.toward(b, 0.3)), 3).signedArea())
        .isCloseTo(2 * 3 * 5 + Math.PI * 9, within(ROUNDING));
  }

  @Test
  void everyDiscLiesInTheHullAndTheHullIsNoLarger() {
    Random random = new Random(20);
    for (int k = 0; k < 200; k++) {
      List<Vec2> centres = new ArrayList<>();
      int count = 1 + random.nextInt(40);
      for (int i = 0; i < count; i++) {
        centres.add(new Vec2(40 * random.nextDouble(), 4 * random.nextGaussian()));
      }
      Region hull = Region.inside(Contour.hullOfDiscs(centres, 7));
      for (Vec2 c : centres) {
        assertThat(hull.depth(c)).isGreaterThanOrEqualTo(7 - ROUNDING);
      }
      // Every direction's farthest disc touches it: no larger than the hull.
      for (int d = 0; d < 36; d++) {
        Vec2 way = new Vec2(Math.cos(d / 5.73), Math.sin(d / 5.73));
        double support = centres.stream().mapToDouble(way::dot).max().orElseThrow() + 7;
        double reach =
            hull.contours().get(0).flattened(1e-4).stream()
                .mapToDouble(way::dot)
                .max()
                .orElseThrow();
        assertThat(reach).isLessThanOrEqualTo(support + ROUNDING);
      }
    }
  }
}
