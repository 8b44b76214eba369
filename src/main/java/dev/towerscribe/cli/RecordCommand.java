package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.VisitReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.EntryText;
import dev.towerscribe.record.Evaluate;
import dev.towerscribe.record.Evaluation;
import dev.towerscribe.record.RecordText;
import dev.towerscribe.record.Since;
import dev.towerscribe.record.Visit;
import dev.towerscribe.report.json.RecordJson;
import dev.towerscribe.sheet.report.RecordPage;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.store.RecordFile;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** {@code record}: what the bay read, kept with the job beside what was predicted. */
final class RecordCommand implements Command {
  private static final int MOST_BYTES = 1 << 24;

  @Override
  public CommandSpec spec() {
    return Options.command(
            "record",
            "Keep what the alignment bay read, beside what was predicted, in a record that only"
                + " ever grows (NAME.record.txt beside NAME.toml), and say what the differences"
                + " tell. JOB VISIT adds a visit; JOB alone shows the record; JOB -o FILE writes a"
                + " visit's page; --list FOLDER lists every visit of every job in a folder.",
            "",
            "Examples: towerscribe record wren.toml wren-visit.toml",
            "          towerscribe record wren.toml -o wren-record.pdf",
            "          towerscribe record --list jobs --csv -o jobs.csv")
        .addPositional(
            PositionalParamSpec.builder()
                .paramLabel("JOB")
                .type(String.class)
                .arity("0..1")
                .index("0")
                .description("The job file (TOML).")
                .build())
        .addPositional(
            PositionalParamSpec.builder()
                .paramLabel("VISIT")
                .type(String.class)
                .arity("0..1")
                .index("1")
                .description("A visit file (TOML) to add to the record.")
                .build())
        .addOption(
            Options.flag("--again", "Add the visit even if the record has the very same already."))
        .addOption(Options.accept())
        .addOption(Options.flag("--json", "Show the record as one JSON object, degrees and mm."))
        .addOption(Options.text("N", "The visit by its number; the last if not given.", "--visit"))
        .addOption(
            Options.text(
                "FILE",
                "Write the visit's page (PDF) there, or with --list the list.",
                "-o",
                "--output"))
        .addOption(Options.text("PAPER", "Paper of the page; the job's if not given.", "--paper"))
        .addOption(Options.flag("--force", "Let -o replace a file that is there already."))
        .addOption(
            Options.text("FOLDER", "List every visit of every job in this folder.", "--list"))
        .addOption(Options.flag("--csv", "List as comma separated values (RFC 4180)."));
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, JobRejected, Refusal {
    RecordUse use = RecordUse.of(given);
    if (use == RecordUse.LIST) {
      return list(given, context);
    }
    Path file = context.path(given.matchedPositionalValue(0, ""));
    LoadedJob job =
        LoadedJob.load(
            file, given.matchedOptionValue("--accept", List.of()), context.console()::warn);
    RecordFile record = new RecordFile(context.ops(), file);
    if (use == RecordUse.ADD) {
      return add(given, context, job, record);
    }
    RecordText text =
        record
            .read()
            .orElseThrow(
                () ->
                    new Refusal(
                        Exit.FILES,
                        record.path() + ": no such file: no visit has been recorded yet"));
    return use == RecordUse.PAGE
        ? page(given, context, job, text)
        : show(given, context, job, text);
  }

  // Adding.

  private static int add(ParseResult given, Context context, LoadedJob job, RecordFile record)
      throws IOException, Refusal {
    Visit visit = visit(context, given.matchedPositionalValue(1, ""), job.layout().job());
    Evaluation evaluation = Evaluate.of(job.layout().job(), visit);
    EntryText.About about =
        new EntryText.About(
            job.layout().job().title(),
            job.packMark(),
            "Towerscribe " + Version.TEXT,
            List.copyOf(job.accepted()));
    boolean again = given.hasMatchedOption("--again");
    RecordText now =
        record.append(
            before -> {
              if (!again) {
                refuseSame(before, visit);
              }
              return EntryText.of(before.nextNumber(), evaluation, about);
            });
    int number = now.nextNumber() - 1;
    context.console().print(RecordWords.of(number, evaluation));
    now.remarks().forEach(r -> context.console().warn(record.path().getFileName() + ": " + r));
    context.console().say("added visit " + number + " to " + record.path().getFileName());
    return Exit.DONE;
  }

  private static void refuseSame(RecordText before, Visit visit) throws Refusal {
    String identity = EntryText.identity(visit);
    for (Entry entry : before.entries()) {
      if (entry.visit().map(EntryText::identity).filter(identity::equals).isPresent()) {
        throw new Refusal(
            Exit.WRONG_USE,
            "the record has this very visit already, as visit "
                + entry.number().orElse(0)
                + "; --again adds it all the same");
      }
    }
  }

  private static Visit visit(Context context, String file, Job job) throws IOException, Refusal {
    Path path = context.path(file);
    if (Files.isDirectory(path)) {
      throw new IOException(path + ": is a directory, not a visit file");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(MOST_BYTES);
    }
    try {
      return new VisitReader(Lettering::canWrite, context.console()::warn).parse(bytes, job);
    } catch (JobRejected e) {
      List<String> lines = new ArrayList<>();
      lines.add("the visit file cannot be worked from, and nothing was added:");
      e.faults().stream().map(Fault::line).forEach(lines::add);
      throw new Refusal(Exit.WRONG_USE, lines);
    }
  }

  // Showing.

  private static int show(ParseResult given, Context context, LoadedJob job, RecordText text)
      throws Refusal {
    List<Entry> some =
        given.hasMatchedOption("--visit") ? List.of(chosen(given, text)) : text.entries();
    if (given.hasMatchedOption("--json")) {
      context.console().print(RecordJson.of(job.layout().job(), some, text.remarks()));
      return Exit.DONE;
    }
    Console console = context.console();
    for (Entry entry : some) {
      entry.lines().forEach(console::say);
      console.say("");
      Since.of(job.layout().job(), entry).forEach(s -> console.say("since then: " + s));
    }
    text.remarks().forEach(r -> console.say("remark: " + r));
    return Exit.DONE;
  }

  private static Entry chosen(ParseResult given, RecordText text) throws Refusal {
    if (text.entries().isEmpty()) {
      throw new Refusal(Exit.WRONG_USE, "the record holds no visit that can be read");
    }
    if (!given.hasMatchedOption("--visit")) {
      List<Entry> whole = text.entries().stream().filter(e -> e.visit().isPresent()).toList();
      List<Entry> some = whole.isEmpty() ? text.entries() : whole;
      return some.get(some.size() - 1);
    }
    String number = given.matchedOptionValue("--visit", "");
    return text.entries().stream()
        .filter(e -> e.number().map(n -> Integer.toString(n)).equals(Optional.of(number)))
        .reduce((first, second) -> second)
        .orElseThrow(
            () ->
                new Refusal(
                    Exit.WRONG_USE,
                    "--visit "
                        + number
                        + ": the record has "
                        + String.join(
                            ", ",
                            text.entries().stream()
                                .flatMap(e -> e.number().stream())
                                .map(n -> Integer.toString(n))
                                .toList())));
  }

  // The page.

  private static int page(ParseResult given, Context context, LoadedJob job, RecordText text)
      throws IOException, Refusal {
    String name = given.matchedOptionValue("-o", "");
    Path path = context.path(name);
    OutputFile.refuseWithoutFolder(path, name);
    Entry entry = chosen(given, text);
    Visit visit = entry.visit().map(RecordCommand::printable).orElseThrow(() -> unusable(entry));
    Job plan = job.layout().job();
    Evaluation evaluation = Evaluate.of(plan, visit);
    Print print = plan.sides().values().iterator().next().print();
    if (given.hasMatchedOption("--paper")) {
      print = print.on(PaperOption.paper(given.matchedOptionValue("--paper", "")));
    }
    List<String> remarks = new ArrayList<>();
    if (entry.state() == Entry.State.EDITED) {
      remarks.add("this entry was edited after it was written: its checksum does not match");
    }
    remarks.addAll(Since.of(plan, entry));
    List<String> gone =
        entry.acceptedStops().stream().filter(id -> !job.accepted().contains(id)).toList();
    if (!gone.isEmpty()) {
      remarks.add("recorded with accepted stops: " + printable(String.join(", ", gone)));
    }
    JobInfo info =
        new JobInfo(
            plan.title(),
            Optional.of(visit.date()),
            plan.units(),
            job.packMark(),
            job.acceptedStops());
    List<Page> pages =
        RecordPage.pages(
            evaluation, new RecordPage.Source(entry.number().orElse(0), remarks), print, info);
    byte[] pdf = PdfWriter.write(plan.title(), pages);
    PackCommand.refuse(PdfProof.check(pdf, pages));
    OutputFile.write(context.ops(), path, pdf, given.hasMatchedOption("--force"));
    context.console().say("wrote " + name + " with visit " + entry.number().orElse(0));
    return Exit.DONE;
  }

  private static Refusal unusable(Entry entry) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "lines "
            + entry.firstLine()
            + " to "
            + entry.lastLine()
            + " of the record do not hold enough for a page");
    lines.addAll(entry.troubles());
    return new Refusal(Exit.WRONG_USE, lines);
  }

  /** An edited record may hold characters that no sheet can carry. */
  private static Visit printable(Visit v) {
    return new Visit(
        v.date(),
        printable(v.words()),
        v.bay().map(RecordCommand::printable),
        v.doubt(),
        v.wheels());
  }

  private static String printable(String words) {
    StringBuilder text = new StringBuilder();
    words.codePoints().map(c -> Lettering.canWrite(c) ? c : '?').forEach(text::appendCodePoint);
    return text.toString();
  }

  // The list.

  private static int list(ParseResult given, Context context) throws IOException, Refusal {
    String name = given.matchedOptionValue("--list", "");
    Path folder = context.path(name);
    if (!Files.isDirectory(folder)) {
      throw new Refusal(Exit.FILES, name + ": not a folder");
    }
    RecordList list = RecordList.of(context.ops(), folder);
    String text = given.hasMatchedOption("--csv") ? list.csv() : list.text();
    if (given.hasMatchedOption("-o")) {
      String file = given.matchedOptionValue("-o", "");
      Path path = context.path(file);
      OutputFile.refuseWithoutFolder(path, file);
      OutputFile.write(
          context.ops(),
          path,
          text.getBytes(StandardCharsets.UTF_8),
          given.hasMatchedOption("--force"));
      context.console().say("wrote " + file + ", " + list.lines().size() + " lines");
    } else {
      if (given.hasMatchedOption("--csv")) {
        context.console().data(text);
      } else {
        context.console().print(text);
      }
    }
    list.faults().forEach(context.console()::warn);
    return list.unreadable() ? Exit.FILES : Exit.DONE;
  }
}
