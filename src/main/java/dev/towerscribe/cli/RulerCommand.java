package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.sheet.JobInfo;
import dev.towerscribe.sheet.Ruler;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code ruler}: one page to measure a printer by, before or between packs. */
final class RulerCommand implements Command {
  private static final String DEFAULT_FILE = "ruler.pdf";

  /** Common practice, no source: office printers leave 4 to 6 mm of the edge blank. */
  private static final double MARGIN_MM = 10.0;

  private static final String TITLE = "Print check";

  @Override
  public CommandSpec spec() {
    return Options.command(
            "ruler",
            "Write the print-check page alone as a PDF: print it at 100 %, measure its bars, and"
                + " give both readings to the job file as print.scale.",
            "",
            "Example: towerscribe ruler --paper Letter -o ruler.pdf")
        .addOption(
            Options.text("FILE", "Where to; " + DEFAULT_FILE + " if not given.", "-o", "--output"))
        .addOption(
            Options.text(
                "PAPER",
                "Paper size: "
                    + String.join(", ", papers())
                    + ". The job's, or A4 without a job, if not given.",
                "--paper"))
        .addOption(
            Options.text("JOB", "Take paper, margin and print scale from this job file.", "--job"))
        .addOption(Options.flag("--force", "Replace a file that is there already."));
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, JobRejected, Refusal {
    Print print = new Print(Paper.A4, MARGIN_MM, 1.0, 1.0);
    Optional<JobInfo> info = Optional.empty();
    if (given.hasMatchedOption("--job")) {
      LoadedJob loaded =
          LoadedJob.load(context.path(given.matchedOptionValue("--job", "")), List.of());
      Job job = loaded.layout().job();
      print = job.sides().values().iterator().next().print();
      info =
          Optional.of(
              new JobInfo(job.title(), job.date(), job.units(), loaded.packMark(), List.of()));
    }
    if (given.hasMatchedOption("--paper")) {
      Paper paper = paper(given.matchedOptionValue("--paper", ""));
      print = new Print(paper, print.marginMm(), print.scaleAcross(), print.scaleAlong());
    }
    String file = given.matchedOptionValue("-o", DEFAULT_FILE);
    Path path = context.path(file);
    OutputFile.refuseWithoutFolder(path, file);
    List<Page> pages = List.of(Ruler.page(print, info));
    byte[] pdf = PdfWriter.write(info.map(JobInfo::title).orElse(TITLE), pages);
    PackCommand.refuse(PdfProof.check(pdf, pages));
    OutputFile.write(context, path, pdf, given.hasMatchedOption("--force"));
    context.console().say("wrote " + file + "; print it at 100 % and measure its bars");
    return Exit.DONE;
  }

  static Paper paper(String word) throws Refusal {
    return Arrays.stream(Paper.values())
        .filter(p -> p.word().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    Exit.WRONG_USE,
                    "--paper " + word + ": not one of " + String.join(", ", papers())));
  }

  private static List<String> papers() {
    return Arrays.stream(Paper.values()).map(Paper::word).toList();
  }
}
