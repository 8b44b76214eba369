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
import dev.towerscribe.record.Strike;
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
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code record}: what the bay read, kept with the job beside what was predicted. */
final class RecordCommand implements Command {
  private static final String VISIT = "--visit";
  private static final String START = "--start";
  private static final String START_FILE = "visit.toml";
  private static final String STRIKE = "--strike";
  private static final String REASON = "--reason";
  private static final String DATE = "--date";
  private static final int MOST_REASON = 80;
  private static final String AGAIN = "--again";
  private static final String LIST = "--list";
  private static final String CSV = "--csv";

  @Override
  public Options options() {
    return Options.command(
            "record",
            "Keep what the alignment bay read, beside what was predicted, in a record that only"
                + " ever grows (NAME.record.txt beside NAME.toml), and say what the differences"
                + " tell. --start JOB writes a visit file to fill in; JOB VISIT adds a visit; JOB"
                + " alone shows the record; JOB -o FILE writes a visit's page; --list FOLDER lists"
                + " every visit of every job in a folder.",
            "",
            "Examples: towerscribe record --start wren.toml -o wren-visit.toml",
            "          towerscribe record wren.toml wren-visit.toml",
            "          towerscribe record wren.toml -o wren-record.pdf",
            "          towerscribe record wren.toml --strike 2 --reason \"wrong car\" --date"
                + " 2026-12-05",
            "          towerscribe record --list jobs --csv -o jobs.csv")
        .file(0, "JOB", "The job file (TOML).", false)
        .file(1, "VISIT", "A visit file (TOML) to add to the record.", false)
        .flag(
            START,
            "Write a visit file to fill in, with this job's sides, to -o; "
                + START_FILE
                + " if not given.")
        .text(
            "N",
            "Strike this visit: it stays in the record, marked, and counts no more. With --reason"
                + " and --date.",
            STRIKE)
        .text("WORDS", "Why it is struck.", REASON)
        .text("DATE", "The day of the striking, YYYY-MM-DD.", DATE)
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
    if (use == RecordOptions.START) {
      String file = given.text(ParsedCommand.OUTPUT).orElse(START_FILE);
      given.start(file, ReadingsStartText.ofVisit(given.jobFile()));
      given.console().say("fill in every ___, then: towerscribe record %s %s", name(given), file);
      return Exit.DONE;
    }
    RecordFile record = new RecordFile(given.ops(), given.path(0));
    if (use == RecordOptions.STRIKE) {
      return strike(given, record);
    }
    LoadedJob job = given.job();
    if (use == RecordOptions.ADD) {
      return add(given, job, record);
    }
    RecordText text = existing(record);
    return use == RecordOptions.PAGE ? page(given, job, text) : show(given, job.job(), text);
  }

  private static RecordText existing(RecordFile record) throws IOException, Refusal {
    return record
        .read()
        .orElseThrow(
            () ->
                new Refusal(
                    Exit.FILES, record.path() + ": no such file: no visit has been recorded yet"));
  }

  // Striking.

  private static int strike(ParsedCommand given, RecordFile record) throws IOException, Refusal {
    List<String> faults = new ArrayList<>();
    String number = given.text(STRIKE).orElseThrow();
    String reason = given.text(REASON).map(String::strip).orElse("");
    if (reason.isEmpty() || reason.codePointCount(0, reason.length()) > MOST_REASON) {
      faults.add("--reason: why is it struck? 1 to %s characters".formatted(MOST_REASON));
    } else if (!reason.codePoints().allMatch(Lettering::canWrite)) {
      faults.add("--reason: letters that the pages can carry, in one line");
    }
    Optional<LocalDate> date = day(given.text(DATE).orElse(""));
    if (date.isEmpty()) {
      faults.add(
          "--date %s: the day of the striking, YYYY-MM-DD"
              .formatted(given.text(DATE).orElse("is missing")));
    }
    Refusal.ifAny(faults);
    existing(record);
    Strike strike = new Strike(date.orElseThrow(), reason);
    RecordText now = record.append(before -> toStrike(before, number, strike));
    Path name = record.path().getFileName();
    now.remarks().forEach(r -> given.console().warn(name + ": " + r));
    given.console().say("struck visit %s in %s; it stays there, marked", number, name);
    return Exit.DONE;
  }

  private static Optional<LocalDate> day(String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      return Optional.of(date).filter(d -> d.getYear() >= 1900 && d.getYear() <= 2200);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static String toStrike(RecordText before, String number, Strike strike) throws Refusal {
    Entry entry = numbered(before, STRIKE, number);
    if (entry.struck().isPresent()) {
      throw Refusal.wrongUse("visit %s was %s", number, entry.struck().get().words());
    }
    if (entry.date().filter(strike.date()::isBefore).isPresent()) {
      throw Refusal.wrongUse(
          "--date %s: visit %s itself is of %s", strike.date(), number, entry.date().get());
    }
    return strike.line(number(entry));
  }

  private static String name(ParsedCommand given) {
    return given.word(0).orElseThrow();
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
      if (entry.struck().isEmpty()
          && entry.visit().map(EntryText::identity).filter(identity::equals).isPresent()) {
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
      entry.struck().ifPresent(s -> console.say("STRUCK, counts no more: " + s.words()));
      entry.lines().forEach(console::say);
      console.say("");
      PredictionChange.of(job, entry).forEach(s -> console.say("since then: " + s));
    }
    text.remarks().forEach(r -> console.say("remark: " + r));
    return Exit.DONE;
  }

  /** The visit that was asked for; without a number the last that counts and is whole. */
  private static Entry chosen(ParsedCommand given, RecordText text) throws Refusal {
    List<Entry> all = text.entries();
    if (all.isEmpty()) {
      throw Refusal.wrongUse("the record holds no visit that can be read");
    }
    Optional<String> number = given.text(VISIT);
    if (number.isEmpty()) {
      List<Entry> counted = all.stream().filter(e -> e.struck().isEmpty()).toList();
      if (counted.isEmpty()) {
        throw Refusal.wrongUse("every visit of the record was struck; --visit N shows one");
      }
      List<Entry> whole = counted.stream().filter(e -> e.visit().isPresent()).toList();
      List<Entry> some = whole.isEmpty() ? counted : whole;
      return some.get(some.size() - 1);
    }
    return numbered(text, VISIT, number.get());
  }

  /** The last entry of a number. */
  private static Entry numbered(RecordText text, String option, String number) throws Refusal {
    List<Entry> all = text.entries();
    List<String> numbers =
        all.stream().map(e -> e.number().map(n -> Integer.toString(n)).orElse("")).toList();
    int last = number.isEmpty() ? -1 : numbers.lastIndexOf(number);
    if (last < 0) {
      List<String> some = numbers.stream().filter(n -> !n.isEmpty()).toList();
      throw Refusal.wrongUse("%s %s: the record has %s", option, number, String.join(", ", some));
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
            new RecordPage.Source(number(entry), remarks(job, entry), entry.struck().isPresent()),
            given.print(job.print()),
            job.info(Optional.of(visit.date())));
    output.write(MadeFile.pdf(job.job().title(), pages), given.force());
    given.console().say("wrote %s with visit %s", name, number(entry));
    return Exit.DONE;
  }

  private static List<String> remarks(LoadedJob job, Entry entry) {
    List<String> remarks = new ArrayList<>();
    entry
        .struck()
        .ifPresent(s -> remarks.add("this visit counts no more, " + printable(s.words())));
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
