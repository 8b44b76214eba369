package dev.towerscribe.drawing;

/** What fills a shape or a letter. Only greys: sheets are read in poor light and printed grey. */
public enum Ink {
  /** Nothing. */
  NONE(-1),
  /** Black. */
  BLACK(0),
  /** A grey that still prints as one under black lettering. */
  PALE(0.88),
  /** Paper white, to clear what lies beneath. */
  WHITE(1);

  private final double grey;

  Ink(double grey) {
    this.grey = grey;
  }

  /**
   * Its lightness.
   *
   * @return 0 black to 1 white; -1 for none
   */
  public double grey() {
    return grey;
  }
}
