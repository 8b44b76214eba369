package dev.towerscribe.cli;

import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.report.LayoutReport;
import dev.towerscribe.report.json.LayoutJson;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * {@code check}: every hole, cut and finding of a job, in words or as data; writes no file unless a
 * directory is named for its report and its overview.
 */
final class CheckCommand implements Command {
  @Override
  public Options options() {
    return Options.command(
            "check",
            "Lay a job out and check it. Writes no file unless told where to. Ends with 1 while a"
                + " stop finding stands.",
            "",
            "Example: towerscribe check wren.toml --json > wren.json",
            "         towerscribe check wren.toml -o wren-check")
        .json("Print the results as one JSON object, lengths in mm.")
        .directory(
            false,
            "Write report.txt and overview.pdf there: each tower from above with every stop where"
                + " it is and the way that clears it. Made if missing; sheets of an earlier pack"
                + " there are left alone.")
        .accept()
        .job();
  }

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    LoadedJob job = given.job();
    if (given.has(ParsedCommand.OUTPUT)) {
      new CheckedFiles(job, new PdfWriter())
          .write(given.directory())
          .ifPresent(given.console()::warn);
    }
    given.print(
        () -> LayoutJson.of(job.layout()),
        () -> LayoutReport.of(job.layout(), job.accepted().ids(), Optional.empty(), List.of()));
    return job.accepted().exit();
  }
}
