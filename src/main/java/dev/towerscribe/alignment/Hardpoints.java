package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;

/**
 * One strut's points as measured, on the left side.
 *
 * @param top top pivot S
 * @param ballJoint lower ball joint B
 * @param armFront a point of the arm's inner axis
 * @param armRear another
 * @param strutLower D, a point of the damper's axis fixed in the upright
 * @param tieInner TI, inner tie rod end
 * @param tieOuter TO, outer tie rod end, fixed in the upright
 * @param wheelCentre W, fixed in the upright
 * @param tyreRadiusMm height of the wheel centre over the ground
 * @param spin the wheel's axis, unit, pointing outboard
 */
public record Hardpoints(
    Vec3 top,
    Vec3 ballJoint,
    Vec3 armFront,
    Vec3 armRear,
    Vec3 strutLower,
    Vec3 tieInner,
    Vec3 tieOuter,
    Vec3 wheelCentre,
    double tyreRadiusMm,
    Vec3 spin) {

  /**
   * A side's points, mirrored to the left where need be.
   *
   * @param p points of a job
   * @param side the side they are on
   * @return the same strut on the left
   */
  public static Hardpoints of(StrutPoints p, Side side) {
    return new Hardpoints(
        onLeft(p.top(), side),
        onLeft(p.ballJoint(), side),
        onLeft(p.armFront(), side),
        onLeft(p.armRear(), side),
        onLeft(p.strutLower(), side),
        onLeft(p.tieInner(), side),
        onLeft(p.tieOuter(), side),
        onLeft(p.wheelCentre(), side),
        p.tyreRadiusMm(),
        spinAxis(p.camber(), p.toe()));
  }

  private static Vec3 onLeft(Vec3 p, Side side) {
    return side == Side.LEFT ? p : p.mirroredAcross();
  }

  /**
   * A left wheel's axis from its camber and toe.
   *
   * @param camber positive when the top leans outward
   * @param toe positive for toe-in
   * @return unit vector pointing outboard (+Y): its downward tip is the camber, its forward turn
   *     the toe-in
   */
  public static Vec3 spinAxis(Angle camber, Angle toe) {
    return new Vec3(camber.cos() * toe.sin(), camber.cos() * toe.cos(), -camber.sin());
  }
}
