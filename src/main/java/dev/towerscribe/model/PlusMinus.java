package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;
import java.util.Collections;
import java.util.List;

/**
 * How far the figures of a strut may be off: one standard deviation of each, taken as independent
 * of all the others.
 *
 * @param top original top pivot, mm along X, Y and Z
 * @param ballJoint lower ball joint
 * @param armFront front inner pivot of the lower arm
 * @param armRear rear inner pivot of the lower arm
 * @param strutLower point of the damper's axis
 * @param tieInner inner tie rod end
 * @param tieOuter outer tie rod end
 * @param wheelCentre wheel centre
 * @param camber of the camber as measured
 */
public record PlusMinus(
    Vec3 top,
    Vec3 ballJoint,
    Vec3 armFront,
    Vec3 armRear,
    Vec3 strutLower,
    Vec3 tieInner,
    Vec3 tieOuter,
    Vec3 wheelCentre,
    Angle camber) {
  /** Checks the figures. */
  public PlusMinus {
    for (Vec3 p :
        List.of(top, ballJoint, armFront, armRear, strutLower, tieInner, tieOuter, wheelCentre)) {
      Require.notNegative("plus_minus", p.x());
      Require.notNegative("plus_minus", p.y());
      Require.notNegative("plus_minus", p.z());
    }
    Require.notNegative("plus_minus.camber", camber.radians());
  }

  /**
   * The same for every coordinate, and a camber taken as true.
   *
   * @param mm one standard deviation, not negative
   * @return that for all
   */
  public static PlusMinus all(double mm) {
    return of(Collections.nCopies(8, new Vec3(mm, mm, mm)), Angle.ZERO);
  }

  /**
   * Deviations from a list.
   *
   * @param p eight, in the order of the components
   * @param camber of the camber as measured
   * @return them together
   */
  public static PlusMinus of(List<Vec3> p, Angle camber) {
    return new PlusMinus(
        p.get(0), p.get(1), p.get(2), p.get(3), p.get(4), p.get(5), p.get(6), p.get(7), camber);
  }

  /**
   * The points' deviations in the order of the components.
   *
   * @return eight of them
   */
  public List<Vec3> points() {
    return List.of(top, ballJoint, armFront, armRear, strutLower, tieInner, tieOuter, wheelCentre);
  }
}
