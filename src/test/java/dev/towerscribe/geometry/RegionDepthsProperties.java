package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RegionDepthsProperties {
  private static final double MM = Tolerances.COMPUTED_MM;

  /** A circle; a ring; a slot; an L; a disc with a bite, whose arcs turn both ways. */
  private static final List<Region> REGIONS =
      List.of(
          Region.inside(Contour.circle(new Vec2(3, -2), 20)),
          Region.inside(Contour.circle(Vec2.ZERO, 30))
              .minus(Region.inside(Contour.circle(new Vec2(5, 5), 12))),
          Region.inside(Contour.sweptDisc(new Vec2(-10, 4), new Vec2(14, -6), 9)),
          Region.inside(
              Contour.polygon(
                  List.of(
                      new Vec2(-20, -20),
                      new Vec2(20, -20),
                      new Vec2(20, 0),
                      new Vec2(0, 0),
                      new Vec2(0, 20),
                      new Vec2(-20, 20)))),
          Region.inside(Contour.circle(Vec2.ZERO, 25))
              .minus(Region.inside(Contour.circle(new Vec2(24, 3), 11))));

  @Property(seed = "20261125", tries = 1000)
  void isTheDepthOfTheRegion(
      @ForAll @DoubleRange(min = -40, max = 40) double x,
      @ForAll @DoubleRange(min = -40, max = 40) double y) {
    for (Region region : REGIONS) {
      double depth = region.depth(new Vec2(x, y));
      double quick = new RegionDepths(region).at(x, y);
      assertThat(Math.abs(quick)).isCloseTo(Math.abs(depth), within(MM));
      if (Math.abs(depth) > MM) {
        // On the boundary itself either sign may come.
        assertThat(quick > 0).isEqualTo(depth > 0);
      }
    }
  }

  @Test
  void knowsADisc() {
    RegionDepths disc = new RegionDepths(REGIONS.get(0));
    assertThat(disc.isDisc()).isTrue();
    assertThat(disc.discRadius()).isEqualTo(20);
    assertThat(disc.discX()).isEqualTo(3);
    assertThat(disc.discY()).isEqualTo(-2);
    assertThat(new RegionDepths(REGIONS.get(1)).isDisc()).isFalse();
  }
}
