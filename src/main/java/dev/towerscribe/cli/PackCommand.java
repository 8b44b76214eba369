package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Job;
import dev.towerscribe.report.json.LayoutJson;
import dev.towerscribe.sheet.Pack;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.NoRoomException;
import dev.towerscribe.store.PackDirectory;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import dev.towerscribe.writer.svg.SvgProof;
import dev.towerscribe.writer.svg.SvgWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * {@code pack}: the sheets of a job. Every file is made and proved in memory before the first is
 * written, and all take their place as one.
 */
final class PackCommand implements Command {
  private static final String PDF = "pack.pdf";
  private static final String DATA = "report.json";

  @Override
  public CommandSpec spec() {
    return Options.command(
            "pack",
            "Write a job's full-scale sheets: pack.pdf, an SVG of each sheet, report.txt and"
                + " report.json. While a stop finding stands, only report.txt is written and the"
                + " command ends with 1.",
            "",
            "Example: towerscribe pack wren.toml -o wren-pack")
        .addOption(
            OptionSpec.builder("-o", "--output")
                .type(String.class)
                .required(true)
                .paramLabel("DIR")
                .description(
                    "Where to. Made if missing; files of an earlier pack there are replaced, other"
                        + " files left alone.")
                .build())
        .addOption(Options.accept())
        .addPositional(Options.job());
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, JobRejected, Refusal {
    // Opening the font takes as long as reading a job.
    Aside<PdfWriter> pdf = Aside.begin("pdf", PdfWriter::new);
    Path directory = context.path(given.matchedOptionValue("-o", ""));
    LoadedJob job =
        LoadedJob.load(
            context.path(given.matchedPositionalValue(0, "")),
            given.matchedOptionValue("--accept", List.of()),
            context.console()::warn);
    PackDirectory target = new PackDirectory(context.ops(), directory);
    return job.openStops().isEmpty()
        ? writePack(job, pdf, target, directory, context.console())
        : writeReport(job, target, directory, context.console());
  }

  /** A file, and what is wrong with it. */
  private record Proved(byte[] file, List<String> mismatches) {}

  private static int writePack(
      LoadedJob job, Aside<PdfWriter> writer, PackDirectory target, Path directory, Console console)
      throws IOException, Refusal {
    Job model = job.layout().job();
    List<Page> pages = pages(job, model);
    Aside<Proved> pdf =
        Aside.begin(
            "pdf and proof",
            () -> {
              byte[] file = writer.result().finish(model.title(), pages);
              return new Proved(file, PdfProof.check(file, pages));
            });
    SortedMap<String, byte[]> files = new TreeMap<>();
    List<String> mismatches = new ArrayList<>();
    for (Page page : pages) {
      if (page.fullScale()) {
        byte[] svg = SvgWriter.write(page);
        mismatches.addAll(SvgProof.check(svg, page));
        if (files.put(page.fileStem() + ".svg", svg) != null) {
          throw new IllegalStateException("two pages called " + page.fileStem());
        }
      }
    }
    files.put(DATA, utf8(LayoutJson.of(job.layout())));
    String report =
        TextReport.of(job.layout(), job.accepted(), Optional.of(job.packMark()), List.of());
    files.put(PDF, pdf.result().file());
    mismatches.addAll(0, pdf.result().mismatches());
    refuse(mismatches);
    target.writePack(job.packMark(), files, utf8(report));
    console.say(
        "wrote "
            + pages.size()
            + " pages to "
            + directory.resolve(PDF)
            + ", pack mark "
            + job.packMark());
    job.acceptedStops().forEach(f -> console.say("accepted: " + line(f)));
    cautions(job).forEach(f -> console.say("caution: " + line(f)));
    console.say("print at 100 %, then measure the check bars before anything is marked or cut");
    return Exit.DONE;
  }

  private static List<Page> pages(LoadedJob job, Job model) throws Refusal {
    JobInfo info =
        new JobInfo(
            model.title(), model.date(), model.units(), job.packMark(), job.acceptedStops());
    try {
      return Pack.pages(job.layout(), job.alignment(), info);
    } catch (NoRoomException e) {
      throw new Refusal(
          Exit.WRONG_USE,
          List.of(
              "print: " + e.getMessage(),
              "nothing was written: use larger paper, a smaller margin or shorter names"));
    }
  }

  /** A sheet that does not show what was laid out must not exist. */
  static void refuse(List<String> mismatches) throws Refusal {
    if (!mismatches.isEmpty()) {
      List<String> lines = new ArrayList<>();
      lines.add("a finished sheet does not match the layout, so nothing was written");
      lines.addAll(mismatches);
      lines.add(Main.PLEASE_REPORT);
      throw new Refusal(Exit.OUR_FAULT, lines);
    }
  }

  private static int writeReport(
      LoadedJob job, PackDirectory target, Path directory, Console console)
      throws IOException, Refusal {
    Optional<String> older =
        target.writeReportOnly(
            mark ->
                utf8(
                    TextReport.of(
                        job.layout(),
                        job.accepted(),
                        Optional.empty(),
                        mark.map(m -> List.of(warning(m))).orElse(List.of()))));
    console.warn(TextReport.verdict(job.layout(), job.accepted()));
    job.openStops().forEach(f -> console.warn(line(f)));
    older.ifPresent(mark -> console.warn(warning(mark)));
    console.warn("report: " + directory.resolve(PackDirectory.REPORT));
    return Exit.STOPPED;
  }

  private static String warning(String olderMark) {
    return "DO NOT WORK FROM THE SHEETS IN THIS DIRECTORY: they carry pack mark "
        + olderMark
        + ", belong to an earlier state of the job, and were left as they are. The state checked"
        + " now has a stop finding and no sheets.";
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

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
