package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.SurveyReader;
import dev.towerscribe.report.json.SurveyJson;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.survey.JobTables;
import dev.towerscribe.survey.Survey;
import dev.towerscribe.survey.SurveyResult;
import dev.towerscribe.survey.Surveys;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** {@code survey}: from readings of tape, plumb bob and calipers to a job's tables. */
final class SurveyCommand implements Command {
  @Override
  public CommandSpec spec() {
    return Options.command(
            "survey",
            "Work out the strut's points and the towers' figures from readings as they were taken,"
                + " each with its +/-. Names readings that cannot be right, readings that nothing"
                + " checks and points that nothing fixes. Ends with 1 while a stop finding stands.",
            "",
            "Without FILE: --worksheet writes the page to measure a car by, --start the empty"
                + " file.",
            "",
            "Example: towerscribe survey wren-survey.toml -o wren-tables.toml")
        .addOption(Options.flag("--worksheet", "Write the worksheet as a PDF, to fill in by hand."))
        .addOption(
            Options.flag("--start", "Write an empty survey file, its lines as on the worksheet."))
        .addOption(
            Options.flag("--json", "Print the results as one JSON object, in mm and degrees."))
        .addOption(
            Options.text(
                "FILE",
                "Write [strut] and [tower], for pasting into a job file, to this file. Not written"
                    + " while a stop finding stands. Of the worksheet and the empty file: where to;"
                    + " "
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
            Options.text(
                "UNITS",
                "Unit of all lengths of the worksheet or the empty file, mm or in; mm if not"
                    + " given.",
                "--units"))
        .addOption(Options.flag("--force", "Replace a file that is there already."))
        .addOption(
            OptionSpec.builder("--accept")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .paramLabel("ID")
                .description(
                    "Accept this stop finding of the survey, by its id: the reading or point stays"
                        + " left out, and the tables say so. May be given more than once.")
                .build())
        .addPositional(
            PositionalParamSpec.builder()
                .paramLabel("FILE")
                .type(String.class)
                .required(false)
                .arity("0..1")
                .index("0")
                .description("The survey file (TOML).")
                .build());
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, Refusal {
    Optional<String> file = Optional.ofNullable(given.matchedPositionalValue(0, null));
    boolean worksheet = given.hasMatchedOption("--worksheet");
    boolean start = given.hasMatchedOption("--start");
    refuseMixed(given, file.isPresent(), worksheet, start);
    if (worksheet) {
      return SurveyWorksheet.run(given, context);
    }
    return start ? SurveyStart.run(given, context) : survey(file.orElseThrow(), given, context);
  }

  /** One of three things at a time, and no option that says nothing to it. */
  private static void refuseMixed(ParseResult given, boolean file, boolean worksheet, boolean start)
      throws Refusal {
    List<String> asked = new ArrayList<>();
    if (file) {
      asked.add("a survey file");
    }
    if (worksheet) {
      asked.add("--worksheet");
    }
    if (start) {
      asked.add("--start");
    }
    List<String> lines = new ArrayList<>();
    if (asked.size() != 1) {
      lines.add("give one of a survey file, --worksheet and --start");
    }
    if (!worksheet && given.hasMatchedOption("--paper")) {
      lines.add("--paper goes with --worksheet only");
    }
    if (file && given.hasMatchedOption("--units")) {
      lines.add("--units goes with --worksheet and --start; a survey file says its own");
    }
    for (String option : List.of("--json", "--accept")) {
      if (!file && given.hasMatchedOption(option)) {
        lines.add(option + " goes with a survey file only");
      }
    }
    if (!lines.isEmpty()) {
      lines.add("see: towerscribe survey --help");
      throw new Refusal(Exit.WRONG_USE, lines);
    }
  }

  private static int survey(String file, ParseResult given, Context context)
      throws IOException, Refusal {
    Path path = context.path(file);
    Survey survey = read(path, context.console()::warn);
    SurveyResult result = Surveys.of(survey);
    Set<String> accepted = new TreeSet<>(given.matchedOptionValue("--accept", List.<String>of()));
    refuseUnknown(result, accepted);
    List<Finding> open = result.stops().stream().filter(f -> !accepted.contains(f.id())).toList();
    boolean write = given.hasMatchedOption("-o");
    String name = given.matchedOptionValue("-o", "");
    if (write) {
      Path target = context.path(name);
      if (Files.exists(target) && Files.isSameFile(path, target)) {
        throw new Refusal(
            Exit.WRONG_USE, "-o names the survey file itself, which is never replaced");
      }
      OutputFile.refuseWithoutFolder(target, name);
      if (open.isEmpty()) {
        List<Finding> told =
            result.stops().stream().filter(f -> accepted.contains(f.id())).toList();
        OutputFile.write(
            context.ops(),
            target,
            JobTables.of(result, told).getBytes(StandardCharsets.UTF_8),
            given.hasMatchedOption("--force"));
      }
    }
    boolean json = given.hasMatchedOption("--json");
    context
        .console()
        .print(json ? SurveyJson.of(result, accepted) : SurveyText.of(result, accepted));
    if (!open.isEmpty()) {
      if (write) {
        context.console().warn(name + " was not written: a stop finding stands");
      }
      return Exit.STOPPED;
    }
    if (write && !json) {
      context.console().say("");
      context.console().say("wrote " + name + ": paste its tables into the job file");
    }
    return Exit.DONE;
  }

  private static Survey read(Path path, Consumer<String> notes) throws IOException, Refusal {
    try {
      return new SurveyReader(Lettering::canWrite, notes).read(path);
    } catch (JobRejected e) {
      List<String> lines = new ArrayList<>();
      lines.add("the survey file cannot be worked from:");
      e.faults().stream().map(Fault::line).forEach(lines::add);
      throw new Refusal(Exit.WRONG_USE, lines);
    }
  }

  private static void refuseUnknown(SurveyResult result, Set<String> accepted) throws Refusal {
    List<String> stops = result.stops().stream().map(Finding::id).toList();
    List<String> lines = new ArrayList<>();
    for (String id : accepted) {
      if (!stops.contains(id)) {
        lines.add("--accept " + id + ": not a stop finding of this survey");
      }
    }
    if (!lines.isEmpty()) {
      lines.add(
          stops.isEmpty()
              ? "this survey has no stop finding"
              : "its stop findings are: " + String.join(", ", stops));
      throw new Refusal(Exit.WRONG_USE, lines);
    }
  }
}
