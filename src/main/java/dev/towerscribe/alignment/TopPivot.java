package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;

/** Where the strut's top goes when the bearing is set somewhere on the tower. */
public final class TopPivot {
  private TopPivot() {}

  /**
   * From the original pivot along the tower's plane to a bearing in plan, and up its normal by the
   * difference of both heights.
   *
   * @param original original top pivot, left side
   * @param job the side's tower and plate
   * @param bearing bearing centre, plan (fore, in)
   * @return the new top pivot, left side
   */
  public static Vec3 moved(Vec3 original, SideJob job, Vec2 bearing) {
    Lean lean = job.tower().lean();
    double rise = job.bearingHeightMm() - job.tower().pivotHeightMm();
    return original
        .plus(lean.fore(Side.LEFT).times(bearing.x()))
        .plus(lean.in(Side.LEFT).times(bearing.y()))
        .plus(lean.normal(Side.LEFT).times(rise));
  }
}
