package dev.towerscribe.drilled;

import java.util.Objects;

/**
 * A distance between two round features of a tower, as calipers took it.
 *
 * @param from a hole's or a landmark's name
 * @param to another's
 * @param between which of their edges
 * @param length what was read
 */
public record SpanReading(String from, String to, Between between, Repeated length) {
  /** Checks that there are two ends. */
  public SpanReading {
    Objects.requireNonNull(between);
    Objects.requireNonNull(length);
    if (from.equals(to)) {
      throw new IllegalArgumentException("a span from " + from + " to itself");
    }
  }

  /** Where the jaws stood. */
  public enum Between {
    /** Centre to centre. */
    CENTRES("centres", 0.0),
    /** Between the near edges: outside jaws, one in each hole. */
    INSIDE("inside", -1.0),
    /** Across the far edges: inside jaws, one in each hole. */
    OUTSIDE("outside", 1.0);

    private final String word;
    private final double radii;

    Between(String word, double radii) {
      this.word = word;
      this.radii = radii;
    }

    /**
     * The word used in readings files.
     *
     * @return lower-case word
     */
    public String word() {
      return word;
    }

    /**
     * How often the reading has both radii beyond the distance of the centres.
     *
     * @return -1, 0 or 1
     */
    public double radii() {
      return radii;
    }
  }

  /**
   * The reading in words.
   *
   * @return for instance "A to B (inside)"
   */
  public String words() {
    return from + " to " + to + " (" + between.word() + ")";
  }
}
