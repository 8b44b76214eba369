package dev.towerscribe.cli;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.store.MadeFile;
import java.io.IOException;

/** {@code survey --start}: an empty survey file, in the order of the worksheet. */
final class SurveyStart {
  static final String DEFAULT_FILE = "survey.toml";

  static final String UNITS = "--units";

  private SurveyStart() {}

  /**
   * Writes the file.
   *
   * @param given -o, --units and --force of the command line
   * @return {@link Exit#DONE}
   * @throws IOException if the file cannot be written, or one is in the way
   * @throws Refusal for a word that is none of those allowed
   */
  static int run(ParsedCommand given) throws IOException, Refusal {
    LengthUnit units = units(given);
    String file = given.text(ParsedCommand.OUTPUT).orElse(DEFAULT_FILE);
    given.output(file).write(MadeFile.text(SurveyStartText.of(units)), given.force());
    given.console().say("wrote " + file);
    given
        .console()
        .say(
            "put your readings in, row by row as on the worksheet, then: towerscribe survey "
                + file);
    return Exit.DONE;
  }

  /** The unit asked for; millimetres if none was. */
  static LengthUnit units(ParsedCommand given) throws Refusal {
    return given.oneOf(UNITS, LengthUnit.values(), LengthUnit::symbol).orElse(LengthUnit.MM);
  }
}
