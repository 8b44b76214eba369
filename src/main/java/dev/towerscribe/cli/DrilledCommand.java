package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drilled.Drilled;
import dev.towerscribe.drilled.DrilledAngles;
import dev.towerscribe.drilled.DrilledSide;
import dev.towerscribe.drilled.Readings;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Stage;
import dev.towerscribe.job.ReadingsReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.placement.Layouts;
import dev.towerscribe.report.DrilledReport;
import dev.towerscribe.report.json.DrilledJson;
import dev.towerscribe.sheet.report.DrilledPage;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.store.PackMark;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** {@code drilled}: what the towers now really have, from caliper readings of their holes. */
final class DrilledCommand implements Command {
  private static final String START = "--start";
  private static final String START_FILE = "drilled.toml";

  @Override
  public Options options() {
    return Options.command(
            "drilled",
            "Take caliper readings of the drilled holes: where they are, whether the plate goes on"
                + " with its bolts, the metal left beside them, and the rotation and offset that"
                + " the tower now really has. Ends with 1 while a stop finding is not accepted.",
            "",
            "Example: towerscribe drilled --start wren.toml -o wren-drilled.toml",
            "Example: towerscribe drilled wren.toml wren-drilled.toml -o wren-drilled.pdf")
        .flag(
            START,
            "Write a readings file to fill in, with this job's holes, landmarks and sides, to -o; "
                + START_FILE
                + " if not given.")
        .json("Print the results as one JSON object, in degrees and mm.")
        .output(
            "Write the record there as well, a PDF with one page a side. Not while a stop finding"
                + " is open.")
        .paper("Paper size of the record", "The job's")
        .force("Let -o replace a file that is there already.")
        .accept()
        .job()
        .file(1, "READINGS", "The readings file (TOML); without --start.", false);
  }

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    if (given.has(START)) {
      return start(given);
    }
    if (given.word(1).isEmpty()) {
      throw Refusal.wrongUse(
          List.of(
              "which readings? Give READINGS, or --start for a file to fill in",
              "see: towerscribe drilled --help"));
    }
    if (given.has(ParsedCommand.PAPER) && !given.has(ParsedCommand.OUTPUT)) {
      throw Refusal.wrongUse("--paper goes with -o only");
    }
    LoadedJob loaded = given.jobAlone();
    Drilled drilled =
        Drilled.of(
            loaded.layout(),
            readings(given, loaded),
            job -> Layouts.of(job, Stage.DRILLED).layout());
    Accepted accepted =
        Accepted.of(given.accepted(), drilled.stops(), "these readings", given.notes());
    Map<Side, DrilledAngles> angles = angles(drilled);
    Optional<String> told = Optional.empty();
    if (given.has(ParsedCommand.OUTPUT)) {
      told = Optional.of(write(given, loaded, drilled, angles, accepted));
    }
    given.print(
        () -> DrilledJson.of(drilled, angles, accepted.ids()),
        () -> DrilledReport.of(drilled, angles, accepted.ids()));
    if (!accepted.open().isEmpty()) {
      told.ifPresent(given.console()::warn);
    } else if (!given.has(ParsedCommand.JSON)) {
      told.ifPresent(given.console()::say);
    }
    return accepted.exit();
  }

  private static int start(ParsedCommand given) throws IOException, JobRejected, Refusal {
    List<String> lines = new ArrayList<>();
    if (given.word(1).isPresent()) {
      lines.add("--start goes without READINGS: it writes them to fill in");
    }
    Stream.of(ParsedCommand.JSON, ParsedCommand.PAPER, ParsedCommand.ACCEPT)
        .filter(given::has)
        .forEach(option -> lines.add(option + " does not go with --start"));
    Refusal.ifAny(lines);
    String job = given.word(0).orElseThrow();
    String file = given.text(ParsedCommand.OUTPUT).orElse(START_FILE);
    given.start(file, ReadingsStartText.ofHoles(given.jobFile()));
    given.console().say("fill in every ___, then: towerscribe drilled %s %s", job, file);
    return Exit.DONE;
  }

  /** What the holes do to each wheel's alignment, where the plate's place is known. */
  private static Map<Side, DrilledAngles> angles(Drilled drilled) {
    Map<Side, DrilledAngles> angles = new EnumMap<>(Side.class);
    for (DrilledSide side : drilled.sides().values()) {
      side.asDrilled()
          .ifPresent(
              as ->
                  angles.put(
                      side.side(), DrilledAngles.of(side.planned().job(), as.mount(), as.sure())));
    }
    return angles;
  }

  /** Writes the record; with a stop open, only says why not. */
  private static String write(
      ParsedCommand given,
      LoadedJob loaded,
      Drilled drilled,
      Map<Side, DrilledAngles> angles,
      Accepted accepted)
      throws IOException, Refusal {
    String file = given.text(ParsedCommand.OUTPUT).orElseThrow();
    Optional<Paper> paper = given.paper();
    OutputFile output = given.output(file);
    if (!accepted.open().isEmpty()) {
      return "%s was not written: clear these, or accept each with --accept: %s"
          .formatted(file, String.join(", ", accepted.open().stream().map(Finding::id).toList()));
    }
    Job job = drilled.job();
    // The job's own mark says which pack the holes were drilled from; the readings change it.
    String mark = PackMark.of(loaded.packMark(), drilled.readings(), accepted.ids());
    List<Page> pages = new ArrayList<>();
    for (DrilledSide side : drilled.sides().values()) {
      Print print = side.planned().job().print();
      List<Finding> stops = side.findings().stream().filter(Finding::isStop).toList();
      JobInfo info =
          new JobInfo(
              job.title(), drilled.readings().date().or(job::date), job.units(), mark, stops);
      pages.addAll(
          DrilledPage.pages(
              side,
              Optional.ofNullable(angles.get(side.side())),
              paper.map(print::on).orElse(print),
              info));
    }
    output.write(MadeFile.pdf(job.title(), pages), given.force());
    return "wrote " + file;
  }

  private static Readings readings(ParsedCommand given, LoadedJob loaded)
      throws IOException, Refusal {
    Path path = given.path(1);
    ReadingsReader reader = new ReadingsReader(Lettering::canWrite, given.notes(), loaded.job());
    String head = "the readings file %s cannot be used:".formatted(given.word(1).orElseThrow());
    return ParsedCommand.read(head, () -> reader.read(path));
  }
}
