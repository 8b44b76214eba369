package dev.towerscribe.writer.step;

import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Compares the faces of a file with what a part must have, face by face: every side of its outline
 * and cut-outs, every cylinder and cone of its holes, every level.
 */
final class StepWalls {
  /** How far directions may be off, 1: some roundings of unit vectors. */
  private static final double DIRECTION = 1e-12;

  private static final int DECIMALS = 6;

  /**
   * A round face that must be there, in as many pieces as a writer likes. The arc is the lower one,
   * its sweep negative where the metal lies outside of it.
   */
  private record RoundWall(
      String name, Arc arc, double lowMm, double highMm, double highRadiusMm) {}

  private record Level(double zMm, boolean up) {}

  private final FlatSolid solid;

  /** What was found of each, radians. */
  private final Map<RoundWall, Double> rounds = new LinkedHashMap<>();

  private final List<Segment> flats = new ArrayList<>();
  private final List<Level> levels = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();

  private StepWalls(FlatSolid solid) {
    this.solid = solid;
  }

  /** The differences between a file's faces and those of the part. */
  static List<String> faults(List<StepShape.Face> faces, FlatSolid solid) {
    StepWalls walls = new StepWalls(solid);
    walls.expect();
    for (StepShape.Face face : faces) {
      if (face.surface() instanceof StepShape.Round round) {
        walls.findRound(face, round);
      } else {
        walls.findPlane(face, face.surface().at());
      }
    }
    walls.missing();
    return walls.faults;
  }

  private void expect() {
    double top = solid.thicknessMm();
    levels.add(new Level(0, false));
    levels.add(new Level(top, true));
    sides("outline", solid.outline());
    for (int i = 0; i < solid.cutouts().size(); i++) {
      sides("cut-out " + (i + 1), solid.cutouts().get(i).reversed());
    }
    for (int i = 0; i < solid.bores().size(); i++) {
      Bore bore = solid.bores().get(i);
      String name = "hole " + (i + 1);
      double hole = bore.diameterMm() / 2;
      if (bore.recess().isEmpty()) {
        round(name, bore.centre(), hole, 0, hole, top);
        continue;
      }
      Recess recess = bore.recess().get();
      double wide = recess.diameterMm() / 2;
      double narrow = recess instanceof Recess.Countersink ? hole : wide;
      double depth = recess.depthMm(bore.diameterMm());
      if (recess instanceof Recess.Counterbore) {
        levels.add(new Level(recess.fromTop() ? top - depth : depth, recess.fromTop()));
      }
      if (recess.fromTop()) {
        round(name, bore.centre(), hole, 0, hole, top - depth);
        round(name + "'s recess", bore.centre(), narrow, top - depth, wide, top);
      } else {
        round(name + "'s recess", bore.centre(), wide, 0, narrow, depth);
        round(name, bore.centre(), hole, depth, hole, top);
      }
    }
  }

  /** The walls under a boundary that has the metal on its left. */
  private void sides(String name, Contour contour) {
    for (Edge edge : contour.edges()) {
      if (edge instanceof Arc arc) {
        rounds.put(new RoundWall(name, arc, 0, solid.thicknessMm(), arc.radius()), 0.0);
      } else if (edge instanceof Segment segment) {
        flats.add(segment);
      }
    }
  }

  private void round(
      String name, Vec2 centre, double lowRadius, double low, double highRadius, double high) {
    Arc circle = new Arc(centre, lowRadius, 0, -2 * Math.PI);
    rounds.put(new RoundWall(name, circle, low, high, highRadius), 0.0);
  }

  private void findRound(StepShape.Face face, StepShape.Round round) {
    List<StepShape.Use> uses = face.loops().get(0).uses();
    List<StepShape.EdgeCurve> arcs =
        uses.stream()
            .map(StepShape.Use::edge)
            .filter(edge -> edge.curve() instanceof StepShape.Circle)
            .sorted(Comparator.comparingDouble(StepWalls::z))
            .toList();
    if (arcs.size() < 2 || z(arcs.get(0)) == z(arcs.get(arcs.size() - 1)) || uses.size() != 4) {
      faults.add("face #" + face.id() + " is not bounded by two arcs and two lines");
      return;
    }
    StepShape.EdgeCurve low = arcs.get(0);
    StepShape.EdgeCurve high = arcs.get(arcs.size() - 1);
    StepShape.Circle lower = (StepShape.Circle) low.curve();
    StepShape.Circle upper = (StepShape.Circle) high.curve();
    Vec3 middle = low.on(lower, 0.5).minus(lower.at().origin());
    double angle = Math.atan2(middle.y(), middle.x());
    for (RoundWall wall : rounds.keySet()) {
      if (same(lower.at().origin(), wall.arc.centre(), wall.lowMm)
          && same(upper.at().origin(), wall.arc.centre(), wall.highMm)
          && near(lower.radius(), wall.arc.radius())
          && near(upper.radius(), wall.highRadiusMm)
          && round.cone() == (wall.arc.radius() != wall.highRadiusMm)
          && face.sense() == wall.arc.sweep() > 0
          && (wall.arc.isFullCircle() || wall.arc.spans(angle))) {
        rounds.merge(wall, low.turn(lower), Double::sum);
        return;
      }
    }
    faults.add(
        "face #%s is round about %s with radius %s mm, which no side or hole of the part is"
            .formatted(
                face.id(), at(lower.at().origin()), Numbers.plain(lower.radius(), DECIMALS)));
  }

  private static double z(StepShape.EdgeCurve edge) {
    return ((StepShape.Circle) edge.curve()).at().origin().z();
  }

  private void findPlane(StepShape.Face face, StepShape.Placement at) {
    if (Math.abs(at.axis().z()) >= 1 - DIRECTION) {
      boolean up = at.axis().z() > 0 == face.sense();
      if (!take(levels, level -> level.up == up && near(level.zMm, at.origin().z()))) {
        faults.add(
            "face #%s is level at %s mm, where the part has no such face"
                .formatted(face.id(), Numbers.plain(at.origin().z(), DECIMALS)));
      }
      return;
    }
    for (StepShape.Use use : face.loops().get(0).uses()) {
      if (near(use.from().z(), 0) && near(use.to().z(), 0)) {
        if (!take(flats, segment -> meets(segment, use))) {
          faults.add(
              "face #%s stands from %s to %s, where the part has no side"
                  .formatted(face.id(), at(use.from()), at(use.to())));
        }
        return;
      }
    }
    faults.add("face #" + face.id() + " has no edge in the lower face");
  }

  private void missing() {
    rounds.forEach(
        (wall, found) -> {
          double wanted = Math.abs(wall.arc.sweep());
          // Each end may lie off by what two points may before they are two.
          double room = 2 * Tolerances.SAME_POINT_MM / wall.arc.radius();
          if (!(Math.abs(found - wanted) <= room)) {
            faults.add(
                "%s: %s degrees of a round side that goes round by %s"
                    .formatted(
                        wall.name,
                        Numbers.plain(Math.toDegrees(found), DECIMALS),
                        Numbers.plain(Math.toDegrees(wanted), DECIMALS)));
          }
        });
    for (Segment segment : flats) {
      faults.add("no face stands from " + at(segment.start()) + " to " + at(segment.end()));
    }
    for (Level level : levels) {
      faults.add("no face is level at " + Numbers.plain(level.zMm, DECIMALS) + " mm");
    }
  }

  /** Takes the first that fits out of a list; false if none does. */
  private static <T> boolean take(List<T> list, Predicate<T> fits) {
    Optional<T> first = list.stream().filter(fits).findFirst();
    first.ifPresent(list::remove);
    return first.isPresent();
  }

  private static boolean meets(Segment segment, StepShape.Use use) {
    return apart(segment.start(), use.from()) <= Tolerances.SAME_POINT_MM
        && apart(segment.end(), use.to()) <= Tolerances.SAME_POINT_MM;
  }

  private static double apart(Vec2 p, Vec3 q) {
    return Math.hypot(p.x() - q.x(), p.y() - q.y());
  }

  private static boolean same(Vec3 found, Vec2 plan, double zMm) {
    return apart(plan, found) <= Tolerances.COMPUTED_MM && near(found.z(), zMm);
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= Tolerances.COMPUTED_MM;
  }

  private static String at(Vec3 p) {
    return at(new Vec2(p.x(), p.y()));
  }

  private static String at(Vec2 p) {
    return Numbers.plain(p.x(), DECIMALS) + ", " + Numbers.plain(p.y(), DECIMALS);
  }
}
