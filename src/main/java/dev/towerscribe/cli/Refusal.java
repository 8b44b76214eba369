package dev.towerscribe.cli;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import java.util.List;
import java.util.stream.Stream;

/** A command that ends early, with what to tell the user and the exit code. */
final class Refusal extends Exception {
  /** What a user can do about a fault of ours. */
  static final String PLEASE_REPORT =
      "this is a fault of the program: please report it, with the job file and these lines";

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

  /**
   * Wrong use or bad input.
   *
   * @param words one sentence; with values, a template with {@code %s} for each
   * @param values what goes into it
   */
  static Refusal wrongUse(String words, Object... values) {
    return wrongUse(List.of(values.length == 0 ? words : words.formatted(values)));
  }

  static Refusal wrongUse(List<String> lines) {
    return new Refusal(Exit.WRONG_USE, lines);
  }

  /** A file with faults, each of which is told. */
  static Refusal of(String head, JobRejected faults) {
    return of(head, faults.faults().stream().map(Fault::line).toList());
  }

  /** Bad input, and each thing that is wrong with it. */
  static Refusal of(String head, List<String> each) {
    return wrongUse(Stream.concat(Stream.of(head), each.stream()).toList());
  }

  /** A fault of the program's own. */
  static Refusal ourFault(String line) {
    return new Refusal(Exit.OUR_FAULT, List.of(line, PLEASE_REPORT));
  }

  /** Ends a command if anything is wrong with its words. */
  static void ifAny(List<String> lines) throws Refusal {
    if (!lines.isEmpty()) {
      throw wrongUse(lines);
    }
  }

  int exit() {
    return exit;
  }

  List<String> lines() {
    return lines;
  }
}
