package dev.towerscribe.survey;

import dev.towerscribe.adjust.Network;

/**
 * Where a point can be and mostly is: decides between places that fit the readings alike.
 *
 * @param likely where such a point is on most cars, mm
 * @param least the least each coordinate can be: a car's points are above the floor
 * @param most the greatest
 */
record Plausible(double[] likely, double[] least, double[] most) {
  /** Anywhere. */
  static Plausible anywhere(double... likely) {
    return new Plausible(likely, all(-Double.MAX_VALUE), all(Double.MAX_VALUE));
  }

  static double[] all(double value) {
    return new double[] {value, value, value};
  }

  /** How many coordinates are where such a point cannot be. */
  int outside(double[] at) {
    int count = 0;
    for (int axis = 0; axis < Network.AXES; axis++) {
      count += at[axis] < least[axis] || at[axis] > most[axis] ? 1 : 0;
    }
    return count;
  }
}
