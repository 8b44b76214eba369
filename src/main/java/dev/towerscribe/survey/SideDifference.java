package dev.towerscribe.survey;

import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.adjust.Row;

/** How sure the difference of a point's two sides is, each told as if on the left. */
final class SideDifference {
  private SideDifference() {}

  /**
   * Standard deviation of right less left in one coordinate. Outward is -Y on the right, so there
   * the two sides' errors add up in the difference.
   *
   * @param sure covariance of the car's points, vehicle axes
   * @param left unknown of the left point's coordinate
   * @param right unknown of the right point's
   * @param outward whether it is the coordinate outward
   * @return mm
   */
  static double sd(Covariance sure, int left, int right, boolean outward) {
    return sure.sd(new Row(new int[] {left, right}, new double[] {-1, outward ? -1 : 1}));
  }
}
