package dev.towerscribe.model;

/** What holds a plate's bolts, which decides how true its holes must lie. */
public enum Fastening {
  /** Bolts pass clearance holes in both plate and tower. */
  FLOATING("floating"),
  /** Studs or tapped holes in the plate; clearance holes in the tower alone. */
  FIXED("fixed");

  private final String word;

  Fastening(String word) {
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
