package dev.towerscribe.cli;

import java.util.List;

/** A command that ends early, with what to tell the user and the exit code. */
final class Refusal extends Exception {
  private static final long serialVersionUID = 1L;

  private final int exit;
  private final transient List<String> lines;

  /**
   * Ends a command.
   *
   * @param exit one of {@link Exit}
   * @param lines plain sentences for standard error
   */
  Refusal(int exit, List<String> lines) {
    super(String.join("\n", lines));
    this.exit = exit;
    this.lines = List.copyOf(lines);
  }

  Refusal(int exit, String line) {
    this(exit, List.of(line));
  }

  int exit() {
    return exit;
  }

  List<String> lines() {
    return lines;
  }
}
