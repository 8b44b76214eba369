package dev.towerscribe.store;

import dev.towerscribe.report.LayoutReport;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The directory that a pack, an alignment or drawings go to. Files that the same command made there
 * before, named in its list, are replaced or removed as one; a file that nobody listed is never
 * touched, and bars a new file of its name.
 *
 * @param ops how files are read and written
 * @param directory its place, which need not be there yet
 */
public record PackDirectory(FileOps ops, Path directory) {
  /** The report for people; beside it a job that stopped has its overview alone. */
  public static final String REPORT = "report.txt";

  private interface Work<T> {
    T in(DirectoryUpdate update) throws IOException;
  }

  /**
   * Writes a whole pack.
   *
   * @param packMark its code
   * @param files every file but the report and the list
   * @param report the report
   * @throws IOException if another run is at work there, a file is not as laid out, or something
   *     could not be written; the directory is as it was
   */
  public void writePack(String packMark, MadeFiles files, String report) throws IOException {
    SortedMap<String, byte[]> put = new TreeMap<>();
    put.put(REPORT, utf8(report));
    write(FileSet.PACK, packMark, files, put);
  }

  /**
   * Writes a set of files beside whatever else is there.
   *
   * @param set which
   * @param packMark the job's code
   * @param files every file but the list
   * @throws IOException if another run is at work there, a file is not as laid out, or something
   *     could not be written; the directory is as it was
   */
  public void write(FileSet set, String packMark, MadeFiles files) throws IOException {
    write(set, packMark, files, new TreeMap<>());
  }

  private void write(FileSet set, String packMark, MadeFiles files, SortedMap<String, byte[]> put)
      throws IOException {
    putAll(set, packMark, files, put);
    inside(
        update -> {
          SortedSet<String> old = listed(set).map(PackList::names).orElse(new TreeSet<>());
          for (String name : put.keySet()) {
            refuseForeign(name, old);
          }
          if (set == FileSet.PACK) {
            // A picture of stops that no longer stand must not lie beside sheets.
            listed(FileSet.OVERVIEW).map(PackList::names).ifPresent(old::addAll);
            listed(FileSet.OVERVIEW).ifPresent(list -> old.add(FileSet.OVERVIEW.list()));
          }
          update.apply(put, old);
          return set;
        });
  }

  private static void putAll(
      FileSet set, String packMark, MadeFiles files, SortedMap<String, byte[]> put)
      throws IOException {
    SortedMap<String, byte[]> proved = files.proved();
    put.putAll(proved);
    put.put(set.list(), PackList.text(packMark, proved));
  }

  /**
   * Writes what is told of a job without sheets: the report and the overview, and nothing else. An
   * older pack's sheets stay; an older overview is replaced.
   *
   * @param packMark the job's code
   * @param overview every file of the overview but its list
   * @param report makes the report, given the code of the older pack if there is one
   * @return the older pack's code
   * @throws IOException if another run is at work there, a file is not as laid out, or something
   *     could not be written; the directory is as it was
   */
  public Optional<String> writeReport(
      String packMark, MadeFiles overview, Function<Optional<String>, String> report)
      throws IOException {
    SortedMap<String, byte[]> put = new TreeMap<>();
    putAll(FileSet.OVERVIEW, packMark, overview, put);
    return inside(
        update -> {
          Optional<String> oldMark = listed(FileSet.PACK).map(PackList::packMark);
          put.put(REPORT, utf8(report.apply(oldMark)));
          SortedSet<String> old =
              listed(FileSet.OVERVIEW).map(PackList::names).orElse(new TreeSet<>());
          for (String name : put.keySet()) {
            refuseForeign(name, old);
          }
          update.apply(put, old);
          return oldMark;
        });
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Makes the directory if need be, locks it, finishes what a killed run left, then works. */
  @SuppressWarnings("try") // the lock is held, not used
  private <T> T inside(Work<T> work) throws IOException {
    List<Path> made = makeDirectories();
    boolean done = false;
    try {
      DirectoryLock lock =
          DirectoryLock.tryAcquire(directory)
              .orElseThrow(
                  () ->
                      new Refused(
                          Refused.Why.BUSY,
                          directory + ": another run is writing there; wait for it to end"));
      try (lock) {
        DirectoryUpdate update = new DirectoryUpdate(ops, directory);
        update.recover();
        T result = work.in(update);
        done = true;
        return result;
      }
    } finally {
      if (!done) {
        removeIfEmpty(made);
      }
    }
  }

  private List<Path> makeDirectories() throws IOException {
    List<Path> missing = new ArrayList<>();
    // A link to a directory will do, as users make them.
    for (Path p = directory.toAbsolutePath();
        p != null && !Files.isDirectory(p);
        p = p.getParent()) {
      missing.add(0, p);
    }
    List<Path> made = new ArrayList<>();
    for (Path p : missing) {
      try {
        ops.createDirectory(p);
        made.add(0, p);
      } catch (IOException e) {
        // Another run may have made it meanwhile.
        if (!Files.isDirectory(p)) {
          removeIfEmpty(made);
          throw e;
        }
      }
    }
    return made;
  }

  private void removeIfEmpty(List<Path> made) {
    for (Path p : made) {
      try {
        ops.delete(p);
      } catch (IOException e) {
        return;
      }
    }
  }

  private Optional<PackList> listed(FileSet set) throws IOException {
    Path path = directory.resolve(set.list());
    return ops.isRegularFile(path) ? PackList.read(ops.read(path)) : Optional.empty();
  }

  /** A file is ours if the old list has it, or by what stands in it: a list, or a report's head. */
  private void refuseForeign(String name, Set<String> old) throws IOException {
    Path path = directory.resolve(name);
    if (!ops.exists(path) || old.contains(name)) {
      return;
    }
    boolean mayBeOurs = name.equals(REPORT) || isList(name);
    if (mayBeOurs && ops.isRegularFile(path)) {
      byte[] bytes = ops.read(path);
      if (isList(name) ? PackList.read(bytes).isPresent() : isReport(bytes)) {
        return;
      }
    }
    throw new FileSystemException(
        path.toString(),
        null,
        "was not made by an earlier pack and is left alone; move it, or choose another directory");
  }

  private static boolean isList(String name) {
    return Arrays.stream(FileSet.values()).anyMatch(set -> set.list().equals(name));
  }

  /** By its first line a report is known as ours, with or without a list beside it. */
  private static boolean isReport(byte[] bytes) {
    byte[] head = utf8(LayoutReport.TITLE + "\n");
    return bytes.length >= head.length
        && Arrays.equals(bytes, 0, head.length, head, 0, head.length);
  }
}
