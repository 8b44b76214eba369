package dev.towerscribe.record;

import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.SideJob;
import java.util.Collections;
import java.util.List;

/**
 * Where a plate went, and how sure that is. Planned places are taken as exact; places found from
 * the drilled holes bring a covariance with them.
 *
 * @param mount where the plate went; its setting gives way to the visit's
 * @param covariance variances and covariances in the order of {@link Sensitivity.Choice}: rotation
 *     in radians, the others in mm; four rows of four
 * @param source where this comes from, in words: "as planned"
 */
public record MountAsMade(Mount mount, List<List<Double>> covariance, String source) {
  private static final int CHOICES = Sensitivity.Choice.values().length;

  /** Checks the size and copies. */
  public MountAsMade {
    covariance = covariance.stream().map(List::copyOf).toList();
    if (covariance.size() != CHOICES || covariance.stream().anyMatch(r -> r.size() != CHOICES)) {
      throw new IllegalArgumentException("a covariance of four choices is four by four");
    }
  }

  /**
   * The job's own plan, taken as exact.
   *
   * @param job a side
   * @return its mount without uncertainty
   */
  public static MountAsMade planned(SideJob job) {
    List<Double> none = Collections.nCopies(CHOICES, 0.0);
    return new MountAsMade(job.mount(), Collections.nCopies(CHOICES, none), "as planned");
  }
}
