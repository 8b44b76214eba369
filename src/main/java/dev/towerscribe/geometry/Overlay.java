package dev.towerscribe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Intersection, union and difference of regions bounded by lines and arcs, exact to rounding: both
 * boundaries are cut at each other, the right pieces kept and chained.
 *
 * <p>Contract: operands are bounded as {@link Boundaries} says; so is the result. What is kept of a
 * boundary depends on where the middle of each piece lies: for an intersection what lies inside the
 * other region, for a union what lies outside it, for a difference what of the first lies outside
 * the second and, reversed, what of the second lies inside the first. Where the two boundaries lie
 * on one another a piece is kept once, or not at all if the regions lie on the two sides of it and
 * the operation is a union.
 *
 * <p>Tolerance: points within {@link SnapDistance#touchMm}, 1e-9 mm as a rule, count as touching.
 * Where chance makes pieces that do not close, the rooms of {@link SnapDistance#TRIES} are tried in
 * turn; if none does, {@link FlattenedOverlay} answers, right to a tenth of the flattening
 * tolerance. No result is given whose area no true result could have.
 *
 * <p>Example: the squares from (0,0) to (2,2) and from (1,1) to (3,3) cut each other at (1,2) and
 * (2,1). Intersection: (1,1)-(2,1)-(2,2)-(1,2), area 1; union: eight corners, area 7; the first
 * minus the second: six corners, area 3.
 */
final class Overlay {
  private Overlay() {}

  static List<Contour> intersection(Boundaries a, Boundaries b) {
    if (a.isEmpty() || b.isEmpty() || !a.bounds().meets(b.bounds())) {
      return List.of();
    }
    return of(a, b, OverlayKind.INTERSECTION);
  }

  static List<Contour> union(Boundaries a, Boundaries b) {
    if (a.isEmpty() || b.isEmpty()) {
      return (a.isEmpty() ? b : a).contours();
    }
    return of(a, b, OverlayKind.UNION);
  }

  static List<Contour> minus(Boundaries a, Boundaries b) {
    if (a.isEmpty() || b.isEmpty() || !a.bounds().meets(b.bounds())) {
      return a.contours();
    }
    return of(a, b, OverlayKind.MINUS);
  }

  private static List<Contour> of(Boundaries a, Boundaries b, OverlayKind kind) {
    return SnapDistance.TRIES.stream()
        .flatMap(room -> exact(a, b, kind, room).stream())
        .findFirst()
        .orElseGet(() -> FlattenedOverlay.overlay(a, b, kind));
  }

  /** One try; empty when the pieces do not close or the result cannot be true. */
  static Optional<List<Contour>> exact(
      Boundaries a, Boundaries b, OverlayKind kind, SnapDistance room) {
    List<Edge> raw = new ArrayList<>();
    a.contours().forEach(c -> raw.addAll(c.edges()));
    int firstOfB = raw.size();
    b.contours().forEach(c -> raw.addAll(c.edges()));
    Arrangement cut = new Arrangement(raw, room);
    List<EdgePiece> ofA = cut.pieces().stream().filter(p -> p.source() < firstOfB).toList();
    List<EdgePiece> ofB = cut.pieces().stream().filter(p -> p.source() >= firstOfB).toList();
    Shared shared = new Shared(ofB, cut.vertexCount());
    boolean[] onA = new boolean[ofB.size()];
    List<EdgePiece> kept = new ArrayList<>();
    for (EdgePiece piece : ofA) {
      int twin = shared.find(piece, room);
      if (twin >= 0) {
        onA[twin] = true;
        // One line bounds both: from the same side, or from both sides of it.
        if (Arrangement.sameWay(piece, ofB.get(twin)) == (kind != OverlayKind.MINUS)) {
          kept.add(piece);
        }
      } else if (b.contains(piece.middle()) == (kind == OverlayKind.INTERSECTION)) {
        kept.add(piece);
      }
    }
    for (int i = 0; i < ofB.size(); i++) {
      EdgePiece piece = ofB.get(i);
      if (!onA[i] && a.contains(piece.middle()) == (kind != OverlayKind.UNION)) {
        kept.add(kind == OverlayKind.MINUS ? piece.reversed() : piece);
      }
    }
    List<EdgePiece> single = Arrangement.withoutDoubles(kept, room);
    return LoopBuilder.close(single, cut.vertexCount(), room).filter(r -> possible(r, a, b, kind));
  }

  /** Bounds that any true result keeps, with room for rounding along the boundaries. */
  private static boolean possible(
      List<Contour> result, Boundaries a, Boundaries b, OverlayKind kind) {
    double inA = a.area();
    double inB = b.area();
    double room = 1e-6 * (a.length() + b.length());
    double area = Boundaries.area(result);
    return switch (kind) {
      case INTERSECTION -> area >= -room && area <= Math.min(inA, inB) + room;
      case UNION -> area >= Math.max(inA, inB) - room && area <= inA + inB + room;
      case MINUS -> area >= inA - inB - room && area <= inA + room;
    };
  }

  /** Finds, among the pieces of one boundary, the one that a piece of the other lies on. */
  private static final class Shared {
    private final List<EdgePiece> pieces;
    private final List<List<Integer>> touching;

    Shared(List<EdgePiece> pieces, int vertexCount) {
      this.pieces = pieces;
      touching = new ArrayList<>(vertexCount + 1);
      for (int v = 0; v <= vertexCount; v++) {
        touching.add(new ArrayList<>(2));
      }
      for (int i = 0; i < pieces.size(); i++) {
        touching.get(key(pieces.get(i))).add(i);
      }
    }

    /** Uncut circles share the first list. */
    private static int key(EdgePiece p) {
      return 1 + Math.min(p.from(), p.to());
    }

    int find(EdgePiece piece, SnapDistance room) {
      return touching.get(key(piece)).stream()
          .filter(i -> Arrangement.onOneAnother(pieces.get(i), piece, room))
          .findFirst()
          .orElse(-1);
    }
  }
}
