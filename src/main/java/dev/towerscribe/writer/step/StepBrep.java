package dev.towerscribe.writer.step;

import static dev.towerscribe.writer.step.StepEntities.list;
import static dev.towerscribe.writer.step.StepEntities.logical;
import static dev.towerscribe.writer.step.StepEntities.real;

import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Builds the boundary of a flat part: level rings of edges, walls between two rings, and level
 * faces bounded by rings.
 *
 * <p>Every ring is travelled with the metal on its left, so the outline runs counter-clockwise seen
 * from above and holes run clockwise, and one rule serves both. A wall uses its lower ring forward
 * and its upper ring backward; the level face at a ring uses it the other way.
 *
 * <p>Whole circles are written as two halves. One edge that closes on itself, with a seam up the
 * cylinder, is as lawful, but then a face touches itself and reading programs must take the seam
 * out or put their own in; halves have two ends everywhere, and programs whose own cylinders have
 * no seam write the same (common practice, no source). For the same reason each round face has its
 * own axes, begun at the face's first edge: it never reaches across the place where its angle
 * jumps.
 */
final class StepBrep {
  private static final Vec3 UP = new Vec3(0, 0, 1);
  private static final Vec3 DOWN = new Vec3(0, 0, -1);
  private static final Vec3 X = new Vec3(1, 0, 0);

  /** Halves of a turn are not halved again for a rounding. */
  private static final double HALF_TURN = Math.PI + 1e-9;

  private final StepEntities entities;
  private final List<String> faces = new ArrayList<>();

  private StepBrep(StepEntities entities) {
    this.entities = entities;
  }

  /** A piece of a ring; a joint's place is the start of the piece after it. */
  private record Piece(Edge edge, Vec2 from, Vec2 to) {}

  /** A closed row of pieces at one height, vertex i at the start of edge i. */
  private record Ring(List<Piece> pieces, double zMm, List<String> vertices, List<String> edges) {
    Vec3 at(int i) {
      return lifted(pieces.get(i).from, zMm);
    }
  }

  /** Adds the solid and returns the reference to it. */
  static String write(FlatSolid solid, StepEntities entities) {
    StepBrep brep = new StepBrep(entities);
    double top = solid.thicknessMm();
    List<String> below = new ArrayList<>();
    List<String> above = new ArrayList<>();
    List<List<Piece>> through = new ArrayList<>();
    through.add(pieces(solid.outline()));
    solid.cutouts().forEach(c -> through.add(pieces(c.reversed())));
    for (List<Piece> pieces : through) {
      Ring lower = brep.ring(pieces, 0);
      Ring upper = brep.ring(pieces, top);
      brep.wall(lower, upper);
      below.add(brep.loop(lower, false));
      above.add(brep.loop(upper, true));
    }
    for (Bore bore : solid.bores()) {
      brep.bore(bore, top, below, above);
    }
    brep.level(0, DOWN, below);
    brep.level(top, UP, above);
    String shell = entities.add("CLOSED_SHELL", list(brep.faces));
    return entities.add("MANIFOLD_SOLID_BREP", shell);
  }

  /** A hole's walls from below upward, and its rings for the faces it opens in. */
  private void bore(Bore bore, double top, List<String> below, List<String> above) {
    double hole = bore.diameterMm() / 2;
    double wide = bore.widestMm() / 2;
    boolean fromTop = bore.recess().map(Recess::fromTop).orElse(true);
    double depth = bore.recess().map(r -> r.depthMm(bore.diameterMm())).orElse(0.0);
    double step = fromTop ? top - depth : depth;
    Ring lower = ring(circle(bore.centre(), fromTop ? hole : wide), 0);
    Ring upper = ring(circle(bore.centre(), fromTop ? wide : hole), top);
    below.add(loop(lower, false));
    above.add(loop(upper, true));
    if (bore.recess().isEmpty()) {
      wall(lower, upper);
      return;
    }
    Ring narrow = ring(circle(bore.centre(), hole), step);
    Ring low = narrow;
    Ring high = narrow;
    if (bore.recess().get() instanceof Recess.Counterbore) {
      Ring rim = ring(circle(bore.centre(), wide), step);
      low = fromTop ? narrow : rim;
      high = fromTop ? rim : narrow;
      // The rim is the outer edge of the shoulder, so it comes first.
      level(step, fromTop ? UP : DOWN, List.of(loop(rim, !fromTop), loop(narrow, fromTop)));
    }
    wall(lower, low);
    wall(high, upper);
  }

  /** A contour's pieces, none beyond a half turn. */
  private static List<Piece> pieces(Contour contour) {
    if (contour.asCircle().isPresent()) {
      Arc circle = contour.asCircle().get();
      List<Piece> clockwise = circle(circle.centre(), circle.radius());
      return circle.sweep() < 0
          ? clockwise
          : clockwise.stream().map(p -> new Piece(p.edge.reversed(), p.to, p.from)).toList();
    }
    List<Edge> edges = new ArrayList<>();
    for (Edge edge : contour.edges()) {
      if (edge instanceof Arc arc && Math.abs(arc.sweep()) > HALF_TURN) {
        double half = arc.sweep() / 2;
        edges.add(new Arc(arc.centre(), arc.radius(), arc.startAngle(), half));
        edges.add(new Arc(arc.centre(), arc.radius(), arc.startAngle() + half, half));
      } else {
        edges.add(edge);
      }
    }
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge next = edges.get((i + 1) % edges.size());
      pieces.add(new Piece(edges.get(i), edges.get(i).start(), next.start()));
    }
    return pieces;
  }

  /** A hole's circle in two halves, clockwise, cut on the line through its centre along x. */
  private static List<Piece> circle(Vec2 centre, double radiusMm) {
    Vec2 right = centre.plus(new Vec2(radiusMm, 0));
    Vec2 left = centre.minus(new Vec2(radiusMm, 0));
    return List.of(
        new Piece(new Arc(centre, radiusMm, 0, -Math.PI), right, left),
        new Piece(new Arc(centre, radiusMm, Math.PI, -Math.PI), left, right));
  }

  private Ring ring(List<Piece> pieces, double zMm) {
    List<String> vertices =
        pieces.stream()
            .map(piece -> entities.add("VERTEX_POINT", entities.point(lifted(piece.from, zMm))))
            .toList();
    List<String> edges = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      Vec3 from = lifted(piece.from, zMm);
      Vec3 to = lifted(piece.to, zMm);
      String curve =
          piece.edge instanceof Arc arc ? arc(arc, piece, zMm, from, to) : line(from, to);
      edges.add(edge(vertices.get(i), vertices.get((i + 1) % pieces.size()), curve));
    }
    return new Ring(pieces, zMm, vertices, edges);
  }

  /** The faces between two rings of like pieces, and the edges that part them. */
  private void wall(Ring lower, Ring upper) {
    int n = lower.pieces.size();
    List<String> uprights = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      String line = line(lower.at(i), upper.at(i));
      uprights.add(edge(lower.vertices.get(i), upper.vertices.get(i), line));
    }
    for (int i = 0; i < n; i++) {
      String loop =
          loop(
              List.of(
                  oriented(lower.edges.get(i), true),
                  oriented(uprights.get((i + 1) % n), true),
                  oriented(upper.edges.get(i), false),
                  oriented(uprights.get(i), false)));
      Piece piece = lower.pieces.get(i);
      if (piece.edge instanceof Arc arc) {
        double upperRadius = ((Arc) upper.pieces.get(i).edge).radius();
        String surface =
            arc.radius() == upperRadius
                ? entities.add(
                    "CYLINDRICAL_SURFACE", begunWhere(arc, piece, lower.zMm), real(arc.radius()))
                : cone(arc, upperRadius, piece, lower.zMm, upper.zMm);
        face(List.of(loop), surface, arc.sweep() > 0);
      } else {
        Vec2 along = piece.to.minus(piece.from).unit();
        Vec3 out = new Vec3(along.y(), -along.x(), 0);
        face(List.of(loop), plane(lower.at(i), out, lifted(along, 0)), true);
      }
    }
  }

  private String arc(Arc arc, Piece piece, double zMm, Vec3 from, Vec3 to) {
    mustBeApart(from, to);
    return entities.add("CIRCLE", begunWhere(arc, piece, zMm), real(arc.radius()));
  }

  /** Axes in which an arc begins at no angle and travels onward. */
  private String begunWhere(Arc arc, Piece piece, double zMm) {
    Vec3 axis = arc.sweep() > 0 ? UP : DOWN;
    return entities.placement(lifted(arc.centre(), zMm), axis, outward(arc, piece.from));
  }

  /**
   * A cone is placed where it is narrow, its axis pointing to where it is wide: its angle is
   * positive, and its apex lies behind its origin and so off the face.
   */
  private String cone(Arc arc, double upperRadius, Piece piece, double lowMm, double highMm) {
    boolean widerAbove = upperRadius > arc.radius();
    // Seen along the axis, the face begins where its edge does or where it ends.
    boolean fromStart = widerAbove == arc.sweep() > 0;
    return entities.add(
        "CONICAL_SURFACE",
        entities.placement(
            lifted(arc.centre(), widerAbove ? lowMm : highMm),
            widerAbove ? UP : DOWN,
            outward(arc, fromStart ? piece.from : piece.to)),
        real(Math.min(arc.radius(), upperRadius)),
        real(Math.atan2(Math.abs(upperRadius - arc.radius()), highMm - lowMm)));
  }

  private void level(double zMm, Vec3 normal, List<String> loops) {
    face(loops, plane(new Vec3(0, 0, zMm), normal, X), true);
  }

  /** A face; the first loop is its outer one. */
  private void face(List<String> loops, String surface, boolean sense) {
    List<String> bounds = new ArrayList<>();
    for (String loop : loops) {
      String kind = bounds.isEmpty() ? "FACE_OUTER_BOUND" : "FACE_BOUND";
      bounds.add(entities.add(kind, loop, ".T."));
    }
    faces.add(entities.add("ADVANCED_FACE", list(bounds), surface, logical(sense)));
  }

  private String plane(Vec3 origin, Vec3 normal, Vec3 reference) {
    return entities.add("PLANE", entities.placement(origin, normal, reference));
  }

  private String loop(Ring ring, boolean forward) {
    List<String> uses = new ArrayList<>();
    int n = ring.edges.size();
    for (int i = 0; i < n; i++) {
      uses.add(oriented(ring.edges.get(forward ? i : n - 1 - i), forward));
    }
    return loop(uses);
  }

  private String loop(List<String> uses) {
    return entities.add("EDGE_LOOP", list(uses));
  }

  private String oriented(String edge, boolean forward) {
    return entities.add("ORIENTED_EDGE", "*", "*", edge, logical(forward));
  }

  private String edge(String from, String to, String curve) {
    return entities.add("EDGE_CURVE", from, to, curve, ".T.");
  }

  private String line(Vec3 from, Vec3 to) {
    mustBeApart(from, to);
    String vector = entities.add("VECTOR", entities.direction(to.minus(from).unit()), "1.0");
    return entities.add("LINE", entities.point(from), vector);
  }

  private static void mustBeApart(Vec3 from, Vec3 to) {
    if (!(to.minus(from).norm() > Tolerances.SAME_POINT_MM)) {
      throw new IllegalArgumentException("an edge without length at " + from);
    }
  }

  private static Vec3 outward(Arc arc, Vec2 p) {
    return lifted(p.minus(arc.centre()).unit(), 0);
  }

  private static Vec3 lifted(Vec2 p, double zMm) {
    return new Vec3(p.x(), p.y(), zMm);
  }
}
