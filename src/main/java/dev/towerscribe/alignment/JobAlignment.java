package dev.towerscribe.alignment;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The alignment of every side that gives something to work it out from.
 *
 * @param sides each such side's alignment, left first; perhaps none
 * @param crossBefore left against right before the work, where both are known
 * @param crossAt the same at the chosen settings
 * @param findings findings about both sides together
 */
public record JobAlignment(
    Map<Side, SideAlignment> sides,
    Optional<Cross> crossBefore,
    Optional<Cross> crossAt,
    List<Finding> findings) {
  /**
   * Left minus right.
   *
   * @param caster cross caster
   * @param camber cross camber
   */
  public record Cross(Angle caster, Angle camber) {}

  /** Copies both. */
  public JobAlignment {
    sides = Collections.unmodifiableMap(new TreeMap<>(sides));
    findings = List.copyOf(findings);
  }
}
