package dev.towerscribe.cli;

import dev.towerscribe.model.Paper;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * What may stand behind a command's name, put together piece by piece.
 *
 * @param spec the pieces so far
 */
record Options(CommandSpec spec) {
  /** A command with {@code --help} and an example at the foot of it. */
  static Options command(String name, String description, String... footer) {
    CommandSpec spec = CommandSpec.create().name("towerscribe " + name);
    spec.usageMessage().description(literal(description)).footer(footer);
    OptionSpec.Builder help = OptionSpec.builder("-h", "--help").usageHelp(true);
    return new Options(spec.addOption(help.description("Show what the command does.").build()));
  }

  /** Descriptions are format strings to the library: a per cent sign must be doubled. */
  private static String literal(String words) {
    return words.replace("%", "%%");
  }

  private Options with(OptionSpec.Builder option, String description) {
    spec.addOption(option.description(literal(description)).build());
    return this;
  }

  Options job() {
    return file(0, "JOB", "The job file (TOML).", true);
  }

  /** A file without an option before it. */
  Options file(int place, String label, String description, boolean needed) {
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel(label)
            .type(String.class)
            .required(needed)
            .arity(needed ? "1" : "0..1")
            .index(Integer.toString(place))
            .description(description)
            .build());
    return this;
  }

  Options flag(String name, String description) {
    return with(OptionSpec.builder(name).type(boolean.class), description);
  }

  Options json(String description) {
    return flag(ParsedCommand.JSON, description);
  }

  Options force(String description) {
    return flag(ParsedCommand.FORCE, description);
  }

  Options text(String label, String description, String... names) {
    return text(false, label, description, names);
  }

  private Options text(boolean needed, String label, String description, String... names) {
    OptionSpec.Builder option = OptionSpec.builder(names).type(String.class).required(needed);
    return with(option.paramLabel(label), description);
  }

  /** Where one file goes. */
  Options output(String description) {
    return text("FILE", description, ParsedCommand.OUTPUT, "--output");
  }

  /** Where files go that are replaced as one. */
  Options directory(boolean needed, String description) {
    return text(needed, "DIR", description, ParsedCommand.OUTPUT, "--output");
  }

  Options paper(String whose, String otherwise) {
    String words = String.join(", ", Arrays.stream(Paper.values()).map(Paper::word).toList());
    String description = "%s: %s. %s if not given.".formatted(whose, words, otherwise);
    return text("PAPER", description, ParsedCommand.PAPER);
  }

  Options accept() {
    return accept("Accept this stop finding of the job, by its id. Every sheet carries it.");
  }

  Options accept(String description) {
    OptionSpec.Builder option = OptionSpec.builder(ParsedCommand.ACCEPT).arity("1");
    return with(
        option.type(List.class).auxiliaryTypes(String.class).paramLabel("ID"),
        description + " May be given more than once.");
  }
}
