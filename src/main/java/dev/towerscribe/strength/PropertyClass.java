package dev.towerscribe.strength;

/** Strength class of a steel bolt, as marked on its head. */
public enum PropertyClass {
  /** 8.8; yield as for sizes up to M16. */
  CLASS_8_8("8.8", 640),
  /** 10.9. */
  CLASS_10_9("10.9", 940);

  private final String mark;
  private final double yieldMPa;

  PropertyClass(String mark, double yieldMPa) {
    this.mark = mark;
    this.yieldMPa = yieldMPa;
  }

  /**
   * What the head says.
   *
   * @return for instance "8.8"
   */
  public String mark() {
    return mark;
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
