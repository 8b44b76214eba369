package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The strut's points on one side, vehicle axes (X forward, Y left, Z up), already mirrored for the
 * right side.
 *
 * @param top original top pivot
 * @param ballJoint lower ball joint
 * @param armFront front inner pivot of the lower arm
 * @param armRear rear inner pivot of the lower arm
 * @param strutLower a point of the damper's axis, fixed in the upright
 * @param tieInner inner tie rod end
 * @param tieOuter outer tie rod end
 * @param wheelCentre wheel centre
 * @param tyreRadiusMm loaded radius
 * @param camber as measured, positive when the wheel's top leans outward
 * @param toe as measured, per wheel, positive for toe-in
 * @param rideMm ride height asked for: how far the wheel centre is up from where it was measured,
 *     relative to the body; negative is down
 * @param plusMinus how far the points and the camber may be off
 * @param knuckleBolt the camber bolt at the upright, if there is one
 * @param limits how far the wheel goes
 */
public record StrutPoints(
    Vec3 top,
    Vec3 ballJoint,
    Vec3 armFront,
    Vec3 armRear,
    Vec3 strutLower,
    Vec3 tieInner,
    Vec3 tieOuter,
    Vec3 wheelCentre,
    double tyreRadiusMm,
    Angle camber,
    Angle toe,
    double rideMm,
    PlusMinus plusMinus,
    Optional<KnuckleBolt> knuckleBolt,
    Limits limits) {
  /**
   * A bolt that turns the strut relative to the upright about an axis along X.
   *
   * @param pivot a point of that axis
   * @param from least camber change
   * @param to greatest camber change, not less
   */
  public record KnuckleBolt(Vec3 pivot, Angle from, Angle to) {}

  /**
   * How far the wheel goes from ride height.
   *
   * @param bumpMm wheel travel up to full bump, not negative
   * @param droopMm wheel travel down to full droop, not negative
   * @param steer the wheel's heading at full lock, either way, not negative
   * @param droopStated whether the job says its droop, or it was assumed
   */
  public record Limits(double bumpMm, double droopMm, Angle steer, boolean droopStated) {
    /** What a road car does, where nothing was measured. Common practice, no source. */
    public static final Limits USUAL = new Limits(60.0, 60.0, Angle.ofDegrees(35.0), false);

    /**
     * Limits that were all measured.
     *
     * @param bumpMm wheel travel up to full bump, not negative
     * @param droopMm wheel travel down to full droop, not negative
     * @param steer the wheel's heading at full lock, either way, not negative
     */
    public Limits(double bumpMm, double droopMm, Angle steer) {
      this(bumpMm, droopMm, steer, true);
    }

    /** Checks the figures. */
    public Limits {
      Require.notNegative("bump", bumpMm);
      Require.notNegative("droop", droopMm);
      Require.notNegative("steer", steer.radians());
    }
  }

  /**
   * The eight points in the order of the components, as {@link PlusMinus#points} has them.
   *
   * @return top, ball joint, arm front and rear, strut lower, tie rod inner and outer, wheel centre
   */
  public List<Vec3> points() {
    return List.of(top, ballJoint, armFront, armRear, strutLower, tieInner, tieOuter, wheelCentre);
  }

  /**
   * The same strut with its points elsewhere.
   *
   * @param p eight points in the order of {@link #points}
   * @return the changed strut
   */
  public StrutPoints withPoints(List<Vec3> p) {
    return of(p, tyreRadiusMm, camber, toe, rideMm, plusMinus, knuckleBolt, limits);
  }

  /**
   * The same strut with one of its points elsewhere.
   *
   * @param which one of the eight; the camber bolt's pivot belongs to {@link #withKnuckleBolt}
   * @param at where it is
   * @return the changed strut
   * @throws IndexOutOfBoundsException if it is the camber bolt's pivot
   */
  public StrutPoints with(StrutPoint which, Vec3 at) {
    List<Vec3> changed = new ArrayList<>(points());
    changed.set(which.ordinal(), at);
    return withPoints(changed);
  }

  /**
   * The same strut with another camber measured.
   *
   * @param changed positive when the wheel's top leans outward
   * @return the changed strut
   */
  public StrutPoints withCamber(Angle changed) {
    return of(points(), tyreRadiusMm, changed, toe, rideMm, plusMinus, knuckleBolt, limits);
  }

  /**
   * The same strut with another toe measured.
   *
   * @param changed per wheel, positive for toe-in
   * @return the changed strut
   */
  public StrutPoints withToe(Angle changed) {
    return of(points(), tyreRadiusMm, camber, changed, rideMm, plusMinus, knuckleBolt, limits);
  }

  /**
   * The same strut at another ride height.
   *
   * @param changedMm how far the wheel centre is up from where it was measured
   * @return the changed strut
   */
  public StrutPoints withRide(double changedMm) {
    return of(points(), tyreRadiusMm, camber, toe, changedMm, plusMinus, knuckleBolt, limits);
  }

  /**
   * The same strut measured better or worse.
   *
   * @param changed how far the points and the camber may be off
   * @return the changed strut
   */
  public StrutPoints withPlusMinus(PlusMinus changed) {
    return of(points(), tyreRadiusMm, camber, toe, rideMm, changed, knuckleBolt, limits);
  }

  /**
   * The same strut with another camber bolt, or without one.
   *
   * @param changed the bolt, if there is one
   * @return the changed strut
   */
  public StrutPoints withKnuckleBolt(Optional<KnuckleBolt> changed) {
    return of(points(), tyreRadiusMm, camber, toe, rideMm, plusMinus, changed, limits);
  }

  /**
   * The same strut with other travel and lock.
   *
   * @param changed how far the wheel goes
   * @return the changed strut
   */
  public StrutPoints withLimits(Limits changed) {
    return of(points(), tyreRadiusMm, camber, toe, rideMm, plusMinus, knuckleBolt, changed);
  }

  /**
   * The same strut on the other side of the car.
   *
   * @return its mirror image in the car's middle plane
   */
  public StrutPoints mirrored() {
    return withPoints(points().stream().map(Vec3::mirroredAcross).toList())
        .withKnuckleBolt(
            knuckleBolt.map(b -> new KnuckleBolt(b.pivot().mirroredAcross(), b.from(), b.to())));
  }

  /**
   * The same strut on the left side, which all linkages are worked out on.
   *
   * @param side the side it is on
   * @return itself, or its mirror image
   */
  public StrutPoints onLeft(Side side) {
    return side == Side.LEFT ? this : mirrored();
  }

  /**
   * A strut from a list of points.
   *
   * @param p eight points in the order of {@link #points}
   * @param tyreRadiusMm loaded radius
   * @param camber as measured
   * @param toe as measured
   * @param rideMm ride height asked for
   * @param plusMinus how far the points and the camber may be off
   * @param knuckleBolt the camber bolt at the upright, if there is one
   * @param limits how far the wheel goes
   * @return the strut
   */
  public static StrutPoints of(
      List<Vec3> p,
      double tyreRadiusMm,
      Angle camber,
      Angle toe,
      double rideMm,
      PlusMinus plusMinus,
      Optional<KnuckleBolt> knuckleBolt,
      Limits limits) {
    return new StrutPoints(
        p.get(0),
        p.get(1),
        p.get(2),
        p.get(3),
        p.get(4),
        p.get(5),
        p.get(6),
        p.get(7),
        tyreRadiusMm,
        camber,
        toe,
        rideMm,
        plusMinus,
        knuckleBolt,
        limits);
  }

  /** Checks the figures. */
  public StrutPoints {
    Require.positive("tyre radius", tyreRadiusMm);
    Require.finite("ride", rideMm);
  }
}
