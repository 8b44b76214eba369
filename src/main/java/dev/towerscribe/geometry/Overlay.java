package dev.towerscribe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Intersection, union and difference: both boundaries cut at each other, the right pieces kept. */
final class Overlay {
  /** Which operation; what is kept of each boundary follows from it. */
  enum Kind {
    INTERSECTION,
    UNION,
    MINUS
  }

  private Overlay() {}

  static Region intersection(Region a, Region b) {
    if (a.isEmpty() || b.isEmpty() || !a.bounds().meets(b.bounds())) {
      return Region.EMPTY;
    }
    return of(a, b, Kind.INTERSECTION);
  }

  static Region union(Region a, Region b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isEmpty() ? b : a;
    }
    return of(a, b, Kind.UNION);
  }

  static Region minus(Region a, Region b) {
    if (a.isEmpty() || b.isEmpty() || !a.bounds().meets(b.bounds())) {
      return a;
    }
    return of(a, b, Kind.MINUS);
  }

  private static Region of(Region a, Region b, Kind kind) {
    for (Room room : Room.TRIES) {
      Optional<Region> result = exact(a, b, kind, room);
      if (result.isPresent()) {
        return result.get();
      }
    }
    return Flat.overlay(a, b, kind);
  }

  /** One try; empty when the pieces do not close or the result cannot be true. */
  static Optional<Region> exact(Region a, Region b, Kind kind, Room room) {
    List<Edge> raw = new ArrayList<>();
    a.contours().forEach(c -> raw.addAll(c.edges()));
    int firstOfB = raw.size();
    b.contours().forEach(c -> raw.addAll(c.edges()));
    Arrangement cut = new Arrangement(raw, room);
    List<Piece> ofA = cut.pieces().stream().filter(p -> p.source() < firstOfB).toList();
    List<Piece> ofB = cut.pieces().stream().filter(p -> p.source() >= firstOfB).toList();
    Shared shared = new Shared(ofB, cut.vertexCount());
    boolean[] onA = new boolean[ofB.size()];
    List<Piece> kept = new ArrayList<>();
    for (Piece piece : ofA) {
      int twin = shared.find(piece, room);
      if (twin >= 0) {
        onA[twin] = true;
        // One line bounds both: from the same side, or from both sides of it.
        if (Arrangement.sameWay(piece, ofB.get(twin)) == (kind != Kind.MINUS)) {
          kept.add(piece);
        }
      } else if (b.contains(piece.middle()) == (kind == Kind.INTERSECTION)) {
        kept.add(piece);
      }
    }
    for (int i = 0; i < ofB.size(); i++) {
      Piece piece = ofB.get(i);
      if (!onA[i] && a.contains(piece.middle()) == (kind != Kind.UNION)) {
        kept.add(kind == Kind.MINUS ? piece.reversed() : piece);
      }
    }
    List<Piece> single = Arrangement.withoutDoubles(kept, room);
    return Loops.region(single, cut.vertexCount(), room).filter(r -> possible(r, a, b, kind));
  }

  /** Bounds that any true result keeps, with room for rounding along the boundaries. */
  private static boolean possible(Region result, Region a, Region b, Kind kind) {
    double inA = a.area();
    double inB = b.area();
    double room = 1e-6 * (a.length() + b.length());
    double area = result.area();
    double least;
    double most;
    switch (kind) {
      case INTERSECTION -> {
        least = 0;
        most = Math.min(inA, inB);
      }
      case UNION -> {
        least = Math.max(inA, inB);
        most = inA + inB;
      }
      default -> {
        least = inA - inB;
        most = inA;
      }
    }
    return area >= least - room && area <= most + room;
  }

  static List<Region> parts(Region region) {
    List<Contour> outers = region.contours().stream().filter(c -> c.signedArea() > 0).toList();
    List<List<Contour>> groups = new ArrayList<>();
    for (Contour outer : outers) {
      groups.add(new ArrayList<>(List.of(outer)));
    }
    for (Contour hole : region.contours()) {
      if (hole.signedArea() > 0) {
        continue;
      }
      int around = -1;
      for (int i = 0; i < outers.size(); i++) {
        boolean smaller =
            around < 0 || outers.get(i).signedArea() < outers.get(around).signedArea();
        boolean larger = outers.get(i).signedArea() > -hole.signedArea();
        if (smaller && larger && holds(outers.get(i), hole)) {
          around = i;
        }
      }
      if (around >= 0) {
        groups.get(around).add(hole);
      }
    }
    return groups.stream()
        .map(Region::new)
        .sorted(Comparator.comparingDouble(Region::area).reversed())
        .toList();
  }

  /** Boundaries may touch, so the point of the hole furthest from the outer boundary decides. */
  private static boolean holds(Contour outer, Contour hole) {
    Vec2 best = hole.edges().get(0).at(0.5);
    for (Edge edge : hole.edges()) {
      Vec2 p = edge.at(0.5);
      if (outer.distanceTo(p) > outer.distanceTo(best)) {
        best = p;
      }
    }
    return outer.encloses(best);
  }

  /** Finds, among the pieces of one boundary, the one that a piece of the other lies on. */
  private static final class Shared {
    private final List<Piece> pieces;
    private final List<List<Integer>> touching;

    Shared(List<Piece> pieces, int vertexCount) {
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
    private static int key(Piece p) {
      return 1 + Math.min(p.from(), p.to());
    }

    int find(Piece piece, Room room) {
      for (int i : touching.get(key(piece))) {
        if (Arrangement.onOneAnother(pieces.get(i), piece, room)) {
          return i;
        }
      }
      return -1;
    }
  }
}
