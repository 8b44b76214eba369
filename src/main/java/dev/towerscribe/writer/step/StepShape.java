package dev.towerscribe.writer.step;

import dev.towerscribe.geometry.Vec3;
import java.util.List;

/** A boundary representation as read from a file. */
final class StepShape {
  private StepShape() {}

  /** A right-handed frame. */
  record Placement(Vec3 origin, Vec3 axis, Vec3 reference) {
    Vec3 square() {
      return axis.cross(reference);
    }

    /** How far along the axis a point lies. */
    double along(Vec3 p) {
      return p.minus(origin).dot(axis);
    }

    /** How far off the axis. */
    double off(Vec3 p) {
      return Math.hypot(p.minus(origin).dot(reference), p.minus(origin).dot(square()));
    }

    /** The angle about the axis, from the reference direction, -pi to pi. */
    double angle(Vec3 p) {
      return Math.atan2(p.minus(origin).dot(square()), p.minus(origin).dot(reference));
    }
  }

  /** What an edge runs along. */
  sealed interface Curve {}

  /** A straight line. */
  record Line(Vec3 through, Vec3 direction) implements Curve {}

  /** A circle about its frame's axis. */
  record Circle(Placement at, double radius) implements Curve {}

  /** What a face lies in. */
  sealed interface Surface {
    Placement at();
  }

  /** A plane; its normal is its frame's axis. */
  record Plane(Placement at) implements Surface {}

  /** A cylinder or a cone: radius at the origin, and what it gains for each mm along the axis. */
  record Round(Placement at, double radius, double gain, boolean cone) implements Surface {
    double radiusAt(double along) {
      return radius + gain * along;
    }
  }

  /** An edge, from one vertex to the other along its curve. */
  record EdgeCurve(int id, int startId, int endId, Vec3 start, Vec3 end, Curve curve) {
    /** The angle travelled about a circle's axis, above 0 to a full turn. */
    double turn(Circle circle) {
      double turned = circle.at.angle(end) - circle.at.angle(start);
      return turned > 0 ? turned : turned + 2 * Math.PI;
    }

    /** A point on a circle, 0 at the start, 1 at the end. */
    Vec3 on(Circle circle, double part) {
      double angle = circle.at.angle(start) + part * turn(circle);
      return circle
          .at
          .origin
          .plus(circle.at.reference.times(circle.radius * Math.cos(angle)))
          .plus(circle.at.square().times(circle.radius * Math.sin(angle)));
    }
  }

  /** An edge as a loop travels it. */
  record Use(EdgeCurve edge, boolean forward) {
    int fromId() {
      return forward ? edge.startId : edge.endId;
    }

    int toId() {
      return forward ? edge.endId : edge.startId;
    }

    Vec3 from() {
      return forward ? edge.start : edge.end;
    }

    Vec3 to() {
      return forward ? edge.end : edge.start;
    }
  }

  /** A loop of a face. */
  record Loop(boolean outer, List<Use> uses) {}

  /** A face; the sense tells whether its surface's normal points out of the solid. */
  record Face(int id, Surface surface, boolean sense, List<Loop> loops) {}
}
