package dev.towerscribe.cli;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.store.OutputFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ParseResult;

/** {@code survey --start}: an empty survey file, in the order of the worksheet. */
final class SurveyStart {
  static final String DEFAULT_FILE = "survey.toml";

  private SurveyStart() {}

  /**
   * Writes the file.
   *
   * @param given -o, --units and --force of the command line
   * @param context where it works
   * @return {@link Exit#DONE}
   * @throws IOException if the file cannot be written
   * @throws Refusal for a word that is none of those allowed, or a file in the way
   */
  static int run(ParseResult given, Context context) throws IOException, Refusal {
    LengthUnit units = units(given);
    String file = given.matchedOptionValue("-o", DEFAULT_FILE);
    Path path = context.path(file);
    OutputFile.refuseWithoutFolder(path, file);
    byte[] text = SurveyStartText.of(units).getBytes(StandardCharsets.UTF_8);
    OutputFile.write(context.ops(), path, text, given.hasMatchedOption("--force"));
    context.console().say("wrote " + file);
    context
        .console()
        .say(
            "put your readings in, row by row as on the worksheet, then: towerscribe survey "
                + file);
    return Exit.DONE;
  }

  /** The unit asked for; millimetres if none was. */
  static LengthUnit units(ParseResult given) throws Refusal {
    String word = given.matchedOptionValue("--units", LengthUnit.MM.symbol());
    return Arrays.stream(LengthUnit.values())
        .filter(u -> u.symbol().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    Exit.WRONG_USE,
                    "--units "
                        + word
                        + ": not one of "
                        + Arrays.stream(LengthUnit.values())
                            .map(LengthUnit::symbol)
                            .collect(Collectors.joining(", "))));
  }
}
