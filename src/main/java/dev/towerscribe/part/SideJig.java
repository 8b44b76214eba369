package dev.towerscribe.part;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.Stated;
import java.util.List;
import java.util.Optional;

/**
 * The drilling jig of one tower.
 *
 * @param side which tower
 * @param part the jig; empty where a stop finding says why there is none
 * @param fromPlan plan (fore, in) to the jig's frame: x to the right and y forward, seen from above
 * @param bushingOutsideMm outside diameter of its bushings; assumed: from memory, DIN 179
 * @param findings what to know about it, most serious first
 */
public record SideJig(
    Side side,
    Optional<Part> part,
    Frame2 fromPlan,
    Stated<Double> bushingOutsideMm,
    List<Finding> findings) {
  /** Copies the list. */
  public SideJig {
    findings = List.copyOf(findings);
  }
}
