package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/** Gaps, nearest points and margins against sampling. */
class GapsProperties {
  private static final double MM = Tolerances.COMPUTED_MM;

  @Property(seed = "20260301", tries = 1000)
  void edgesAgainstBruteForce(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Edge a = edge(random);
    Edge b = edge(random);
    Gap gap = Gaps.between(a, b);
    int n = 400;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= n; i++) {
      Vec2 p = a.at((double) i / n);
      least = Math.min(least, b.nearest(p).distanceTo(p));
    }
    // independent: sampling; the true nearest point is at most half a step from a sample.
    double step = a.length() / n / 2;
    assertThat(gap.mm()).isBetween(least - step - MM, least + MM);
    assertThat(gap.from().distanceTo(gap.to())).isCloseTo(gap.mm(), within(MM));
    assertThat(a.nearest(gap.from()).distanceTo(gap.from())).isLessThan(MM);
    assertThat(b.nearest(gap.to()).distanceTo(gap.to())).isLessThan(MM);
    assertThat(Gaps.between(b, a).mm()).isCloseTo(gap.mm(), within(MM));
  }

  @Property(seed = "20260302", tries = 200)
  void nearestPointAndBoundsAgainstBruteForce(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Edge edge = edge(random);
    Vec2 p = new Vec2(60 * random.nextDouble() - 30, 60 * random.nextDouble() - 30);
    int n = 2000;
    double least = Double.POSITIVE_INFINITY;
    List<Vec2> samples = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      samples.add(edge.at((double) i / n));
      least = Math.min(least, samples.get(i).distanceTo(p));
    }
    Box box = Box.around(samples.get(0), 0);
    for (Vec2 q : samples) {
      box = box.union(Box.around(q, 0));
    }
    double step = edge.length() / n / 2;
    assertThat(edge.nearest(p).distanceTo(p)).isBetween(least - step, least + MM);
    assertThat(edge.bounds().grown(MM).contains(box)).isTrue();
    assertThat(box.grown(step).contains(edge.bounds())).isTrue();
  }

  @Property(seed = "20260303", tries = 60)
  void negativeMarginAgainstBruteForce(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = -60, max = 60) double dx) {
    Region outer = Region.inside(Shapes.star(seed, 12));
    Region inner = Shapes.mapped(Region.inside(Shapes.star(seed + 7, 9)), 11, false, dx, 3);
    double margin = outer.marginAround(inner);
    double most = 0;
    double grid = 0.5;
    for (double x = -130; x <= 130; x += grid) {
      for (double y = -65; y <= 65; y += grid) {
        Vec2 p = new Vec2(x, y);
        if (inner.contains(p)) {
          most = Math.max(most, -outer.depth(p));
        }
      }
    }
    for (Vec2 corner : inner.contours().get(0).corners()) {
      most = Math.max(most, -outer.depth(corner));
    }
    // independent: sampling; the true peak is within half a diagonal of a sample.
    assertThat(-margin).isBetween(most - 2 * Tolerances.SAME_POINT_MM, most + grid);
    // independent: growing by the margin is just enough to hold it.
    assertThat(inner.minus(outer.grown(-margin + 1e-4)).isEmpty()).isTrue();
    assertThat(inner.minus(outer.grown(-margin - 1e-2)).isEmpty()).isFalse();
  }

  private static Edge edge(SplittableRandom random) {
    Vec2 a = new Vec2(40 * random.nextDouble() - 20, 40 * random.nextDouble() - 20);
    if (random.nextInt(3) == 0) {
      return new Segment(a, new Vec2(40 * random.nextDouble() - 20, 40 * random.nextDouble() - 20));
    }
    double sweep = 4 * Math.PI * random.nextDouble() - 2 * Math.PI;
    if (random.nextInt(5) == 0) {
      sweep = Math.copySign(2 * Math.PI, sweep);
    }
    return new Arc(a, 0.5 + 15 * random.nextDouble(), 20 * random.nextDouble() - 10, sweep);
  }
}
