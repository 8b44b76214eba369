package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Independent: every figure by hand. */
class WebsTest {
  private static final double MM = Tolerances.COMPUTED_MM;

  private static double web(FlatSolid part, int first, int second) {
    return Webs.of(part).stream()
        .filter(w -> w.first() == first && w.second() == second)
        .findFirst()
        .orElseThrow()
        .mm();
  }

  private static FlatSolid disc(List<Contour> cutouts, Bore... bores) {
    return new FlatSolid(Contour.circle(Vec2.ZERO, 50), 6, cutouts, List.of(bores));
  }

  @Test
  void holesAndEdge() {
    FlatSolid part =
        disc(List.of(), Bore.plain(new Vec2(40, 0), 8), Bore.plain(new Vec2(40, 30), 10));
    assertThat(web(part, 0, Webs.EDGE)).isCloseTo(6, within(MM));
    assertThat(web(part, 1, Webs.EDGE)).isCloseTo(-5, within(MM));
    assertThat(web(part, 0, 1)).isCloseTo(21, within(MM));
  }

  @Test
  void aSlotComesBeforeTheHoles() {
    Contour slot = Contour.sweptDisc(Vec2.ZERO, new Vec2(20, 0), 5);
    FlatSolid part = disc(List.of(slot), Bore.plain(new Vec2(10, 9), 6), Bore.plain(Vec2.ZERO, 2));
    assertThat(web(part, 0, Webs.EDGE)).isCloseTo(25, within(MM));
    assertThat(web(part, 0, 1)).isCloseTo(1, within(MM));
    // A hole in the slot's own middle: 5 deep and its radius of 1.
    assertThat(web(part, 0, 2)).isCloseTo(-6, within(MM));
  }

  @Test
  void widenedHolesMeetOnlyOnTheSameFace() {
    Bore top = bore(new Vec2(0, 0), 3, true);
    Bore same = bore(new Vec2(15, 0), 3, true);
    Bore under = bore(new Vec2(15, 0), 2.9, false);
    // Widened to 16 both: 15 - 8 - 8 = -1 on one face; a widened one to the other's plain hole of
    // 8:
    // 15 - 8 - 4 = 3.
    assertThat(web(disc(List.of(), top, same), 0, 1)).isCloseTo(-1, within(MM));
    assertThat(web(disc(List.of(), top, under), 0, 1)).isCloseTo(3, within(MM));
    // 3 and 3 deep from either face of a plate of 6: they meet in its middle.
    assertThat(web(disc(List.of(), top, bore(new Vec2(15, 0), 3, false)), 0, 1))
        .isCloseTo(-1, within(MM));
  }

  private static Bore bore(Vec2 at, double deep, boolean fromTop) {
    return new Bore(at, 8, Optional.of(new Recess.Counterbore(16, deep, fromTop)));
  }

  @Test
  void outlinesThatAreNoCircles() {
    Contour a = RoundedRectangle.rectangle(new Box(-20, -5, -10, 5), 0);
    Contour b = RoundedRectangle.rectangle(new Box(-4, -5, 6, 5), 2);
    assertThat(web(disc(List.of(a, b)), 0, 1)).isCloseTo(6, within(MM));
    // They share 4 by 9.
    Contour c = RoundedRectangle.rectangle(new Box(-14, -4, 0, 10), 0);
    assertThat(web(disc(List.of(a, c)), 0, 1)).isCloseTo(-6, within(MM));
    Contour within = RoundedRectangle.rectangle(new Box(-18, -2, -12, 2), 1);
    assertThat(web(disc(List.of(a, within)), 0, 1)).isCloseTo(-2, within(MM));
  }

  @Test
  void roundedRectangles() {
    assertThat(RoundedRectangle.rectangle(new Box(0, 0, 40, 20), 3.5).signedArea())
        .isCloseTo(800 - (4 - Math.PI) * 3.5 * 3.5, within(MM));
    assertThat(RoundedRectangle.rectangle(new Box(0, 0, 40, 20), 0).signedArea()).isEqualTo(800);
    // Both ends half circles; a square all corner is a circle.
    Contour stadium = RoundedRectangle.rectangle(new Box(0, 0, 40, 20), 10);
    assertThat(stadium.signedArea()).isCloseTo(400 + Math.PI * 100, within(MM));
    assertThat(stadium.edges()).hasSize(6);
    assertThat(RoundedRectangle.rectangle(new Box(0, 0, 20, 20), 10).asCircle()).isPresent();
    assertThatThrownBy(() -> RoundedRectangle.rectangle(new Box(0, 0, 40, 20), 10.1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
