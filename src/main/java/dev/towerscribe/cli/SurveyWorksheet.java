package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.sheet.worksheet.Worksheet;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import java.io.IOException;
import java.util.List;

/** {@code survey --worksheet}: pages to fill in under the car. */
final class SurveyWorksheet {
  static final String DEFAULT_FILE = "survey-worksheet.pdf";

  /** Common practice, no source: office printers leave 4 to 6 mm of the edge blank. */
  private static final double MARGIN_MM = 10.0;

  private SurveyWorksheet() {}

  /**
   * Writes the worksheet.
   *
   * @param given -o, --paper, --units and --force of the command line
   * @return {@link Exit#DONE}
   * @throws IOException if the file cannot be written, or one is in the way
   * @throws Refusal for a word that is none of those allowed
   */
  static int run(ParsedCommand given) throws IOException, Refusal {
    Print print = new Print(given.paper().orElse(Paper.A4), MARGIN_MM, 1.0, 1.0);
    List<Page> pages = Worksheet.pages(print, SurveyStart.units(given));
    String file = given.text(ParsedCommand.OUTPUT).orElse(DEFAULT_FILE);
    OutputFile output = given.output(file);
    output.write(MadeFile.pdf("Survey worksheet", pages), given.force());
    given
        .console()
        .say(
            "wrote %s, %s pages; print them on one face of the paper"
                .formatted(file, pages.size()));
    return Exit.DONE;
  }
}
