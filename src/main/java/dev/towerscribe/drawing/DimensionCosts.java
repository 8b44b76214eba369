package dev.towerscribe.drawing;

import dev.towerscribe.drawing.Sketch.Role;
import dev.towerscribe.drawing.Sketch.Stroke;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that stands on the page while dimensions are placed, and what it costs to add one. Words may
 * touch nothing; leaders and dimension lines may not cross each other; what else may cross costs,
 * in the equivalent of millimetres of leader.
 */
final class DimensionCosts {
  /** What is barred. */
  static final double BARRED = Cheapest.BARRED;

  /** Words on the part itself: outside is better (ISO 129-1, from memory). */
  private static final double ON_PART = 8;

  /** What is left out at the ends of a dimension line: another's may begin there. */
  private static final double SHARED_END_MM = 1.5 * DimensionStyle.LEAST_APART_MM;

  /** Lines no further apart than this are one line: less than any printer shows, mm. */
  private static final double SAME_LINE_MM = 0.02;

  /** Sine of the largest angle between lines that run side by side: about 6 degrees. */
  private static final double PARALLEL = 0.1;

  private final Box area;
  private final List<Contour> part;
  private final StrokeGrid grid;
  private final List<TurnedBox> taken = new ArrayList<>();

  DimensionCosts(Box area, Obstacles obstacles) {
    this.area = area;
    this.part = obstacles.part();
    this.grid = new StrokeGrid(area);
    Set<Edge> edges = new LinkedHashSet<>();
    part.forEach(contour -> edges.addAll(contour.edges()));
    edges.addAll(obstacles.lines());
    for (Edge edge : edges) {
      if (edge instanceof Arc arc) {
        Sketch.chords(arc, Role.PART).forEach(grid::add);
      } else {
        grid.add(new Stroke(edge.start(), edge.end(), Role.PART));
      }
    }
    for (TurnedBox room : obstacles.taken()) {
      taken.add(room.grown(DimensionStyle.CLEAR_MM));
    }
  }

  private DimensionCosts(DimensionCosts other) {
    area = other.area;
    part = other.part;
    grid = new StrokeGrid(other.grid);
    taken.addAll(other.taken);
  }

  /** The same crowd, to try a further placing in. */
  DimensionCosts copy() {
    return new DimensionCosts(this);
  }

  Box area() {
    return area;
  }

  /** The middle of the part, or of the area if there is none. */
  Vec2 middle() {
    return part.stream().map(Contour::bounds).reduce(Box::union).orElse(area).centre();
  }

  /** How far the part reaches in a direction, from the page's origin; least if there is none. */
  double reach(Vec2 side) {
    double furthest = Double.NEGATIVE_INFINITY;
    for (Contour contour : part) {
      for (Edge edge : contour.edges()) {
        furthest = Math.max(furthest, Math.max(edge.start().dot(side), edge.end().dot(side)));
        if (edge instanceof Arc arc && arc.spans(Math.atan2(side.y(), side.x()))) {
          furthest = Math.max(furthest, arc.centre().dot(side) + arc.radius());
        }
      }
    }
    return furthest;
  }

  /**
   * What a dimension would cost there.
   *
   * @param sketch the dimension
   * @param most what is of interest: anything dearer may be given as barred
   */
  double cost(Sketch sketch, double most) {
    double cost = 0;
    for (TurnedBox room : sketch.rooms()) {
      TurnedBox wide = room.grown(DimensionStyle.CLEAR_MM);
      if (isBarred(room, wide) || touchesOwn(sketch, room)) {
        return BARRED;
      }
      if (part.stream().anyMatch(contour -> contour.encloses(room.centre()))) {
        cost += ON_PART;
      }
    }
    for (Stroke stroke : sketch.strokes()) {
      if (cost >= most || !area.contains(stroke.from()) || !area.contains(stroke.to())) {
        return BARRED;
      }
      for (TurnedBox room : taken) {
        if (room.isCrossedBy(stroke.from(), stroke.to())) {
          return BARRED;
        }
      }
      cost += crossings(stroke);
    }
    return cost >= most ? BARRED : cost;
  }

  private boolean isBarred(TurnedBox room, TurnedBox wide) {
    if (!area.contains(wide.bounds()) || taken.stream().anyMatch(room::overlaps)) {
      return true;
    }
    return grid.near(wide.bounds(), old -> wide.isCrossedBy(old.from(), old.to()));
  }

  private static boolean touchesOwn(Sketch sketch, TurnedBox room) {
    TurnedBox near = room.grown(DimensionStyle.CLEAR_MM / 2);
    return sketch.strokes().stream()
        .anyMatch(stroke -> near.isCrossedBy(stroke.from(), stroke.to()));
  }

  private double crossings(Stroke stroke) {
    Box box =
        new Segment(stroke.from(), stroke.to()).bounds().grown(2 * DimensionStyle.LEAST_APART_MM);
    double[] sum = {0};
    grid.near(
        box,
        old -> {
          if (runTogether(stroke, old)) {
            sum[0] = BARRED;
            return true;
          }
          double apart = apart(core(stroke, old), core(old, stroke));
          if (apart < DimensionStyle.LEAST_APART_MM) {
            sum[0] += crossing(stroke.role(), old.role(), apart == 0.0);
          }
          return sum[0] == BARRED;
        });
    return sum[0];
  }

  /**
   * Whether two lines run side by side so near that one would be taken for part of the other.
   * Extension lines may lie along edges, and exactly upon each other.
   */
  private static boolean runTogether(Stroke added, Stroke old) {
    if (added.role() == Role.ARROW || old.role() == Role.ARROW) {
      return false;
    }
    if (added.role() != Role.EXTENSION) {
      return alongside(added, old, -1, 2 * DimensionStyle.LEAST_APART_MM);
    }
    return old.role() != Role.PART
        && alongside(
            added,
            old,
            old.role() == Role.EXTENSION ? SAME_LINE_MM : -1,
            DimensionStyle.LEAST_APART_MM);
  }

  /** Whether two lines overlap side by side, more than one distance apart and less than another. */
  private static boolean alongside(Stroke a, Stroke b, double moreMm, double lessMm) {
    Vec2 along = a.to().minus(a.from());
    Vec2 other = b.to().minus(b.from());
    double length = along.norm();
    if (length == 0.0 || !(Math.abs(along.cross(other)) <= PARALLEL * length * other.norm())) {
      return false;
    }
    Vec2 unit = along.times(1 / length);
    Vec2 from = b.from().minus(a.from());
    Vec2 to = b.to().minus(a.from());
    double aside = Math.max(Math.abs(unit.cross(from)), Math.abs(unit.cross(to)));
    if (aside >= lessMm || aside <= moreMm) {
      return false;
    }
    double low = Math.min(unit.dot(from), unit.dot(to));
    double high = Math.max(unit.dot(from), unit.dot(to));
    return Math.min(high, length) - Math.max(low, 0) > DimensionStyle.LEAST_APART_MM;
  }

  /** A dimension line without its ends, where another or an extension line may begin. */
  private static Stroke core(Stroke stroke, Stroke other) {
    if (stroke.role() != Role.DIMENSION_LINE
        || other.role() != Role.DIMENSION_LINE && other.role() != Role.EXTENSION) {
      return stroke;
    }
    double length = stroke.from().distanceTo(stroke.to());
    if (length <= 2 * SHARED_END_MM) {
      return stroke;
    }
    double t = SHARED_END_MM / length;
    return new Stroke(
        stroke.from().toward(stroke.to(), t),
        stroke.from().toward(stroke.to(), 1 - t),
        stroke.role());
  }

  /** What it costs where a new stroke crosses an old one, or else runs too near. */
  private static double crossing(Role added, Role old, boolean crosses) {
    boolean oldDraws = old == Role.DIMENSION_LINE || old == Role.LEADER;
    if (added == Role.EXTENSION) {
      if (old == Role.ARROW) {
        return 30;
      }
      if (oldDraws) {
        return crosses ? 8 : 0;
      }
      return crosses ? 0.4 : 0;
    }
    if (oldDraws || old == Role.ARROW) {
      return BARRED;
    }
    if (added == Role.ARROW) {
      return crosses ? 6 : 1;
    }
    if (added == Role.LEADER && old == Role.PART) {
      return crosses ? 8 : 1;
    }
    return crosses ? 4 : 1;
  }

  /** Distance between two straight pieces; exactly zero where they cross. */
  private static double apart(Stroke a, Stroke b) {
    Vec2 p = a.from();
    Vec2 q = a.to();
    Vec2 r = b.from();
    Vec2 s = b.to();
    if (turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0) {
      return 0;
    }
    return Math.min(
        Math.min(distance(p, r, s), distance(q, r, s)),
        Math.min(distance(r, p, q), distance(s, p, q)));
  }

  private static double turn(Vec2 a, Vec2 b, Vec2 c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }

  private static double distance(Vec2 p, Vec2 a, Vec2 b) {
    double x = b.x() - a.x();
    double y = b.y() - a.y();
    double squared = x * x + y * y;
    double along = (p.x() - a.x()) * x + (p.y() - a.y()) * y;
    double t = squared == 0.0 ? 0 : Math.max(0, Math.min(1, along / squared));
    double dx = a.x() + t * x - p.x();
    double dy = a.y() + t * y - p.y();
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Puts the cheapest of some ways to draw a dimension on the page; empty if all are barred. */
  Optional<Sketch> settle(Cheapest<Sketch> ways) {
    Optional<Sketch> best =
        ways.choose(BARRED, (sketch, cost, most) -> cost + cost(sketch, most - cost))
            .map(Cheapest.Chosen::place);
    best.ifPresent(this::take);
    return best;
  }

  /** Puts a dimension on the page. */
  void take(Sketch sketch) {
    sketch.strokes().forEach(grid::add);
    sketch.rooms().forEach(room -> taken.add(room.grown(DimensionStyle.CLEAR_MM)));
  }
}
