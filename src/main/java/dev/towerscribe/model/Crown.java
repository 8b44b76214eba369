package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Require;

/**
 * A domed tower top: part of a sphere whose pole is the plan's origin, measured with a straightedge
 * laid across it.
 *
 * @param acrossMm width w over which the rise was measured, positive
 * @param riseMm rise h of the dome's middle over that width, positive, at most half the width
 */
public record Crown(double acrossMm, double riseMm) {
  /** Checks the figures. */
  public Crown {
    Require.positive("crown width", acrossMm);
    Require.positive("crown rise", riseMm);
    if (riseMm > acrossMm / 2) {
      throw new IllegalArgumentException("a dome rises at most half its width");
    }
  }

  /**
   * The sphere's radius, from the sagitta: (w^2 / 4 + h^2) / (2 h).
   *
   * @return mm
   */
  public double radiusMm() {
    return (acrossMm * acrossMm / 4 + riseMm * riseMm) / (2 * riseMm);
  }

  /**
   * How far from the pole along the skin a plan point lies: R asin(r / R).
   *
   * @param planRadiusMm distance from the origin in plan, below the sphere's radius
   * @return mm along the skin
   * @throws IllegalArgumentException at or past the sphere's radius
   */
  public double alongSkinMm(double planRadiusMm) {
    double radius = radiusMm();
    if (!(planRadiusMm < radius)) {
      throw new IllegalArgumentException(
          "a point " + planRadiusMm + " mm out lies past the dome of radius " + radius + " mm");
    }
    return radius * Math.asin(planRadiusMm / radius);
  }

  /**
   * Where a plan point lies on paper that follows the skin (azimuthal equidistant projection:
   * Snyder, USGS Professional Paper 1395).
   *
   * @param plan plan point, closer to the origin than the sphere's radius
   * @return paper point, same direction from the origin
   */
  public Vec2 onPaper(Vec2 plan) {
    double r = plan.norm();
    return r == 0.0 ? plan : plan.times(alongSkinMm(r) / r);
  }
}
