package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drilled.Drilled;
import dev.towerscribe.drilled.DrilledAngles;
import dev.towerscribe.drilled.DrilledSide;
import dev.towerscribe.drilled.Readings;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.ReadingsReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.placement.Layouts;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.report.json.DrilledJson;
import dev.towerscribe.sheet.report.DrilledPage;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.store.PackMark;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** {@code drilled}: what the towers now really have, from caliper readings of their holes. */
final class DrilledCommand implements Command {
  @Override
  public CommandSpec spec() {
    return Options.command(
            "drilled",
            "Take caliper readings of the drilled holes: where they are, whether the plate goes on"
                + " with its bolts, the metal left beside them, and the rotation and offset that"
                + " the tower now really has. Ends with 1 while a stop finding is not accepted.",
            "",
            "Example: towerscribe drilled wren.toml wren-drilled.toml -o wren-drilled.pdf")
        .addOption(
            Options.flag("--json", "Print the results as one JSON object, in degrees and mm."))
        .addOption(
            Options.text(
                "FILE",
                "Write the record there as well, a PDF with one page a side. Not while a stop"
                    + " finding is open.",
                "-o",
                "--output"))
        .addOption(
            Options.text(
                "PAPER",
                "Paper size of the record: "
                    + String.join(", ", PaperOption.words())
                    + ". The job's if not given.",
                "--paper"))
        .addOption(Options.flag("--force", "Let -o replace a file that is there already."))
        .addOption(Options.accept())
        .addPositional(Options.job())
        .addPositional(
            PositionalParamSpec.builder()
                .paramLabel("READINGS")
                .type(String.class)
                .required(true)
                .arity("1")
                .index("1")
                .description("The readings file (TOML).")
                .build());
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, JobRejected, Refusal {
    if (given.hasMatchedOption("--paper") && !given.hasMatchedOption("-o")) {
      throw new Refusal(Exit.WRONG_USE, "--paper goes with -o only");
    }
    Path path = context.path(given.matchedPositionalValue(0, ""));
    String readingsFile = given.matchedPositionalValue(1, "");
    LoadedJob loaded = LoadedJob.load(path, List.of(), context.console()::warn);
    Readings readings = readings(loaded, context, readingsFile);
    Drilled drilled = Drilled.of(loaded.layout(), readings, job -> Layouts.of(job).layout());
    Set<String> accepted = new TreeSet<>(given.matchedOptionValue("--accept", List.of()));
    refuseUnknown(drilled, accepted);
    List<Finding> open = drilled.stops().stream().filter(f -> !accepted.contains(f.id())).toList();
    Map<Side, DrilledAngles> angles = angles(drilled);
    List<String> after = new ArrayList<>();
    if (given.hasMatchedOption("-o")) {
      after.add(write(loaded, drilled, angles, accepted, open, given, context));
    }
    boolean json = given.hasMatchedOption("--json");
    context
        .console()
        .print(
            json
                ? DrilledJson.of(drilled, angles, accepted)
                : DrilledText.of(drilled, angles, accepted));
    if (!json && open.isEmpty()) {
      after.forEach(context.console()::say);
    } else if (!open.isEmpty()) {
      after.forEach(context.console()::warn);
    }
    return open.isEmpty() ? Exit.DONE : Exit.STOPPED;
  }

  /** What the holes do to each wheel's alignment, where the plate's place is known. */
  private static Map<Side, DrilledAngles> angles(Drilled drilled) {
    Map<Side, DrilledAngles> angles = new EnumMap<>(Side.class);
    drilled
        .sides()
        .forEach(
            (side, tower) ->
                tower
                    .asDrilled()
                    .ifPresent(
                        as ->
                            angles.put(
                                side,
                                DrilledAngles.of(tower.planned().job(), as.mount(), as.sure()))));
    return angles;
  }

  /** Writes the record; with a stop open, only says why not. */
  private static String write(
      LoadedJob loaded,
      Drilled drilled,
      Map<Side, DrilledAngles> angles,
      Set<String> accepted,
      List<Finding> open,
      ParseResult given,
      Context context)
      throws IOException, Refusal {
    String file = given.matchedOptionValue("-o", "");
    Path path = context.path(file);
    Optional<Paper> paper = Optional.empty();
    if (given.hasMatchedOption("--paper")) {
      paper = Optional.of(PaperOption.paper(given.matchedOptionValue("--paper", "")));
    }
    OutputFile.refuseWithoutFolder(path, file);
    if (!open.isEmpty()) {
      return file
          + " was not written: put these right, or accept each with --accept: "
          + String.join(", ", open.stream().map(Finding::id).toList());
    }
    Job job = drilled.job();
    // The job's own mark says which pack the holes were drilled from; the readings change it.
    String mark =
        PackMark.of(
            Version.TEXT,
            List.of(
                loaded.packMark().getBytes(StandardCharsets.UTF_8),
                drilled.readings().toString().getBytes(StandardCharsets.UTF_8)),
            accepted);
    List<Page> pages = new ArrayList<>();
    for (DrilledSide side : drilled.sides().values()) {
      Print print = side.planned().job().print();
      if (paper.isPresent()) {
        print = print.on(paper.get());
      }
      List<Finding> stops = side.findings().stream().filter(Finding::isStop).toList();
      JobInfo info =
          new JobInfo(
              job.title(), drilled.readings().date().or(job::date), job.units(), mark, stops);
      pages.addAll(
          DrilledPage.pages(side, Optional.ofNullable(angles.get(side.side())), print, info));
    }
    byte[] pdf = PdfWriter.write(job.title(), pages);
    PackCommand.refuse(PdfProof.check(pdf, pages));
    OutputFile.write(context.ops(), path, pdf, given.hasMatchedOption("--force"));
    return "wrote " + file;
  }

  private static Readings readings(LoadedJob loaded, Context context, String name)
      throws IOException, Refusal {
    try {
      return new ReadingsReader(Lettering::canWrite, context.console()::warn, loaded.layout().job())
          .read(context.path(name));
    } catch (JobRejected e) {
      List<String> lines = new ArrayList<>();
      lines.add("the readings file " + name + " cannot be worked from:");
      e.faults().stream().map(Fault::line).forEach(lines::add);
      throw new Refusal(Exit.WRONG_USE, lines);
    }
  }

  private static void refuseUnknown(Drilled drilled, Set<String> accepted) throws Refusal {
    List<String> stops = drilled.stops().stream().map(Finding::id).toList();
    List<String> lines = new ArrayList<>();
    for (String id : accepted) {
      if (!stops.contains(id)) {
        lines.add("--accept " + id + ": not a stop finding of these readings");
      }
    }
    if (!lines.isEmpty()) {
      lines.add(
          stops.isEmpty()
              ? "these readings have no stop finding"
              : "their stop findings are: " + String.join(", ", stops));
      throw new Refusal(Exit.WRONG_USE, lines);
    }
  }
}
