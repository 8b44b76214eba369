package dev.towerscribe.drilled;

import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.model.Job;

/** Lays a job out with every check, those of its alignment too. */
public interface Layouter {
  /**
   * Lays a job out.
   *
   * @param job any job
   * @return where everything goes
   * @throws JobRejected if something lies past the edge of a domed tower top
   */
  JobLayout of(Job job) throws JobRejected;
}
