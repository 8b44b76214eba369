package dev.towerscribe.cli;

/** Entry. */
public final class Main {
  private Main() {}

  /**
   * Runs.
   *
   * @param args words
   */
  public static void main(String[] args) {}
}
