package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/**
 * Which face of the tower the plate lies against; it decides whether the strut pulls on the bolts.
 */
public enum Seat implements Worded {
  /** On the upper face: the strut lifts the plate, and the bolts hold it down. */
  ON_TOP("top", "on top of the tower"),
  /** Against the lower face: the strut presses the plate home, and the bolts keep it in place. */
  UNDERNEATH("under", "underneath the tower");

  private final String word;
  private final String words;

  Seat(String word, String words) {
    this.word = word;
    this.words = words;
  }

  @Override
  public String word() {
    return word;
  }

  /**
   * For reports.
   *
   * @return words that follow "the plate lies"
   */
  public String words() {
    return words;
  }

  /**
   * What a bolt must hold of an axial share; where the plate is pressed against the tower, nothing.
   *
   * @param upwardN share of the load at the bolt, N, positive along the tower's upward normal
   * @return pull in the bolt, N, not negative
   */
  public double pullN(double upwardN) {
    return Math.max(0.0, this == ON_TOP ? upwardN : -upwardN);
  }
}
