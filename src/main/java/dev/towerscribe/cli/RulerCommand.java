package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.tower.RulerPage;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code ruler}: one page to measure a printer by, before or between packs. */
final class RulerCommand implements Command {
  private static final String DEFAULT_FILE = "ruler.pdf";

  private static final String TITLE = "Print check";

  @Override
  public CommandSpec spec() {
    return Options.command(
            "ruler",
            "Write the print-check page alone as a PDF. With --measured, take what calipers read on"
                + " a print's two check bars and between their far ends, and work out print.scale"
                + " and print.skew for the job file. Ends with 1 if no printer can be so far off.",
            "",
            "Example: towerscribe ruler --paper Letter -o ruler.pdf",
            "Example: towerscribe ruler --measured 101.3,99.4,141.4 --job wren.toml --write")
        .addOption(
            Options.text("FILE", "Where to; " + DEFAULT_FILE + " if not given.", "-o", "--output"))
        .addOption(
            Options.text(
                "PAPER",
                "Paper size: "
                    + String.join(", ", PaperOption.words())
                    + ". The job's, or A4 without a job, if not given.",
                "--paper"))
        .addOption(
            Options.text(
                "JOB",
                "Take paper, margin and print scale from this job file. With --measured: the print"
                    + " was made with this job as it is.",
                "--job"))
        .addOption(
            Options.text(
                "ACROSS,ALONG[,FAR]",
                "What the bars of a 1:1 sheet read: the level one, along the paper's short side;"
                    + " the upright one; and, for the skew, from cross to cross between their far"
                    + " ends. Commas part them, decimals take a point. In the job's unit, or mm.",
                "--measured"))
        .addOption(
            Options.text(
                "ACROSS,ALONG",
                "How long the measured bars should be, where they are not 100 mm (4 in for a job in"
                    + " inches): on the print-check page they are longer.",
                "--bars"))
        .addOption(
            Options.text(
                "LENGTH",
                "How far off one reading may be, a standard deviation in the readings' unit; 0.05"
                    + " mm if not given.",
                "--doubt"))
        .addOption(Options.text("UNIT", "Unit of the readings without a job: mm or in.", "--units"))
        .addOption(
            Options.flag(
                "--write",
                "Write the new figures into the job file's [print]; all else there is left as it"
                    + " is."))
        .addOption(Options.flag("--json", "Print what --measured found as one JSON object."))
        .addOption(Options.flag("--force", "Replace a file that is there already."));
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, JobRejected, Refusal {
    if (given.hasMatchedOption("--measured")) {
      return MeasuredPrint.run(given, context);
    }
    MeasuredPrint.refuseWithout(given);
    Print print = new Print(Paper.A4, PrintCauses.MARGIN_MM, 1.0, 1.0);
    Optional<JobInfo> info = Optional.empty();
    if (given.hasMatchedOption("--job")) {
      LoadedJob loaded =
          LoadedJob.load(
              context.path(given.matchedOptionValue("--job", "")),
              List.of(),
              context.console()::warn);
      Job job = loaded.layout().job();
      print = job.sides().values().iterator().next().print();
      info =
          Optional.of(
              new JobInfo(job.title(), job.date(), job.units(), loaded.packMark(), List.of()));
    }
    if (given.hasMatchedOption("--paper")) {
      Paper paper = PaperOption.paper(given.matchedOptionValue("--paper", ""));
      print = print.on(paper);
    }
    String file = given.matchedOptionValue("-o", DEFAULT_FILE);
    Path path = context.path(file);
    OutputFile.refuseWithoutFolder(path, file);
    List<Page> pages = List.of(RulerPage.page(print, info));
    byte[] pdf = PdfWriter.write(info.map(JobInfo::title).orElse(TITLE), pages);
    PackCommand.refuse(PdfProof.check(pdf, pages));
    OutputFile.write(context.ops(), path, pdf, given.hasMatchedOption("--force"));
    context.console().say("wrote " + file + "; print it at 100 % and measure its bars");
    RulerPage.Bars bars = RulerPage.Bars.of(print);
    LengthUnit units = info.map(JobInfo::units).orElse(LengthUnit.MM);
    context
        .console()
        .say(
            "then: towerscribe ruler --measured ACROSS,ALONG,CROSS-TO-CROSS --bars "
                + Numbers.plain(units.fromMm(bars.acrossMm()), 3)
                + ","
                + Numbers.plain(units.fromMm(bars.alongMm()), 3));
    return Exit.DONE;
  }
}
