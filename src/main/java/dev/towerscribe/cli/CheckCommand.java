package dev.towerscribe.cli;

import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.report.LayoutReport;
import dev.towerscribe.report.json.LayoutJson;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** {@code check}: every hole, cut and finding of a job, in words or as data; writes no file. */
final class CheckCommand implements Command {
  @Override
  public Options options() {
    return Options.command(
            "check",
            "Lay a job out and check it. Writes no file. Ends with 1 while a stop finding stands.",
            "",
            "Example: towerscribe check wren.toml --json > wren.json")
        .json("Print the results as one JSON object, lengths in mm.")
        .accept()
        .job();
  }

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    LoadedJob job = given.job();
    given.print(
        () -> LayoutJson.of(job.layout()),
        () -> LayoutReport.of(job.layout(), job.accepted().ids(), Optional.empty(), List.of()));
    return job.accepted().exit();
  }
}
