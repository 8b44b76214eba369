package dev.towerscribe.sheet;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;

/**
 * A rectangle at any angle: the room of a piece of lettering.
 *
 * @param centre its middle, page mm
 * @param halfWidthMm half its size along {@code turn}
 * @param halfHeightMm half its size across
 * @param turn direction of its width from +x toward +y
 */
record TurnedBox(Vec2 centre, double halfWidthMm, double halfHeightMm, Angle turn) {
  static TurnedBox of(Box box) {
    return new TurnedBox(box.centre(), box.width() / 2, box.height() / 2, Angle.ZERO);
  }

  TurnedBox grown(double mm) {
    return new TurnedBox(centre, halfWidthMm + mm, halfHeightMm + mm, turn);
  }

  Vec2 along() {
    return Vec2.polar(1.0, turn);
  }

  List<Vec2> corners() {
    Vec2 a = along().times(halfWidthMm);
    Vec2 b = along().quarterTurn().times(halfHeightMm);
    return List.of(
        centre.minus(a).minus(b),
        centre.plus(a).minus(b),
        centre.plus(a).plus(b),
        centre.minus(a).plus(b));
  }

  Box bounds() {
    Vec2 a = along();
    double w = Math.abs(a.x()) * halfWidthMm + Math.abs(a.y()) * halfHeightMm;
    double h = Math.abs(a.y()) * halfWidthMm + Math.abs(a.x()) * halfHeightMm;
    return new Box(centre.x() - w, centre.y() - h, centre.x() + w, centre.y() + h);
  }

  /** The point as seen from the box: x along its width, y across, from its centre. */
  private Vec2 seen(Vec2 p) {
    Vec2 d = p.minus(centre);
    return new Vec2(d.dot(along()), d.dot(along().quarterTurn()));
  }

  boolean contains(Vec2 p) {
    Vec2 q = seen(p);
    return Math.abs(q.x()) <= halfWidthMm && Math.abs(q.y()) <= halfHeightMm;
  }

  /** Distance from a point to the box; zero inside. */
  double distanceTo(Vec2 p) {
    Vec2 q = seen(p);
    return Math.hypot(
        Math.max(0, Math.abs(q.x()) - halfWidthMm), Math.max(0, Math.abs(q.y()) - halfHeightMm));
  }

  /** The point of the box's edge on the way from its centre toward another. */
  Vec2 edgeToward(Vec2 p) {
    Vec2 q = seen(p);
    if (q.norm() == 0.0) {
      return centre;
    }
    double k =
        Math.min(
            q.x() == 0.0 ? Double.POSITIVE_INFINITY : halfWidthMm / Math.abs(q.x()),
            q.y() == 0.0 ? Double.POSITIVE_INFINITY : halfHeightMm / Math.abs(q.y()));
    return centre.toward(p, Math.min(1.0, k));
  }

  /** How far it reaches from its centre in a direction. */
  double reach(Vec2 unit) {
    return Math.abs(unit.dot(along())) * halfWidthMm
        + Math.abs(unit.dot(along().quarterTurn())) * halfHeightMm;
  }

  /** Whether two boxes share more than a boundary: separating axes. */
  boolean overlaps(TurnedBox o) {
    Vec2 between = o.centre.minus(centre);
    for (Vec2 axis : List.of(along(), along().quarterTurn(), o.along(), o.along().quarterTurn())) {
      if (Math.abs(between.dot(axis)) >= reach(axis) + o.reach(axis) - 1e-9) {
        return false;
      }
    }
    return true;
  }

  /** Length of a straight line inside the box (Liang and Barsky's clipping). */
  double lengthInside(Vec2 from, Vec2 to) {
    Vec2 a = seen(from);
    Vec2 d = seen(to).minus(a);
    double t0 = 0;
    double t1 = 1;
    double[] speed = {-d.x(), d.x(), -d.y(), d.y()};
    double[] room = {
      a.x() + halfWidthMm, halfWidthMm - a.x(), a.y() + halfHeightMm, halfHeightMm - a.y()
    };
    for (int i = 0; i < 4; i++) {
      if (speed[i] == 0.0) {
        if (room[i] < 0) {
          return 0;
        }
      } else if (speed[i] < 0) {
        t0 = Math.max(t0, room[i] / speed[i]);
      } else {
        t1 = Math.min(t1, room[i] / speed[i]);
      }
    }
    return t0 < t1 ? (t1 - t0) * d.norm() : 0;
  }
}
