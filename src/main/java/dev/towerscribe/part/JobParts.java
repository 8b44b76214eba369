package dev.towerscribe.part;

import dev.towerscribe.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * The plates and sliders of a job.
 *
 * @param parts left or common plate, right plate, then sliders likewise
 * @param findings what is wrong or doubtful about making them, most serious first; ids begin with
 *     the part's hand
 */
public record JobParts(List<Part> parts, List<Finding> findings) {
  /** Copies the lists. */
  public JobParts {
    parts = List.copyOf(parts);
    findings = List.copyOf(findings);
  }

  /**
   * The part of a kind that serves a tower.
   *
   * @param kind plate or slider
   * @param hand left or right
   * @return it, if the job has one
   */
  public Optional<Part> find(PartKind kind, Hand hand) {
    return parts.stream()
        .filter(p -> p.kind() == kind && (p.hand() == hand || p.hand() == Hand.BOTH))
        .findFirst();
  }
}
