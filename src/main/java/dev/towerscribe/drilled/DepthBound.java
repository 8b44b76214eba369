package dev.towerscribe.drilled;

/**
 * A proof, good for every angle at once, of how deep the plate can sit at most: k - a cos(turn) - b
 * sin(turn). It touches the depth at the angle it was made at, where its slope is one of the
 * depth's.
 *
 * @param k mm
 * @param a mm
 * @param b mm
 */
record DepthBound(double k, double a, double b) {
  double at(double turn) {
    return k - a * Math.cos(turn) - b * Math.sin(turn);
  }

  double slope(double turn) {
    return a * Math.sin(turn) - b * Math.cos(turn);
  }

  /** Where it is greatest over a range of less than a full turn. */
  double highest(double from, double to) {
    double top = Math.atan2(-b, -a);
    double turns = Math.ceil((from - top) / (2 * Math.PI));
    double peak = top + 2 * Math.PI * turns;
    if ((a != 0 || b != 0) && peak >= from && peak <= to) {
      return peak;
    }
    return at(from) >= at(to) ? from : to;
  }
}
