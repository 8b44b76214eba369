package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import java.util.ArrayList;
import java.util.List;

/**
 * Points that make no linkage: in a line where a triangle is needed, or upside down. The limits are
 * far from any real strut and far from where rounding would begin to show.
 *
 * @param points the job's names of the points
 * @param figureMm what was found
 * @param leastMm what is needed
 * @param say what is wrong, a sentence
 */
record PointFault(String points, double figureMm, double leastMm, String say) {
  /** Common practice, no source: a lower arm shorter than this is on no car. */
  private static final double LEAST_ARM_MM = 50;

  /** Common practice, no source: a shorter steering arm could not steer. */
  private static final double LEAST_STEERING_ARM_MM = 10;

  /** Common practice, no source: a strut is several times as tall. */
  private static final double LEAST_HEIGHT_MM = 100;

  /** What is wrong with a side's points; nothing for a side without. */
  static List<PointFault> in(SideJob job) {
    List<PointFault> found = new ArrayList<>();
    if (job.strut().isEmpty()) {
      return found;
    }
    StrutPoints h = job.strut().get().onLeft(job.side());
    least(
        found,
        "arm_front, arm_rear, ball_joint",
        fromLine(h.ballJoint(), h.armFront(), h.armRear()),
        LEAST_ARM_MM,
        "The ball joint lies on the arm's inner axis or nearly so, and could not move up and"
            + " down: measure the three points again.");
    double height = h.top().z() - h.ballJoint().z();
    least(
        found,
        "top, ball_joint",
        height,
        LEAST_HEIGHT_MM,
        "The top pivot must lie well above the ball joint: check Z of both.");
    Plate.Slot slot = job.plate().slot();
    for (double setting : List.of(slot.fromMm(), slot.toMm())) {
      if (found.isEmpty()) {
        Vec3 moved = TopPivot.moved(h.top(), job, job.bearing(setting));
        least(
            found,
            "new top pivot, ball_joint",
            moved.z() - h.ballJoint().z(),
            LEAST_HEIGHT_MM,
            "With the bearing there the top pivot would not lie well above the ball joint: check"
                + " the plate's and the pivot's heights.");
      }
    }
    if (height >= LEAST_HEIGHT_MM) {
      least(
          found,
          "tie_outer, top, ball_joint",
          fromLine(h.tieOuter(), h.top(), h.ballJoint()),
          LEAST_STEERING_ARM_MM,
          "The outer tie rod end lies on the steering axis or nearly so, and could not turn the"
              + " wheel: measure the three points again.");
    }
    return found;
  }

  private static void least(
      List<PointFault> found, String points, double figure, double least, String say) {
    if (!(figure >= least)) {
      found.add(new PointFault(points, figure, least, say));
    }
  }

  private static double fromLine(Vec3 p, Vec3 a, Vec3 b) {
    Vec3 along = b.minus(a);
    return p.minus(a).cross(along).norm() / along.norm();
  }
}
