package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PolygonsTest {
  private static List<Vec2> points(double... xy) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Vec2(xy[i], xy[i + 1]));
    }
    return points;
  }

  @Test
  void simpleRingsHaveNoFault() {
    assertThat(Polygons.fault(points(0, 0, 10, 0, 0, 10))).isEmpty();
    assertThat(Polygons.fault(points(0, 0, 0, 10, 10, 0))).isEmpty();
    assertThat(Polygons.fault(points(0, 0, 5, 0, 10, 0, 10, 10, 0, 10))).isEmpty();
    assertThat(Polygons.fault(points(0, 0, 10, 0, 10, 10, 5, 0.001, 0, 10))).isEmpty();
  }

  @Test
  void tooFewPoints() {
    assertThat(Polygons.fault(points())).isPresent();
    assertThat(Polygons.fault(points(0, 0, 1, 1)).orElseThrow()).contains("three points");
  }

  @Test
  void neighboursInOnePlace() {
    assertThat(Polygons.fault(points(0, 0, 10, 0, 10, 1e-7, 0, 10)).orElseThrow())
        .isEqualTo("points 2 and 3 are in one place, (10, 0)");
    assertThat(Polygons.fault(points(0, 0, 10, 0, 10, 10, 0, 0)).orElseThrow())
        .contains("points 4 and 1");
  }

  @Test
  void noArea() {
    assertThat(Polygons.fault(points(0, 0, 10, 10, 5, 5)).orElseThrow()).contains("no area");
    assertThat(Polygons.fault(points(0, 0, 10, 0, 20, 1e-7)).orElseThrow()).contains("no area");
  }

  @Test
  void crossingSidesAreNamedWithTheirPlace() {
    // independent: the diagonals of the square meet in its middle.
    assertThat(Polygons.fault(points(0, 0, 10, 10, 10, 0, 0, 10)).orElseThrow())
        .isEqualTo("the sides from points 1 and 3 cross or touch at (5, 5)");
  }

  @Test
  void touchingSidesAndSpikes() {
    assertThat(Polygons.fault(points(0, 0, 10, 0, 10, 10, 5, 0, 0, 10)).orElseThrow())
        .contains("touch at (5, 0)");
    assertThat(Polygons.fault(points(0, 0, 10, 0, 10, 10, 5, 5e-7, 0, 10))).isPresent();
    assertThat(Polygons.fault(points(0, 0, 10, 0, 10, 10, 15, 15, 10, 10.0, 0, 10))).isPresent();
    assertThat(Polygons.fault(points(0, 0, 20, 0, 10, 0, 10, 10)).orElseThrow())
        .contains("turns back on itself at point 2");
    assertThat(Polygons.fault(points(0, 0, 10, 0, 10, 10, 5, 5, 10, 5, 0, 5))).isPresent();
  }
}
