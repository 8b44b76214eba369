package dev.towerscribe.model;

/** Guards shared by the records of this package. */
final class Checks {
  private Checks() {}

  static void positive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be positive, not " + value);
    }
  }

  static void notNegative(String name, double value) {
    if (!(value >= 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must not be negative: " + value);
    }
  }

  static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be a number, not " + value);
    }
  }
}
