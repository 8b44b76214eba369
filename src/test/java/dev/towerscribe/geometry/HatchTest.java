package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import org.junit.jupiter.api.Test;

class HatchTest {
  @Test
  void linesEndOnTheCircles() {
    Region disc = Region.inside(Contour.circle(new Vec2(7, -3), 20));
    Region hole = Region.inside(Contour.circle(new Vec2(9, -3), 8));
    List<Segment> lines = Hatch.lines(disc, hole, Angle.ofDegrees(45), 2);
    double length = 0;
    for (Segment line : lines) {
      for (Vec2 end : List.of(line.start(), line.end())) {
        double outer = Math.abs(end.distanceTo(new Vec2(7, -3)) - 20);
        double inner = Math.abs(end.distanceTo(new Vec2(9, -3)) - 8);
        assertThat(Math.min(outer, inner)).isLessThan(Tolerances.COMPUTED_MM);
      }
      Vec2 middle = line.at(0.5);
      assertThat(disc.contains(middle)).isTrue();
      assertThat(hole.contains(middle)).isFalse();
      length += line.length();
    }
    // Independent: lines 2 mm apart sample the area pi (20^2 - 8^2) = 1055.6 mm2; the sum of
    // lengths times 2 is that area up to the error of a midpoint sum over 20 lines, within 1 %.
    assertThat(2 * length).isCloseTo(Math.PI * 336, within(10.6));
  }

  @Test
  void neighbouringLinesLieAtTheSpacing() {
    Region square =
        Region.inside(
            Contour.polygon(
                List.of(
                    new Vec2(0.5, 0.5),
                    new Vec2(9.5, 0.5),
                    new Vec2(9.5, 9.5),
                    new Vec2(0.5, 9.5))));
    List<Segment> lines = Hatch.lines(square, Region.EMPTY, Angle.ZERO, 3);
    // Independent: heights 3, 6 and 9 on the lattice through the origin.
    assertThat(lines).extracting(s -> s.start().y()).containsExactly(3.0, 6.0, 9.0);
    assertThat(lines).extracting(Segment::length).containsExactly(9.0, 9.0, 9.0);
  }

  @Test
  void anEmptyRegionHasNoLinesAndNoSpacingIsAnError() {
    assertThat(Hatch.lines(Region.EMPTY, Region.EMPTY, Angle.ZERO, 1)).isEmpty();
    assertThatThrownBy(() -> Hatch.lines(Region.EMPTY, Region.EMPTY, Angle.ZERO, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
