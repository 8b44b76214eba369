package dev.towerscribe.survey;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Side;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What came of a survey. Readings that cannot be right are already left out of it; each has a stop
 * finding.
 *
 * @param survey the readings
 * @param points stations, then each side's points: those of the strut first
 * @param sides the rest of each side
 * @param fit how the readings of the car's points agree
 * @param readings how each entry came out
 * @param findings most serious first
 */
public record SurveyResult(
    Survey survey,
    List<PointResult> points,
    Map<Side, SideResult> sides,
    Fit fit,
    List<ReadingResult> readings,
    List<Finding> findings) {
  /** Copies lists and map. */
  public SurveyResult {
    points = List.copyOf(points);
    sides = Collections.unmodifiableMap(new EnumMap<>(sides));
    readings = List.copyOf(readings);
    findings = List.copyOf(findings);
  }

  /**
   * Findings that bar the tables.
   *
   * @return in the order of the findings
   */
  public List<Finding> stops() {
    return findings.stream().filter(Finding::isStop).toList();
  }
}
