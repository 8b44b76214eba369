package dev.towerscribe.cli;

import java.io.IOException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code survey}: what is measured on the car, from the empty sheet on. */
final class SurveyCommand implements Command {
  @Override
  public CommandSpec spec() {
    return Options.command(
            "survey",
            "Write the worksheet that a car is measured by, or the empty survey file that its"
                + " readings go into.",
            "",
            "Example: towerscribe survey --worksheet -o worksheet.pdf")
        .addOption(Options.flag("--worksheet", "Write the worksheet as a PDF, to fill in by hand."))
        .addOption(
            Options.flag("--start", "Write an empty survey file, its lines as on the worksheet."))
        .addOption(
            Options.text(
                "FILE",
                "Where to; "
                    + SurveyWorksheet.DEFAULT_FILE
                    + " or "
                    + SurveyStart.DEFAULT_FILE
                    + " if not given.",
                "-o",
                "--output"))
        .addOption(
            Options.text(
                "PAPER",
                "Paper size of the worksheet: "
                    + String.join(", ", PaperOption.words())
                    + ". A4 if not given.",
                "--paper"))
        .addOption(
            Options.text("UNITS", "Unit of all lengths, mm or in; mm if not given.", "--units"))
        .addOption(Options.flag("--force", "Replace a file that is there already."));
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, Refusal {
    boolean worksheet = given.hasMatchedOption("--worksheet");
    if (worksheet == given.hasMatchedOption("--start")) {
      throw new Refusal(Exit.WRONG_USE, "give one of --worksheet and --start");
    }
    if (worksheet) {
      return SurveyWorksheet.run(given, context);
    }
    if (given.hasMatchedOption("--paper")) {
      throw new Refusal(Exit.WRONG_USE, "--paper goes with --worksheet only");
    }
    return SurveyStart.run(given, context);
  }
}
