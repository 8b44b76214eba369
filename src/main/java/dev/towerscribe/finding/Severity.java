package dev.towerscribe.finding;

/** How much a finding weighs, gravest first. */
public enum Severity {
  /** No cutting sheet unless this very finding is accepted by its id. */
  STOP("stop"),
  /** Work may go on; the figure is poor or could not be known. */
  CAUTION("caution"),
  /** For information, and for the record that the check passed. */
  NOTE("note");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /**
   * The word used in reports and in JSON.
   *
   * @return lower-case word
   */
  public String word() {
    return word;
  }
}
