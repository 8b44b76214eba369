package dev.towerscribe.cli;

import java.io.PrintStream;
import java.util.regex.Pattern;

/**
 * Where words go. Lines end in a line feed on every system and are never formatted by a locale, so
 * that the same command prints the same bytes everywhere. Control characters in what a user's file
 * brought along are shown as question marks: a terminal would obey them.
 */
final class Console {
  private static final Pattern CONTROLS = Pattern.compile("[\\x00-\\x1f\\x7f-\\x9f&&[^\n]]");

  private final PrintStream out;
  private final PrintStream err;

  /**
   * Wraps two streams.
   *
   * @param out results, UTF-8
   * @param err messages, UTF-8
   */
  Console(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  /**
   * A line of result.
   *
   * @param line words without line end; with values, a template with {@code %s} for each
   * @param values what goes into it
   */
  void say(String line, Object... values) {
    out.print(visible(values.length == 0 ? line : line.formatted(values)));
    out.print('\n');
  }

  /**
   * A result of several lines, ended by its own line end.
   *
   * @param text words
   */
  void print(String text) {
    out.print(visible(text));
  }

  /**
   * Data for other programs, byte for byte.
   *
   * @param text free of what a terminal would obey, lines ended as their format wants
   */
  void data(String text) {
    out.print(text);
  }

  /**
   * A message about what went on or went wrong.
   *
   * @param line words without line end; with values, a template with {@code %s} for each
   * @param values what goes into it
   */
  void warn(String line, Object... values) {
    err.print("towerscribe: ");
    err.print(visible(values.length == 0 ? line : line.formatted(values)));
    err.print('\n');
  }

  /**
   * A line on standard error that the next one takes the place of; for terminals only.
   *
   * @param words no longer than a terminal is wide; empty to clear the line
   */
  void status(String words) {
    err.print('\r' + words + "\u001b[K");
    err.flush();
  }

  /**
   * The working of an unexpected fault, only for someone who asked to see it.
   *
   * @param fault what was thrown
   */
  void trace(Throwable fault) {
    fault.printStackTrace(err);
  }

  /**
   * Sends everything on its way.
   *
   * @return false if standard output did not take it, for instance on a full disk
   */
  boolean flush() {
    err.flush();
    return !out.checkError();
  }

  private static String visible(String text) {
    return CONTROLS.matcher(text).replaceAll("?");
  }
}
