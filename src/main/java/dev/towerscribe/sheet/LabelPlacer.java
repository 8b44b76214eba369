package dev.towerscribe.sheet;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for lettering among lines. Some things lettering may never cover (hole circles, the
 * final cut, other lettering, the frame); crossing others costs by the millimetre. Of the
 * candidates offered the cheapest is taken, the earlier of two alike, so the result never varies.
 */
final class LabelPlacer {
  /** White paper left round lettering. */
  static final double CLEARED_MM = 0.9;

  /** Shorter pieces of a line are put together: over 1 mm no curve of a sheet bends noticeably. */
  private static final double FINE_ENOUGH_MM = 1.0;

  /**
   * One way to place a label.
   *
   * @param block its lettering
   * @param centre its middle
   * @param turn direction of reading
   * @param pointer what a leader line runs to, if it stands apart
   * @param cost how little it is liked before anything is crossed
   */
  record Candidate(Block block, Vec2 centre, Angle turn, Optional<Vec2> pointer, double cost) {}

  private record Disc(Vec2 centre, double radiusMm) {}

  private record Stroke(Vec2 from, Vec2 to, double costPerMm) {}

  private final Box room;
  private final List<TurnedBox> taken = new ArrayList<>();
  private final List<Disc> discs = new ArrayList<>();
  private final List<Stroke> walls = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Item> items = new ArrayList<>();

  /**
   * Starts with empty room.
   *
   * @param room where lettering may stand
   */
  LabelPlacer(Box room) {
    this.room = room;
  }

  /** Nothing may cover this box. */
  void keepClear(TurnedBox box) {
    taken.add(box);
  }

  /** Nothing may cover this disc. */
  void keepClear(Vec2 centre, double radiusMm) {
    discs.add(new Disc(centre, radiusMm));
  }

  /** No lettering may lie across this line. */
  void keepClear(List<Vec2> path, boolean closed) {
    strokesOf(path, closed, 1.0, walls);
  }

  /** Lettering had better not lie across this line. */
  void avoid(List<Vec2> path, boolean closed, double costPerMm) {
    strokesOf(path, closed, costPerMm, strokes);
  }

  private static void strokesOf(
      List<Vec2> path, boolean closed, double costPerMm, List<Stroke> into) {
    Vec2 from = path.get(0);
    int pieces = closed ? path.size() : path.size() - 1;
    for (int i = 1; i <= pieces; i++) {
      Vec2 to = path.get(i % path.size());
      if (i == pieces || from.distanceTo(to) >= FINE_ENOUGH_MM) {
        into.add(new Stroke(from, to, costPerMm));
        from = to;
      }
    }
  }

  /** Everything placed so far: leaders, white grounds and lettering. */
  List<Item> items() {
    return List.copyOf(items);
  }

  /**
   * Places a label.
   *
   * @param candidates in order of preference where costs are alike
   * @return the box it takes, or empty when no candidate is free
   */
  Optional<TurnedBox> place(List<Candidate> candidates) {
    return place(candidates, Double.POSITIVE_INFINITY);
  }

  /**
   * Places a label unless it costs too much.
   *
   * @param candidates in order of preference where costs are alike
   * @param worth what the label is worth; no dearer place is taken
   * @return the box it takes, or empty when no candidate is free
   */
  Optional<TurnedBox> place(List<Candidate> candidates, double worth) {
    List<Candidate> sorted = new ArrayList<>(candidates);
    sorted.sort(Comparator.comparingDouble(Candidate::cost));
    Candidate best = null;
    double least = worth;
    for (Candidate candidate : sorted) {
      if (candidate.cost() >= least) {
        break;
      }
      double cost = costOf(candidate, least);
      if (cost < least) {
        least = cost;
        best = candidate;
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    TurnedBox box = best.block().at(best.centre(), best.turn());
    take(best, box, least > best.cost());
    return Optional.of(box);
  }

  private void take(Candidate chosen, TurnedBox box, boolean cleared) {
    chosen
        .pointer()
        .ifPresent(
            end -> {
              Vec2 start = box.grown(CLEARED_MM).edgeToward(end);
              items.add(new Item.Line(Layer.NOTES, start, end, Pen.FINE));
              items.add(new Item.Circle(Layer.NOTES, end, 0.5, Pen.NONE, Ink.BLACK));
              walls.add(new Stroke(start, end, 1.0));
              discs.add(new Disc(end, 0.8));
            });
    items.addAll(chosen.block().drawn(chosen.centre(), chosen.turn(), cleared, Ink.BLACK));
    taken.add(box.grown(CLEARED_MM));
  }

  /** Cost of a candidate; infinite when it is barred or already dearer than the best. */
  private double costOf(Candidate candidate, double least) {
    TurnedBox box = candidate.block().at(candidate.centre(), candidate.turn()).grown(CLEARED_MM);
    Box bounds = box.bounds();
    if (!room.contains(bounds)) {
      return Double.POSITIVE_INFINITY;
    }
    for (TurnedBox other : taken) {
      if (box.overlaps(other)) {
        return Double.POSITIVE_INFINITY;
      }
    }
    for (Disc disc : discs) {
      if (box.distanceTo(disc.centre()) < disc.radiusMm()) {
        return Double.POSITIVE_INFINITY;
      }
    }
    for (Stroke wall : walls) {
      if (near(bounds, wall) && box.lengthInside(wall.from(), wall.to()) > 0) {
        return Double.POSITIVE_INFINITY;
      }
    }
    double cost = candidate.cost();
    if (candidate.pointer().isPresent()) {
      Vec2 end = candidate.pointer().get();
      Vec2 start = box.edgeToward(end);
      if (leaderBarred(start, end)) {
        return Double.POSITIVE_INFINITY;
      }
    }
    for (Stroke stroke : strokes) {
      if (near(bounds, stroke)) {
        cost += stroke.costPerMm() * box.lengthInside(stroke.from(), stroke.to());
        if (cost >= least) {
          return Double.POSITIVE_INFINITY;
        }
      }
    }
    return cost;
  }

  private boolean leaderBarred(Vec2 start, Vec2 end) {
    if (!room.contains(end)) {
      return true;
    }
    for (TurnedBox other : taken) {
      if (other.lengthInside(start, end) > 0) {
        return true;
      }
    }
    for (Disc disc : discs) {
      boolean endsThere = end.distanceTo(disc.centre()) <= disc.radiusMm() + CLEARED_MM;
      if (!endsThere && distance(disc.centre(), start, end) < disc.radiusMm()) {
        return true;
      }
    }
    return false;
  }

  private static double distance(Vec2 p, Vec2 a, Vec2 b) {
    Vec2 d = b.minus(a);
    double squared = d.dot(d);
    double t = squared == 0.0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(d) / squared));
    return p.distanceTo(a.toward(b, t));
  }

  private static boolean near(Box box, Stroke stroke) {
    return Math.max(stroke.from().x(), stroke.to().x()) >= box.minX()
        && Math.min(stroke.from().x(), stroke.to().x()) <= box.maxX()
        && Math.max(stroke.from().y(), stroke.to().y()) >= box.minY()
        && Math.min(stroke.from().y(), stroke.to().y()) <= box.maxY();
  }
}
