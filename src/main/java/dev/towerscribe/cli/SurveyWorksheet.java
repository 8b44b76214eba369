package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.worksheet.Worksheet;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.ParseResult;

/** {@code survey --worksheet}: pages to fill in under the car. */
final class SurveyWorksheet {
  static final String DEFAULT_FILE = "survey-worksheet.pdf";

  /** Common practice, no source: office printers leave 4 to 6 mm of the edge blank. */
  private static final double MARGIN_MM = 10.0;

  private static final String TITLE = "Survey worksheet";

  private SurveyWorksheet() {}

  /**
   * Writes the worksheet.
   *
   * @param given -o, --paper, --units and --force of the command line
   * @param context where it works
   * @return {@link Exit#DONE}
   * @throws IOException if the file cannot be written
   * @throws Refusal for a word that is none of those allowed, or a file in the way
   */
  static int run(ParseResult given, Context context) throws IOException, Refusal {
    Paper paper = PaperOption.paper(given.matchedOptionValue("--paper", Paper.A4.word()));
    LengthUnit units = SurveyStart.units(given);
    String file = given.matchedOptionValue("-o", DEFAULT_FILE);
    Path path = context.path(file);
    OutputFile.refuseWithoutFolder(path, file);
    List<Page> pages = Worksheet.pages(new Print(paper, MARGIN_MM, 1.0, 1.0), units);
    byte[] pdf = PdfWriter.write(TITLE, pages);
    PackCommand.refuse(PdfProof.check(pdf, pages));
    OutputFile.write(context.ops(), path, pdf, given.hasMatchedOption("--force"));
    context
        .console()
        .say("wrote " + file + ", " + pages.size() + " pages; print them on one face of the paper");
    return Exit.DONE;
  }
}
