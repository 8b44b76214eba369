package dev.towerscribe.strength;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.SideJob;
import java.util.Optional;

/** The line along which the strut pushes on its top bearing: upward, along the damper's axis. */
public final class StrutLine {
  private StrutLine() {}

  /**
   * From the strut's measured points, at ride height: from the lower point of the damper's axis to
   * the bearing where the job puts it.
   *
   * @param job a side
   * @return unit vector up the strut, vehicle axes; empty if its points were not measured
   */
  public static Optional<Vec3> of(SideJob job) {
    return job.strut()
        .map(
            strut -> {
              Lean lean = job.tower().lean();
              Vec2 at = job.bearing(job.mount().settingMm());
              double rise = job.bearingHeightMm() - job.tower().pivotHeightMm();
              return strut
                  .top()
                  .plus(lean.fore(job.side()).times(at.x()))
                  .plus(lean.in(job.side()).times(at.y()))
                  .plus(lean.normal(job.side()).times(rise))
                  .minus(strut.strutLower())
                  .unit();
            });
  }
}
