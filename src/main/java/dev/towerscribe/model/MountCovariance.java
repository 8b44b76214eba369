package dev.towerscribe.model;

import dev.towerscribe.quantity.Require;

/**
 * How sure a mount is: the covariance of its rotation (radians), rearward and inboard offset (mm).
 *
 * @param rotation variance of the rotation, rad2
 * @param rearward variance of the rearward offset, mm2
 * @param inboard variance of the inboard offset, mm2
 * @param rotationRearward covariance, rad mm
 * @param rotationInboard covariance, rad mm
 * @param rearwardInboard covariance, mm2
 */
public record MountCovariance(
    double rotation,
    double rearward,
    double inboard,
    double rotationRearward,
    double rotationInboard,
    double rearwardInboard) {
  /** A mount known exactly. */
  public static final MountCovariance EXACT = new MountCovariance(0, 0, 0, 0, 0, 0);

  /** Checks that the figures are numbers and the variances not negative. */
  public MountCovariance {
    Require.notNegative("variance of the rotation", rotation);
    Require.notNegative("variance of rearward", rearward);
    Require.notNegative("variance of inboard", inboard);
    Require.finite("covariance", rotationRearward);
    Require.finite("covariance", rotationInboard);
    Require.finite("covariance", rearwardInboard);
  }

  /**
   * One standard deviation of a figure, to first order.
   *
   * @param byRotation its derivative by the rotation, per radian
   * @param byRearward by the rearward offset, per mm
   * @param byInboard by the inboard offset, per mm
   * @return its standard deviation; rounding below zero counts as zero
   */
  public double plusMinus(double byRotation, double byRearward, double byInboard) {
    double variance =
        byRotation * byRotation * rotation
            + byRearward * byRearward * rearward
            + byInboard * byInboard * inboard
            + 2 * byRotation * byRearward * rotationRearward
            + 2 * byRotation * byInboard * rotationInboard
            + 2 * byRearward * byInboard * rearwardInboard;
    return Math.sqrt(Math.max(0.0, variance));
  }
}
