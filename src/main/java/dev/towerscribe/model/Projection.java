package dev.towerscribe.model;

/** How the views of a drawing lie to each other, ISO 5456-2. */
public enum Projection {
  /** Seen from the left stands to the right. */
  FIRST("first"),
  /** Seen from the left stands to the left. */
  THIRD("third");

  private final String word;

  Projection(String word) {
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
