package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.report.LayoutReport;
import dev.towerscribe.report.json.LayoutJson;
import dev.towerscribe.sheet.Pack;
import dev.towerscribe.sheet.text.NoRoomException;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.MadeFiles;
import dev.towerscribe.store.PackDirectory;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * {@code pack}: the sheets of a job. Every file is made and proved in memory before the first is
 * written, and all take their place as one.
 */
final class PackCommand implements Command {
  private static final String PDF = "pack.pdf";
  private static final String DATA = "report.json";

  @Override
  public Options options() {
    return Options.command(
            "pack",
            "Write a job's full-scale sheets: pack.pdf, an SVG of each sheet, report.txt and"
                + " report.json. While a stop finding stands, only report.txt and overview.pdf are"
                + " written and the command ends with 1.",
            "",
            "Example: towerscribe pack wren.toml -o wren-pack")
        .directory(
            true,
            "Where to. Made if missing; files of an earlier pack there are replaced, other files"
                + " left alone.")
        .accept()
        .job();
  }

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    // Opening the font takes as long as reading a job.
    BackgroundTask<PdfWriter> pdf = BackgroundTask.begin("pdf", PdfWriter::new);
    PackDirectory directory = given.directory();
    LoadedJob job = given.job();
    return job.accepted().open().isEmpty()
        ? writePack(job, pdf, directory, given)
        : writeReport(job, pdf, directory, given);
  }

  private static int writePack(
      LoadedJob job, BackgroundTask<PdfWriter> writer, PackDirectory directory, ParsedCommand given)
      throws IOException, Refusal {
    List<Page> pages = pages(job);
    BackgroundTask<MadeFile> pdf =
        BackgroundTask.begin(
            "pdf and proof", () -> MadeFile.pdf(writer.result(), job.job().title(), pages));
    MadeFiles files = new MadeFiles();
    for (Page page : pages) {
      if (page.fullScale()) {
        files.put(page.fileStem() + ".svg", MadeFile.svg(page));
      }
    }
    files.put(DATA, MadeFile.text(LayoutJson.of(job.layout())));
    Optional<String> mark = Optional.of(job.packMark());
    String report = CheckedFiles.report(job, mark, List.of());
    files.put(PDF, pdf.result());
    directory.writePack(job.packMark(), files, report);
    Console console = given.console();
    console.say(
        "wrote %s pages to %s, pack mark %s",
        pages.size(), given.directoryPath().resolve(PDF), job.packMark());
    job.accepted().carried().forEach(f -> console.say("accepted: " + line(f)));
    cautions(job).forEach(f -> console.say("caution: " + line(f)));
    console.say("print at 100 %, then measure the check bars before anything is marked or cut");
    return Exit.DONE;
  }

  private static List<Page> pages(LoadedJob job) throws Refusal {
    try {
      return Pack.pages(job.layout(), job.alignment(), job.info());
    } catch (NoRoomException e) {
      throw Refusal.wrongUse(
          List.of(
              "print: " + e.getMessage(),
              "nothing was written: use larger paper, a smaller margin or shorter names"));
    }
  }

  private static int writeReport(
      LoadedJob job, BackgroundTask<PdfWriter> writer, PackDirectory directory, ParsedCommand given)
      throws IOException, Refusal {
    Optional<String> older = new CheckedFiles(job, writer.result()).write(directory);
    Console console = given.console();
    console.warn(LayoutReport.result(job.layout(), job.accepted().ids()).get(0));
    job.accepted().open().forEach(f -> console.warn(line(f)));
    older.ifPresent(console::warn);
    console.warn("report: " + given.directoryPath().resolve(PackDirectory.REPORT));
    console.warn("where and which way: " + given.directoryPath().resolve(CheckedFiles.OVERVIEW));
    return Exit.STOPPED;
  }

  private static List<Finding> cautions(LoadedJob job) {
    return job.layout().sides().values().stream()
        .flatMap(s -> s.findings().stream())
        .filter(f -> f.severity() == Severity.CAUTION)
        .distinct()
        .toList();
  }

  private static String line(Finding finding) {
    return finding.id() + ": " + finding.say();
  }
}
