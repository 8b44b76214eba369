package dev.towerscribe.placement;

/** A job that no placement can be looked for, with the reason as a plain sentence. */
public final class CannotPlace extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * Says why.
   *
   * @param sentence what is missing and what to do about it
   */
  CannotPlace(String sentence) {
    super(sentence);
  }
}
