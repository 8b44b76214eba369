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
public record PointCovariance(double xx, double yy, double zz, double xy, double yz, double zx) {
  /** A place that is given. */
  static final PointCovariance NONE = new PointCovariance(0, 0, 0, 0, 0, 0);

  /**
   * One standard deviation of each coordinate.
   *
   * @return mm
   */
  public Vec3 sd() {
    return new Vec3(Propagation.root(xx), Propagation.root(yy), Propagation.root(zz));
  }

  /** With the second axis turned round. */
  PointCovariance mirrored() {
    return new PointCovariance(xx, yy, zz, -xy, -yz, zx);
  }

  PointCovariance times(double factor) {
    return new PointCovariance(
        factor * xx, factor * yy, factor * zz, factor * xy, factor * yz, factor * zx);
  }
}
