package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A flat part looked at along its plane, from its -y side toward +y: x to the right, the upper face
 * up. Corners that can be seen are drawn as edges; holes and recesses as hidden lines about their
 * axes. Nothing of it is on a layer that a machine may cut along.
 */
final class SideView {
  /** Sine of the least turn that counts as a corner: what drawing cannot show. */
  private static final double SMOOTH = 1e-6;

  private SideView() {}

  /**
   * Draws it; (0, 0) of the view is the part's x = 0 at its lower face.
   *
   * @param solid the part
   * @param at where
   * @param out where shapes go
   */
  static void draw(FlatSolid solid, ViewPlacing at, List<Item> out) {
    Box b = solid.outline().bounds();
    double t = solid.thicknessMm();
    Vec2 low = at.point(new Vec2(b.minX(), 0));
    Vec2 high = at.point(new Vec2(b.maxX(), t));
    new LayerPen(Layer.OTHER_VIEWS, out)
        .frame(new Box(low.x(), low.y(), high.x(), high.y()), Pen.EDGE);
    for (double x : seenCorners(solid.outline())) {
      upright(Layer.OTHER_VIEWS, x, 0, t, Pen.EDGE, at, out);
    }
    for (Contour cutout : solid.cutouts()) {
      upright(Layer.HIDDEN, cutout.bounds().minX(), 0, t, Pen.HIDDEN, at, out);
      upright(Layer.HIDDEN, cutout.bounds().maxX(), 0, t, Pen.HIDDEN, at, out);
    }
    for (Bore bore : solid.bores()) {
      bore(bore, t, at, out);
    }
  }

  private static void bore(Bore bore, double thick, ViewPlacing at, List<Item> out) {
    double x = bore.centre().x();
    double r = bore.diameterMm() / 2;
    double over = 2.0 / at.factor();
    upright(Layer.CENTRE_LINES, x, -over, thick + over, Pen.FINE, at, out);
    double from = 0;
    double to = thick;
    Optional<Recess> recess = bore.recess();
    if (recess.isPresent()) {
      double big = recess.get().diameterMm() / 2;
      double deep = recess.get().depthMm(bore.diameterMm());
      boolean top = recess.get().fromTop();
      double floor = top ? thick - deep : deep;
      double face = top ? thick : 0;
      double inner = recess.get() instanceof Recess.Countersink ? r : big;
      for (int sign : new int[] {-1, 1}) {
        hidden(new Vec2(x + sign * big, face), new Vec2(x + sign * inner, floor), at, out);
      }
      hidden(new Vec2(x - inner, floor), new Vec2(x + inner, floor), at, out);
      from = top ? 0 : floor;
      to = top ? floor : thick;
    }
    for (int sign : new int[] {-1, 1}) {
      hidden(new Vec2(x + sign * r, from), new Vec2(x + sign * r, to), at, out);
    }
  }

  private static void hidden(Vec2 from, Vec2 to, ViewPlacing at, List<Item> out) {
    new LayerPen(Layer.HIDDEN, out).line(at.point(from), at.point(to), Pen.HIDDEN);
  }

  private static void upright(
      Layer layer, double x, double from, double to, Pen pen, ViewPlacing at, List<Item> out) {
    new LayerPen(layer, out).line(at.point(new Vec2(x, from)), at.point(new Vec2(x, to)), pen);
  }

  /** Where sharp corners of the near side stand; corners at the ends belong to the box. */
  private static List<Double> seenCorners(Contour outline) {
    Box b = outline.bounds();
    List<Double> seen = new ArrayList<>();
    List<Edge> edges = outline.edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get((i + edges.size() - 1) % edges.size());
      Edge after = edges.get(i);
      Vec2 p = after.start();
      double turn = Math.abs(heading(before, p).cross(heading(after, p)));
      boolean atEnd =
          p.x() - b.minX() < Tolerances.SAME_POINT_MM
              || b.maxX() - p.x() < Tolerances.SAME_POINT_MM;
      if (turn > SMOOTH && !atEnd && isNearest(outline, p)) {
        seen.add(p.x());
      }
    }
    return seen;
  }

  /** Which way an edge runs at one of its ends, of length one. */
  private static Vec2 heading(Edge edge, Vec2 p) {
    Vec2 way =
        edge instanceof Arc arc
            ? p.minus(arc.centre()).quarterTurn().times(arc.sweep() > 0 ? 1 : -1)
            : edge.end().minus(edge.start());
    return way.times(1 / way.norm());
  }

  /** Whether nothing of the outline lies before a point of it, seen from -y. */
  private static boolean isNearest(Contour outline, Vec2 p) {
    for (Edge edge : outline.edges()) {
      if (edge instanceof Arc arc) {
        double dx = p.x() - arc.centre().x();
        double squared = arc.radius() * arc.radius() - dx * dx;
        double half = Math.sqrt(Math.max(0, squared));
        for (double dy : new double[] {-half, half}) {
          if (squared >= 0 && arc.spans(Math.atan2(dy, dx)) && isBefore(arc.centre().y() + dy, p)) {
            return false;
          }
        }
      } else {
        double along = edge.end().x() - edge.start().x();
        double t = along == 0 ? 0 : (p.x() - edge.start().x()) / along;
        boolean here = along != 0 && t >= 0 && t <= 1;
        if (here && isBefore(edge.at(t).y(), p)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isBefore(double y, Vec2 p) {
    return y < p.y() - Tolerances.SAME_POINT_MM;
  }
}
