package dev.towerscribe.quantity;

/** Guards of a record's figures: each throws {@link IllegalArgumentException} with its name. */
public final class Require {
  private Require() {}

  /**
   * Above zero and finite.
   *
   * @param name what the figure is called in the message
   * @param value the figure
   */
  public static void positive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be positive, not " + value);
    }
  }

  /**
   * Zero or above, and finite.
   *
   * @param name what the figure is called in the message
   * @param value the figure
   */
  public static void notNegative(String name, double value) {
    if (!(value >= 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must not be negative: " + value);
    }
  }

  /**
   * Not below a least figure, and finite.
   *
   * @param name what the figure is called in the message
   * @param value the figure
   * @param least the least it may be
   */
  public static void atLeast(String name, double value, double least) {
    if (!(value >= least) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be at least " + least + ", not " + value);
    }
  }

  /**
   * Finite, of either sign.
   *
   * @param name what the figure is called in the message
   * @param value the figure
   */
  public static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be a number, not " + value);
    }
  }
}
