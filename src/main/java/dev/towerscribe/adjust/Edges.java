package dev.towerscribe.adjust;

/** What of two round holes a distance was taken between. */
public enum Edges {
  /** Centre to centre. */
  CENTRES("centres", 0),
  /** Between the near edges: outside jaws, one in each hole. */
  INSIDE("inside", -1),
  /** Across the far edges: inside jaws, one in each hole. */
  OUTSIDE("outside", 1);

  private final String word;
  private final int radii;

  Edges(String word, int radii) {
    this.word = word;
    this.radii = radii;
  }

  /**
   * The key of readings files and surveys.
   *
   * @return lower-case word
   */
  public String word() {
    return word;
  }

  /**
   * How often both radii are in the reading beyond the distance of the centres.
   *
   * @return -1, 0 or 1
   */
  public int radii() {
    return radii;
  }
}
