package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Raw edges cut at every point they share, so that pieces meet only at numbered vertices: the first
 * step of {@link Overlay} and {@link Offsets}.
 *
 * <p>Contract: each raw edge is covered by its pieces, in their order and way of travel; two pieces
 * share points only at vertices of the same number, unless they lie on one another, and then they
 * have the same two vertices. Points nearer than {@link SnapDistance#snapMm} are one vertex; a
 * point within {@link SnapDistance#touchMm} of an edge cuts it. Stretches shorter than the snap
 * vanish, so that a boundary may be off by that much: 2e-9 mm in the usual room.
 *
 * <p>Example: the segments (0,0)-(4,0) and (2,-1)-(2,3) cross at (2,0). Vertices are numbered as
 * they are met, 0 to 3 for the four ends and 4 for the crossing; the pieces are 0-4, 4-1, 2-4 and
 * 4-3. A whole circle that nothing cuts stays one piece with no vertex.
 */
final class Arrangement {
  private final VertexNumbers vertices;
  private final List<EdgePiece> pieces = new ArrayList<>();

  private record Cut(double t, int vertex) {}

  /**
   * Cuts edges at their shared points. Edges of one boundary cut each other too: where a boundary
   * touches itself, a second one that passes there is cut, and pieces on one another must match.
   *
   * @param raw edges
   * @param room the closeness that counts as touching
   */
  Arrangement(List<Edge> raw, SnapDistance room) {
    vertices = new VertexNumbers(room.snapMm());
    int n = raw.size();
    List<List<Cut>> cuts = new ArrayList<>(n);
    Box[] boxes = new Box[n];
    for (int i = 0; i < n; i++) {
      Edge edge = raw.get(i);
      boxes[i] = edge.bounds().grown(room.touchMm());
      List<Cut> ends = new ArrayList<>(4);
      if (!EdgeGeometry.isFullCircle(edge)) {
        ends.add(new Cut(0.0, vertices.number(edge.start())));
        ends.add(new Cut(1.0, vertices.number(edge.end())));
      }
      cuts.add(ends);
    }
    // From left to right, so that each edge meets only those that begin before it ends.
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> boxes[i].minX()))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int k = 0; k < n; k++) {
      int i = order[k];
      for (int l = k + 1; l < n && boxes[order[l]].minX() <= boxes[i].maxX(); l++) {
        int j = order[l];
        if (boxes[i].meets(boxes[j])) {
          for (Vec2 p : Crossings.of(raw.get(i), raw.get(j), room.touchMm())) {
            int vertex = vertices.number(p);
            cuts.get(i).add(new Cut(EdgeGeometry.parameter(raw.get(i), p), vertex));
            cuts.get(j).add(new Cut(EdgeGeometry.parameter(raw.get(j), p), vertex));
          }
        }
      }
    }
    for (int i = 0; i < n; i++) {
      cut(raw.get(i), i, cuts.get(i), room);
    }
  }

  List<EdgePiece> pieces() {
    return pieces;
  }

  int vertexCount() {
    return vertices.count();
  }

  private void cut(Edge edge, int source, List<Cut> cuts, SnapDistance room) {
    if (cuts.isEmpty()) {
      pieces.add(new EdgePiece(edge, -1, -1, source));
      return;
    }
    cuts.sort(Comparator.comparingDouble(Cut::t).thenComparingInt(Cut::vertex));
    if (edge instanceof Arc arc && arc.isFullCircle()) {
      // A circle's own seam is no vertex: the last piece runs over it to the first cut.
      Cut first = cuts.get(0);
      cuts.add(new Cut(first.t() + 1.0, first.vertex()));
    }
    Cut last = cuts.get(0);
    for (int k = 1; k < cuts.size(); k++) {
      Cut next = cuts.get(k);
      boolean longWay = (next.t() - last.t()) * edge.length() > 4 * room.snapMm();
      if (next.vertex() != last.vertex() || longWay) {
        pieces.add(new EdgePiece(stretch(edge, last, next), last.vertex(), next.vertex(), source));
        last = next;
      }
    }
  }

  private Edge stretch(Edge edge, Cut from, Cut to) {
    Vec2 start = vertices.at(from.vertex());
    Vec2 end = vertices.at(to.vertex());
    if (!(edge instanceof Arc arc)) {
      return new Segment(start, end);
    }
    if (from.vertex() == to.vertex()) {
      double whole = Math.copySign(2 * Math.PI, arc.sweep());
      return new Arc(arc.centre(), arc.radius(), direction(arc, start), whole);
    }
    double startAngle = arc.startAngle() + from.t() * arc.sweep();
    double sweep = (to.t() - from.t()) * arc.sweep();
    // Vertices may lie a snap beside the cut: turn to them, by less than a snap.
    double lead = Math.IEEEremainder(direction(arc, start) - startAngle, 2 * Math.PI);
    double lag = Math.IEEEremainder(direction(arc, end) - startAngle - sweep, 2 * Math.PI);
    double turned = sweep + lag - lead;
    boolean sane = turned * sweep > 0 && Math.abs(turned) <= 2 * Math.PI;
    return sane
        ? new Arc(arc.centre(), arc.radius(), startAngle + lead, turned)
        : new Arc(arc.centre(), arc.radius(), startAngle, sweep);
  }

  private static double direction(Arc arc, Vec2 p) {
    return Math.atan2(p.y() - arc.centre().y(), p.x() - arc.centre().x());
  }

  /**
   * Of pieces that lie on one another, keeps one where all run the same way, and none where they
   * run against each other: between them there is nothing.
   */
  static List<EdgePiece> withoutDoubles(List<EdgePiece> pieces, SnapDistance room) {
    Map<Long, List<Integer>> byEnds = new HashMap<>();
    int[] forward = new int[pieces.size()];
    boolean[] gone = new boolean[pieces.size()];
    for (int i = 0; i < pieces.size(); i++) {
      EdgePiece p = pieces.get(i);
      List<Integer> alike = byEnds.computeIfAbsent(ends(p), e -> new ArrayList<>(1));
      int found =
          alike.stream().filter(j -> onOneAnother(pieces.get(j), p, room)).findFirst().orElse(-1);
      if (found < 0) {
        alike.add(i);
        forward[i] = 1;
      } else {
        gone[i] = true;
        forward[found] += sameWay(pieces.get(found), p) ? 1 : -1;
      }
    }
    List<EdgePiece> kept = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (!gone[i] && forward[i] != 0) {
        kept.add(forward[i] > 0 ? pieces.get(i) : pieces.get(i).reversed());
      }
    }
    return kept;
  }

  /** The two vertices of a piece, whichever way it runs, as one number. */
  private static long ends(EdgePiece p) {
    return (long) Math.min(p.from(), p.to()) << Integer.SIZE | Math.max(p.from(), p.to());
  }

  /** Whether two pieces with the same ends cover each other. */
  static boolean onOneAnother(EdgePiece a, EdgePiece b, SnapDistance room) {
    if (ends(a) != ends(b)) {
      return false;
    }
    // Quarter points settle it for circles, whose own middles depend on where they begin.
    return b.edge().nearest(a.middle()).distanceTo(a.middle()) <= 4 * room.touchMm()
        && a.edge().nearest(b.middle()).distanceTo(b.middle()) <= 4 * room.touchMm()
        && Math.abs(a.edge().length() - b.edge().length()) <= 1e-3 * a.edge().length();
  }

  /** Whether two pieces on one another run the same way. */
  static boolean sameWay(EdgePiece a, EdgePiece b) {
    if (a.isClosed()) {
      return EdgeGeometry.curvature(a.edge()) * EdgeGeometry.curvature(b.edge()) > 0;
    }
    return a.from() == b.from();
  }
}
