package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.quantity.Tolerances;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;

class GapsTest {
  private static final double MM = Tolerances.COMPUTED_MM;

  @Test
  void circlesAndSquares() {
    Region square = Shapes.square(20);
    // independent: along the line of centres, and from side or corner to the centre.
    assertThat(Shapes.disc(0, 0, 5).boundaryGap(Shapes.disc(30, 40, 7)).mm())
        .isCloseTo(50 - 12, within(MM));
    assertThat(Shapes.disc(0, 0, 20).boundaryGap(Shapes.disc(3, 4, 7)).mm())
        .isCloseTo(20 - 7 - 5, within(MM));
    assertThat(Shapes.disc(0, 0, 20).boundaryGap(Shapes.disc(0, 0, 7)).mm())
        .isCloseTo(13, within(MM));
    assertThat(square.boundaryGap(Shapes.disc(30, 3, 4)).mm()).isCloseTo(16, within(MM));
    assertThat(square.boundaryGap(Shapes.disc(13, 14, 2)).mm()).isCloseTo(3, within(MM));
    assertThat(square.boundaryGap(Shapes.disc(3, 0, 4)).mm()).isCloseTo(3, within(MM));
    Gap gap = square.boundaryGap(Shapes.disc(30, 3, 4));
    assertThat(gap.from().distanceTo(new Vec2(10, 3))).isLessThan(MM);
    assertThat(gap.to().distanceTo(new Vec2(26, 3))).isLessThan(MM);
  }

  @Test
  void crossingBoundariesHaveNoGap() {
    Gap gap = Shapes.square(20).boundaryGap(Shapes.disc(10, 0, 3));
    assertThat(gap.mm()).isZero();
    assertThat(gap.from()).isEqualTo(gap.to());
    // independent: the circle meets the side x = 10 at y = 3 and -3.
    assertThat(Math.abs(gap.from().y())).isCloseTo(3, within(MM));
    assertThat(gap.from().x()).isCloseTo(10, within(MM));
    assertThat(Shapes.disc(0, 0, 5).boundaryGap(Shapes.disc(8, 0, 5)).mm()).isZero();
    assertThat(Shapes.disc(0, 0, 5).boundaryGap(Shapes.disc(8, 0, 3)).mm()).isZero();
    assertThatThrownBy(() -> Shapes.square(2).boundaryGap(Region.EMPTY))
        .isInstanceOf(NoSuchElementException.class);
  }

  @Test
  void margins() {
    Region square = Shapes.square(40);
    // independent: side or corner distances.
    assertThat(square.marginAround(Shapes.disc(5, 0, 10))).isCloseTo(5, within(MM));
    assertThat(square.marginAround(Shapes.disc(10, 0, 10))).isCloseTo(0, within(MM));
    assertThat(square.marginAround(Shapes.disc(13, 0, 10))).isCloseTo(-3, within(MM));
    assertThat(square.marginAround(Shapes.disc(60, 0, 10))).isCloseTo(-50, within(MM));
    assertThat(square.marginAround(Shapes.disc(23, 24, 5))).isCloseTo(-(5 + 5), within(MM));
    assertThat(Shapes.disc(0, 0, 20).marginAround(Region.inside(Shapes.rectangle(-2, -3, 20, 21))))
        .isCloseTo(-(29 - 20), within(MM));
    assertThat(Shapes.disc(0, 0, 20).marginAround(Region.inside(Shapes.rectangle(-2, -3, 4, 5))))
        .isCloseTo(20 - Math.hypot(4, 5), within(MM));
    // The side lies along the edge: it neither sticks out nor has room.
    assertThat(square.marginAround(Region.inside(Shapes.rectangle(0, -5, 20, 5))))
        .isCloseTo(0, within(MM));
    assertThat(square.marginAround(square)).isCloseTo(0, within(MM));
  }

  @Test
  void marginOfWhatCoversAHoleIsTheHolesDepth() {
    Region holed = Shapes.square(40).minus(Shapes.disc(0, 0, 3));
    // independent: the middle of the hole is 3 from metal.
    assertThat(holed.marginAround(Shapes.disc(0, 0, 10)))
        .isCloseTo(-3, within(2 * Tolerances.SAME_POINT_MM));
    assertThat(holed.marginAround(Shapes.disc(10, 0, 5))).isCloseTo(2, within(MM));
    // A washer round the hole, its own hole wider: nothing is covered.
    Region washer = Shapes.disc(0, 0, 10).minus(Shapes.disc(0, 0, 4));
    assertThat(holed.marginAround(washer)).isCloseTo(1, within(MM));
  }
}
