package dev.towerscribe.strength;

/** Guards shared by the records of this package. */
final class Require {
  private Require() {}

  static void atLeast(String name, double value, double least) {
    if (!(value >= least) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be at least " + least + ", not " + value);
    }
  }

  static void positive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be positive, not " + value);
    }
  }

  static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be a number, not " + value);
    }
  }
}
