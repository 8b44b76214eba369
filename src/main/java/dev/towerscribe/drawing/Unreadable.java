package dev.towerscribe.drawing;

/** A written file is not of its format, or uses a part of it that its proof does not follow. */
public final class Unreadable extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * Refuses a file.
   *
   * @param message what is wrong with it
   */
  public Unreadable(String message) {
    super(message);
  }

  /**
   * Refuses a file unless it is as it must be.
   *
   * @param holds whether it is
   * @param complaint what is wrong otherwise
   * @throws Unreadable if it is not
   */
  public static void must(boolean holds, String complaint) throws Unreadable {
    if (!holds) {
      throw new Unreadable(complaint);
    }
  }
}
