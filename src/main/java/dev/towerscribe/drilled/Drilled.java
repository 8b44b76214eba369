package dev.towerscribe.drilled;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A job's towers as they were drilled.
 *
 * @param job the job they were drilled from
 * @param readings what calipers said
 * @param sides each measured tower, left first
 */
public record Drilled(Job job, Readings readings, Map<Side, DrilledSide> sides) {
  /** Copies the map in the order of {@link Side}. */
  public Drilled {
    sides = Collections.unmodifiableMap(new EnumMap<>(sides));
  }

  /**
   * Works readings out.
   *
   * @param planned the job laid out
   * @param readings readings of its holes
   * @param layouter lays the job out again with its plates where they now go
   * @return each measured tower
   * @throws JobRejected as {@code layouter} does
   */
  public static Drilled of(JobLayout planned, Readings readings, Layouter layouter)
      throws JobRejected {
    Map<Side, DrilledSide> sides = new EnumMap<>(Side.class);
    for (Side side : readings.sides().keySet()) {
      sides.put(side, new DrilledSolver(planned, readings, side, layouter).side());
    }
    return new Drilled(planned.job(), readings, sides);
  }

  /**
   * Every stop finding of every side.
   *
   * @return stops, left first
   */
  public List<Finding> stops() {
    return sides.values().stream()
        .flatMap(s -> s.findings().stream())
        .filter(Finding::isStop)
        .toList();
  }
}
