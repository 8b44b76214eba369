package dev.towerscribe.sheet.tower;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.Face;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plan (fore, in) to page millimetres. Forward is always up the page. Seen from above the left
 * tower's inboard direction points to the page's right and the right tower's to its left; seen from
 * below it is the other way about. Only the geometry turns over, never the lettering.
 *
 * <p>Paper follows a domed top's skin, so plan points are first flattened by the {@link Crown}; the
 * rest is a rigid map. On a flat top arcs therefore stay arcs. On a domed one a circle about the
 * pole stays a circle and every other curve is followed to {@link Tolerances#FLATTEN_MM}.
 */
public final class SheetFrame {
  /** Deepest halving of an edge; 2^14 pieces of a metre are 0.06 mm long. */
  private static final int DEEPEST = 14;

  private final Face face;
  private final Crown crown;
  private final Frame2 rigid;

  /**
   * A frame.
   *
   * @param side which tower
   * @param face from where it is looked at
   * @param crown the dome that the paper follows, if any
   * @param origin where the original strut rod centre lies on the page, mm
   */
  public SheetFrame(Side side, Face face, Optional<Crown> crown, Vec2 origin) {
    this.face = face;
    this.crown = crown.orElse(null);
    rigid = new Frame2(origin, new Vec2(0, 1), new Vec2(inboardSign(side, face), 0));
  }

  /**
   * From where the tower is looked at.
   *
   * @return underside or topside
   */
  public Face face() {
    return face;
  }

  /**
   * Where the original strut rod centre lies on the page.
   *
   * @return page mm
   */
  public Vec2 origin() {
    return rigid.origin();
  }

  /**
   * Which way inboard points on a page.
   *
   * @param side which tower
   * @param face from where it is looked at
   * @return +1 to the page's right, -1 to its left
   */
  public static int inboardSign(Side side, Face face) {
    boolean leftTower = side == Side.LEFT;
    boolean fromAbove = face == Face.TOPSIDE;
    return leftTower == fromAbove ? 1 : -1;
  }

  private Vec2 onPaper(Vec2 plan) {
    return crown == null ? plan : crown.onPaper(plan);
  }

  /**
   * Where a plan point lies on the page.
   *
   * @param plan (fore, in)
   * @return page mm
   */
  public Vec2 point(Vec2 plan) {
    return rigid.map(onPaper(plan));
  }

  /**
   * A boundary on the page. Its way of travel turns over where the map reflects.
   *
   * @param plan boundary in plan
   * @return boundary on the page
   */
  public Contour contour(Contour plan) {
    if (crown == null) {
      return plan.mapped(rigid);
    }
    Optional<Arc> circle = plan.asCircle();
    if (circle.isPresent() && circle.get().centre().norm() <= Tolerances.SAME_POINT_MM) {
      return Contour.circle(Vec2.ZERO, crown.alongSkinMm(circle.get().radius())).mapped(rigid);
    }
    List<Vec2> points = new ArrayList<>();
    for (Edge edge : plan.edges()) {
      follow(edge, points);
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      edges.add(new Segment(points.get(i), points.get((i + 1) % points.size())));
    }
    return Contour.of(edges);
  }

  /**
   * A region on the page.
   *
   * @param plan region in plan
   * @return region on the page, outer boundaries counter-clockwise
   */
  public Region region(Region plan) {
    if (crown == null) {
      return plan.mapped(rigid);
    }
    return new Region(
        plan.contours().stream()
            .map(c -> rigid.reflects() ? contour(c).reversed() : contour(c))
            .toList());
  }

  /**
   * A straight plan line on the page: two points on a flat top, a followed curve on a domed one.
   *
   * @param from one end, plan
   * @param to other end, plan
   * @return page points from end to end
   */
  public List<Vec2> path(Vec2 from, Vec2 to) {
    if (crown == null) {
      return List.of(point(from), point(to));
    }
    List<Vec2> points = new ArrayList<>();
    follow(new Segment(from, to), points);
    points.add(point(to));
    return points;
  }

  /** Adds page points along an edge, its start among them, its end not. */
  private void follow(Edge edge, List<Vec2> into) {
    // Quarters first: a symmetrical curve may cross its own chord in the middle.
    int pieces = 4;
    for (int i = 0; i < pieces; i++) {
      double t0 = (double) i / pieces;
      double t1 = (double) (i + 1) / pieces;
      Vec2 a = point(edge.at(t0));
      Vec2 middle = point(edge.at((t0 + t1) / 2));
      halve(edge, t0, t1, a, middle, point(edge.at(t1)), 0, into);
    }
  }

  /** One stretch of an edge, its ends and middle already on the page. */
  private void halve(
      Edge edge, double t0, double t1, Vec2 a, Vec2 middle, Vec2 b, int depth, List<Vec2> into) {
    double tm = (t0 + t1) / 2;
    Vec2 first = point(edge.at((t0 + tm) / 2));
    Vec2 last = point(edge.at((tm + t1) / 2));
    if (depth == DEEPEST
        || isNearChord(a, b, first) && isNearChord(a, b, middle) && isNearChord(a, b, last)) {
      into.add(a);
    } else {
      halve(edge, t0, tm, a, first, middle, depth + 1, into);
      halve(edge, tm, t1, middle, last, b, depth + 1, into);
    }
  }

  private static boolean isNearChord(Vec2 a, Vec2 b, Vec2 p) {
    Vec2 chord = b.minus(a);
    double length = chord.norm();
    double off = length == 0.0 ? p.distanceTo(a) : Math.abs(chord.cross(p.minus(a))) / length;
    return off <= Tolerances.FLATTEN_MM / 2;
  }
}
