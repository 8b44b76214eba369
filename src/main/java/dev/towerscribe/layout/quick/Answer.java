package dev.towerscribe.layout.quick;

/** What can be said quickly of a placement or of one of its checks. */
public enum Answer {
  /** It passes. */
  YES,
  /** It does not. */
  NO,
  /** The figure is too near its limit, or needs more work: the check itself must be asked. */
  UNSURE;

  /** Room for figures calculated in two ways, mm; wide of any rounding. */
  static final double UNSURE_MM = 1e-6;

  /** The answer where it is sure. */
  static Answer of(boolean passes) {
    return passes ? YES : NO;
  }

  /**
   * A figure that is known but for some rounding, held against its limit.
   *
   * @param figureMm the figure
   * @param limitMm least that passes
   * @return whether it passes
   */
  static Answer of(double figureMm, double limitMm) {
    double over = figureMm - limitMm;
    return over < -UNSURE_MM ? NO : over < UNSURE_MM ? UNSURE : YES;
  }

  /**
   * Both together.
   *
   * @param other another answer
   * @return no if either is, or else not sure if either is
   */
  Answer and(Answer other) {
    return this == NO || other == NO ? NO : this == UNSURE ? this : other;
  }
}
