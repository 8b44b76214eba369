package dev.towerscribe.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * One file, written wholly or not at all, and not over another unless told to. It need not be there
 * yet.
 *
 * @param ops how files are read and written
 * @param path its place
 */
public record OutputFile(FileOps ops, Path path) {
  private static final String HALF_WRITTEN = ".towerscribe-part";

  private static final byte[] PDF_HEAD = "%PDF-".getBytes(StandardCharsets.US_ASCII);

  /**
   * Refuses a place whose folder is missing: only folders named for output are made. Asked before
   * work that takes a while.
   *
   * @param given the place as the user gave it, for the words
   * @return this
   * @throws Refused if there is no such folder
   */
  public OutputFile inFolder(String given) throws Refused {
    Path folder = path.getParent();
    // Links are followed: a folder may well be one.
    if (folder == null || Files.isDirectory(folder)) {
      return this;
    }
    Path named = Path.of(given).getParent();
    throw new Refused(
        Refused.Why.NO_FOLDER,
        "%s: the folder %s %s, so nothing was written"
            .formatted(
                given,
                named == null ? folder : named,
                Files.exists(folder) ? "is not a folder" : "does not exist"));
  }

  /**
   * Refuses to take the place of anything. Asked before work that takes a while.
   *
   * @return this
   * @throws Refused if something is there
   */
  public OutputFile unlessThere() throws Refused {
    if (Files.exists(path)) {
      throw thereAlready();
    }
    return this;
  }

  private Refused thereAlready() {
    return new Refused(Refused.Why.THERE_ALREADY, path + " is there already and was left alone");
  }

  /**
   * Writes the file beside its place, reads it back, and moves it there.
   *
   * @param file its content
   * @param force whether a different file there may be replaced
   * @throws IOException if it is not as laid out or cannot be written, a different file is there,
   *     or one that is never replaced
   */
  public void write(MadeFile file, boolean force) throws IOException {
    byte[] bytes = file.proved();
    if (ops.exists(path)) {
      if (!ops.isRegularFile(path)) {
        throw new FileSystemException(path.toString(), null, "is in the way: not a plain file");
      }
      byte[] there = ops.read(path);
      if (Arrays.equals(there, bytes)) {
        return;
      }
      if (!force) {
        throw thereAlready();
      }
      refuseAnotherKind(there, bytes);
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

  /**
   * Refuses, whatever was forced, to put a page over somebody's readings: a PDF takes the place of
   * a PDF only, and nothing takes that of a record, which only grows.
   */
  private void refuseAnotherKind(byte[] there, byte[] bytes) throws Refused {
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
    int head = PDF_HEAD.length;
    return bytes.length >= head && Arrays.equals(bytes, 0, head, PDF_HEAD, 0, head);
  }
}
