package dev.towerscribe.layout;

import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;

/** The plate's place in the plan. */
public final class PlateFrames {
  private PlateFrames() {}

  /**
   * Plate frame to plan (fore, in): x axis (-sin q, cos q), y axis (cos q, sin q), origin
   * (-rearward, inboard).
   *
   * @param job a side, its plate where it goes
   * @return the map; it reflects where {@link #hand} is negative
   */
  public static Frame2 toPlan(SideJob job) {
    Mount mount = job.mount();
    double sin = mount.rotation().sin();
    double cos = mount.rotation().cos();
    double hand = hand(job);
    return new Frame2(
        new Vec2(-mount.rearwardMm(), mount.inboardMm()),
        new Vec2(-sin, cos),
        new Vec2(hand * cos, hand * sin));
  }

  /**
   * Which way the plate's y axis points. The plan is written in the hand of the left tower, so one
   * part used on both sides arrives on the right tower flipped; a mirrored pair does not.
   *
   * @param job a side
   * @return 1, or -1 for a flipped plate
   */
  public static double hand(SideJob job) {
    return job.side() == Side.RIGHT && !job.plate().handed() ? -1.0 : 1.0;
  }
}
