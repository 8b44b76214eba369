package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Cheapest;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.report.PlacementReport;
import java.util.ArrayList;
import java.util.List;

/**
 * The ringed letters of a map's offers. A letter stands on its place where it has room to itself;
 * where letters would cover one another, each place is a dot and its letter stands off, joined to
 * the dot by a short line.
 */
final class OfferMarks {
  /** Radius of the ring about a letter. */
  static final double RING_MM = 2.7;

  /** Radius of a dot. */
  static final double DOT_MM = 0.8;

  /** White between a ring and whatever is nearest to it. */
  static final double CLEAR_MM = 0.6;

  private static final double CAPITAL_MM = 3.0;

  /**
   * From a dot to the middle of its letter, at the least: long enough to show a line; the others
   * where the first leaves no room.
   */
  private static final List<Double> SHORTEST_MM = List.of(DOT_MM + 1.5 + RING_MM, 9.0, 13.0, 17.0);

  private static final double LONGEST_MM = 25.0;
  private static final double STEP_MM = 0.75;
  private static final int DIRECTIONS = 48;

  /** Farther off by so much is as bad as turned half round, away from the way out of the crowd. */
  private static final double TURNED_MM = 3.0;

  /** A millimetre too near outweighs any length of line. */
  private static final double TOO_NEAR = 1000.0;

  /** One offer: its place, and the middle of its ring, the same point where there is no line. */
  record Mark(Vec2 place, Vec2 letter, boolean apart) {
    /** From the dot to the ring's middle. */
    Segment line() {
      return new Segment(place, letter);
    }
  }

  private final List<Mark> marks;

  private OfferMarks(List<Mark> marks) {
    this.marks = List.copyOf(marks);
  }

  /**
   * Finds room for the letters.
   *
   * @param places of the offers on the page, in the order of their letters
   * @param box what rings that stand off stay inside
   * @return a mark for each
   */
  static OfferMarks of(List<Vec2> places, Box box) {
    Mark[] marks = new Mark[places.size()];
    List<Mark> alone = new ArrayList<>();
    List<Integer> crowded = new ArrayList<>();
    for (int i = 0; i < marks.length; i++) {
      if (crowd(places, i).size() == 1) {
        marks[i] = new Mark(places.get(i), places.get(i), false);
        alone.add(marks[i]);
      } else {
        crowded.add(i);
      }
    }
    List<Vec2> dots = crowded.stream().map(places::get).toList();
    // Letters set first may shut a later one in. Some other order then leaves it a way out, or, in
    // a corner of the map, longer lines. There are five offers at most, and the first try nearly
    // always does.
    Mark[] best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double shortest : SHORTEST_MM) {
      for (List<Integer> order : orders(crowded)) {
        List<Mark> set = new ArrayList<>(alone);
        double sum = 0.0;
        for (int i : order) {
          marks[i] = standingOff(places.get(i), crowd(places, i), set, dots, box, shortest);
          sum += tooNear(marks[i], set, dots);
          set.add(marks[i]);
        }
        if (sum < least) {
          least = sum;
          best = marks.clone();
        }
        if (least == 0.0) {
          return new OfferMarks(List.of(best));
        }
      }
    }
    return new OfferMarks(List.of(best));
  }

  /** Every order of a few numbers, as given first. */
  private static List<List<Integer>> orders(List<Integer> numbers) {
    if (numbers.isEmpty()) {
      return List.of(List.of());
    }
    List<List<Integer>> all = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      List<Integer> others = new ArrayList<>(numbers);
      int first = others.remove(i);
      for (List<Integer> rest : orders(others)) {
        List<Integer> order = new ArrayList<>(List.of(first));
        order.addAll(rest);
        all.add(order);
      }
    }
    return all;
  }

  /** The places whose rings would touch that of a place, itself among them. */
  private static List<Vec2> crowd(List<Vec2> places, int i) {
    return places.stream()
        .filter(p -> p.distanceTo(places.get(i)) < 2 * RING_MM + CLEAR_MM)
        .toList();
  }

  private static Mark standingOff(
      Vec2 place, List<Vec2> crowd, List<Mark> set, List<Vec2> dots, Box box, double shortest) {
    Vec2 sum = Vec2.ZERO;
    for (Vec2 p : crowd) {
      sum = sum.plus(p);
    }
    Vec2 out = place.minus(sum.times(1.0 / crowd.size()));
    // Upward where a crowd has no way out, its places being one.
    double far = out.distanceTo(Vec2.ZERO);
    Vec2 way = far < 1e-6 ? new Vec2(0, 1) : out.times(1 / far);
    Box inside = box.grown(-RING_MM);
    Cheapest<Mark> cheapest = new Cheapest<>();
    for (double off = shortest; off <= LONGEST_MM; off += STEP_MM) {
      for (int k = 0; k < DIRECTIONS; k++) {
        Vec2 toward = Vec2.polar(1.0, Angle.ofDegrees(360.0 * k / DIRECTIONS));
        Mark mark = new Mark(place, place.plus(toward.times(off)), true);
        if (inside.contains(mark.letter())) {
          cheapest.offer(off + TURNED_MM * (1 - toward.dot(way)) / 2, () -> mark);
        }
      }
    }
    return cheapest
        .choose(Cheapest.BARRED, (mark, cost, most) -> TOO_NEAR * tooNear(mark, set, dots) + cost)
        .map(Cheapest.Chosen::place)
        .orElse(new Mark(place, place, false));
  }

  /** By how much a mark comes too near others, mm in all. */
  private static double tooNear(Mark mark, List<Mark> set, List<Vec2> dots) {
    double sum = 0.0;
    for (Vec2 dot : dots) {
      sum += Math.max(0, RING_MM + DOT_MM + CLEAR_MM - mark.letter().distanceTo(dot));
      boolean own = dot.distanceTo(mark.place()) < 2 * DOT_MM + CLEAR_MM;
      sum += own ? 0 : Math.max(0, DOT_MM + CLEAR_MM - distance(mark.line(), dot));
    }
    for (Mark other : set) {
      sum += Math.max(0, 2 * RING_MM + CLEAR_MM - mark.letter().distanceTo(other.letter()));
      sum += Math.max(0, RING_MM + CLEAR_MM - distance(mark.line(), other.letter()));
      if (other.apart()) {
        sum += Math.max(0, RING_MM + CLEAR_MM - distance(other.line(), mark.letter()));
        sum += cross(mark.line(), other.line()) ? RING_MM : 0;
      }
    }
    return sum;
  }

  private static double distance(Segment line, Vec2 p) {
    return line.nearest(p).distanceTo(p);
  }

  private static boolean cross(Segment a, Segment b) {
    return turn(a, b.start()) * turn(a, b.end()) < 0 && turn(b, a.start()) * turn(b, a.end()) < 0;
  }

  private static double turn(Segment s, Vec2 p) {
    return s.end().minus(s.start()).cross(p.minus(s.start()));
  }

  /** The marks, in the order of their letters. */
  List<Mark> marks() {
    return marks;
  }

  /** What other words must keep off: rings, dots and lines. */
  List<Box> boxes() {
    List<Box> boxes = new ArrayList<>();
    for (Mark mark : marks) {
      boxes.add(Box.around(mark.letter(), RING_MM + 1));
      if (mark.apart()) {
        int parts = (int) Math.ceil(mark.line().length());
        for (int i = 0; i <= parts; i++) {
          boxes.add(Box.around(mark.line().at((double) i / parts), DOT_MM + CLEAR_MM));
        }
      }
    }
    return boxes;
  }

  /** Lines and dots first, so that no line crosses a letter. */
  void draw(List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    for (Mark mark : marks) {
      if (mark.apart()) {
        notes.line(mark.place(), mark.letter(), Pen.OUTLINE);
        notes.dot(mark.place(), DOT_MM);
      }
    }
    for (int i = 0; i < marks.size(); i++) {
      Vec2 at = marks.get(i).letter();
      notes.circle(at, RING_MM, Pen.OUTLINE, Ink.WHITE);
      notes.text(
          at.x(), at.y() - CAPITAL_MM / 2, CAPITAL_MM, Align.MIDDLE, PlacementReport.letter(i));
    }
  }
}
