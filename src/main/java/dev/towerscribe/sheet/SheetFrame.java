package dev.towerscribe.sheet;

import dev.towerscribe.geometry.Arc;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Segment;
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
 *
 * @param side which tower
 * @param face from where it is looked at
 * @param crown the dome that the paper follows, if any
 * @param origin where the original strut-shaft centre lies on the page, mm
 */
public record SheetFrame(Side side, Face face, Optional<Crown> crown, Vec2 origin) {
  /** Deepest halving of an edge; 2^14 pieces of a metre are 0.06 mm long. */
  private static final int DEEPEST = 14;

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

  /**
   * Which way inboard points on this page.
   *
   * @return +1 to the page's right, -1 to its left
   */
  public int inboardSign() {
    return inboardSign(side, face);
  }

  private Frame2 rigid() {
    return new Frame2(origin, new Vec2(0, 1), new Vec2(inboardSign(), 0));
  }

  private Vec2 onPaper(Vec2 plan) {
    return crown.map(c -> c.onPaper(plan)).orElse(plan);
  }

  /**
   * Where a plan point lies on the page.
   *
   * @param plan (fore, in)
   * @return page mm
   */
  public Vec2 point(Vec2 plan) {
    return rigid().map(onPaper(plan));
  }

  /**
   * A plan direction on the page.
   *
   * @param plan direction (fore, in)
   * @return the same direction on the page, same length
   */
  public Vec2 direction(Vec2 plan) {
    return rigid().mapVector(plan);
  }

  /**
   * A boundary on the page. Its way of travel turns over where the map reflects.
   *
   * @param plan boundary in plan
   * @return boundary on the page
   */
  public Contour contour(Contour plan) {
    if (crown.isEmpty()) {
      return plan.mapped(rigid());
    }
    Optional<Arc> circle = plan.asCircle();
    if (circle.isPresent() && circle.get().centre().norm() <= Tolerances.SAME_POINT_MM) {
      Contour flat =
          Contour.circle(Vec2.ZERO, crown.get().alongSkinMm(circle.get().radius()))
              .mapped(new Frame2(origin, new Vec2(0, 1), new Vec2(inboardSign(), 0)));
      return flat;
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
    if (crown.isEmpty()) {
      return plan.mapped(rigid());
    }
    boolean turnsOver = rigid().reflects();
    List<Contour> contours = new ArrayList<>();
    for (int i = 0; i < plan.contours().size(); i++) {
      Contour mapped = contour(plan.contours().get(i));
      contours.add(turnsOver ? mapped.reversed() : mapped);
    }
    return new Region(contours);
  }

  /**
   * A straight plan line on the page: two points on a flat top, a followed curve on a domed one.
   *
   * @param from one end, plan
   * @param to other end, plan
   * @return page points from end to end
   */
  public List<Vec2> path(Vec2 from, Vec2 to) {
    if (crown.isEmpty()) {
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
      halve(edge, (double) i / pieces, (double) (i + 1) / pieces, 0, into);
    }
  }

  private void halve(Edge edge, double t0, double t1, int depth, List<Vec2> into) {
    Vec2 a = point(edge.at(t0));
    Vec2 b = point(edge.at(t1));
    double tm = (t0 + t1) / 2;
    boolean straight = true;
    for (double t : new double[] {(t0 + tm) / 2, tm, (tm + t1) / 2}) {
      Vec2 p = point(edge.at(t));
      Vec2 chord = b.minus(a);
      double off =
          chord.norm() == 0.0 ? p.distanceTo(a) : Math.abs(chord.cross(p.minus(a))) / chord.norm();
      straight &= off <= Tolerances.FLATTEN_MM / 2;
    }
    if (straight || depth == DEEPEST) {
      into.add(a);
    } else {
      halve(edge, t0, tm, depth + 1, into);
      halve(edge, tm, t1, depth + 1, into);
    }
  }
}
