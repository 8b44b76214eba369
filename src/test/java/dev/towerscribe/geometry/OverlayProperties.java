package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.quantity.Tolerances;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Overlays of random shapes, with and without arcs. */
class OverlayProperties {
  private static final double AREA = 1000 * Tolerances.COMPUTED_MM;

  private static Region shape(long seed, int corners, double k, double dx) {
    Region star = Region.inside(Shapes.star(seed, corners)).inset(k).grown(k / 2);
    return Shapes.mapped(star, 0, false, dx, 0.3 * dx);
  }

  @Tag("more-tries")
  @Property(seed = "20260201")
  void areasAddUp(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 50) int corners,
      @ForAll @DoubleRange(min = 0, max = 12) double k,
      @ForAll @DoubleRange(min = -80, max = 80) double dx) {
    Region a = shape(seed, corners, k, 0);
    Region b = shape(seed + 1, corners + 3, k / 3, dx);
    double both = a.intersection(b).area();
    // independent: inclusion and exclusion.
    assertThat(a.union(b).area()).isCloseTo(a.area() + b.area() - both, within(AREA));
    assertThat(a.minus(b).area()).isCloseTo(a.area() - both, within(AREA));
    assertThat(b.minus(a).area()).isCloseTo(b.area() - both, within(AREA));
    assertThat(b.intersection(a).area()).isCloseTo(both, within(AREA));
    for (OverlayKind kind : OverlayKind.values()) {
      assertThat(Overlay.exact(a, b, kind, SnapDistance.TRIES.get(0))).isPresent();
    }
    for (Region part : a.union(b).parts()) {
      assertThat(part.contours().get(0).signedArea()).isPositive();
    }
  }

  @Tag("more-tries")
  @Property(seed = "20260202")
  void polygonsAgainstAnIndependentOverlay(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 50) int corners,
      @ForAll @DoubleRange(min = -80, max = 80) double dx) {
    Region a = shape(seed, corners, 0, 0);
    Region b = shape(seed + 1, corners + 3, 0, dx);
    Geometry flatA = FlattenedOverlay.geometry(a, 1.0);
    Geometry flatB = FlattenedOverlay.geometry(b, 1.0);
    // independent: JTS overlay, exact for straight sides.
    assertThat(a.intersection(b).area())
        .isCloseTo(flatA.intersection(flatB).getArea(), within(AREA));
    assertThat(a.union(b).area()).isCloseTo(flatA.union(flatB).getArea(), within(AREA));
    assertThat(a.minus(b).area()).isCloseTo(flatA.difference(flatB).getArea(), within(AREA));
  }

  @Tag("more-tries")
  @Property(seed = "20260203")
  void aRegionWithItsOwnOpeningSharesLongStretches(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 50) int corners,
      @ForAll @DoubleRange(min = 0.5, max = 12) double r) {
    Region star = Region.inside(Shapes.star(seed, corners));
    Region opened = star.opened(r);
    // independent: the opening is a part of the region.
    assertThat(star.minus(opened).area()).isCloseTo(star.area() - opened.area(), within(AREA));
    assertThat(opened.minus(star).area()).isCloseTo(0, within(AREA));
    assertThat(star.union(opened).area()).isCloseTo(star.area(), within(AREA));
    assertThat(star.intersection(opened).area()).isCloseTo(opened.area(), within(AREA));
  }

  @Tag("more-tries")
  @Property(seed = "20260204")
  void containsAgainstAnIndependentTest(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 50) int corners,
      @ForAll @DoubleRange(min = 0, max = 12) double k) {
    double sag = 1e-4;
    Region region = shape(seed, corners, k, 0).minus(Shapes.disc(10, 5, 9));
    Geometry flat = FlattenedOverlay.geometry(region, sag);
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 100; i++) {
      Vec2 p = new Vec2(130 * random.nextDouble() - 65, 130 * random.nextDouble() - 65);
      if (!region.isEmpty() && Math.abs(region.depth(p)) > 2 * sag) {
        // independent: JTS, ray casting on the flattened boundary.
        boolean theirs =
            flat.contains(new GeometryFactory().createPoint(new Coordinate(p.x(), p.y())));
        assertThat(region.contains(p)).isEqualTo(theirs);
      }
    }
  }

  /** A step of building on a coarse grid, where edges coincide, touch and are tangent by rule. */
  private static Region onGrid(SplittableRandom random) {
    int x = random.nextInt(20);
    int y = random.nextInt(20);
    return random.nextInt(4) == 0
        ? Shapes.disc(x, y, 1 + random.nextInt(5))
        : Region.inside(
            Shapes.rectangle(x, y, x + 1 + random.nextInt(9), y + 1 + random.nextInt(9)));
  }

  @Tag("more-tries")
  @Property(seed = "20260205")
  void coincidencesOnAGridAreExactToo(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 2, max = 8) int steps) {
    SplittableRandom random = new SplittableRandom(seed);
    Region region = onGrid(random);
    for (int i = 1; i < steps && !region.isEmpty(); i++) {
      Region next = onGrid(random);
      for (OverlayKind kind : OverlayKind.values()) {
        assertThat(Overlay.exact(region, next, kind, SnapDistance.TRIES.get(0))).isPresent();
      }
      double both = region.intersection(next).area();
      Region union = region.union(next);
      Region rest = region.minus(next);
      // independent: inclusion and exclusion; JTS on arcs flattened to a sag of 1e-4.
      assertThat(union.area()).isCloseTo(region.area() + next.area() - both, within(AREA));
      assertThat(rest.area()).isCloseTo(region.area() - both, within(AREA));
      double theirs =
          FlattenedOverlay.geometry(region, 1e-4)
              .intersection(FlattenedOverlay.geometry(next, 1e-4))
              .getArea();
      assertThat(both).isCloseTo(theirs, within(1e-4 * (region.length() + next.length())));
      region = random.nextInt(3) < 2 ? union : rest;
    }
    for (double mm : new double[] {0.5, 1, 1.5, 2, 3}) {
      if (!region.isEmpty()) {
        Region inset = region.inset(mm);
        Region grown = region.grown(mm);
        assertThat(Offsets.exact(region, mm, SnapDistance.TRIES.get(0))).contains(inset.contours());
        assertThat(Offsets.exact(region, -mm, SnapDistance.TRIES.get(0)))
            .contains(grown.contours());
        keepsDistance(region, inset, mm);
        keepsDistance(region, grown, -mm);
        assertThat(region.opened(mm).minus(region).area()).isCloseTo(0, within(AREA));
        assertThat(region.minus(grown.inset(mm)).area()).isCloseTo(0, within(AREA));
      }
    }
  }

  private static void keepsDistance(Region from, Region to, double depth) {
    for (Contour contour : to.contours()) {
      for (Edge edge : contour.edges()) {
        for (int i = 0; i <= 4; i++) {
          assertThat(from.depth(edge.at(i / 4.0))).isCloseTo(depth, within(AREA));
        }
      }
    }
  }
}
