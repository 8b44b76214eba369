package dev.towerscribe.strength;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Thread;
import java.util.Optional;

/**
 * One bolt of the report.
 *
 * @param name as in the job
 * @param thread its size
 * @param at its centre, plan
 * @param inPlane its share along the plane
 * @param axialN its share along the tower's upward normal, N
 * @param pullN what of that it must hold in tension, N, not negative
 * @param washerMPa mean pressure of that pull under its washer or head, MPa; empty if that is no
 *     wider than the hole
 * @param strength its published proof load, if there is one
 * @param tightening its preload and torque, if there is a checked figure
 */
public record BoltFigures(
    String name,
    Thread thread,
    Vec2 at,
    BoltGroup.InPlane inPlane,
    double axialN,
    double pullN,
    Optional<Double> washerMPa,
    Optional<BoltStrength> strength,
    Optional<Tightening> tightening) {
  /**
   * Shear.
   *
   * @return size of its share along the plane, N
   */
  public double shearN() {
    return inPlane.totalN().norm();
  }

  /**
   * Part of the proof load taken by the pull; the preload is not in it.
   *
   * @return ratio, empty without a proof load
   */
  public Optional<Double> tensionUse() {
    return strength.map(s -> pullN / s.proofN());
  }

  /**
   * Part of the proof load in shear taken if friction holds nothing.
   *
   * @return ratio, empty without a proof load
   */
  public Optional<Double> shearUse() {
    return strength.map(s -> shearN() / s.shearProofN());
  }

  /**
   * Both, simply added. Our choice, and the severest of the usual ones: squares added, or tension
   * over 1.4 as in EN 1993-1-8 Table 3.4, never give more.
   *
   * @return ratio, empty without a proof load
   */
  public Optional<Double> use() {
    return strength.map(s -> pullN / s.proofN() + shearN() / s.shearProofN());
  }

  /**
   * Part of the preload that the pull takes off the joint; at 1 and more the plate lifts.
   *
   * @return ratio, empty without a preload
   */
  public Optional<Double> clampUse() {
    return tightening.map(t -> pullN / t.preloadN());
  }

  /**
   * Friction between plate and tower that would hold this bolt's shear without the bolt, from the
   * clamping that the pull leaves.
   *
   * @return coefficient, empty without a preload or where the pull leaves none
   */
  public Optional<Double> frictionNeeded() {
    return tightening.filter(t -> t.preloadN() > pullN).map(t -> shearN() / (t.preloadN() - pullN));
  }
}
