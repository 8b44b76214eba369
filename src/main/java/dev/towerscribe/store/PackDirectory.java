package dev.towerscribe.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The directory a pack goes to. Files of an earlier pack, named in its list, are replaced or
 * removed as one; a file that no pack made is never touched, and bars a new file of its name.
 */
public final class PackDirectory {
  /** The report for people; the only file of a job that stopped. */
  public static final String REPORT = "report.txt";

  /** By this first line a report is known as ours, with or without a list beside it. */
  public static final String REPORT_HEAD = "Towerscribe report";

  private final FileOps ops;
  private final Path directory;

  /**
   * A directory, which need not be there yet.
   *
   * @param ops how files are read and written
   * @param directory its place
   */
  public PackDirectory(FileOps ops, Path directory) {
    this.ops = ops;
    this.directory = directory;
  }

  private interface Work {
    void in(DirectoryUpdate update) throws IOException;
  }

  /**
   * Writes a whole pack.
   *
   * @param packMark its code
   * @param files every file but the report and the list
   * @param report the report's bytes
   * @throws IOException if another run is at work there or something could not be written; the
   *     directory is as it was
   */
  public void writePack(String packMark, SortedMap<String, byte[]> files, byte[] report)
      throws IOException {
    SortedMap<String, byte[]> put = new TreeMap<>(files);
    put.put(REPORT, report);
    put.put(PackList.NAME, PackList.text(packMark, files));
    inside(
        update -> {
          SortedSet<String> old = oldPack().map(PackList::names).orElse(new TreeSet<>());
          for (String name : put.keySet()) {
            refuseForeign(name, old);
          }
          update.apply(put, old);
        });
  }

  /**
   * Writes a job's alignment beside whatever pack is there.
   *
   * @param packMark the job's code
   * @param files every file but the list
   * @throws IOException if another run is at work there or something could not be written; the
   *     directory is as it was
   */
  public void writeAlignment(String packMark, SortedMap<String, byte[]> files) throws IOException {
    writeBeside(PackList.ALIGNMENT, packMark, files);
  }

  /**
   * Writes a job's placement search beside whatever pack is there.
   *
   * @param packMark the job's code
   * @param files every file but the list
   * @throws IOException if another run is at work there or something could not be written; the
   *     directory is as it was
   */
  public void writePlacement(String packMark, SortedMap<String, byte[]> files) throws IOException {
    writeBeside(PackList.PLACEMENT, packMark, files);
  }

  /**
   * Writes a job's drawings of parts beside whatever pack is there.
   *
   * @param packMark the job's code
   * @param files every file but the list
   * @throws IOException if another run is at work there or something could not be written; the
   *     directory is as it was
   */
  public void writeDrawings(String packMark, SortedMap<String, byte[]> files) throws IOException {
    writeBeside(PackList.DRAWINGS, packMark, files);
  }

  private void writeBeside(String list, String packMark, SortedMap<String, byte[]> files)
      throws IOException {
    SortedMap<String, byte[]> put = new TreeMap<>(files);
    put.put(list, PackList.text(packMark, files));
    inside(
        update -> {
          SortedSet<String> old = listed(list).map(PackList::names).orElse(new TreeSet<>());
          for (String name : put.keySet()) {
            refuseForeign(name, old);
          }
          update.apply(put, old);
        });
  }

  /**
   * Writes the report of a job that stopped, and nothing else. An older pack's sheets stay.
   *
   * @param report makes the report, given the code of the older pack if there is one
   * @return the older pack's code
   * @throws IOException if another run is at work there or it could not be written
   */
  public Optional<String> writeReportOnly(Function<Optional<String>, byte[]> report)
      throws IOException {
    List<Optional<String>> found = new ArrayList<>();
    inside(
        update -> {
          Optional<String> oldMark = oldPack().map(PackList::packMark);
          found.add(oldMark);
          refuseForeign(REPORT, Collections.emptySortedSet());
          SortedMap<String, byte[]> put = new TreeMap<>();
          put.put(REPORT, report.apply(oldMark));
          update.apply(put, Collections.emptySortedSet());
        });
    return found.get(0);
  }

  /** Makes the directory if need be, locks it, finishes what a killed run left, then works. */
  private void inside(Work work) throws IOException {
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
        work.in(update);
        done = true;
      }
    } finally {
      if (!done) {
        removeIfEmpty(made);
      }
    }
  }

  private List<Path> makeDirectories() throws IOException {
    List<Path> missing = new ArrayList<>();
    for (Path p = directory.toAbsolutePath(); p != null && !isPlace(p); p = p.getParent()) {
      missing.add(0, p);
    }
    List<Path> made = new ArrayList<>();
    for (Path p : missing) {
      try {
        ops.createDirectory(p);
        made.add(0, p);
      } catch (IOException e) {
        // Another run may have made it meanwhile.
        if (!isPlace(p)) {
          removeIfEmpty(made);
          throw e;
        }
      }
    }
    return made;
  }

  /** Whether a path is a directory, or a link to one as users make them. */
  private static boolean isPlace(Path p) {
    return java.nio.file.Files.isDirectory(p);
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

  private Optional<PackList> oldPack() throws IOException {
    return listed(PackList.NAME);
  }

  private Optional<PackList> listed(String list) throws IOException {
    Path path = directory.resolve(list);
    if (!ops.isRegularFile(path)) {
      return Optional.empty();
    }
    return PackList.read(ops.read(path));
  }

  private void refuseForeign(String name, SortedSet<String> old) throws IOException {
    Path path = directory.resolve(name);
    if (!ops.exists(path) || old.contains(name)) {
      return;
    }
    boolean ours = false;
    if (ops.isRegularFile(path)) {
      byte[] bytes = ops.read(path);
      ours =
          switch (name) {
            case PackList.NAME, PackList.ALIGNMENT, PackList.PLACEMENT, PackList.DRAWINGS ->
                PackList.read(bytes).isPresent();
            case REPORT -> startsWith(bytes, REPORT_HEAD + "\n");
            default -> false;
          };
    }
    if (!ours) {
      throw new FileSystemException(
          path.toString(),
          null,
          "was not made by an earlier pack and is left alone; move it, or choose another"
              + " directory");
    }
  }

  private static boolean startsWith(byte[] bytes, String head) {
    byte[] start = head.getBytes(StandardCharsets.UTF_8);
    return bytes.length >= start.length
        && Arrays.equals(bytes, 0, start.length, start, 0, start.length);
  }
}
