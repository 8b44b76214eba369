package dev.towerscribe.cli;

import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.report.json.AlignmentJson;
import dev.towerscribe.sheet.report.AlignmentPage;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.store.PackDirectory;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code align}: what an alignment bay will read, in words, as data, as curves and as a page. */
final class AlignCommand implements Command {
  private static final String CSV = "alignment.csv";
  private static final String PDF = "alignment.pdf";

  @Override
  public CommandSpec spec() {
    return Options.command(
            "align",
            "Predict caster, camber and the rest before the work, at the chosen setting and at"
                + " every other, from the job's strut points or its measured axis. Ends with 1 if"
                + " the points make no linkage that stands at ride height.",
            "",
            "Example: towerscribe align wren.toml -o wren-alignment")
        .addOption(
            Options.flag("--json", "Print the results as one JSON object, in degrees and mm."))
        .addOption(
            Options.text(
                "DIR",
                "Write alignment.csv (the curves) and alignment.pdf (the page) there as well. Made"
                    + " if missing; other files there are left alone.",
                "-o",
                "--output"))
        .addPositional(Options.job());
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, JobRejected, Refusal {
    String file = given.matchedPositionalValue(0, "");
    LoadedJob loaded = LoadedJob.load(context.path(file), List.of(), context.console()::warn);
    Job job = loaded.layout().job();
    JobAlignment alignment = loaded.alignment();
    if (alignment.sides().isEmpty()) {
      throw new Refusal(
          Exit.WRONG_USE,
          file
              + " gives no [strut] points and no measured [axis], so there is nothing to work the"
              + " alignment out from");
    }
    if (given.hasMatchedOption("-o")) {
      write(loaded, context, context.path(given.matchedOptionValue("-o", "")));
    }
    context
        .console()
        .print(
            given.hasMatchedOption("--json")
                ? AlignmentJson.of(job, alignment)
                : AlignmentText.of(job, alignment));
    return findings(alignment).anyMatch(Finding::isStop) ? Exit.STOPPED : Exit.DONE;
  }

  private static Stream<Finding> findings(JobAlignment alignment) {
    return Stream.concat(
        alignment.sides().values().stream().flatMap(s -> s.findings().stream()),
        alignment.findings().stream());
  }

  private static void write(LoadedJob loaded, Context context, Path directory)
      throws IOException, Refusal {
    Job job = loaded.layout().job();
    JobInfo info = new JobInfo(job.title(), job.date(), job.units(), loaded.packMark(), List.of());
    List<Page> pages =
        loaded.alignment().sides().values().stream()
            .flatMap(side -> AlignmentPage.pages(side, loaded.alignment(), info).stream())
            .toList();
    byte[] pdf = PdfWriter.write(job.title(), pages);
    PackCommand.refuse(PdfProof.check(pdf, pages));
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put(PDF, pdf);
    files.put(CSV, AlignmentCsv.of(loaded.alignment()).getBytes(StandardCharsets.UTF_8));
    new PackDirectory(context.ops(), directory).writeAlignment(loaded.packMark(), files);
  }
}
