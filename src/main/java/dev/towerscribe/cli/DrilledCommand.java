package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drilled.Drilled;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.ReadingsReader;
import dev.towerscribe.model.Readings;
import dev.towerscribe.placement.Layouts;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
                + " with its bolts, the metal left beside them, and the rotation and offset that the"
                + " tower now really has. Ends with 1 while a stop finding is not accepted.",
            "",
            "Example: towerscribe drilled wren.toml wren-drilled.toml -o wren-drilled.pdf")
        .addOption(
            Options.flag("--json", "Print the results as one JSON object, in degrees and mm."))
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
    Path path = context.path(given.matchedPositionalValue(0, ""));
    String readingsFile = given.matchedPositionalValue(1, "");
    LoadedJob loaded = LoadedJob.load(path, List.of());
    Readings readings = readings(loaded, context.path(readingsFile), readingsFile);
    Drilled drilled = Drilled.of(loaded.layout(), readings, job -> Layouts.of(job).layout());
    Set<String> accepted = new TreeSet<>(given.matchedOptionValue("--accept", List.of()));
    refuseUnknown(drilled, accepted);
    List<Finding> open = drilled.stops().stream().filter(f -> !accepted.contains(f.id())).toList();
    context
        .console()
        .print(
            given.hasMatchedOption("--json")
                ? DrilledJson.of(drilled, accepted)
                : DrilledText.of(drilled, accepted));
    return open.isEmpty() ? Exit.DONE : Exit.STOPPED;
  }

  private static Readings readings(LoadedJob loaded, Path path, String name)
      throws IOException, Refusal {
    try {
      return new ReadingsReader(Lettering::canWrite, loaded.layout().job()).read(path);
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
