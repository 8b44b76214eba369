package dev.towerscribe.cli;

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
            .description("Say what the command does.")
            .build());
    return spec;
  }

  /** Descriptions are format strings to the library: a per cent sign must be doubled. */
  private static String literal(String words) {
    return words.replace("%", "%%");
  }

  static PositionalParamSpec job() {
    return PositionalParamSpec.builder()
        .paramLabel("JOB")
        .type(String.class)
        .required(true)
        .arity("1")
        .index("0")
        .description("The job file (TOML).")
        .build();
  }

  static OptionSpec flag(String name, String description) {
    return OptionSpec.builder(name).type(boolean.class).description(literal(description)).build();
  }

  static OptionSpec text(String label, String description, String... names) {
    return OptionSpec.builder(names)
        .type(String.class)
        .paramLabel(label)
        .description(literal(description))
        .build();
  }

  static OptionSpec accept() {
    return OptionSpec.builder("--accept")
        .type(List.class)
        .auxiliaryTypes(String.class)
        .arity("1")
        .paramLabel("ID")
        .description(
            "Accept this stop finding of the job, by its id. Every sheet carries it. May be given"
                + " more than once.")
        .build();
  }
}
