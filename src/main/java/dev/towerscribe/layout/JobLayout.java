package dev.towerscribe.layout;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A whole job, laid out.
 *
 * @param job what it was laid out from
 * @param sides each side's layout, left first
 */
public record JobLayout(Job job, Map<Side, SideLayout> sides) {
  /** Copies the map in the order of {@link Side}. */
  public JobLayout {
    sides = Collections.unmodifiableMap(new EnumMap<>(sides));
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
        .distinct()
        .toList();
  }
}
