package dev.towerscribe.layout;

import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.model.Bracket;
import java.util.List;
import java.util.Optional;

/**
 * What is taken from a bracket so that the socket comes straight down on the bolts under it.
 *
 * @param bracket the bracket
 * @param bolts names of the bolts it stands in the way of
 * @param removed metal to remove, plan, not empty
 * @param remaining the bracket afterwards
 * @param widthLeftMm least metal left across any section through the notch
 * @param narrowest where that is, from edge to edge of the metal in plan; empty if no section is
 *     narrower than the whole bracket, or nothing is left
 */
public record Notch(
    Bracket bracket,
    List<String> bolts,
    Region removed,
    Region remaining,
    double widthLeftMm,
    Optional<Segment> narrowest) {
  /** Copies the list. */
  public Notch {
    bolts = List.copyOf(bolts);
  }
}
