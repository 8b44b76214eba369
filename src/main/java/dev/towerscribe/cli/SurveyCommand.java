package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.job.SurveyReader;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.report.SurveyReport;
import dev.towerscribe.report.json.SurveyJson;
import dev.towerscribe.sheet.worksheet.Worksheet;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.survey.JobTables;
import dev.towerscribe.survey.SurveyResult;
import dev.towerscribe.survey.Surveys;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** {@code survey}: from readings of tape, plumb bob and calipers to a job's tables. */
final class SurveyCommand implements Command {
  private static final String WORKSHEET = "--worksheet";
  private static final String START = "--start";
  private static final String UNITS = "--units";
  private static final String WORKSHEET_FILE = "survey-worksheet.pdf";
  private static final String START_FILE = "survey.toml";

  @Override
  public Options options() {
    return Options.command(
            "survey",
            "Work out the strut's points and the towers' figures from readings as they were taken,"
                + " each with its uncertainty. Names readings that cannot be right, readings that"
                + " nothing checks and points that nothing fixes. Ends with 1 while a stop finding"
                + " stands.",
            "",
            "Without FILE: --worksheet writes the page to measure a car by, --start the empty"
                + " file.",
            "",
            "Example: towerscribe survey wren-survey.toml -o wren-tables.toml")
        .flag(WORKSHEET, "Write the worksheet as a PDF, to fill in by hand.")
        .flag(START, "Write an empty survey file, its lines as on the worksheet.")
        .json("Print the results as one JSON object, in mm and degrees.")
        .output(
            "Write [strut] and [tower], for pasting into a job file, to this file. Not written"
                + " while a stop finding stands. Of the worksheet and the empty file: where to; "
                + WORKSHEET_FILE
                + " or "
                + START_FILE
                + " if not given.")
        .paper("Paper size of the worksheet", "A4")
        .text(
            "UNITS",
            "Unit of all lengths of the worksheet or the empty file, mm or in; mm if not given.",
            UNITS)
        .force("Replace a file that is there already.")
        .accept(
            "Accept this stop finding of the survey, by its id: the reading or point stays left"
                + " out, and the tables say so.")
        .file(0, "FILE", "The survey file (TOML).", false);
  }

  @Override
  public int run(ParsedCommand given) throws IOException, Refusal {
    refuseMixed(given);
    if (given.has(WORKSHEET)) {
      return worksheet(given);
    }
    return given.has(START) ? start(given) : survey(given);
  }

  /** Pages to fill in under the car. */
  private static int worksheet(ParsedCommand given) throws IOException, Refusal {
    Print print = PrintCauses.usual(given.paper().orElse(Paper.A4));
    List<Page> pages = Worksheet.pages(print, units(given));
    String file = given.text(ParsedCommand.OUTPUT).orElse(WORKSHEET_FILE);
    given.output(file).write(MadeFile.pdf("Survey worksheet", pages), given.force());
    given
        .console()
        .say("wrote %s, %s pages; print them on one face of the paper", file, pages.size());
    return Exit.DONE;
  }

  /** An empty survey file, in the order of the worksheet. */
  private static int start(ParsedCommand given) throws IOException, Refusal {
    String text = SurveyStartText.of(units(given));
    String file = given.text(ParsedCommand.OUTPUT).orElse(START_FILE);
    given.output(file).write(MadeFile.text(text), given.force());
    given.console().say("wrote " + file);
    String next = "put your readings in, row by row as on the worksheet, then: towerscribe survey ";
    given.console().say(next + file);
    return Exit.DONE;
  }

  /** The unit asked for; millimetres if none was. */
  private static LengthUnit units(ParsedCommand given) throws Refusal {
    return given.oneOf(UNITS, LengthUnit.values(), LengthUnit::symbol).orElse(LengthUnit.MM);
  }

  /** One of three things at a time, and no option that says nothing to it. */
  private static void refuseMixed(ParsedCommand given) throws Refusal {
    boolean file = given.word(0).isPresent();
    List<String> lines = new ArrayList<>();
    if (Stream.of(file, given.has(WORKSHEET), given.has(START)).filter(b -> b).count() != 1) {
      lines.add("give one of a survey file, --worksheet and --start");
    }
    if (!given.has(WORKSHEET) && given.has(ParsedCommand.PAPER)) {
      lines.add("--paper goes with --worksheet only");
    }
    if (file && given.has(UNITS)) {
      lines.add("--units goes with --worksheet and --start; a survey file says its own");
    }
    if (!file) {
      Stream.of(ParsedCommand.JSON, ParsedCommand.ACCEPT)
          .filter(given::has)
          .forEach(option -> lines.add(option + " goes with a survey file only"));
    }
    if (!lines.isEmpty()) {
      lines.add("see: towerscribe survey --help");
    }
    Refusal.ifAny(lines);
  }

  private static int survey(ParsedCommand given) throws IOException, Refusal {
    Path path = given.path(0);
    SurveyReader reader = new SurveyReader(Lettering::canWrite, given.notes());
    String head = "the survey file cannot be used:";
    SurveyResult result = Surveys.of(ParsedCommand.read(head, () -> reader.read(path)));
    Accepted accepted = Accepted.of(given.accepted(), result.stops(), "this survey", given.notes());
    Optional<String> name = given.text(ParsedCommand.OUTPUT);
    if (name.isPresent()) {
      Path target = given.path(name.get());
      if (Files.exists(target) && Files.isSameFile(path, target)) {
        throw Refusal.wrongUse("-o names the survey file itself, which is never replaced");
      }
      OutputFile output = given.output(name.get());
      if (accepted.open().isEmpty()) {
        output.write(MadeFile.text(JobTables.of(result, accepted.carried())), given.force());
      }
    }
    given.print(
        () -> SurveyJson.of(result, accepted.ids()), () -> SurveyReport.of(result, accepted.ids()));
    if (name.isPresent() && !accepted.open().isEmpty()) {
      given.console().warn(name.get() + " was not written: a stop finding stands");
    } else if (name.isPresent() && !given.has(ParsedCommand.JSON)) {
      given.console().say("");
      given.console().say("wrote %s: paste its tables into the job file", name.get());
    }
    return accepted.exit();
  }
}
