package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;

/**
 * What stays the same of one strut however it moves, left side: the upright in its own axes and the
 * arm's circle. The upright's axes are a along the damper upward, f from the ball joint B square to
 * the damper's axis, and g = a x f; its points are relative to B.
 *
 * @param axisDistance distance of B from the damper's axis, mm
 * @param tieOuter outer tie rod end, upright's axes
 * @param wheelCentre wheel centre, upright's axes
 * @param strutLower lower point of the damper's axis, upright's axes
 * @param spin the wheel's axis, unit, upright's axes
 * @param tieSign of the two ways to close the linkage the one as measured: there the tie rod's
 *     equation grows (1) or falls (-1) with the upright's turn
 * @param tieLength length of the tie rod as measured, mm
 * @param armCentre centre of the ball joint's circle: it is at centre + cos w out + sin w up, with
 *     w = 0 as measured and growing upward
 * @param armOut from there to the ball joint as measured
 * @param armUp square to it and to the arm's inner axis, as long, upward
 */
record Linkage(
    double axisDistance,
    Vec3 tieOuter,
    Vec3 wheelCentre,
    Vec3 strutLower,
    Vec3 spin,
    double tieSign,
    double tieLength,
    Vec3 armCentre,
    Vec3 armOut,
    Vec3 armUp) {
  /** Nearer than this the ball joint lies on the damper's axis, mm. */
  private static final double ON_AXIS_MM = 1e-9;

  /**
   * The linkage of a strut's points, its damper perhaps turned in the upright.
   *
   * @param p the points, left side
   * @param lower lower point of the damper's axis
   * @param axisUp unit vector upward along the damper
   */
  static Linkage of(StrutPoints p, Vec3 lower, Vec3 axisUp) {
    Vec3 ball = p.ballJoint();
    Vec3 square = lower.minus(ball).plus(axisUp.times(ball.minus(lower).dot(axisUp)));
    double distance = square.norm();
    // A ball joint on the damper's axis leaves the direction free; any one serves.
    Vec3 toAxis = distance > ON_AXIS_MM ? square.times(1 / distance) : anySquareTo(axisUp);
    Upright upright = new Upright(axisUp, toAxis, axisUp.cross(toAxis));
    Vec3 axis = p.armFront().minus(p.armRear()).unit();
    Vec3 centre = p.armRear().plus(axis.times(ball.minus(p.armRear()).dot(axis)));
    Vec3 out = ball.minus(centre);
    Vec3 up = axis.cross(out);
    Vec3 tie = p.tieOuter().minus(p.tieInner());
    Vec3 turned = p.top().minus(ball).unit().cross(p.tieOuter().minus(ball));
    return new Linkage(
        distance,
        upright.inBody(p.tieOuter().minus(ball)),
        upright.inBody(p.wheelCentre().minus(ball)),
        upright.inBody(lower.minus(ball)),
        upright.inBody(spinAxis(p.camber(), p.toe())),
        turned.dot(tie) >= 0 ? 1.0 : -1.0,
        tie.norm(),
        centre,
        out,
        up.z() >= 0 ? up : up.times(-1));
  }

  /**
   * A left wheel's axis: a unit vector that points outboard (+Y). Its downward tip is the camber,
   * its forward turn the toe-in.
   */
  static Vec3 spinAxis(Angle camber, Angle toe) {
    return new Vec3(camber.cos() * toe.sin(), camber.cos() * toe.cos(), -camber.sin());
  }

  /** The upright's axes as measured, in vehicle axes. */
  private record Upright(Vec3 axisUp, Vec3 toAxis, Vec3 across) {
    Vec3 inBody(Vec3 v) {
      return new Vec3(v.dot(axisUp), v.dot(toAxis), v.dot(across));
    }
  }

  private static Vec3 anySquareTo(Vec3 v) {
    Vec3 other = Math.abs(v.x()) < 0.5 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
    return v.cross(other).unit();
  }
}
