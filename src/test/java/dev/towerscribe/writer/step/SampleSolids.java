package dev.towerscribe.writer.step;

import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Parts that several tests share, and random ones whose holes cannot touch. */
final class SampleSolids {
  /**
   * Features lie in cells of this width, three by three, each within 13 mm of its cell's middle.
   */
  private static final double CELL_MM = 28;

  static final PartName NAME =
      new PartName(
          "plate, left", "strut top plate", "a shop", Optional.of(LocalDate.of(2026, 3, 14)));

  private SampleSolids() {}

  /**
   * A plate of every kind of hole: 100 x 60 x 10 with corners of radius 10, a slot of 16 between
   * centres and radius 5, holes 9, 6.6 with counterbore 11 x 6 from above, 5.5 with countersink 11
   * at 90 degrees from below.
   */
  static FlatSolid worked() {
    Contour outline =
        Contour.hullOfDiscs(
            List.of(new Vec2(-40, -20), new Vec2(40, -20), new Vec2(40, 20), new Vec2(-40, 20)),
            10);
    return new FlatSolid(
        outline,
        10,
        List.of(Contour.sweptDisc(new Vec2(-8, 0), new Vec2(8, 0), 5)),
        List.of(
            Bore.plain(new Vec2(-30, 10), 9),
            new Bore(new Vec2(30, 10), 6.6, Optional.of(new Recess.Counterbore(11, 6, true))),
            new Bore(
                new Vec2(30, -10),
                5.5,
                Optional.of(new Recess.Countersink(11, Angle.ofDegrees(90), false)))));
  }

  static FlatSolid random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double thickness = 4 + 10 * random.nextDouble();
    List<Contour> cutouts = new ArrayList<>();
    List<Bore> bores = new ArrayList<>();
    for (int cell = 0; cell < 9; cell++) {
      Vec2 centre = new Vec2((cell % 3 - 1) * CELL_MM, (cell / 3 - 1) * CELL_MM);
      Vec2 way = Vec2.polar(1, new Angle(2 * Math.PI * random.nextDouble()));
      switch (random.nextInt(11)) {
        case 0 ->
            cutouts.add(slot(centre, way, 2 + 4 * random.nextDouble(), 2 + random.nextInt(5)));
        case 1 -> cutouts.add(squareSlot(centre, way, 9, 2 + 5 * random.nextDouble()));
        case 2 -> cutouts.add(keyhole(centre, way, 3 + 5 * random.nextDouble()));
        case 3 -> cutouts.add(Contour.circle(centre, 1 + 11 * random.nextDouble()));
        case 4 -> cutouts.add(waisted(centre, way));
        case 5 -> {}
        default -> bores.add(bore(centre, thickness, random));
      }
    }
    FlatSolid solid = new FlatSolid(outline(random), thickness, cutouts, bores);
    Vec2 x = Vec2.polar(1, new Angle(2 * Math.PI * random.nextDouble()));
    Vec2 y = random.nextBoolean() ? x.quarterTurn() : x.quarterTurn().times(-1);
    Vec2 origin = new Vec2(300 * random.nextDouble() - 150, 300 * random.nextDouble() - 150);
    return solid.mapped(new Frame2(origin, x, y));
  }

  private static Bore bore(Vec2 centre, double thickness, SplittableRandom random) {
    double hole = 2 + 6 * random.nextDouble();
    boolean fromTop = random.nextBoolean();
    Recess recess =
        switch (random.nextInt(3)) {
          case 0 ->
              new Recess.Counterbore(
                  hole + 0.5 + 14 * random.nextDouble(),
                  thickness * (0.1 + 0.8 * random.nextDouble()),
                  fromTop);
          case 1 -> {
            Angle included = Angle.ofDegrees(60 + 60 * random.nextDouble());
            double depth = thickness * (0.1 + 0.8 * random.nextDouble());
            double wide = hole + 2 * depth * Math.tan(included.radians() / 2);
            yield new Recess.Countersink(Math.min(25, wide), included, fromTop);
          }
          default -> null;
        };
    return new Bore(centre, hole, Optional.ofNullable(recess));
  }

  /** An outline that holds every cell; the farthest corner of the cells is 58 mm out. */
  private static Contour outline(SplittableRandom random) {
    double grow = 15 * random.nextDouble();
    return switch (random.nextInt(5)) {
      case 0 -> Contour.circle(Vec2.ZERO, 65 + grow);
      case 1 -> {
        int corners = 6 + random.nextInt(8);
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
          // Independent: turns of at most 78 degrees at radius 76 keep 76 cos 39 = 59 mm clear.
          double angle = 2 * Math.PI * (i + 0.3 * random.nextDouble()) / corners;
          points.add(Vec2.polar(76 + 2 * grow, new Angle(angle)));
        }
        yield Contour.polygon(points);
      }
      case 2 ->
          Contour.hullOfDiscs(
              List.of(new Vec2(-50, -45), new Vec2(50, -55), new Vec2(55, 50), new Vec2(-45, 50)),
              10 + grow);
      case 3 -> bitten(grow);
      default -> {
        // Less than the whole circle: an arc beyond a half turn and its chord.
        double from = 0.3 + 0.2 * random.nextDouble();
        Arc arc = new Arc(Vec2.ZERO, 80 + grow, from, 2 * Math.PI - 2 * from);
        yield Contour.of(List.of(arc, new Segment(arc.end(), arc.start())));
      }
    };
  }

  /** A rectangle with a hollow in its upper side. */
  private static Contour bitten(double grow) {
    double top = 75 + grow;
    Arc bite = new Arc(new Vec2(0, top), 20, 0, -Math.PI);
    List<Edge> edges = new ArrayList<>();
    Vec2 left = new Vec2(-70, top);
    Vec2 right = new Vec2(70, top);
    edges.add(new Segment(new Vec2(-70, -60), new Vec2(70, -60)));
    edges.add(new Segment(new Vec2(70, -60), right));
    edges.add(new Segment(right, bite.start()));
    edges.add(bite);
    edges.add(new Segment(bite.end(), left));
    edges.add(new Segment(left, new Vec2(-70, -60)));
    return Contour.of(edges);
  }

  private static Contour slot(Vec2 centre, Vec2 way, double half, double radius) {
    return Contour.sweptDisc(centre.minus(way.times(half)), centre.plus(way.times(half)), radius);
  }

  private static Contour squareSlot(Vec2 centre, Vec2 way, double half, double halfWidth) {
    Vec2 along = way.times(half);
    Vec2 across = way.quarterTurn().times(halfWidth);
    return Contour.polygon(
        List.of(
            centre.minus(along).minus(across),
            centre.plus(along).minus(across),
            centre.plus(along).plus(across),
            centre.minus(along).plus(across)));
  }

  /** A circle with a square-ended way out: an arc beyond a half turn. */
  private static Contour keyhole(Vec2 centre, Vec2 way, double radius) {
    double direction = way.direction().radians();
    Arc arc = new Arc(centre, radius, direction + 0.5, 2 * Math.PI - 1);
    Vec2 out = way.times(12 - radius * Math.cos(0.5));
    return Contour.of(
        List.of(
            arc,
            new Segment(arc.end(), arc.end().plus(out)),
            new Segment(arc.end().plus(out), arc.start().plus(out)),
            new Segment(arc.start().plus(out), arc.start())));
  }

  /** A slot whose sides bulge inward: metal inside of arcs, in a cut-out. */
  private static Contour waisted(Vec2 centre, Vec2 way) {
    double direction = way.direction().radians();
    Vec2 side = way.quarterTurn().times(12);
    // Arcs of radius 8 about points 12 mm to either side; 60 degrees each.
    Arc upper = new Arc(centre.plus(side), 8, direction - Math.PI / 3, -Math.PI / 3);
    Arc lower = new Arc(centre.minus(side), 8, direction + 2 * Math.PI / 3, -Math.PI / 3);
    return Contour.of(
        List.of(
            upper,
            new Segment(upper.end(), lower.start()),
            lower,
            new Segment(lower.end(), upper.start())));
  }
}
