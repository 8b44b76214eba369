package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import java.util.Objects;

/**
 * A distance between two round features of a tower, as calipers took it.
 *
 * @param from a hole's or a landmark's name
 * @param to another's
 * @param edges which of their edges
 * @param length what was read
 */
public record SpanReading(String from, String to, Edges edges, Repeated length) {
  /** Checks that there are two ends. */
  public SpanReading {
    Objects.requireNonNull(edges);
    Objects.requireNonNull(length);
    if (from.equals(to)) {
      throw new IllegalArgumentException("a span from " + from + " to itself");
    }
  }

  /**
   * The reading in words.
   *
   * @return for instance "A to B (inside)"
   */
  public String words() {
    return from + " to " + to + " (" + edges.word() + ")";
  }
}
