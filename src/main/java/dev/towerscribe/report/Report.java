package dev.towerscribe.report;

import dev.towerscribe.quantity.Lengths;
import java.util.List;

/**
 * Everything that is to be said of one subject, in reading order.
 *
 * @param title what it is
 * @param lengths the unit of its figures
 * @param blocks its parts
 */
public record Report(String title, Lengths lengths, List<Block> blocks) {
  /** Copies the list. */
  public Report {
    blocks = List.copyOf(blocks);
  }
}
