package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;

/**
 * Where the upright is: the moving points, left side, vehicle axes.
 *
 * @param top top pivot S
 * @param ballJoint ball joint B
 * @param strutLower lower point of the damper's axis D
 * @param tieInner inner tie rod end TI
 * @param tieOuter outer tie rod end TO
 * @param wheelCentre wheel centre W
 * @param spin wheel axis, unit, pointing outboard
 * @param tyreRadiusMm height of the wheel centre over the ground, in the wheel's plane
 */
public record Pose(
    Vec3 top,
    Vec3 ballJoint,
    Vec3 strutLower,
    Vec3 tieInner,
    Vec3 tieOuter,
    Vec3 wheelCentre,
    Vec3 spin,
    double tyreRadiusMm) {
  /**
   * Caster: the steering axis in side view.
   *
   * @return radians, positive when the top pivot is rearward of the ball joint
   */
  public double caster() {
    return Math.atan2(ballJoint.x() - top.x(), top.z() - ballJoint.z());
  }

  /**
   * Kingpin inclination: the steering axis in front view.
   *
   * @return radians, positive when the top pivot is inboard of the ball joint
   */
  public double inclination() {
    return Math.atan2(ballJoint.y() - top.y(), top.z() - ballJoint.z());
  }

  /**
   * Camber.
   *
   * @return radians, positive when the wheel's top leans outward
   */
  public double camber() {
    return -Math.asin(Math.max(-1.0, Math.min(1.0, spin.z())));
  }

  /**
   * Toe of this wheel.
   *
   * @return radians, positive for toe-in
   */
  public double toe() {
    return Math.atan2(spin.x(), spin.y());
  }

  /**
   * Length of the tie rod as it is set there.
   *
   * @return mm
   */
  public double tieRodMm() {
    return tieOuter.minus(tieInner).norm();
  }

  /**
   * Included angle: kingpin inclination plus camber.
   *
   * @return radians
   */
  public double includedAngle() {
    return inclination() + camber();
  }

  /**
   * Where the tyre meets the ground: straight down from the wheel centre in the wheel's plane.
   *
   * @return point
   */
  public Vec3 contact() {
    Vec3 down = new Vec3(spin.x() * spin.z(), spin.y() * spin.z(), spin.z() * spin.z() - 1).unit();
    return wheelCentre.plus(down.times(tyreRadiusMm));
  }

  /**
   * The contact point's distance from the car's centre plane: half the track.
   *
   * @return mm
   */
  public double contactYMm() {
    return contact().y();
  }

  /** Where the steering axis meets the ground under the tyre. */
  private Vec3 axisOnGround(double groundZ) {
    Vec3 axis = top.minus(ballJoint);
    return ballJoint.plus(axis.times((groundZ - ballJoint.z()) / axis.z()));
  }

  /**
   * Scrub radius: how far inboard of the contact point the steering axis meets the ground, along
   * the wheel's axis.
   *
   * @return mm, positive when the axis meets the ground inboard
   */
  public double scrubMm() {
    Vec3 contact = contact();
    Vec3 offset = contact.minus(axisOnGround(contact.z()));
    double level = Math.hypot(spin.x(), spin.y());
    return (offset.x() * spin.x() + offset.y() * spin.y()) / level;
  }

  /**
   * Mechanical trail: how far ahead of the contact point the steering axis meets the ground, along
   * the wheel's heading.
   *
   * @return mm, positive when the axis meets the ground ahead
   */
  public double trailMm() {
    Vec3 contact = contact();
    Vec3 offset = axisOnGround(contact.z()).minus(contact);
    double level = Math.hypot(spin.x(), spin.y());
    return (offset.x() * spin.y() - offset.y() * spin.x()) / level;
  }

  /**
   * Length of the damper between its lower point and the top pivot.
   *
   * @return mm
   */
  public double damperMm() {
    return top.minus(strutLower).norm();
  }
}
