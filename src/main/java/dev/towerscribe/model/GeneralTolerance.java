package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** Class of the general tolerances of ISO 2768-1, for sizes with no tolerance of their own. */
public enum GeneralTolerance implements Worded {
  /** Fine. */
  FINE("f"),
  /** Medium. */
  MEDIUM("m"),
  /** Coarse. */
  COARSE("c");

  private final String word;

  GeneralTolerance(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
