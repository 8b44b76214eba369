package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.JobFiles;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.RecordText;
import dev.towerscribe.record.Stage;
import dev.towerscribe.report.Block;
import dev.towerscribe.report.Cell;
import dev.towerscribe.report.PlainText;
import dev.towerscribe.report.Report;
import dev.towerscribe.store.FileOps;
import dev.towerscribe.store.RecordFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Every visit of every job in a folder, a line each, by file name and then as the record has them.
 * What cannot be read is named, and the rest is listed all the same.
 */
final class RecordList {
  private static final String TOML = ".toml";

  private static final String HEAD =
      "job,visit,date,state,outside,left caster,camber,right caster,camber,for";

  /**
   * A job and one of its visits.
   *
   * @param file the job file's name
   * @param title what the job is called; empty if the file cannot be read
   * @param entry the visit; absent for a job without any
   */
  record Line(String file, String title, Optional<Entry> entry) {}

  private final List<Line> lines = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();
  private boolean unreadable;

  private RecordList() {}

  /**
   * Looks through a folder, not into folders within it.
   *
   * @param ops how files are read
   * @param folder the folder
   * @return what is in it
   * @throws IOException if the folder itself cannot be read
   */
  static RecordList of(FileOps ops, Path folder) throws IOException {
    RecordList list = new RecordList();
    TreeSet<String> jobs = new TreeSet<>();
    List<String> names = ops.list(folder);
    for (String name : names) {
      if (name.endsWith(TOML)) {
        jobs.add(name);
      } else if (name.endsWith(RecordFile.SUFFIX)) {
        jobs.add(name.substring(0, name.length() - RecordFile.SUFFIX.length()) + TOML);
      }
    }
    for (String job : jobs) {
      list.job(ops, folder, job, names);
    }
    return list;
  }

  private void job(FileOps ops, Path folder, String name, List<String> names) {
    Path file = folder.resolve(name);
    boolean hasRecord = names.contains(RecordFile.name(name));
    String title = "";
    try {
      if (names.contains(name)) {
        if (!hasRecord && JobFiles.isOfAnotherKind(ops.read(file))) {
          return;
        }
        Job job = new JobReader(Lettering::canWrite).read(file);
        title = job.title();
      } else {
        broken(RecordFile.name(name) + ": there is no " + name + " beside it");
      }
    } catch (JobRejected e) {
      e.faults().stream().map(Fault::line).forEach(f -> broken(name + ": " + f));
      if (!hasRecord) {
        return;
      }
    } catch (IOException e) {
      broken(name + ": cannot be read: " + e.getMessage());
      if (!hasRecord) {
        return;
      }
    }
    visits(ops, file, name, title);
  }

  private void broken(String fault) {
    unreadable = true;
    faults.add(fault);
  }

  private void visits(FileOps ops, Path file, String name, String title) {
    RecordFile record = new RecordFile(ops, file);
    try {
      Optional<RecordText> text = record.read();
      text.ifPresent(t -> t.remarks().forEach(r -> faults.add(RecordFile.name(name) + ": " + r)));
      List<Entry> entries = text.map(RecordText::entries).orElse(List.of());
      if (entries.isEmpty()) {
        lines.add(new Line(name, title, Optional.empty()));
      }
      entries.forEach(e -> lines.add(new Line(name, title(title, e), Optional.of(e))));
    } catch (IOException e) {
      broken(RecordFile.name(name) + ": cannot be read: " + e.getMessage());
    }
  }

  /** Where the job cannot be read, its record still knows what it was called. */
  private static String title(String title, Entry entry) {
    return title.isEmpty() ? entry.words().getOrDefault("job", "") : title;
  }

  List<Line> lines() {
    return lines;
  }

  /** What could not be read or is not as it was written, each naming its file. */
  List<String> faults() {
    return faults;
  }

  /** Whether a job or a record could not be read at all. */
  boolean unreadable() {
    return unreadable;
  }

  /** For people: a table. */
  String text() {
    Block.Table table =
        Block.Table.of(
            "job",
            "visit",
            "date",
            "state",
            "outside",
            "left caster",
            "camber",
            "right caster",
            "camber",
            "for");
    for (Line line : lines) {
      List<Cell> row = new ArrayList<>(List.of(Cell.words(line.file())));
      about(line.entry()).forEach(a -> row.add(Cell.words(a)));
      row.add(Cell.words(line.entry().map(RecordList::outside).orElse("")));
      for (Side side : Side.values()) {
        row.add(measured(line.entry(), side, BayFigure.CASTER));
        row.add(measured(line.entry(), side, BayFigure.CAMBER));
      }
      row.add(Cell.words(line.entry().map(e -> e.words().getOrDefault("visit", "")).orElse("")));
      table = table.plus(row);
    }
    return PlainText.of(
        new Report("Towerscribe records", Lengths.in(LengthUnit.MM), List.of(table)));
  }

  private static List<String> about(Optional<Entry> entry) {
    return List.of(
        entry.flatMap(Entry::number).map(n -> Integer.toString(n)).orElse(""),
        entry.flatMap(Entry::date).map(Object::toString).orElse(""),
        entry.map(e -> e.state().word()).orElse("no visit"));
  }

  private static String outside(Entry entry) {
    return Long.toString(
        entry.figures().stream().filter(f -> f.within().filter(w -> !w).isPresent()).count());
  }

  private static Cell measured(Optional<Entry> entry, Side side, BayFigure figure) {
    return entry
        .flatMap(e -> e.of(Optional.of(side), Stage.AFTER, figure))
        .<Cell>map(f -> Cell.angle(f.measured()))
        .orElse(Cell.EMPTY);
  }

  /** For spreadsheets: RFC 4180, every figure of every visit. */
  String csv() {
    Csv csv = new Csv();
    List<String> head =
        new ArrayList<>(
            List.of("job_file", "job", "visit", "date", "state", "for", "bay", "outside_2_sd"));
    for (Side side : Side.values()) {
      for (Stage stage : List.of(Stage.BEFORE, Stage.AFTER)) {
        for (BayFigure figure : BayFigure.values()) {
          String name = side.word() + "_" + stage.word() + "_" + figure.word();
          head.add(name + "_measured_deg");
          head.add(name + "_predicted_deg");
        }
      }
    }
    csv.row(head);
    for (Line line : lines) {
      csv.row(csvCells(line));
    }
    return csv.toString();
  }

  private static List<String> csvCells(Line line) {
    Optional<Entry> entry = line.entry();
    Map<String, String> words = entry.map(Entry::words).orElse(Map.of());
    List<String> cells = new ArrayList<>();
    cells.add(Csv.words(line.file()));
    cells.add(Csv.words(line.title()));
    cells.addAll(about(entry));
    cells.add(Csv.words(words.getOrDefault("visit", "")));
    cells.add(Csv.words(words.getOrDefault("bay", "")));
    cells.add(entry.map(RecordList::outside).orElse(""));
    for (Side side : Side.values()) {
      for (Stage stage : List.of(Stage.BEFORE, Stage.AFTER)) {
        for (BayFigure figure : BayFigure.values()) {
          Optional<Entry.Figure> f = entry.flatMap(e -> e.of(Optional.of(side), stage, figure));
          cells.add(f.map(x -> Csv.degrees(x.measured())).orElse(""));
          cells.add(f.flatMap(Entry.Figure::predicted).map(Csv::degrees).orElse(""));
        }
      }
    }
    return cells;
  }
}
