package dev.towerscribe.cli;

import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.tower.RulerPage;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** {@code ruler}: one page to measure a printer by, before or between packs. */
final class RulerCommand implements Command {
  private static final String DEFAULT_FILE = "ruler.pdf";

  private static final String TITLE = "Print check";

  @Override
  public Options options() {
    return Options.command(
            "ruler",
            "Write the print-check page alone as a PDF. With --measured, take what calipers read on"
                + " a print's two check bars and between their far ends, and work out print.scale"
                + " and print.skew for the job file. Ends with 1 if no printer can be so far off.",
            "",
            "Example: towerscribe ruler --paper Letter -o ruler.pdf",
            "Example: towerscribe ruler --measured 101.3,99.4,141.4 --job wren.toml --write")
        .output("Where to; " + DEFAULT_FILE + " if not given.")
        .paper("Paper size", "The job's, or A4 without a job,")
        .text(
            "JOB",
            "Take paper, margin and print scale from this job file. With --measured: the print was"
                + " made with this job as it is.",
            MeasuredPrint.JOB)
        .text(
            "ACROSS,ALONG[,FAR]",
            "What the bars of a 1:1 sheet read: the level one, along the paper's short side; the"
                + " upright one; and, for the skew, from cross to cross between their far ends."
                + " Separate them with commas; decimals take a point. In the job's unit, or mm; a"
                + " reading in the other has it right behind: 3.985in.",
            MeasuredPrint.MEASURED)
        .text(
            "ACROSS,ALONG",
            "How long the measured bars should be, where they are not 100 mm (4 in for a job in"
                + " inches): on the print-check page they are longer.",
            MeasuredPrint.BARS)
        .text(
            "LENGTH",
            "How far off one reading may be, a standard deviation in the readings' unit; 0.05 mm if"
                + " not given.",
            MeasuredPrint.UNCERTAINTY,
            "--doubt")
        .text("UNIT", "Unit of the readings without a job: mm or in.", MeasuredPrint.UNITS)
        .flag(
            MeasuredPrint.WRITE,
            "Write the new figures into the job file's [print]; all else there is left as it is.")
        .json("Print what --measured found as one JSON object.")
        .force("Replace a file that is there already.");
  }

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    if (given.has(MeasuredPrint.MEASURED)) {
      return new MeasuredPrint(given).run();
    }
    MeasuredPrint.refuseWithout(given);
    Print print = PrintCauses.usual(Paper.A4);
    Optional<JobInfo> info = Optional.empty();
    Optional<String> job = given.text(MeasuredPrint.JOB);
    if (job.isPresent()) {
      LoadedJob loaded = LoadedJob.load(given.path(job.get()), List.of(), given.notes());
      print = loaded.print();
      info = Optional.of(loaded.info());
    }
    print = given.print(print);
    String file = given.text(ParsedCommand.OUTPUT).orElse(DEFAULT_FILE);
    OutputFile output = given.output(file);
    String title = info.map(JobInfo::title).orElse(TITLE);
    output.write(MadeFile.pdf(title, List.of(RulerPage.page(print, info))), given.force());
    Console console = given.console();
    console.say("wrote " + file + "; print it at 100 % and measure its bars");
    RulerPage.Bars bars = RulerPage.Bars.of(print);
    LengthUnit units = info.map(JobInfo::units).orElse(LengthUnit.MM);
    console.say(
        "then: towerscribe ruler --measured ACROSS,ALONG,CROSS-TO-CROSS --bars %s,%s",
        Numbers.plain(units.fromMm(bars.acrossMm()), 3),
        Numbers.plain(units.fromMm(bars.alongMm()), 3));
    return Exit.DONE;
  }
}
