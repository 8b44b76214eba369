package dev.towerscribe.cli;

import dev.towerscribe.job.Templates;
import dev.towerscribe.model.Paper;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** {@code start}: a job file to fill in, or a demo to try the program by. */
final class StartCommand implements Command {
  private static final String DEFAULT_FILE = "job.toml";

  private static final String SUFFIX = ".toml";

  private static final String LIST = "--list";
  private static final String DEMO = "--demo";
  private static final String UNITS = "--units";

  @Override
  public Options options() {
    return Options.command(
            "start",
            "Write a job file to fill in: every key explained, a blank wherever a figure of the car"
                + " or the plate belongs. While a blank is left, nothing is made from it. With"
                + " --demo, write the file of a whole invented car instead, to try the program by.",
            "",
            "Example: towerscribe start -o mycar.toml",
            "Example: towerscribe start --demo wren -o wren.toml")
        .output("Where to; " + DEFAULT_FILE + " if not given.")
        .text("UNIT", "Unit of its lengths: mm or in; mm if not given.", UNITS)
        .paper("Paper to print on", "A4, or Letter for inches,")
        .text(
            "NAME",
            "A demo instead; see --list. Its figures fit no car: nothing to fill in.",
            DEMO,
            "--template")
        .flag(LIST, "List the demos and write nothing.")
        .force("Replace a file that is there already.");
  }

  @Override
  public int run(ParsedCommand given) throws IOException, Refusal {
    List<String> demos =
        Stream.concat(Templates.names().stream(), Templates.readings().stream())
            .filter(n -> !isPlate(n))
            .toList();
    if (given.has(LIST)) {
      demos.forEach(name -> given.console().say(bare(name)));
      return Exit.DONE;
    }
    return given.has(DEMO) ? demo(given, demos) : blank(given);
  }

  private static int blank(ParsedCommand given) throws IOException, Refusal {
    LengthUnit units =
        given.oneOf(UNITS, LengthUnit.values(), LengthUnit::symbol).orElse(LengthUnit.MM);
    Paper paper = given.paper().orElse(units == LengthUnit.MM ? Paper.A4 : Paper.LETTER);
    String file = given.text(ParsedCommand.OUTPUT).orElse(DEFAULT_FILE);
    String text = Templates.start(units, paper);
    new OutputFile(given.ops(), given.path(file)).write(MadeFile.text(text), given.force());
    given.console().say("wrote " + file);
    given.console().say("fill in every ___, then: towerscribe check " + file);
    return Exit.DONE;
  }

  private static int demo(ParsedCommand given, List<String> demos) throws IOException, Refusal {
    Refusal.ifAny(
        Stream.of(UNITS, ParsedCommand.PAPER)
            .filter(given::has)
            .map(o -> o + " goes with a file to fill in: a demo says its own")
            .toList());
    String asked = given.text(DEMO).orElseThrow();
    String name =
        demos.stream()
            .filter(n -> n.equals(asked) || bare(n).equals(asked))
            .findFirst()
            .orElseThrow(
                () ->
                    Refusal.wrongUse(
                        "no demo called %s; there are: %s",
                        asked, String.join(", ", demos.stream().map(StartCommand::bare).toList())));
    String file = given.text(ParsedCommand.OUTPUT).orElse(DEFAULT_FILE);
    Path path = given.path(file);
    String text = Templates.text(name);
    new OutputFile(given.ops(), path).write(MadeFile.text(text), given.force());
    Console console = given.console();
    console.say("wrote " + file);
    for (String plate : Templates.names()) {
      if (isPlate(plate) && text.contains('"' + plate + '"')) {
        writePlate(given, path.resolveSibling(plate), plate);
      }
    }
    console.say("a demo, every figure invented; to try it: towerscribe " + reads(name) + file);
    return Exit.DONE;
  }

  /** The command that takes a demo, up to the file's name. */
  private static String reads(String name) {
    if (!Templates.readings().contains(name)) {
      return "check ";
    }
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
