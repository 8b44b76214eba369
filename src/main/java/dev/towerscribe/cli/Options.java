package dev.towerscribe.cli;

import dev.towerscribe.model.Paper;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The pieces that command descriptions are made of. */
final class Options {
  private Options() {}

  /** A command with {@code --help} and an example at the foot of it. */
  static CommandSpec command(String name, String description, String... footer) {
    CommandSpec spec = CommandSpec.create().name("towerscribe " + name);
    spec.usageMessage().description(literal(description));
    spec.usageMessage().footer(footer);
    spec.addOption(
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description("Show what the command does.")
            .build());
    return spec;
  }

  /** Descriptions are format strings to the library: a per cent sign must be doubled. */
  private static String literal(String words) {
    return words.replace("%", "%%");
  }

  static PositionalParamSpec job() {
    return file(0, "JOB", "The job file (TOML).", true);
  }

  /** A file without an option before it. */
  static PositionalParamSpec file(int place, String label, String description, boolean needed) {
    return PositionalParamSpec.builder()
        .paramLabel(label)
        .type(String.class)
        .required(needed)
        .arity(needed ? "1" : "0..1")
        .index(Integer.toString(place))
        .description(description)
        .build();
  }

  static OptionSpec flag(String name, String description) {
    return OptionSpec.builder(name).type(boolean.class).description(literal(description)).build();
  }

  static OptionSpec json(String description) {
    return flag(ParsedCommand.JSON, description);
  }

  static OptionSpec force(String description) {
    return flag(ParsedCommand.FORCE, description);
  }

  static OptionSpec text(String label, String description, String... names) {
    return text(false, label, description, names);
  }

  private static OptionSpec text(
      boolean needed, String label, String description, String... names) {
    return OptionSpec.builder(names)
        .type(String.class)
        .required(needed)
        .paramLabel(label)
        .description(literal(description))
        .build();
  }

  /** Where one file goes. */
  static OptionSpec output(String description) {
    return text("FILE", description, ParsedCommand.OUTPUT, "--output");
  }

  /** Where files go that are replaced as one. */
  static OptionSpec directory(boolean needed, String description) {
    return text(needed, "DIR", description, ParsedCommand.OUTPUT, "--output");
  }

  static OptionSpec paper(String whose, String otherwise) {
    String words = String.join(", ", Arrays.stream(Paper.values()).map(Paper::word).toList());
    return text(
        "PAPER",
        "%s: %s. %s if not given.".formatted(whose, words, otherwise),
        ParsedCommand.PAPER);
  }

  static OptionSpec accept() {
    return accept("Accept this stop finding of the job, by its id. Every sheet carries it.");
  }

  static OptionSpec accept(String description) {
    return OptionSpec.builder(ParsedCommand.ACCEPT)
        .type(List.class)
        .auxiliaryTypes(String.class)
        .arity("1")
        .paramLabel("ID")
        .description(description + " May be given more than once.")
        .build();
  }
}
