package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** Property class of the bolts, ISO 898-1. */
public enum BoltClass implements Worded {
  /** 8.8; yield as for sizes up to M16. */
  CLASS_8_8("8.8", 640),
  /** 10.9. */
  CLASS_10_9("10.9", 940);

  private final String word;
  private final double yieldMPa;

  BoltClass(String word, double yieldMPa) {
    this.word = word;
    this.yieldMPa = yieldMPa;
  }

  @Override
  public String word() {
    return word;
  }

  /**
   * Least stress at 0.2 % lasting stretch, ISO 898-1.
   *
   * @return MPa
   */
  public double yieldMPa() {
    return yieldMPa;
  }
}
