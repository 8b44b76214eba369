package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * The raw curves on which the boundary of an offset region lies: the first step of {@link Offsets}.
 *
 * <p>Contract: every boundary point of the offset region lies on one of the curves given; not every
 * point of a curve lies on that boundary. A segment's parallel is a segment as long as it; an arc's
 * is an arc about the same centre, left out where its radius would shrink to the room or less. A
 * corner gives an arc where it opens to the side asked for, and where the boundary all but turns
 * back on itself. Distances in mm, positive to the left of travel, which is into the region.
 *
 * <p>Example: the corner at (0,0) between travel along +x and then along +y, moved 2 to the right,
 * gives the parallels y = -2 and x = 2 and between them the arc about (0,0) of radius 2 from (0,-2)
 * to (2,0). Moved 2 to the left it gives y = 2 and x = -2 alone, trimmed at (-2,2).
 */
final class Parallels {
  /** Corners that turn back on themselves to this are cusps, whose turn has no sure sign, rad. */
  private static final double CUSP = 1e-6;

  private final double leftMm;
  private final SnapDistance room;
  private final List<Raw> raw = new ArrayList<>();

  private Parallels(double leftMm, SnapDistance room) {
    this.leftMm = leftMm;
    this.room = room;
  }

  /**
   * Every edge's parallel, and a circle's arc about every corner that opens to the side asked for.
   *
   * @param region region
   * @param leftMm distance to the left of travel, into the region; negative out of it
   * @param room closeness
   * @return raw curves; stretches of them may be too near to other edges
   */
  static List<Edge> of(Boundaries region, double leftMm, SnapDistance room) {
    List<Edge> all = new ArrayList<>();
    for (Contour contour : region.contours()) {
      Parallels parallels = new Parallels(leftMm, room);
      parallels.addAll(contour.edges());
      parallels.trim();
      parallels.raw.forEach(r -> all.add(r.left()));
    }
    return all;
  }

  private void addAll(List<Edge> edges) {
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      Edge parallel = EdgeGeometry.moved(edge, leftMm, room.touchMm());
      if (parallel != null) {
        raw.add(new Raw(parallel, edge));
      }
      if (!EdgeGeometry.isFullCircle(edge)) {
        addCorner(edge, edges.get((i + 1) % edges.size()));
      }
    }
  }

  private void addCorner(Edge before, Edge after) {
    Vec2 in = EdgeGeometry.endDirection(before);
    Vec2 out = EdgeGeometry.startDirection(after);
    double turn = Math.atan2(in.cross(out), in.dot(out));
    Vec2 toward = in.quarterTurn().times(Math.signum(leftMm));
    double from = Math.atan2(toward.y(), toward.x());
    double radius = Math.abs(leftMm);
    boolean opens = turn * leftMm < 0;
    if (opens && Math.abs(turn) * radius > room.touchMm()) {
      raw.add(new Raw(new Arc(before.end(), radius, from, turn), null));
    } else if (!opens && Math.abs(turn) > Math.PI - CUSP) {
      double other = turn - Math.copySign(2 * Math.PI, turn);
      raw.add(new Raw(new Arc(before.end(), radius, from, other), null));
    }
  }

  /**
   * Cuts neighbouring parallels off where they cross. The distance of a point from a segment is a
   * convex function along a line: equal to the offset at the crossing and less at the parallel's
   * end, it is less all the way between. Without this a finely traced mark that shrinks almost to
   * nothing has every parallel cross every other.
   */
  private void trim() {
    boolean again = raw.size() > 1;
    while (again) {
      again = false;
      int i = 0;
      while (i < raw.size() && raw.size() > 1) {
        if (trimmedAway(i, (i + 1) % raw.size())) {
          again = true;
        } else {
          i++;
        }
      }
    }
  }

  /** Trims one pair; true if one of the two had nothing left and was taken out. */
  private boolean trimmedAway(int i, int j) {
    if (!(raw.get(i).source instanceof Segment own)
        || !(raw.get(j).source instanceof Segment next)) {
      return false;
    }
    Segment a = (Segment) raw.get(i).whole;
    Segment b = (Segment) raw.get(j).whole;
    Vec2 x = Crossings.proper(a, b, room.touchMm());
    double less = Math.abs(leftMm) - room.shortMm();
    if (x == null
        || next.nearest(a.end()).distanceTo(a.end()) > less
        || own.nearest(b.start()).distanceTo(b.start()) > less) {
      return false;
    }
    raw.get(i).endBy(x);
    raw.get(j).startFrom(x);
    int before = raw.size();
    for (int k : i > j ? new int[] {i, j} : new int[] {j, i}) {
      if (raw.get(k).isSpent(room.snapMm())) {
        raw.remove(k);
      }
    }
    return raw.size() < before;
  }

  /** A raw curve, and what is left of it while its neighbours cut it. */
  private static final class Raw {
    private final Edge whole;
    private final Edge source;
    private Vec2 start;
    private Vec2 end;
    private boolean isCut;

    /** The source is null for a corner's arc. */
    Raw(Edge whole, Edge source) {
      this.whole = whole;
      this.source = source;
      start = whole.start();
      end = whole.end();
    }

    private double along(Vec2 p) {
      return p.minus(whole.start()).dot(EdgeGeometry.startDirection(whole));
    }

    void endBy(Vec2 x) {
      end = along(x) < along(end) ? x : end;
      isCut = true;
    }

    void startFrom(Vec2 x) {
      start = along(x) > along(start) ? x : start;
      isCut = true;
    }

    boolean isSpent(double leastMm) {
      return along(end) - along(start) <= leastMm;
    }

    Edge left() {
      return isCut ? new Segment(start, end) : whole;
    }
  }
}
