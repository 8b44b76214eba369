package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A closed boundary of straight segments and circular arcs, end to start. Arcs stay arcs: nothing
 * here is ever flattened unless asked. Travelled counter-clockwise (in its own x, y axes) it bounds
 * what is inside it; clockwise, what is outside.
 */
public final class Contour {
  private final List<Edge> edges;
  private final double signedArea;
  private final Box bounds;
  private final Vec2[] starts;
  private final Box[] boxes;

  private Contour(List<Edge> edges) {
    this.edges = List.copyOf(edges);
    if (edges.isEmpty()) {
      throw new IllegalArgumentException("a contour has at least one edge");
    }
    signedArea = signedAreaOf(this.edges);
    boxes = this.edges.stream().map(Edge::bounds).toArray(Box[]::new);
    bounds = Arrays.stream(boxes).reduce(Box::union).orElseThrow();
    starts = this.edges.stream().map(Edge::start).toArray(Vec2[]::new);
  }

  /**
   * A contour from edges that meet end to start.
   *
   * @param edges at least one; each begins where the one before ends, the first where the last ends
   * @return the contour
   * @throws IllegalArgumentException if there are none or two that should meet do not
   */
  public static Contour of(List<? extends Edge> edges) {
    for (int i = 0; i < edges.size(); i++) {
      Vec2 end = edges.get(i).end();
      Vec2 start = edges.get((i + 1) % edges.size()).start();
      if (end.distanceTo(start) > Tolerances.SAME_POINT_MM) {
        throw new IllegalArgumentException("edges do not meet: " + end + ", " + start);
      }
    }
    return new Contour(new ArrayList<>(edges));
  }

  /**
   * A whole circle, counter-clockwise, kept as one full arc.
   *
   * @param centre centre
   * @param radiusMm radius, positive
   * @return the circle
   */
  public static Contour circle(Vec2 centre, double radiusMm) {
    return new Contour(List.of(new Arc(centre, radiusMm, 0.0, 2 * Math.PI)));
  }

  /**
   * A box's edge.
   *
   * @param b the box
   * @return its four sides, counterclockwise from the lower left corner
   */
  public static Contour rectangle(Box b) {
    return polygon(b.corners());
  }

  /**
   * A polygon, turned counter-clockwise if it was given clockwise.
   *
   * @param points at least three, no two neighbours alike, the first not repeated at the end
   * @return the polygon
   * @throws IllegalArgumentException for fewer than three points
   */
  public static Contour polygon(List<Vec2> points) {
    if (points.size() < 3) {
      throw new IllegalArgumentException("a polygon has at least three points");
    }
    List<Edge> edges = new ArrayList<>(points.size());
    for (int i = 0; i < points.size(); i++) {
      edges.add(new Segment(points.get(i), points.get((i + 1) % points.size())));
    }
    Contour contour = new Contour(edges);
    return contour.signedArea() < 0 ? contour.reversed() : contour;
  }

  /**
   * The region swept by a disc whose centre runs along a straight line.
   *
   * @param from first centre
   * @param to last centre; may equal the first
   * @param radiusMm disc radius, positive
   * @return a counter-clockwise boundary: two lines and two half circles, or one circle
   */
  public static Contour sweptDisc(Vec2 from, Vec2 to, double radiusMm) {
    Vec2 along = to.minus(from);
    if (along.norm() == 0.0) {
      return circle(from, radiusMm);
    }
    double direction = Math.atan2(along.y(), along.x());
    Arc far = new Arc(to, radiusMm, direction - Math.PI / 2, Math.PI);
    Arc near = new Arc(from, radiusMm, direction + Math.PI / 2, Math.PI);
    return new Contour(
        List.of(
            far, new Segment(far.end(), near.start()), near, new Segment(near.end(), far.start())));
  }

  /**
   * The boundary of the convex hull of equal discs.
   *
   * @param centres disc centres in any order, at least one
   * @param radiusMm disc radius, positive
   * @return a counter-clockwise boundary: arcs about the outermost centres, lines between them
   */
  public static Contour hullOfDiscs(List<Vec2> centres, double radiusMm) {
    List<Vec2> hull = Hull.of(centres);
    int n = hull.size();
    if (n <= 2) {
      return sweptDisc(hull.get(0), hull.get(n - 1), radiusMm);
    }
    List<Arc> arcs = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec2 in = hull.get(i).minus(hull.get((i + n - 1) % n));
      Vec2 out = hull.get((i + 1) % n).minus(hull.get(i));
      double start = Math.atan2(in.y(), in.x()) - Math.PI / 2;
      arcs.add(new Arc(hull.get(i), radiusMm, start, Math.atan2(in.cross(out), in.dot(out))));
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      edges.add(arcs.get(i));
      edges.add(new Segment(arcs.get(i).end(), arcs.get((i + 1) % n).start()));
    }
    return new Contour(edges);
  }

  /**
   * Its pieces in order of travel.
   *
   * @return edges, at least one
   */
  public List<Edge> edges() {
    return edges;
  }

  /**
   * The circle it is, if it is one whole circle.
   *
   * @return the full arc, or empty
   */
  public Optional<Arc> asCircle() {
    return edges.size() == 1 && edges.get(0) instanceof Arc arc && arc.isFullCircle()
        ? Optional.of(arc)
        : Optional.empty();
  }

  /**
   * Where its edges meet; empty for a whole circle.
   *
   * @return start point of each edge
   */
  public List<Vec2> corners() {
    return asCircle().isPresent() ? List.of() : edges.stream().map(Edge::start).toList();
  }

  /**
   * Area, exact for arcs.
   *
   * @return mm2; positive when counter-clockwise
   */
  public double signedArea() {
    return signedArea;
  }

  private static double signedAreaOf(List<Edge> edges) {
    double twice = 0.0;
    for (Edge edge : edges) {
      if (edge instanceof Arc arc) {
        double a = arc.startAngle();
        double b = a + arc.sweep();
        twice +=
            arc.radius() * arc.radius() * arc.sweep()
                + arc.radius()
                    * (arc.centre().x() * (Math.sin(b) - Math.sin(a))
                        - arc.centre().y() * (Math.cos(b) - Math.cos(a)));
      } else {
        twice += edge.start().cross(edge.end());
      }
    }
    return twice / 2;
  }

  /**
   * Length of the whole boundary.
   *
   * @return mm
   */
  public double length() {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  /**
   * The smallest upright box around it.
   *
   * @return box
   */
  public Box bounds() {
    return bounds;
  }

  /**
   * The same boundary travelled the other way.
   *
   * @return reversed contour
   */
  public Contour reversed() {
    List<Edge> back = new ArrayList<>(edges.size());
    for (int i = edges.size() - 1; i >= 0; i--) {
      back.add(edges.get(i).reversed());
    }
    return new Contour(back);
  }

  /**
   * The same boundary seen from outside a frame. The way of travel turns over with a reflection.
   *
   * @param frame rigid map
   * @return mapped contour
   */
  public Contour mapped(Frame2 frame) {
    return new Contour(edges.stream().map(e -> e.mapped(frame)).toList());
  }

  /**
   * The boundary point nearest to another.
   *
   * @param p any point
   * @return nearest boundary point
   */
  public Vec2 nearest(Vec2 p) {
    Vec2 best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < boxes.length; i++) {
      if (boxes[i].distanceTo(p) >= least) {
        continue;
      }
      Vec2 q = edges.get(i).nearest(p);
      double d = q.distanceTo(p);
      if (d < least) {
        least = d;
        best = q;
      }
    }
    return best;
  }

  /**
   * Distance of a point from the boundary.
   *
   * @param p any point
   * @return mm, not negative, inside or out
   */
  public double distanceTo(Vec2 p) {
    return nearest(p).distanceTo(p);
  }

  /**
   * Whether the boundary goes round a point, by winding; on the boundary itself either answer may
   * come.
   *
   * @param p any point
   * @return true if inside
   */
  public boolean encloses(Vec2 p) {
    if (!bounds.contains(p)) {
      return false;
    }
    // The winding number of the polygon of chords, then of the pieces between chords and arcs. Both
    // ask the same question of a chord in the same arithmetic, so they cannot disagree about it.
    int winding = 0;
    for (int i = 0; i < edges.size(); i++) {
      Vec2 a = starts[i];
      Vec2 b = starts[(i + 1) % starts.length];
      boolean left = isLeft(a.x(), a.y(), b.x(), b.y(), p.x(), p.y());
      if (a.y() <= p.y() && p.y() < b.y() && left) {
        winding++;
      } else if (b.y() <= p.y() && p.y() < a.y() && !left) {
        winding--;
      }
      if (edges.get(i) instanceof Arc arc && p.distanceTo(arc.centre()) < arc.radius()) {
        if (arc.sweep() > 0 && (!left || arc.isFullCircle())) {
          winding++;
        } else if (arc.sweep() < 0 && (left || arc.isFullCircle())) {
          winding--;
        }
      }
    }
    return winding != 0;
  }

  /** Whether a point is left of a chord; on it, as if it were moved a trifle right and less up. */
  static boolean isLeft(double ax, double ay, double bx, double by, double x, double y) {
    double side = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    if (side != 0.0) {
      return side > 0;
    }
    return ay == by ? bx > ax : by < ay;
  }

  /**
   * Points along the boundary, every corner among them, arcs broken finely enough.
   *
   * @param sagMm largest distance of a chord from its arc, positive
   * @return points in order of travel, the first not repeated
   */
  public List<Vec2> flattened(double sagMm) {
    List<Vec2> points = new ArrayList<>();
    for (Edge edge : edges) {
      points.add(edge.start());
      if (edge instanceof Arc arc) {
        // sag = r (1 - cos(step / 2)) = 2 r sin^2(step / 4), which keeps its digits for small sags.
        double step = 4 * Math.asin(Math.sqrt(Math.min(1.0, sagMm / arc.radius()) / 2));
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / step));
        if (arc.isFullCircle()) {
          pieces = Math.max(8, pieces);
        }
        for (int i = 1; i < pieces; i++) {
          points.add(arc.at((double) i / pieces));
        }
      }
    }
    return points;
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Contour other && edges.equals(other.edges);
  }

  @Override
  public int hashCode() {
    return edges.hashCode();
  }

  @Override
  public String toString() {
    return "Contour" + edges;
  }
}
