package dev.towerscribe.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Keeps a second run out of a directory. The system frees the lock when a process ends in any way,
 * so a file left by a killed run blocks nobody.
 */
final class DirectoryLock implements AutoCloseable {
  /** The lock's file. */
  static final String NAME = ".towerscribe-lock";

  /**
   * The byte that is locked: past any content, because some systems bar others from reading what is
   * locked.
   */
  private static final long LOCKED_BYTE = 1L << 20;

  /** How often a lock on a file that was deleted meanwhile is tried anew. */
  private static final int TRIES = 8;

  private final Path path;
  private final FileChannel channel;

  private DirectoryLock(Path path, FileChannel channel) {
    this.path = path;
    this.channel = channel;
  }

  /**
   * Takes the lock without waiting.
   *
   * @param directory existing directory
   * @return the lock, or empty while another run holds it
   * @throws IOException if the lock's file cannot be written
   */
  static Optional<DirectoryLock> tryAcquire(Path directory) throws IOException {
    Path path = directory.resolve(NAME);
    for (int i = 0; i < TRIES; i++) {
      FileChannel channel =
          FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      boolean kept = false;
      try {
        FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
        if (lock == null) {
          return Optional.empty();
        }
        if (isStillAt(path, channel)) {
          kept = true;
          return Optional.of(new DirectoryLock(path, channel));
        }
      } catch (OverlappingFileLockException e) {
        return Optional.empty();
      } finally {
        if (!kept) {
          channel.close();
        }
      }
    }
    return Optional.empty();
  }

  /**
   * Whether the locked file is the one at the path: the holder before may have deleted it between
   * our opening and our locking, and a lock on a deleted file blocks nobody. The file is given a
   * size of our own, and the path is asked for it. It must not be opened for that: some systems
   * free a process's locks on a file as soon as the process closes any channel of it.
   */
  private static boolean isStillAt(Path path, FileChannel channel) throws IOException {
    long token = 31 * ProcessHandle.current().pid() + System.nanoTime();
    long size = 1 + Math.floorMod(token, LOCKED_BYTE / 2);
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(new byte[1]), size - 1);
    try {
      return Files.size(path) == size;
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  /** Deletes the file, then frees the lock. */
  @Override
  public void close() throws IOException {
    try (channel) {
      Files.deleteIfExists(path);
    }
  }
}
