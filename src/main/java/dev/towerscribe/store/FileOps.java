package dev.towerscribe.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The few file operations that writing a pack is made of, so that a test can let each one fail or
 * end the process there. Symbolic links are never followed at a path's last step.
 */
public interface FileOps {
  /** The real file system. */
  FileOps REAL = new FileOps() {};

  /**
   * Whether anything is at a path.
   *
   * @param path any
   * @return true for files, directories and links, whatever they lead to
   */
  default boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Whether a directory is at a path.
   *
   * @param path any
   * @return false for a link to one
   */
  default boolean isDirectory(Path path) {
    return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Whether a plain file is at a path.
   *
   * @param path any
   * @return false for a link to one
   */
  default boolean isRegularFile(Path path) {
    return Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Makes one directory.
   *
   * @param path its parent exists and it does not
   * @throws IOException if it cannot be made
   */
  default void createDirectory(Path path) throws IOException {
    Files.createDirectory(path);
  }

  /**
   * Writes a file anew and sends it to the disk. Not atomic: an end half-way leaves part of it.
   *
   * @param path its place
   * @param bytes its content
   * @throws IOException if that fails
   */
  default void write(Path path, byte[] bytes) throws IOException {
    put(path, bytes, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE);
  }

  /**
   * Adds bytes at a file's end, making the file if there is none, and sends it to the disk. Not
   * atomic: an end half-way leaves part of them there; what was there before is never touched.
   *
   * @param path the file
   * @param bytes what is added
   * @throws IOException if that fails
   */
  default void append(Path path, byte[] bytes) throws IOException {
    put(path, bytes, StandardOpenOption.APPEND, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Reads a file.
   *
   * @param path the file
   * @return its content
   * @throws IOException if that fails
   */
  default byte[] read(Path path) throws IOException {
    return Files.readAllBytes(path);
  }

  /**
   * Moves a file within one file system, replacing the target, wholly or not at all.
   *
   * @param from a file
   * @param to its new place
   * @throws IOException if that fails
   */
  default void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  /**
   * Deletes a file or an empty directory.
   *
   * @param path either
   * @throws IOException if that fails
   */
  default void delete(Path path) throws IOException {
    Files.delete(path);
  }

  /**
   * What is in a directory.
   *
   * @param directory a directory
   * @return names, sorted
   * @throws IOException if that fails
   */
  default List<String> list(Path directory) throws IOException {
    try (Stream<Path> entries = Files.list(directory)) {
      return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /**
   * Sends a directory's entries to the disk, where the system knows how.
   *
   * @param directory a directory
   */
  default void force(Path directory) {
    try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Not every system opens a directory this way; the renames are still atomic without it.
      return;
    }
  }

  private static void put(Path path, byte[] bytes, OpenOption... how) throws IOException {
    Set<OpenOption> options = new HashSet<>(Set.of(how));
    options.add(StandardOpenOption.CREATE);
    try (FileChannel channel = FileChannel.open(path, options)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }
}
