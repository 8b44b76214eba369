package dev.towerscribe.placement;

/** A job that no placement can be looked for, with the reason as a plain sentence. */
public final class CannotPlace extends Exception {
  private static final long serialVersionUID = 1L;

  private final boolean stop;

  private CannotPlace(String sentence, boolean stop) {
    super(sentence);
    this.stop = stop;
  }

  /** The job does not give what a search needs; the sentence says what, and what to do about it. */
  static CannotPlace lacking(String sentence) {
    return new CannotPlace(sentence, false);
  }

  /** The job gives it all, and it makes no linkage: what stops the alignment stops a search. */
  static CannotPlace stopped(String sentence) {
    return new CannotPlace(sentence, true);
  }

  /**
   * Whether the job was understood and its measurements are what bars a search.
   *
   * @return true for a stop; false for a job that lacks something or asks for what cannot be had
   */
  public boolean isStop() {
    return stop;
  }
}
