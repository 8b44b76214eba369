package dev.towerscribe.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ParseResult;

/** What {@code record} is asked to do, and which options go with it. */
enum RecordUse {
  /** Add a visit. */
  ADD("adding a visit", List.of("--again", "--accept")),
  /** Show the record. */
  SHOW("showing a record", List.of("--json", "--visit", "--accept")),
  /** Write a visit's page. */
  PAGE("a visit's page", List.of("-o", "--visit", "--paper", "--force", "--accept")),
  /** List a folder. */
  LIST("--list", List.of("--list", "--csv", "-o", "--force"));

  private static final List<String> ALL =
      List.of(
          "--again",
          "--accept",
          "--json",
          "--visit",
          "-o",
          "--paper",
          "--force",
          "--list",
          "--csv");

  private final String words;
  private final List<String> options;

  RecordUse(String words, List<String> options) {
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
  static RecordUse of(ParseResult given) throws Refusal {
    boolean job = given.hasMatchedPositional(0);
    boolean visit = given.hasMatchedPositional(1);
    boolean list = given.hasMatchedOption("--list");
    if (list == job) {
      throw new Refusal(
          Exit.WRONG_USE,
          List.of(
              list ? "--list FOLDER goes without a JOB" : "which job? Give JOB, or --list FOLDER",
              "see: towerscribe record --help"));
    }
    RecordUse use = list ? LIST : visit ? ADD : given.hasMatchedOption("-o") ? PAGE : SHOW;
    List<String> odd = new ArrayList<>();
    for (String option : ALL) {
      if (given.hasMatchedOption(option) && !use.options.contains(option)) {
        odd.add(option + " does not go with " + use.words);
      }
    }
    if (!odd.isEmpty()) {
      throw new Refusal(Exit.WRONG_USE, odd);
    }
    return use;
  }
}
