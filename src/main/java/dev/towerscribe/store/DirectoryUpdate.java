package dev.towerscribe.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Replaces some files of a directory as one: after {@link #apply}, or after {@link #recover} in a
 * later run if the process ended half-way, either all of them are the new ones or all are the old
 * ones.
 *
 * <p>Everything is first written to a staging directory inside the directory, so that moves stay on
 * one file system: each new file, a copy of each file to be replaced or removed, and last, by an
 * atomic move, a journal called {@code commit}. Before that move a later run discards the staging
 * directory; after it a later run carries the moves on to their end. If a move fails, the journal
 * is renamed to {@code rollback} and the copies are put back; a run that ends during that is
 * carried on backward in the same way. The marker is the first thing deleted afterward.
 */
final class DirectoryUpdate {
  /** Where files wait. */
  static final String STAGING = ".towerscribe-staging";

  /** Names this class will touch: no separators, no leading point. */
  static final Pattern PLAIN_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");

  private static final String COMMIT = "commit";
  private static final String ROLLBACK = "rollback";
  private static final String UNFINISHED_JOURNAL = "journal";
  private static final String NEW = "new-";
  private static final String OLD = "old-";

  private final FileOps ops;
  private final Path directory;
  private final Path staging;

  private enum Act {
    PUT,
    REPLACE,
    REMOVE
  }

  private record Step(Act act, String name) {}

  DirectoryUpdate(FileOps ops, Path directory) {
    this.ops = ops;
    this.directory = directory;
    this.staging = directory.resolve(STAGING);
  }

  /**
   * Finishes or discards what an earlier run left.
   *
   * @throws IOException if that cannot be done now
   */
  void recover() throws IOException {
    if (!ops.exists(staging)) {
      return;
    }
    if (!ops.isDirectory(staging)) {
      throw new FileSystemException(staging.toString(), null, "is in the way: not a directory");
    }
    if (ops.exists(staging.resolve(ROLLBACK))) {
      putBack(readJournal(ROLLBACK));
    } else if (ops.exists(staging.resolve(COMMIT))) {
      carryOut(readJournal(COMMIT));
    }
    clean();
  }

  /**
   * Replaces files. Call {@link #recover} first.
   *
   * @param put new files by name
   * @param remove names that shall be gone
   * @throws IOException if a file could not be written, did not read back as written, or could not
   *     be moved; the old files are then in place
   */
  void apply(SortedMap<String, byte[]> put, SortedSet<String> remove) throws IOException {
    List<Step> steps;
    try {
      ops.createDirectory(staging);
      for (Map.Entry<String, byte[]> file : put.entrySet()) {
        ops.write(staging.resolve(NEW + checked(file.getKey())), file.getValue());
      }
      readBack(put);
      steps = keepOld(put, remove);
      ops.write(staging.resolve(UNFINISHED_JOURNAL), journal(steps));
      ops.force(staging);
      ops.move(staging.resolve(UNFINISHED_JOURNAL), staging.resolve(COMMIT));
      ops.force(staging);
    } catch (IOException e) {
      cleanQuietly(e);
      throw e;
    }
    carryOut(steps);
    // What is left to clean, if this fails, the next run cleans; the files are all in place.
    cleanQuietly(null);
  }

  /** What moves into place is what the caller proved, byte for byte, or nothing moves. */
  private void readBack(SortedMap<String, byte[]> put) throws IOException {
    for (Map.Entry<String, byte[]> file : put.entrySet()) {
      if (!Arrays.equals(ops.read(staging.resolve(NEW + file.getKey())), file.getValue())) {
        throw new FileSystemException(
            directory.resolve(file.getKey()).toString(), null, "did not read back as written");
      }
    }
  }

  private List<Step> keepOld(SortedMap<String, byte[]> put, SortedSet<String> remove)
      throws IOException {
    List<Step> steps = new ArrayList<>();
    for (String name : put.keySet()) {
      steps.add(new Step(keepOld(name) ? Act.REPLACE : Act.PUT, name));
    }
    for (String name : remove) {
      if (!put.containsKey(name) && keepOld(checked(name))) {
        steps.add(new Step(Act.REMOVE, name));
      }
    }
    return steps;
  }

  private boolean keepOld(String name) throws IOException {
    Path present = directory.resolve(name);
    if (!ops.exists(present)) {
      return false;
    }
    if (!ops.isRegularFile(present)) {
      throw new FileSystemException(present.toString(), null, "is in the way: not a plain file");
    }
    ops.write(staging.resolve(OLD + name), ops.read(present));
    return true;
  }

  /** Moves the new files in; puts the old ones back if that fails. Does nothing done before. */
  private void carryOut(List<Step> steps) throws IOException {
    try {
      for (Step step : steps) {
        Path target = directory.resolve(step.name());
        if (step.act() != Act.REMOVE) {
          Path waiting = staging.resolve(NEW + step.name());
          if (ops.exists(waiting)) {
            ops.move(waiting, target);
          }
        } else if (ops.exists(target)) {
          ops.delete(target);
        }
      }
      ops.force(directory);
    } catch (IOException e) {
      try {
        ops.move(staging.resolve(COMMIT), staging.resolve(ROLLBACK));
        putBack(steps);
      } catch (IOException again) {
        e.addSuppressed(again);
        // Neither forward nor back was possible; the next run tries again.
        throw new IOException(
            directory + " holds files of two runs and must not be used; run the same command again",
            e);
      }
      cleanQuietly(e);
      throw e;
    }
  }

  /** The opposite of {@link #carryOut}; does nothing done before. */
  private void putBack(List<Step> steps) throws IOException {
    for (Step step : steps) {
      Path target = directory.resolve(step.name());
      if (step.act() == Act.PUT) {
        // While the new file still waits, whatever stands at the target is not ours.
        if (!ops.exists(staging.resolve(NEW + step.name())) && ops.exists(target)) {
          ops.delete(target);
        }
      } else {
        Path kept = staging.resolve(OLD + step.name());
        if (ops.exists(kept)) {
          ops.move(kept, target);
        }
      }
    }
    ops.force(directory);
  }

  /** Deletes the staging directory, the markers first: without one it means nothing. */
  private void clean() throws IOException {
    for (String marker : List.of(COMMIT, ROLLBACK)) {
      if (ops.exists(staging.resolve(marker))) {
        ops.delete(staging.resolve(marker));
      }
    }
    for (String name : ops.list(staging)) {
      ops.delete(staging.resolve(name));
    }
    ops.delete(staging);
  }

  private void cleanQuietly(Exception reason) {
    try {
      if (ops.exists(staging)) {
        clean();
      }
    } catch (IOException e) {
      if (reason != null) {
        reason.addSuppressed(e);
      }
    }
  }

  private static byte[] journal(List<Step> steps) {
    return steps.stream()
        .map(step -> step.act().name() + " " + step.name() + "\n")
        .collect(Collectors.joining())
        .getBytes(StandardCharsets.UTF_8);
  }

  private List<Step> readJournal(String marker) throws IOException {
    Path path = staging.resolve(marker);
    List<Step> steps = new ArrayList<>();
    for (String line : new String(ops.read(path), StandardCharsets.UTF_8).split("\n")) {
      int space = line.indexOf(' ');
      try {
        if (!line.isEmpty()) {
          steps.add(
              new Step(
                  Act.valueOf(line.substring(0, Math.max(space, 0))),
                  checked(line.substring(space + 1))));
        }
      } catch (IllegalArgumentException e) {
        throw new FileSystemException(path.toString(), null, "is damaged");
      }
    }
    return steps;
  }

  private static String checked(String name) {
    if (!PLAIN_NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("not a plain file name: " + name);
    }
    return name;
  }
}
