package dev.towerscribe.cli;

/** A bar on standard error for someone who waits at a terminal, gone when the work is done. */
final class ProgressBar implements AutoCloseable {
  private static final int CELLS = 40;

  private final Console console;
  private final boolean terminal;
  private int shown = -1;

  private ProgressBar(Console console, boolean terminal) {
    this.console = console;
    this.terminal = terminal;
  }

  /**
   * A bar if a terminal is there, and otherwise nothing.
   *
   * @param console where it goes
   * @return the bar
   */
  static ProgressBar ofTerminal(Console console) {
    return new ProgressBar(console, System.console() != null);
  }

  /** A bar on anything, for tests. */
  static ProgressBar always(Console console) {
    return new ProgressBar(console, true);
  }

  /**
   * Shows how far the work is.
   *
   * @param fraction 0 to 1
   */
  synchronized void at(double fraction) {
    int cells = (int) Math.floor(CELLS * Math.max(0.0, Math.min(1.0, fraction)));
    if (terminal && cells > shown) {
      shown = cells;
      console.status("[" + "#".repeat(cells) + ".".repeat(CELLS - cells) + "]");
    }
  }

  @Override
  public synchronized void close() {
    if (shown >= 0) {
      console.status("");
      shown = -1;
    }
  }
}
