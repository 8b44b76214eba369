package dev.towerscribe.job;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;

/**
 * How far a figure may go, both ends allowed. The ends say what is believable on a car's strut
 * tower, to catch slips of the pen and of the unit; whether a job is workable is for the checks.
 *
 * @param least least value, in mm or in the unit of its kind
 * @param most greatest value
 * @param kind what is measured
 */
record AllowedRange(double least, double most, Kind kind) {
  /** What is measured. */
  enum Kind {
    LENGTH(""),
    ANGLE(" deg"),
    RATIO(""),
    DENSITY(" g/cm3"),
    FORCE(" N"),
    RATE(" N/mm");

    /** Its unit after a figure; lengths take that of their file. */
    private final String unit;

    Kind(String unit) {
      this.unit = unit;
    }

    /** Its unit by itself; empty for lengths, which have two, and for what has none. */
    String symbol() {
      return unit.strip();
    }
  }

  private static final int DECIMALS = 4;
  private static final double STEPS = 1e4;

  /** Rounding of a decimal fraction to a double, in steps; far below one step. */
  private static final double SLACK = 1e-6;

  static AllowedRange mm(double least, double most) {
    return new AllowedRange(least, most, Kind.LENGTH);
  }

  static AllowedRange degrees(double least, double most) {
    return new AllowedRange(least, most, Kind.ANGLE);
  }

  static AllowedRange ratio(double least, double most) {
    return new AllowedRange(least, most, Kind.RATIO);
  }

  boolean holds(double value) {
    return value >= least && value <= most;
  }

  /** Whether a length is believable in any unit a person may have meant: mm, in, cm or m. */
  boolean holdsInSomeUnit(double written) {
    return holds(written)
        || holds(LengthUnit.INCH.toMm(written))
        || holds(written * 10)
        || holds(written * 1000);
  }

  /** The range in words. Ends are rounded inward, so that a figure copied from here is accepted. */
  String words(LengthUnit unit) {
    return kind == Kind.LENGTH
        ? atLeast(unit.fromMm(least)) + " to " + atMost(unit.fromMm(most)) + " " + unit.symbol()
        : atLeast(least) + " to " + atMost(most) + kind.unit;
  }

  static String atLeast(double value) {
    return Numbers.plain(Math.ceil(value * STEPS - SLACK) / STEPS, DECIMALS);
  }

  static String atMost(double value) {
    return Numbers.plain(Math.floor(value * STEPS + SLACK) / STEPS, DECIMALS);
  }
}
