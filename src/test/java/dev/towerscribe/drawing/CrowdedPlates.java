package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Plates with holes and slots, and the dimensions a machinist would want of them. */
final class CrowdedPlates {
  /** A3 on its side, less a margin. */
  static final Box AREA = new Box(10, 10, 410, 287);

  /**
   * A plate on its page.
   *
   * @param area where dimensions may go
   * @param part outline
   * @param drawn shapes of the part
   * @param requests wanted dimensions
   */
  record Plate(Box area, List<Contour> part, List<Item> drawn, List<DimensionRequest> requests) {
    Obstacles obstacles() {
      return Obstacles.of(part, drawn);
    }

    DimensionPlacer.Placement placed() {
      return new DimensionPlacer(DimensionStyle.ISO).place(area, obstacles(), requests);
    }
  }

  private record Hole(Vec2 centre, double radiusMm) {}

  private final SplittableRandom random;
  private final Frame2 frame;
  private final List<Item> drawn = new ArrayList<>();
  private final List<DimensionRequest> requests = new ArrayList<>();

  private CrowdedPlates(long seed, Frame2 frame) {
    this.random = new SplittableRandom(seed);
    this.frame = frame;
  }

  /**
   * Where plates are drawn: turned about their own middle, mirrored or not, in the area's middle.
   */
  static Frame2 frame(double turnDegrees, boolean mirrored) {
    Vec2 x = Vec2.polar(1, dev.towerscribe.quantity.Angle.ofDegrees(turnDegrees));
    Vec2 y = x.quarterTurn();
    return new Frame2(AREA.centre(), x, mirrored ? y.times(-1) : y);
  }

  /** A plate with holes strewn over it; every hole has two ordinates, some a diameter. */
  static Plate random(long seed, int holes, Frame2 frame) {
    return new CrowdedPlates(seed, frame).strewn(holes);
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static List<String> words(double mm) {
    return List.of(Numbers.fixed(mm, 2));
  }

  private static List<String> both(String before, double mm, String after) {
    return List.of(before + Numbers.fixed(mm, 2) + after, "[" + Numbers.fixed(mm / 25.4, 3) + "]");
  }

  private Plate strewn(int count) {
    double half = between(45, 75);
    Contour outline = outline(half);
    Contour placedOutline = outline.mapped(frame);
    drawn.add(new Item.Figure(Layer.PLATE, List.of(placedOutline), Pen.FINAL_CUT, Ink.NONE));
    List<Hole> holes = new ArrayList<>();
    for (int tries = 0; holes.size() < count && tries < 3000; tries++) {
      Vec2 at = new Vec2(between(-half, half), between(-half, half));
      double radius = between(1.6, 5.5);
      boolean clear =
          outline.encloses(at)
              && outline.distanceTo(at) > radius + 3
              && holes.stream()
                  .allMatch(h -> h.centre().distanceTo(at) > h.radiusMm() + radius + 3);
      if (clear) {
        holes.add(new Hole(at, radius));
      }
    }
    Vec2 datum = Vec2.ZERO;
    Vec2 down = new Vec2(0, -1);
    Vec2 left = new Vec2(-1, 0);
    ordinate(datum, datum, down, 0);
    ordinate(datum, datum, left, 0);
    cross(datum, 4);
    for (int i = 0; i < holes.size(); i++) {
      Hole hole = holes.get(i);
      boolean slot = i % 5 == 4;
      draw(hole, slot, outline, holes);
      ordinate(datum, hole.centre(), down, hole.radiusMm());
      ordinate(datum, hole.centre(), left, hole.radiusMm());
      if (i % 3 == 0) {
        requests.add(
            new DimensionRequest.Diameter(
                frame.map(hole.centre()),
                hole.radiusMm(),
                Optional.empty(),
                i % 2 == 0
                    ? List.of("\u2300" + Numbers.fixed(2 * hole.radiusMm(), 2) + " H13")
                    : both("\u2300", 2 * hole.radiusMm(), " H13")));
      }
    }
    Box b = outline.bounds();
    Vec2 right = new Vec2(1, 0);
    Vec2 up = new Vec2(0, 1);
    Vec2 lowest = outline.nearest(new Vec2(0, -500));
    Vec2 highest = outline.nearest(new Vec2(0, 500));
    linear(lowest, highest, up, right, both("", highest.y() - lowest.y(), ""));
    Vec2 east = outline.nearest(new Vec2(500, 0));
    Vec2 west = outline.nearest(new Vec2(-500, 0));
    linear(west, east, right, up, words(b.width()));
    if (holes.size() > 1) {
      Vec2 p = holes.get(0).centre();
      Vec2 q = holes.get(1).centre();
      linear(p, q, right, up, words(Math.abs(q.x() - p.x())));
      linear(p, east, right, up, words(Math.abs(east.x() - p.x())));
      linear(q, highest, up, right, words(Math.abs(q.y() - highest.y())));
    }
    return new Plate(AREA, List.of(placedOutline), drawn, requests);
  }

  private Contour outline(double half) {
    int kind = random.nextInt(3);
    if (kind == 0) {
      return Contour.circle(Vec2.ZERO, half);
    }
    if (kind == 1) {
      int corners = 4 + random.nextInt(4);
      List<Vec2> points = new ArrayList<>();
      for (int i = 0; i < corners; i++) {
        double a = 2 * Math.PI * (i + between(-0.2, 0.2)) / corners;
        points.add(new Vec2(half * Math.cos(a), half * Math.sin(a)));
      }
      return Contour.polygon(points);
    }
    double w = half - between(5, 20);
    double h = between(0.6, 1) * half - 10;
    Contour rounded =
        Contour.hullOfDiscs(
            List.of(new Vec2(-w, -h), new Vec2(w, -h), new Vec2(w, h), new Vec2(-w, h)), 8);
    for (Edge edge : rounded.edges()) {
      if (edge instanceof Arc arc) {
        requests.add(new DimensionRequest.Radius(arc.mapped(frame), List.of("R8.0")));
        break;
      }
    }
    return rounded;
  }

  private void draw(Hole hole, boolean slot, Contour outline, List<Hole> others) {
    double length = 0;
    Vec2 along = Vec2.polar(1, new dev.towerscribe.quantity.Angle(between(0, 6)));
    while (slot && length < 14 && isFree(hole, along.times(length + 2), outline, others)) {
      length += 2;
    }
    Contour contour =
        Contour.sweptDisc(hole.centre(), hole.centre().plus(along.times(length)), hole.radiusMm())
            .mapped(frame);
    drawn.add(new Item.Figure(Layer.HOLES, List.of(contour), Pen.OUTLINE, Ink.NONE));
    cross(hole.centre(), hole.radiusMm() + 0.5);
  }

  private static boolean isFree(Hole hole, Vec2 move, Contour outline, List<Hole> others) {
    Vec2 at = hole.centre().plus(move);
    return outline.encloses(at)
        && outline.distanceTo(at) > hole.radiusMm() + 3
        && others.stream()
            .allMatch(
                h ->
                    h.equals(hole)
                        || h.centre().distanceTo(at) > h.radiusMm() + hole.radiusMm() + 3);
  }

  private void cross(Vec2 at, double reach) {
    for (Vec2 arm : List.of(new Vec2(reach, 0), new Vec2(0, reach))) {
      drawn.add(
          new Item.Line(
              Layer.CENTRE_LINES, frame.map(at.minus(arm)), frame.map(at.plus(arm)), Pen.FINE));
    }
  }

  private void ordinate(Vec2 datum, Vec2 point, Vec2 side, double clear) {
    double distance = point.minus(datum).dot(side.quarterTurn());
    requests.add(
        new DimensionRequest.Ordinate(
            frame.map(datum),
            frame.map(point),
            frame.mapVector(side),
            clear,
            List.of(point.equals(datum) ? "0" : Numbers.fixed(Math.abs(distance), 2))));
  }

  private void linear(Vec2 from, Vec2 to, Vec2 along, Vec2 side, List<String> words) {
    if (Math.abs(to.minus(from).dot(along)) > 0.5) {
      requests.add(
          new DimensionRequest.Linear(
              frame.map(from),
              frame.map(to),
              frame.mapVector(along),
              frame.mapVector(side),
              0,
              words));
    }
  }
}
