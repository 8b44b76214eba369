package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.VisitReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.EntryText;
import dev.towerscribe.record.Evaluation;
import dev.towerscribe.record.PredictionChange;
import dev.towerscribe.record.RecordText;
import dev.towerscribe.record.Visit;
import dev.towerscribe.record.VisitEvaluator;
import dev.towerscribe.report.PlainText;
import dev.towerscribe.report.RecordReport;
import dev.towerscribe.report.RecordsReport;
import dev.towerscribe.report.csv.RecordsCsv;
import dev.towerscribe.report.json.RecordJson;
import dev.towerscribe.sheet.report.RecordPage;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.store.RecordFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code record}: what the bay read, kept with the job beside what was predicted. */
final class RecordCommand implements Command {
  private static final String VISIT = "--visit";
  private static final String AGAIN = "--again";
  private static final String LIST = "--list";
  private static final String CSV = "--csv";

  @Override
  public Options options() {
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
        .file(0, "JOB", "The job file (TOML).", false)
        .file(1, "VISIT", "A visit file (TOML) to add to the record.", false)
        .flag(AGAIN, "Add the visit even if the record already has the same one.")
        .accept()
        .json("Show the record as one JSON object, degrees and mm.")
        .text("N", "The visit by its number; the last if not given.", VISIT)
        .output("Write the visit's page (PDF) there, or with --list the list.")
        .text("PAPER", "Paper of the page; the job's if not given.", ParsedCommand.PAPER)
        .force("Let -o replace a file that is there already.")
        .text("FOLDER", "List every visit of every job in this folder.", LIST)
        .flag(CSV, "List as comma separated values (RFC 4180).");
  }

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    RecordOptions use = RecordOptions.of(given);
    if (use == RecordOptions.LIST) {
      return list(given);
    }
    LoadedJob job = given.job();
    RecordFile record = new RecordFile(given.ops(), given.path(0));
    if (use == RecordOptions.ADD) {
      return add(given, job, record);
    }
    RecordText text =
        record
            .read()
            .orElseThrow(
                () ->
                    new Refusal(
                        Exit.FILES,
                        record.path() + ": no such file: no visit has been recorded yet"));
    return use == RecordOptions.PAGE ? page(given, job, text) : show(given, job.job(), text);
  }

  // Adding.

  private static int add(ParsedCommand given, LoadedJob job, RecordFile record)
      throws IOException, Refusal {
    VisitReader reader = new VisitReader(Lettering::canWrite, given.notes());
    String head = "the visit file cannot be used, and nothing was added:";
    Path file = given.path(1);
    Visit visit = ParsedCommand.read(head, () -> reader.read(file, job.job()));
    Evaluation evaluation = VisitEvaluator.of(job.job(), visit);
    EntryText.About about =
        new EntryText.About(
            job.job().title(),
            job.packMark(),
            "Towerscribe " + Version.TEXT,
            List.copyOf(job.accepted().ids()));
    RecordText now =
        record.append(
            before -> {
              if (!given.has(AGAIN)) {
                refuseSame(before, visit);
              }
              return EntryText.of(before.nextNumber(), evaluation, about);
            });
    int number = now.nextNumber() - 1;
    Path name = record.path().getFileName();
    given.console().print(PlainText.of(RecordReport.of(number, evaluation)));
    now.remarks().forEach(r -> given.console().warn(name + ": " + r));
    given.console().say("added visit %s to %s", number, name);
    return Exit.DONE;
  }

  private static void refuseSame(RecordText before, Visit visit) throws Refusal {
    String identity = EntryText.identity(visit);
    for (Entry entry : before.entries()) {
      if (entry.visit().map(EntryText::identity).filter(identity::equals).isPresent()) {
        throw Refusal.wrongUse(
            "the record already has this visit, as visit %s; --again adds it nevertheless",
            number(entry));
      }
    }
  }

  private static int number(Entry entry) {
    return entry.number().orElse(0);
  }

  // Showing.

  private static int show(ParsedCommand given, Job job, RecordText text) throws Refusal {
    List<Entry> some = given.has(VISIT) ? List.of(chosen(given, text)) : text.entries();
    Console console = given.console();
    if (given.has(ParsedCommand.JSON)) {
      console.print(RecordJson.of(job, some, text.remarks()));
      return Exit.DONE;
    }
    for (Entry entry : some) {
      entry.lines().forEach(console::say);
      console.say("");
      PredictionChange.of(job, entry).forEach(s -> console.say("since then: " + s));
    }
    text.remarks().forEach(r -> console.say("remark: " + r));
    return Exit.DONE;
  }

  /** The visit that was asked for; without a number the last that is whole, or else the last. */
  private static Entry chosen(ParsedCommand given, RecordText text) throws Refusal {
    List<Entry> all = text.entries();
    if (all.isEmpty()) {
      throw Refusal.wrongUse("the record holds no visit that can be read");
    }
    Optional<String> number = given.text(VISIT);
    if (number.isEmpty()) {
      List<Entry> whole = all.stream().filter(e -> e.visit().isPresent()).toList();
      List<Entry> some = whole.isEmpty() ? all : whole;
      return some.get(some.size() - 1);
    }
    List<String> numbers =
        all.stream().map(e -> e.number().map(n -> Integer.toString(n)).orElse("")).toList();
    int last = numbers.lastIndexOf(number.get());
    if (last < 0) {
      List<String> some = numbers.stream().filter(n -> !n.isEmpty()).toList();
      throw Refusal.wrongUse(
          "--visit %s: the record has %s", number.get(), String.join(", ", some));
    }
    return all.get(last);
  }

  // The page.

  private static int page(ParsedCommand given, LoadedJob job, RecordText text)
      throws IOException, Refusal {
    String name = given.text(ParsedCommand.OUTPUT).orElseThrow();
    OutputFile output = given.output(name);
    Entry entry = chosen(given, text);
    Visit visit = entry.visit().map(RecordCommand::printable).orElseThrow(() -> unusable(entry));
    List<Page> pages =
        RecordPage.pages(
            VisitEvaluator.of(job.job(), visit),
            new RecordPage.Source(number(entry), remarks(job, entry)),
            given.print(job.print()),
            job.info(Optional.of(visit.date())));
    output.write(MadeFile.pdf(job.job().title(), pages), given.force());
    given.console().say("wrote %s with visit %s", name, number(entry));
    return Exit.DONE;
  }

  private static List<String> remarks(LoadedJob job, Entry entry) {
    List<String> remarks = new ArrayList<>();
    if (entry.state() == Entry.State.EDITED) {
      remarks.add("this entry was edited after it was written: its checksum does not match");
    }
    remarks.addAll(PredictionChange.of(job.job(), entry));
    List<String> gone =
        entry.acceptedStops().stream().filter(id -> !job.accepted().ids().contains(id)).toList();
    if (!gone.isEmpty()) {
      remarks.add("recorded with accepted stops: " + printable(String.join(", ", gone)));
    }
    return remarks;
  }

  private static Refusal unusable(Entry entry) {
    String head = "lines %s to %s of the record do not hold enough for a page";
    return Refusal.of(head.formatted(entry.firstLine(), entry.lastLine()), entry.troubles());
  }

  /** An edited record may hold characters that no sheet can carry. */
  private static Visit printable(Visit v) {
    return new Visit(
        v.date(),
        printable(v.words()),
        v.bay().map(RecordCommand::printable),
        v.uncertainty(),
        v.wheels());
  }

  private static String printable(String words) {
    StringBuilder text = new StringBuilder();
    words.codePoints().map(c -> Lettering.canWrite(c) ? c : '?').forEach(text::appendCodePoint);
    return text.toString();
  }

  // The list.

  private static int list(ParsedCommand given) throws IOException, Refusal {
    String name = given.text(LIST).orElseThrow();
    Path folder = given.path(name);
    if (!Files.isDirectory(folder)) {
      throw new Refusal(Exit.FILES, name + ": not a folder");
    }
    RecordList list = RecordList.of(given.ops(), folder);
    String text =
        given.has(CSV) ? RecordsCsv.of(list.lines()) : PlainText.of(RecordsReport.of(list.lines()));
    Optional<String> file = given.text(ParsedCommand.OUTPUT);
    Console console = given.console();
    if (file.isPresent()) {
      given.output(file.get()).write(MadeFile.text(text), given.force());
      console.say("wrote %s, %s lines", file.get(), list.lines().size());
    } else if (given.has(CSV)) {
      console.data(text);
    } else {
      console.print(text);
    }
    list.faults().forEach(console::warn);
    return list.unreadable() ? Exit.FILES : Exit.DONE;
  }
}
