package dev.towerscribe.sheet.text;

/**
 * Words that the work depends on do not fit on the paper. The job is to blame, not the program:
 * larger paper, a smaller margin or shorter names help.
 */
public final class NoRoomException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Says what found no room.
   *
   * @param message which words, and where
   */
  public NoRoomException(String message) {
    super(message);
  }
}
