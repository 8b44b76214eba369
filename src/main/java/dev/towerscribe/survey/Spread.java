package dev.towerscribe.survey;

import dev.towerscribe.adjust.Propagation;
import dev.towerscribe.geometry.Vec3;

/**
 * Covariance of a point, mm2.
 *
 * @param xx variance of X
 * @param yy variance of Y
 * @param zz variance of Z
 * @param xy covariance of X and Y
 * @param yz covariance of Y and Z
 * @param zx covariance of Z and X
 */
public record Spread(double xx, double yy, double zz, double xy, double yz, double zx) {
  /** A place that is given. */
  static final Spread NONE = new Spread(0, 0, 0, 0, 0, 0);

  /**
   * One standard deviation of each coordinate.
   *
   * @return mm
   */
  public Vec3 sd() {
    return new Vec3(Propagation.root(xx), Propagation.root(yy), Propagation.root(zz));
  }

  /** With the second axis turned round. */
  Spread mirrored() {
    return new Spread(xx, yy, zz, -xy, -yz, zx);
  }

  Spread times(double factor) {
    return new Spread(factor * xx, factor * yy, factor * zz, factor * xy, factor * yz, factor * zx);
  }
}
