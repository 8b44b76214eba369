package dev.towerscribe.store;

import dev.towerscribe.record.RecordText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The record beside a job. It only ever grows: nothing in it is written again, moved or cut off, so
 * that whatever ends a run, every entry before it stays as it was.
 */
public final class RecordFile {
  /** What takes the place of the job file's ending. */
  public static final String SUFFIX = ".record.txt";

  private static final String TOML = ".toml";

  /** How often and how long a second run waits for the first: five seconds in all. */
  private static final int TRIES = 100;

  private static final long PAUSE_MS = 50;

  private final FileOps ops;
  private final Path path;

  /**
   * The record of a job.
   *
   * @param ops how files are read and written
   * @param job the job file
   */
  public RecordFile(FileOps ops, Path job) {
    this.ops = ops;
    this.path = job.resolveSibling(name(job.getFileName().toString()));
  }

  /**
   * The record's name for a job's.
   *
   * @param job a job file's name: wren.toml
   * @return the record's: wren.record.txt
   */
  public static String name(String job) {
    return (job.endsWith(TOML) ? job.substring(0, job.length() - TOML.length()) : job) + SUFFIX;
  }

  /**
   * Its place.
   *
   * @return beside the job file
   */
  public Path path() {
    return path;
  }

  /**
   * Reads it.
   *
   * @return what is in it; empty if there is no such file
   * @throws IOException if it cannot be read
   */
  public Optional<RecordText> read() throws IOException {
    return ops.exists(path) ? Optional.of(RecordText.read(text(bytes()))) : Optional.empty();
  }

  private byte[] bytes() throws IOException {
    if (!ops.isRegularFile(path)) {
      throw new FileSystemException(path.toString(), null, "is in the way: not a plain file");
    }
    return ops.read(path);
  }

  /** Bytes that are no UTF-8 become replacement marks: an entry may be cut off in a letter. */
  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /**
   * Makes the next entry from what is there.
   *
   * @param <E> what it throws if none is to be added
   */
  public interface Next<E extends Exception> {
    /**
     * The entry's text.
     *
     * @param before the record so far
     * @return lines, each with its end
     * @throws E if none is to be added
     */
    String after(RecordText before) throws E;
  }

  /**
   * Adds an entry while no other run may, and reads it back.
   *
   * @param next makes it
   * @param <E> what that throws if none is to be added
   * @return the record with it
   * @throws IOException if it cannot be written, or another run holds the folder; what was written
   *     of it stays, and the next append marks it off
   * @throws E if there is to be none
   */
  public <E extends Exception> RecordText append(Next<E> next) throws IOException, E {
    Path folder = path.toAbsolutePath().getParent();
    DirectoryLock lock = lock(folder);
    try {
      boolean isNew = !ops.exists(path);
      byte[] before = isNew ? new byte[0] : bytes();
      RecordText record = RecordText.read(text(before));
      byte[] more = record.toAppend(next.after(record)).getBytes(StandardCharsets.UTF_8);
      ops.append(path, more);
      if (isNew) {
        ops.force(folder);
      }
      byte[] now = ops.read(path);
      byte[] wanted = Arrays.copyOf(before, before.length + more.length);
      System.arraycopy(more, 0, wanted, before.length, more.length);
      if (!Arrays.equals(now, wanted)) {
        throw new FileSystemException(path.toString(), null, "did not read back as written");
      }
      return RecordText.read(text(now));
    } finally {
      lock.close();
    }
  }

  private static DirectoryLock lock(Path folder) throws IOException {
    for (int i = 0; i < TRIES; i++) {
      Optional<DirectoryLock> lock = DirectoryLock.tryAcquire(folder);
      if (lock.isPresent()) {
        return lock.get();
      }
      try {
        Thread.sleep(PAUSE_MS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        break;
      }
    }
    throw new Refused(
        Refused.Why.BUSY,
        "another run is writing in " + folder + "; run the command again after it");
  }
}
