package dev.towerscribe.layout;

import dev.towerscribe.geometry.Region;
import dev.towerscribe.model.Bracket;
import java.util.List;

/**
 * What is taken from a bracket so that the socket comes straight down on the bolts under it.
 *
 * @param bracket the bracket
 * @param bolts names of the bolts it stands in the way of
 * @param removed metal to remove, plan, not empty
 * @param remaining the bracket afterwards
 * @param widthLeftMm least metal left across any section through the notch
 */
public record Notch(
    Bracket bracket, List<String> bolts, Region removed, Region remaining, double widthLeftMm) {
  /** Copies the list. */
  public Notch {
    bolts = List.copyOf(bolts);
  }
}
