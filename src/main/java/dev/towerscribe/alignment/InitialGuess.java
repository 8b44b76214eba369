package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.StrutPoints;

/**
 * Where to begin when an arm is turned to a wheel height: a parabola through three heights, shifted
 * by what the top pivot's place does to them. Only how many steps follow depends on it.
 */
final class InitialGuess {
  /** Tangents of half the arm's angle looked at: about what full bump and droop take. */
  private static final double HALF_TANGENT = 0.12;

  /** How far the top pivot is moved to see what it does, mm. */
  private static final double TOP_MM = 1.0;

  private final Vec3 top;
  private final double heightZ;
  private final double linear;
  private final double square;
  private final double perX;
  private final double perY;
  private final double perZ;

  /**
   * Looks at a linkage.
   *
   * @param linkage the linkage
   * @param points where its pivots are
   */
  InitialGuess(Linkage linkage, StrutPoints points) {
    top = points.top();
    LinkageSolver link = new LinkageSolver(linkage);
    link.tied(points.tieInner(), linkage.tieLength());
    heightZ = height(link, 0, 0, 0, 0.0);
    double up = height(link, 0, 0, 0, HALF_TANGENT) - heightZ;
    double down = height(link, 0, 0, 0, -HALF_TANGENT) - heightZ;
    perX = (height(link, TOP_MM, 0, 0, 0.0) - heightZ) / TOP_MM;
    perY = (height(link, 0, TOP_MM, 0, 0.0) - heightZ) / TOP_MM;
    perZ = (height(link, 0, 0, TOP_MM, 0.0) - heightZ) / TOP_MM;
    square = HALF_TANGENT * (1 / up + 1 / down) / (up - down);
    linear = HALF_TANGENT / up - square * up;
  }

  private double height(LinkageSolver link, double dx, double dy, double dz, double halfTangent) {
    link.top(top.x() + dx, top.y() + dy, top.z() + dz);
    return link.at(2 * Math.atan(halfTangent)) == null ? link.wheelZ() : Double.NaN;
  }

  /** Tangent of half the arm's angle, about; 0, as measured, where nothing better is known. */
  double at(double wheelZMm, Vec3 at) {
    double shift =
        perX * (at.x() - top.x()) + perY * (at.y() - top.y()) + perZ * (at.z() - top.z());
    double rise = wheelZMm - heightZ - shift;
    double h = rise * (linear + square * rise);
    return Math.abs(h) < 0.5 ? h : 0.0;
  }
}
