package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.SideJob;

/**
 * What a move of the top pivot does where only the steering axis was measured: the axis turns about
 * the ball joint, and camber moves with kingpin inclination. An estimate: what the arm and the tie
 * rod add is left out.
 *
 * @param caster radians
 * @param inclination radians
 * @param camber radians
 */
public record AxisEstimate(double caster, double inclination, double camber) {
  /**
   * As measured.
   *
   * @param axis the measured axis
   * @return its angles
   */
  public static AxisEstimate before(MeasuredAxis axis) {
    return new AxisEstimate(
        axis.caster().radians(), axis.inclination().radians(), axis.camber().radians());
  }

  /**
   * With the bearing somewhere in plan.
   *
   * @param axis the measured axis
   * @param job the side's tower and plate
   * @param bearing bearing centre, plan
   * @return the estimate
   */
  public static AxisEstimate at(MeasuredAxis axis, SideJob job, Vec2 bearing) {
    Vec3 up =
        new Vec3(-axis.caster().tan(), -axis.inclination().tan(), 1.0)
            .unit()
            .times(axis.lengthMm());
    Vec3 moved = TopPivot.moved(up, job, bearing);
    double inclination = Math.atan2(-moved.y(), moved.z());
    return new AxisEstimate(
        Math.atan2(-moved.x(), moved.z()),
        inclination,
        axis.camber().radians() - (inclination - axis.inclination().radians()));
  }
}
