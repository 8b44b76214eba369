package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Faults of random rings on a coarse grid. */
class PolygonsProperties {
  @Property(seed = "20260401", tries = 500)
  void againstAnIndependentTest(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 9) int corners) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Vec2> ring = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      // Few grid places, so that touching is as common as crossing.
      ring.add(new Vec2(random.nextInt(9), random.nextInt(9)));
    }
    boolean twice = false;
    for (int i = 0; i < corners; i++) {
      twice |= ring.get(i).equals(ring.get((i + 1) % corners));
    }
    // independent: JTS; it lets repeated points pass.
    IsValidOp valid =
        new IsValidOp(new GeometryFactory().createPolygon(FlattenedOverlay.ring(ring)));
    assertThat(Polygons.fault(ring).isEmpty()).isEqualTo(!twice && valid.isValid());
  }
}
