package dev.towerscribe.cli;

import dev.towerscribe.job.Templates;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** {@code start}: a job file to fill in, every key explained in it. */
final class StartCommand implements Command {
  private static final String DEFAULT_FILE = "job.toml";

  private static final String SUFFIX = ".toml";

  private static final String LIST = "--list";
  private static final String TEMPLATE = "--template";

  @Override
  public Options options() {
    return Options.command(
            "start",
            "Write a starter job file with every key explained. Its numbers are of an invented car:"
                + " put your own measurements in their place.",
            "",
            "Example: towerscribe start -o wren.toml")
        .output("Where to; " + DEFAULT_FILE + " if not given.")
        .text("NAME", "Which template; see --list.", TEMPLATE)
        .flag(LIST, "List the templates and write nothing.")
        .force("Replace a file that is there already.");
  }

  @Override
  public int run(ParsedCommand given) throws IOException, Refusal {
    List<String> jobs =
        Stream.concat(Templates.names().stream(), Templates.readings().stream())
            .filter(n -> !isPlate(n))
            .toList();
    Console console = given.console();
    if (given.has(LIST)) {
      jobs.forEach(name -> console.say(bare(name)));
      return Exit.DONE;
    }
    String asked = given.text(TEMPLATE).orElse(jobs.get(0));
    String name =
        jobs.stream()
            .filter(n -> n.equals(asked) || bare(n).equals(asked))
            .findFirst()
            .orElseThrow(
                () ->
                    Refusal.wrongUse(
                        "no template called %s; there are: %s",
                        asked, String.join(", ", jobs.stream().map(StartCommand::bare).toList())));
    String file = given.text(ParsedCommand.OUTPUT).orElse(DEFAULT_FILE);
    Path path = given.path(file);
    String text = Templates.text(name);
    new OutputFile(given.ops(), path).write(MadeFile.text(text), given.force());
    console.say("wrote " + file);
    for (String plate : Templates.names()) {
      if (isPlate(plate) && text.contains('"' + plate + '"')) {
        writePlate(given, path.resolveSibling(plate), plate);
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
  private static void writePlate(ParsedCommand given, Path path, String plate)
      throws IOException, Refusal {
    if (given.ops().exists(path)) {
      given.console().say("left " + plate + " beside it as it is");
      return;
    }
    if (!given.ops().exists(path.getParent())) {
      given.ops().createDirectory(path.getParent());
    }
    new OutputFile(given.ops(), path).write(MadeFile.text(Templates.text(plate)), false);
    given.console().say("wrote " + plate + " beside it, which the job names");
  }

  private static boolean isPlate(String name) {
    return name.contains("/");
  }

  private static String bare(String name) {
    return name.endsWith(SUFFIX) ? name.substring(0, name.length() - SUFFIX.length()) : name;
  }
}
