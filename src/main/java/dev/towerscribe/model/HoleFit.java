package dev.towerscribe.model;

/** Tolerance of a bored hole, ISO 286: its least size is the nominal one. */
public enum HoleFit {
  /** A ground or reamed seat, for a bearing, a bushing or a dowel. */
  H7("H7"),
  /** A drilled hole. */
  H13("H13");

  private final String word;

  HoleFit(String word) {
    this.word = word;
  }

  /**
   * The word used in job files and on drawings.
   *
   * @return that word
   */
  public String word() {
    return word;
  }
}
