package dev.towerscribe.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Writes one file wholly or not at all, and not over another unless told to. */
public final class OutputFile {
  private static final String HALF_WRITTEN = ".towerscribe-part";

  private OutputFile() {}

  /**
   * Refuses a place whose folder is missing: only folders named for output are made.
   *
   * @param path its place
   * @param given the place as it was given
   * @throws Refused if there is no such folder
   */
  public static void refuseWithoutFolder(Path path, String given) throws Refused {
    Path folder = path.getParent();
    // Links are followed: a folder may well be one.
    if (folder == null || Files.isDirectory(folder)) {
      return;
    }
    Path named = Path.of(given).getParent();
    throw new Refused(
        Refused.Why.NO_FOLDER,
        given
            + ": the folder "
            + (named == null ? folder : named)
            + (Files.exists(folder) ? " is not a folder" : " does not exist")
            + ", so nothing was written");
  }

  /**
   * Refuses, whatever was forced, to put a page over somebody's readings: a PDF takes the place of
   * a PDF only, and nothing takes that of a record, which only grows.
   */
  private static void refuseAnotherKind(Path path, byte[] there, byte[] bytes) throws Refused {
    boolean record = path.getFileName().toString().endsWith(RecordFile.SUFFIX);
    if (record || isPdf(bytes) && !isPdf(there)) {
      throw new Refused(
          Refused.Why.NEVER_REPLACED,
          path
              + (record ? " is a record, which only grows" : " is no PDF")
              + ": it was left alone");
    }
  }

  private static boolean isPdf(byte[] bytes) {
    byte[] mark = {'%', 'P', 'D', 'F', '-'};
    return bytes.length >= mark.length
        && Arrays.equals(mark, 0, mark.length, bytes, 0, mark.length);
  }

  /**
   * Writes a file beside its place, reads it back, and moves it there.
   *
   * @param ops how files are written
   * @param path its place
   * @param bytes its content
   * @param force whether a different file there may be replaced
   * @throws IOException if it cannot be written, a different file is there, or one that is never
   *     replaced
   */
  public static void write(FileOps ops, Path path, byte[] bytes, boolean force) throws IOException {
    if (ops.exists(path)) {
      if (!ops.isRegularFile(path)) {
        throw new FileSystemException(path.toString(), null, "is in the way: not a plain file");
      }
      if (Arrays.equals(ops.read(path), bytes)) {
        return;
      }
      if (!force) {
        throw new Refused(Refused.Why.THERE_ALREADY, path + " is there already and was left alone");
      }
      refuseAnotherKind(path, ops.read(path), bytes);
    }
    Path part = path.resolveSibling("." + path.getFileName() + HALF_WRITTEN);
    try {
      ops.write(part, bytes);
      if (!Arrays.equals(ops.read(part), bytes)) {
        throw new FileSystemException(path.toString(), null, "did not read back as written");
      }
      ops.move(part, path);
    } catch (IOException e) {
      if (ops.exists(part)) {
        ops.delete(part);
      }
      // The file beside it is no name that the user knows.
      if (e instanceof AccessDeniedException) {
        throw new AccessDeniedException(path.toString());
      }
      throw e;
    }
  }
}
