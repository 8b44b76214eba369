package dev.towerscribe.record;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A visit beside what the job predicts for it.
 *
 * @param job the job
 * @param visit the visit
 * @param made where each visited wheel's plate went
 * @param compared every figure that was both predicted and measured, then what the work changed,
 *     then left minus right
 * @param explanations of each wheel that has figures, then of both together
 * @param findings cautions and notes
 */
public record Evaluation(
    Job job,
    Visit visit,
    Map<Side, MountAsMade> made,
    List<Compared> compared,
    List<Explanation> explanations,
    List<Finding> findings) {
  /** Copies. */
  public Evaluation {
    made = Collections.unmodifiableMap(new TreeMap<>(made));
    compared = List.copyOf(compared);
    explanations = List.copyOf(explanations);
    findings = List.copyOf(findings);
  }

  /**
   * One figure.
   *
   * @param side which wheel; empty for left minus right
   * @param stage when
   * @param figure which
   * @return it, if it was both predicted and measured
   */
  public Optional<Compared> of(Optional<Side> side, ReadingStage stage, BayFigure figure) {
    return compared.stream()
        .filter(c -> c.side().equals(side) && c.stage() == stage && c.figure() == figure)
        .findFirst();
  }

  /**
   * Findings that the compared figures do not show by themselves.
   *
   * @return aims, limits, left against right, what was not predicted
   */
  public List<Finding> beyondFigures() {
    return findings.stream().filter(f -> !RecordFindings.isOfAFigure(f)).toList();
  }

  /**
   * How many figures lie outside two standard deviations.
   *
   * @return a count
   */
  public int outside() {
    return (int) compared.stream().filter(c -> !c.within()).count();
  }
}
