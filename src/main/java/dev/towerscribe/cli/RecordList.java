package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.RecordText;
import dev.towerscribe.report.RecordedVisit;
import dev.towerscribe.store.FileOps;
import dev.towerscribe.store.RecordFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Every visit of every job in a folder, a line each, by file name and then as the record has them.
 * What cannot be read is named, and the rest is listed all the same.
 */
final class RecordList {
  private static final String TOML = ".toml";

  private final List<RecordedVisit> lines = new ArrayList<>();
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
        if (!hasRecord && JobReader.isOfAnotherKind(ops.read(file))) {
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
        lines.add(new RecordedVisit(name, title, Optional.empty()));
      }
      entries.forEach(e -> lines.add(new RecordedVisit(name, title(title, e), Optional.of(e))));
    } catch (IOException e) {
      broken(RecordFile.name(name) + ": cannot be read: " + e.getMessage());
    }
  }

  /** Where the job cannot be read, its record still knows what it was called. */
  private static String title(String title, Entry entry) {
    return title.isEmpty() ? entry.words().getOrDefault("job", "") : title;
  }

  List<RecordedVisit> lines() {
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
}
