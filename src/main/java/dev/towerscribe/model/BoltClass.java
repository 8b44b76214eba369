package dev.towerscribe.model;

/** Property class of the bolts, ISO 898-1. */
public enum BoltClass {
  /** Tensile strength 800 MPa, yield at 0.8 of it. */
  CLASS_8_8("8.8"),
  /** Tensile strength 1000 MPa, yield at 0.9 of it. */
  CLASS_10_9("10.9");

  private final String word;

  BoltClass(String word) {
    this.word = word;
  }

  /**
   * The word used in job files.
   *
   * @return that word
   */
  public String word() {
    return word;
  }
}
