package dev.towerscribe.cli;

import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.report.AlignmentReport;
import dev.towerscribe.report.csv.AlignmentCsv;
import dev.towerscribe.report.json.AlignmentJson;
import dev.towerscribe.sheet.report.AlignmentPage;
import dev.towerscribe.store.FileSet;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.MadeFiles;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

/** {@code align}: what an alignment bay will read, in words, as data, as curves and as a page. */
final class AlignCommand implements Command {
  @Override
  public Options options() {
    return Options.command(
            "align",
            "Predict caster, camber and the rest before the work, at the chosen setting and at"
                + " every other, from the job's strut points or its measured axis. Ends with 1 if"
                + " the points make no linkage that stands at ride height.",
            "",
            "Example: towerscribe align wren.toml -o wren-alignment")
        .json("Print the results as one JSON object, in degrees and mm.")
        .directory(
            false,
            "Write alignment.csv (the curves) and alignment.pdf (the page) there as well. Made if"
                + " missing; other files there are left alone.")
        .job();
  }

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    LoadedJob job = given.job();
    JobAlignment alignment = job.alignment();
    if (alignment.sides().isEmpty()) {
      throw Refusal.wrongUse(
          given.word(0).orElseThrow()
              + " gives no [strut] points and no measured [axis], so there is nothing to work the"
              + " alignment out from");
    }
    if (given.has(ParsedCommand.OUTPUT)) {
      given.directory().write(FileSet.ALIGNMENT, job.packMark(), files(job));
    }
    given.print(
        () -> AlignmentJson.of(job.job(), alignment),
        () -> AlignmentReport.of(job.job(), alignment));
    return findings(alignment).anyMatch(Finding::isStop) ? Exit.STOPPED : Exit.DONE;
  }

  private static Stream<Finding> findings(JobAlignment alignment) {
    return Stream.concat(
        alignment.sides().values().stream().flatMap(s -> s.findings().stream()),
        alignment.findings().stream());
  }

  private static MadeFiles files(LoadedJob job) {
    List<Page> pages =
        job.alignment().sides().values().stream()
            .flatMap(side -> AlignmentPage.pages(side, job.alignment(), job.info()).stream())
            .toList();
    return new MadeFiles()
        .put("alignment.pdf", MadeFile.pdf(job.job().title(), pages))
        .put("alignment.csv", MadeFile.text(AlignmentCsv.of(job.alignment())));
  }
}
