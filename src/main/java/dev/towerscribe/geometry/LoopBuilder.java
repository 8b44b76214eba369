package dev.towerscribe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Chains kept pieces into closed boundaries with the region on their left: the last step of {@link
 * Overlay} and {@link Offsets}.
 *
 * <p>Contract: every piece becomes part of exactly one boundary or is stray. Where several pieces
 * leave a vertex the one furthest to the left of the way back is taken, so that boundaries which
 * meet at a corner come out apart and none crosses itself. Stray pieces of more than {@link
 * #STRAY_MM} together, or a hole that lies in nothing, say that a true boundary was lost; then
 * there is no answer. Slivers thinner than the room, left by curves that touch, are dropped.
 *
 * <p>Example: pieces 0-1, 1-2, 2-0 and 2-3 make one triangle; 2-3 leads nowhere and is stray, and
 * if it is longer than a thousandth of a mm there is no answer.
 */
final class LoopBuilder {
  /**
   * Pieces left over that together are no longer than this are chance products of touching curves,
   * mm; more says that something real was lost. Curves of 50 mm radius that touch stay within 1e-9
   * mm of each other for 3e-4 mm.
   */
  private static final double STRAY_MM = 1e-3;

  /** How far ahead two pieces that leave in one direction are compared, mm. */
  private static final double AHEAD_MM = 1e-4;

  private final List<EdgePiece> pieces;
  private final SnapDistance room;
  private final List<List<Integer>> leaving;
  private final boolean[] used;
  private double strayMm;

  private LoopBuilder(List<EdgePiece> pieces, int vertexCount, SnapDistance room) {
    this.pieces = pieces;
    this.room = room;
    this.used = new boolean[pieces.size()];
    this.leaving = new ArrayList<>(vertexCount);
    for (int v = 0; v < vertexCount; v++) {
      leaving.add(new ArrayList<>(1));
    }
  }

  /**
   * Chains pieces.
   *
   * @param pieces pieces without doubles
   * @param vertexCount how many vertices there are
   * @param room closeness
   * @return the boundaries, or empty when the pieces do not close
   */
  static Optional<List<Contour>> close(List<EdgePiece> pieces, int vertexCount, SnapDistance room) {
    return new LoopBuilder(pieces, vertexCount, room).chain(vertexCount);
  }

  private Optional<List<Contour>> chain(int vertexCount) {
    List<Contour> contours = new ArrayList<>();
    dropDeadEnds(vertexCount);
    List<Integer> order =
        IntStream.range(0, pieces.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -pieces.get(i).edge().length()))
            .toList();
    for (int i : order) {
      EdgePiece piece = pieces.get(i);
      if (used[i]) {
        continue;
      }
      if (piece.from() < 0) {
        used[i] = true;
        contours.add(Contour.of(List.of(piece.edge())));
      } else {
        add(trace(i), contours);
      }
    }
    return strayMm <= STRAY_MM && nested(contours) ? Optional.of(contours) : Optional.empty();
  }

  /** A piece that nothing leads to or from cannot be part of a boundary. */
  private void dropDeadEnds(int vertexCount) {
    int[] in = new int[vertexCount];
    int[] out = new int[vertexCount];
    for (EdgePiece p : pieces) {
      if (p.from() >= 0) {
        out[p.from()]++;
        in[p.to()]++;
      }
    }
    boolean again = true;
    while (again) {
      again = false;
      for (int i = 0; i < pieces.size(); i++) {
        EdgePiece p = pieces.get(i);
        if (!used[i] && p.from() >= 0 && (in[p.from()] == 0 || out[p.to()] == 0)) {
          used[i] = true;
          strayMm += p.edge().length();
          out[p.from()]--;
          in[p.to()]--;
          again = true;
        }
      }
    }
    for (int i = 0; i < pieces.size(); i++) {
      if (!used[i] && pieces.get(i).from() >= 0) {
        leaving.get(pieces.get(i).from()).add(i);
      }
    }
  }

  private List<Edge> trace(int first) {
    List<Edge> loop = new ArrayList<>();
    int at = first;
    while (!used[at]) {
      used[at] = true;
      loop.add(pieces.get(at).edge());
      at = next(at, first);
      if (at < 0) {
        break;
      }
    }
    if (at != first) {
      strayMm += loop.stream().mapToDouble(Edge::length).sum();
      loop.clear();
    }
    return loop;
  }

  /** The piece that bounds the same bit of region: of those that leave, the one furthest left. */
  private int next(int at, int first) {
    EdgePiece piece = pieces.get(at);
    Vec2 end = EdgeGeometry.endDirection(piece.edge());
    double back =
        Math.atan2(-end.y(), -end.x()) - EdgeGeometry.curvature(piece.edge()) * AHEAD_MM / 2;
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i : leaving.get(piece.to())) {
      if (used[i] && i != first) {
        continue;
      }
      Edge edge = pieces.get(i).edge();
      Vec2 start = EdgeGeometry.startDirection(edge);
      double angle = Math.atan2(start.y(), start.x()) + EdgeGeometry.curvature(edge) * AHEAD_MM / 2;
      double clockwise = (back - angle) % (2 * Math.PI);
      if (clockwise <= 0) {
        clockwise += 2 * Math.PI;
      }
      if (clockwise < least) {
        least = clockwise;
        best = i;
      }
    }
    return best;
  }

  private void add(List<Edge> loop, List<Contour> contours) {
    if (loop.isEmpty()) {
      return;
    }
    Contour contour = Contour.of(MergedEdges.edges(loop, room.touchMm() / 10));
    // Two curves that touch may leave a sliver thinner than rounding between them.
    if (Math.abs(contour.signedArea()) > room.touchMm() * contour.length()) {
      contours.add(contour);
    }
  }

  /** Whether every hole lies in something. */
  private static boolean nested(List<Contour> contours) {
    return contours.stream()
        .filter(hole -> hole.signedArea() < 0)
        .allMatch(
            hole -> {
              Vec2 p = hole.edges().get(0).at(0.5);
              return contours.stream()
                  .anyMatch(c -> c.signedArea() > -hole.signedArea() && c.encloses(p));
            });
  }
}
