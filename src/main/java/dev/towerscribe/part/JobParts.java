package dev.towerscribe.part;

import dev.towerscribe.finding.Finding;
import java.util.List;

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
}
