package dev.towerscribe.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Erosion and dilation by a disc, exact to rounding. Every boundary point of the result lies at
 * exactly the disc's radius from the old boundary, so it lies on a parallel of an edge or on a
 * circle about a corner. Those raw curves are cut where they meet, and the pieces that keep the
 * distance are the result.
 *
 * <p>Contract: an inset is every point at least the distance inside the region, a growth every
 * point at most the distance from it; both bounded as {@link Boundaries} says. An inset may be
 * empty or in several parts; holes of a grown region may close. Distances are in mm, not negative;
 * 0 gives the region back.
 *
 * <p>Tolerance: as for {@link Overlay}; a piece counts as keeping the distance if its middle falls
 * short by no more than {@link SnapDistance#shortMm}, 1e-10 mm as a rule.
 *
 * <p>Example: a square of side 10 grown by 2 has four sides of 10 and four quarter circles of
 * radius 2, area 100 + 80 + 4 pi. The same square inset by 2 is a square of side 6: the parallels
 * run on to (±5, ±3) and so on, and what of them is nearer than 2 to a neighbouring side is cut
 * away.
 */
final class Offsets {
  private Offsets() {}

  /**
   * Erosion.
   *
   * @throws IllegalArgumentException for a negative or endless distance
   */
  static List<Contour> inset(Boundaries region, double mm) {
    check(mm);
    return mm == 0.0 || region.isEmpty() ? region.contours() : moved(region, mm);
  }

  /**
   * Dilation.
   *
   * @throws IllegalArgumentException for a negative or endless distance
   */
  static List<Contour> grown(Boundaries region, double mm) {
    check(mm);
    return mm == 0.0 || region.isEmpty() ? region.contours() : moved(region, -mm);
  }

  private static void check(double mm) {
    if (!(mm >= 0) || !Double.isFinite(mm)) {
      throw new IllegalArgumentException("an offset must not be negative: " + mm);
    }
  }

  private static List<Contour> moved(Boundaries region, double leftMm) {
    return SnapDistance.TRIES.stream()
        .flatMap(room -> exact(region, leftMm, room).stream())
        .findFirst()
        .orElseGet(() -> FlattenedOverlay.moved(region, leftMm));
  }

  /** One try; empty when the pieces do not close or the result cannot be true. */
  static Optional<List<Contour>> exact(Boundaries region, double leftMm, SnapDistance room) {
    double least = Math.abs(leftMm) - room.shortMm();
    Clearance old = new Clearance(region);
    List<Edge> raw = new ArrayList<>();
    for (Edge edge : Parallels.of(region, leftMm, room)) {
      // No point of an edge is further out than its middle and half its length.
      if (!old.nearerThan(edge.at(0.5), least - edge.length() / 2)) {
        raw.add(edge);
      }
    }
    Arrangement cut = new Arrangement(raw, room);
    List<EdgePiece> kept = new ArrayList<>();
    for (EdgePiece piece : cut.pieces()) {
      Vec2 middle = piece.middle();
      // The distance alone would do, but for boundaries that touch themselves: there a parallel may
      // come out on the other side.
      if (!old.nearerThan(middle, least) && region.contains(middle) == leftMm > 0) {
        kept.add(piece);
      }
    }
    List<EdgePiece> single = Arrangement.withoutDoubles(kept, room);
    return LoopBuilder.close(single, cut.vertexCount(), room)
        .filter(
            r ->
                leftMm > 0
                    ? Boundaries.area(r) <= region.area()
                    : Boundaries.area(r) >= region.area());
  }

  /** Asks many points for their distance from one boundary. */
  private static final class Clearance {
    private final Edge[] edges;
    private final Box[] boxes;
    private int last;

    Clearance(Boundaries region) {
      edges = region.contours().stream().flatMap(c -> c.edges().stream()).toArray(Edge[]::new);
      boxes = Arrays.stream(edges).map(Edge::bounds).toArray(Box[]::new);
    }

    /** Whether some boundary point is nearer than a distance; the last culprit is asked first. */
    boolean nearerThan(Vec2 p, double mm) {
      if (mm <= 0) {
        return false;
      }
      if (nearer(last, p, mm)) {
        return true;
      }
      for (int i = 0; i < edges.length; i++) {
        if (nearer(i, p, mm)) {
          last = i;
          return true;
        }
      }
      return false;
    }

    private boolean nearer(int i, Vec2 p, double mm) {
      Box box = boxes[i];
      return p.x() > box.minX() - mm
          && p.x() < box.maxX() + mm
          && p.y() > box.minY() - mm
          && p.y() < box.maxY() + mm
          && edges[i].nearest(p).distanceTo(p) < mm;
    }
  }
}
