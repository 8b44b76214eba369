package dev.towerscribe.cli;

import java.util.List;
import java.util.stream.Stream;

/** What {@code record} is asked to do, and which options go with it. */
enum RecordOptions {
  /** Add a visit. */
  ADD("adding a visit", List.of("--again", ParsedCommand.ACCEPT)),
  /** Show the record. */
  SHOW("showing a record", List.of(ParsedCommand.JSON, "--visit", ParsedCommand.ACCEPT)),
  /** Write a visit's page. */
  PAGE(
      "a visit's page",
      List.of(
          ParsedCommand.OUTPUT,
          "--visit",
          ParsedCommand.PAPER,
          ParsedCommand.FORCE,
          ParsedCommand.ACCEPT)),
  /** Write a visit file to fill in. */
  START("a file to fill in", List.of("--start", ParsedCommand.OUTPUT, ParsedCommand.FORCE)),
  /** Strike an entry. */
  STRIKE("striking a visit", List.of("--strike", "--reason", "--date")),
  /** List a folder. */
  LIST("--list", List.of("--list", "--csv", ParsedCommand.OUTPUT, ParsedCommand.FORCE));

  private final String words;
  private final List<String> options;

  RecordOptions(String words, List<String> options) {
    this.words = words;
    this.options = options;
  }

  /**
   * What was asked.
   *
   * @param given the command line
   * @return the use
   * @throws Refusal if it asks for things that do not go together
   */
  static RecordOptions of(ParsedCommand given) throws Refusal {
    boolean list = given.has("--list");
    if (list == given.word(0).isPresent()) {
      throw Refusal.wrongUse(
          List.of(
              list ? "--list FOLDER goes without a JOB" : "which job? Give JOB, or --list FOLDER",
              "see: towerscribe record --help"));
    }
    if (given.word(1).isPresent() && (given.has("--start") || given.has("--strike"))) {
      throw Refusal.wrongUse("--start and --strike go without a VISIT");
    }
    RecordOptions use =
        list
            ? LIST
            : given.has("--strike")
                ? STRIKE
                : given.has("--start")
                    ? START
                    : given.word(1).isPresent()
                        ? ADD
                        : given.has(ParsedCommand.OUTPUT) ? PAGE : SHOW;
    Refusal.ifAny(
        Stream.of(values())
            .flatMap(u -> u.options.stream())
            .distinct()
            .filter(option -> given.has(option) && !use.options.contains(option))
            .map(option -> "%s does not go with %s".formatted(option, use.words))
            .toList());
    return use;
  }
}
