package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;

/** Small questions about single edges that the boundary operations share. */
final class EdgeGeometry {
  private EdgeGeometry() {}

  /** Unit direction of travel at the start. */
  static Vec2 startDirection(Edge edge) {
    if (edge instanceof Arc arc) {
      return along(arc, arc.startAngle());
    }
    return edge.end().minus(edge.start()).unit();
  }

  /** Unit direction of travel at the end. */
  static Vec2 endDirection(Edge edge) {
    if (edge instanceof Arc arc) {
      return along(arc, arc.startAngle() + arc.sweep());
    }
    return edge.end().minus(edge.start()).unit();
  }

  private static Vec2 along(Arc arc, double angle) {
    double sign = Math.signum(arc.sweep());
    return new Vec2(-sign * Math.sin(angle), sign * Math.cos(angle));
  }

  /** Signed curvature, 1/mm: positive when the edge bends to the left of its travel. */
  static double curvature(Edge edge) {
    return edge instanceof Arc arc ? Math.signum(arc.sweep()) / arc.radius() : 0.0;
  }

  /** Whether an edge is a whole circle, which has no ends of its own. */
  static boolean isFullCircle(Edge edge) {
    return edge instanceof Arc arc && arc.isFullCircle();
  }

  /**
   * The parallel curve at a signed distance.
   *
   * @param edge edge
   * @param leftMm how far to the left of travel; negative to the right
   * @param leastRadiusMm an arc that would shrink to this radius or less vanishes
   * @return the moved edge, or null where an arc vanishes
   */
  static Edge moved(Edge edge, double leftMm, double leastRadiusMm) {
    if (edge instanceof Arc arc) {
      double radius = arc.radius() - Math.signum(arc.sweep()) * leftMm;
      return radius > leastRadiusMm
          ? new Arc(arc.centre(), radius, arc.startAngle(), arc.sweep())
          : null;
    }
    Vec2 shift = startDirection(edge).quarterTurn().times(leftMm);
    return new Segment(edge.start().plus(shift), edge.end().plus(shift));
  }

  /** Where along an edge a point on it lies: 0 at its start, 1 at its end. */
  static double parameter(Edge edge, Vec2 p) {
    if (edge instanceof Arc arc) {
      double sweep = Math.abs(arc.sweep());
      double turned = turned(arc, p);
      // Just before the start counts as the start, just past the end as the end.
      double before = 2 * Math.PI - turned;
      if (turned > sweep) {
        return before < turned - sweep ? 0.0 : 1.0;
      }
      return turned / sweep;
    }
    Vec2 along = edge.end().minus(edge.start());
    double t = p.minus(edge.start()).dot(along) / along.dot(along);
    return Math.min(1.0, Math.max(0.0, t));
  }

  /** The angle from the start of an arc to the direction of a point, along its travel, [0, 2pi). */
  static double turned(Arc arc, Vec2 p) {
    double angle = Math.atan2(p.y() - arc.centre().y(), p.x() - arc.centre().x());
    double turn = 2 * Math.PI;
    double turned = (arc.sweep() > 0 ? angle - arc.startAngle() : arc.startAngle() - angle) % turn;
    return turned < 0 ? turned + turn : turned;
  }

  /** Whether an arc passes a point known to be on its circle, with some room at its ends. */
  static boolean passes(Arc arc, Vec2 p, double roomMm) {
    if (arc.isFullCircle()) {
      return true;
    }
    double room = roomMm / arc.radius();
    double turned = turned(arc, p);
    return turned <= Math.abs(arc.sweep()) + room || turned >= 2 * Math.PI - room;
  }
}
