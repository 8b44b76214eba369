package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Offsets of random star-shaped polygons, also after an inset has given them arcs. */
class OffsetsProperties {
  private static final double MM = Tolerances.COMPUTED_MM;
  private static final int PER_QUARTER = 200;

  /** mm2: some hundred mm of boundary, each point right to COMPUTED_MM. */
  private static final double AREA = 1000 * MM;

  /** The buffer's chord lies this much inside an arc of unit radius: 1 - cos(half a step). */
  private static final double CHORD = 1 - Math.cos(Math.PI / 4 / PER_QUARTER);

  private static Geometry buffer(Geometry g, double mm) {
    BufferParameters parameters = new BufferParameters(PER_QUARTER);
    parameters.setSimplifyFactor(1e-9);
    return BufferOp.bufferOp(g, mm, parameters);
  }

  @Tag("more-tries")
  @Property(seed = "20260101")
  void insetOfAPolygonAgainstABuffer(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 60) int corners,
      @ForAll @DoubleRange(min = 0.01, max = 25) double k) {
    Region star = Region.inside(Shapes.star(seed, corners));
    Geometry flat = FlattenedOverlay.geometry(star, 1.0);
    for (double mm : new double[] {-k, k}) {
      Region own = mm < 0 ? star.inset(k) : star.grown(k);
      // independent: JTS. Its arcs are chords through the arcs' points, so an arc's bow is missing
      // from the buffered side: at most the bow's height times the length of all arcs.
      Geometry theirs = buffer(flat, mm);
      double arcs =
          own.contours().stream()
              .flatMap(c -> c.edges().stream())
              .filter(Arc.class::isInstance)
              .mapToDouble(Edge::length)
              .sum();
      double bow = k * CHORD * (arcs + 1);
      assertThat(own.area()).isCloseTo(theirs.getArea(), within(bow + dropped(star, k) + 1e-6));
    }
  }

  /**
   * Where two sides' parallels begin within 0.05 of the distance from each other, the buffer puts
   * one point for both: at a turn t the side's end is then off by t times that shift of t times the
   * distance, along half of the neighbouring sides at most.
   */
  private static double dropped(Region star, double mm) {
    double area = 0;
    List<Edge> edges = star.contours().get(0).edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get(i);
      Edge after = edges.get((i + 1) % edges.size());
      Vec2 in = EdgeGeometry.endDirection(before);
      Vec2 out = EdgeGeometry.startDirection(after);
      double turn = Math.atan2(in.cross(out), in.dot(out));
      if (Math.abs(turn) < 0.051) {
        area += turn * turn * mm * (before.length() + after.length()) / 2;
      }
    }
    return area;
  }

  @Tag("more-tries")
  @Property(seed = "20260102")
  void theExactWayIsTakenAndItsJointsMeet(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 60) int corners,
      @ForAll @DoubleRange(min = 0.01, max = 15) double k,
      @ForAll @DoubleRange(min = 0.01, max = 15) double r) {
    Region star = Region.inside(Shapes.star(seed, corners));
    Region inset = star.inset(k);
    Region small = inset.inset(r);
    assertThat(Offsets.exact(star, k, SnapDistance.TRIES.get(0))).contains(inset.contours());
    assertThat(Offsets.exact(inset, r, SnapDistance.TRIES.get(0))).contains(small.contours());
    assertThat(Offsets.exact(small, -r, SnapDistance.TRIES.get(0)))
        .contains(small.grown(r).contours());
    for (Region region : new Region[] {inset, small, small.grown(r)}) {
      assertThat(Shapes.worstJoint(region)).isLessThan(MM);
    }
  }

  @Tag("more-tries")
  @Property(seed = "20260103")
  void everyPointKeepsTheDistanceAndEveryEdgeHasIt(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 60) int corners,
      @ForAll @DoubleRange(min = 0.01, max = 12) double k,
      @ForAll @DoubleRange(min = 0.01, max = 12) double r) {
    Region star = Region.inside(Shapes.star(seed, corners));
    Region withArcs = star.inset(k).grown(k / 2);
    keepsDistance(star, star.inset(k), k, 1);
    keepsDistance(withArcs, withArcs.inset(r), r, 1);
    keepsDistance(withArcs, withArcs.grown(r), r, -1);
  }

  private static void keepsDistance(Region from, Region to, double mm, int side) {
    for (Contour contour : to.contours()) {
      for (Edge edge : contour.edges()) {
        for (int i = 0; i <= 8; i++) {
          assertThat(side * from.depth(edge.at(i / 8.0))).isCloseTo(mm, within(MM));
        }
      }
    }
  }

  @Tag("more-tries")
  @Property(seed = "20260104")
  void turningAndMirroringChangeNothing(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 60) int corners,
      @ForAll @DoubleRange(min = 0.5, max = 8) double k,
      @ForAll @DoubleRange(min = -180, max = 180) double degrees,
      @ForAll boolean mirror) {
    Region star = Region.inside(Shapes.star(seed, corners));
    Region cut = star.inset(k).opened(4);
    Region turned = Shapes.mapped(star, degrees, mirror, 31, -17).inset(k).opened(4);
    Region expected = Shapes.mapped(cut, degrees, mirror, 31, -17);
    assertThat(turned.area()).isCloseTo(cut.area(), within(AREA));
    assertThat(turned.length()).isCloseTo(cut.length(), within(1000 * MM));
    assertThat(turned.contours()).hasSameSizeAs(cut.contours());
    for (Contour contour : turned.contours()) {
      for (Edge edge : contour.edges()) {
        assertThat(expected.depth(edge.at(0.5))).isCloseTo(0, within(10 * MM));
      }
    }
  }

  @Tag("more-tries")
  @Property(seed = "20260105")
  void openingStaysInsideAndIsItsOwnOpening(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 60) int corners,
      @ForAll @DoubleRange(min = 0.1, max = 15) double r) {
    Region star = Region.inside(Shapes.star(seed, corners));
    Region opened = star.opened(r);
    Region again = opened.opened(r);
    assertThat(again.area()).isCloseTo(opened.area(), within(AREA));
    assertThat(opened.area()).isLessThanOrEqualTo(star.area());
    for (Contour contour : opened.contours()) {
      for (Edge edge : contour.edges()) {
        assertThat(star.depth(edge.at(0.5))).isGreaterThan(-MM);
        boolean turnsOut = edge instanceof Arc arc && arc.sweep() > 0;
        assertThat(!turnsOut || ((Arc) edge).radius() > r - MM).isTrue();
      }
    }
  }

  @Property(seed = "20260106", tries = 60)
  void theFlatWayAgreesToItsSag(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 40) int corners,
      @ForAll @DoubleRange(min = 0.1, max = 10) double k) {
    Region star = Region.inside(Shapes.star(seed, corners));
    Region withArcs = star.inset(k);
    Region disc = Shapes.disc(20, 5, 30);
    // Each boundary may lie a sag inside or outside along its whole length.
    double sag = 2 * Tolerances.FLATTEN_MM / 10 * (star.length() + disc.length() + 100);
    assertThat(Boundaries.area(FlattenedOverlay.moved(withArcs, -k)))
        .isCloseTo(withArcs.grown(k).area(), within(sag));
    assertThat(Boundaries.area(FlattenedOverlay.moved(star, k)))
        .isCloseTo(withArcs.area(), within(sag));
    for (OverlayKind kind : OverlayKind.values()) {
      assertThat(Boundaries.area(FlattenedOverlay.overlay(withArcs, disc, kind)))
          .isCloseTo(
              Boundaries.area(
                  Overlay.exact(withArcs, disc, kind, SnapDistance.TRIES.get(0)).orElseThrow()),
              within(sag));
    }
  }
}
