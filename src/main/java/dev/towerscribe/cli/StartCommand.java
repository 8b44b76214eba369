package dev.towerscribe.cli;

import dev.towerscribe.job.Templates;
import dev.towerscribe.store.OutputFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code start}: a job file to fill in, every key explained in it. */
final class StartCommand implements Command {
  private static final String DEFAULT_FILE = "job.toml";

  private static final String SUFFIX = ".toml";

  @Override
  public CommandSpec spec() {
    return Options.command(
            "start",
            "Write a starter job file with every key explained. Its numbers are of an invented car:"
                + " put your own measurements in their place.",
            "",
            "Example: towerscribe start -o wren.toml")
        .addOption(
            Options.text("FILE", "Where to; " + DEFAULT_FILE + " if not given.", "-o", "--output"))
        .addOption(Options.text("NAME", "Which template; see --list.", "--template"))
        .addOption(Options.flag("--list", "List the templates and write nothing."))
        .addOption(Options.flag("--force", "Replace a file that is there already."));
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, Refusal {
    List<String> jobs =
        Stream.concat(Templates.names().stream(), Templates.readings().stream())
            .filter(n -> !isPlate(n))
            .toList();
    if (given.hasMatchedOption("--list")) {
      jobs.forEach(name -> context.console().say(bare(name)));
      return Exit.DONE;
    }
    String asked = given.matchedOptionValue("--template", jobs.get(0));
    String name =
        jobs.stream()
            .filter(n -> n.equals(asked) || bare(n).equals(asked))
            .findFirst()
            .orElseThrow(
                () ->
                    new Refusal(
                        Exit.WRONG_USE,
                        "no template called "
                            + asked
                            + "; there are: "
                            + String.join(", ", jobs.stream().map(StartCommand::bare).toList())));
    String file = given.matchedOptionValue("-o", DEFAULT_FILE);
    Path path = context.path(file);
    String text = Templates.text(name);
    OutputFile.write(context.ops(), path, bytes(text), given.hasMatchedOption("--force"));
    Console console = context.console();
    console.say("wrote " + file);
    for (String plate : Templates.names()) {
      if (isPlate(plate) && text.contains('"' + plate + '"')) {
        writePlate(context, path.resolveSibling(plate), plate);
      }
    }
    console.say(
        Templates.readings().contains(name)
            ? "put your readings in, then: towerscribe " + reads(name) + file
            : "put your measurements in, then: towerscribe check " + file);
    return Exit.DONE;
  }

  /** The command that takes a file of readings, up to the file's name. */
  private static String reads(String name) {
    return name.contains("survey")
        ? "survey "
        : (name.contains("drilled") ? "drilled JOB " : "record JOB ");
  }

  /** A plate file of that name may serve other jobs already, so it is never replaced. */
  private static void writePlate(Context context, Path path, String plate)
      throws IOException, Refusal {
    if (context.ops().exists(path)) {
      context.console().say("left " + plate + " beside it as it is");
      return;
    }
    if (!context.ops().exists(path.getParent())) {
      context.ops().createDirectory(path.getParent());
    }
    OutputFile.write(context.ops(), path, bytes(Templates.text(plate)), false);
    context.console().say("wrote " + plate + " beside it, which the job names");
  }

  private static boolean isPlate(String name) {
    return name.contains("/");
  }

  private static String bare(String name) {
    return name.endsWith(SUFFIX) ? name.substring(0, name.length() - SUFFIX.length()) : name;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
