package dev.towerscribe.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;

/**
 * The real file system, made to fail at its n-th operation. Writes are not sent to the disk: these
 * tests end no machine, only processes, and would take minutes.
 */
public final class FailingOps implements FileOps {
  /** How it fails. */
  public enum Way {
    /** The process ends there: a write is left half done, and nothing after it happens. */
    KILL,
    /** One operation fails, the next ones work. */
    ONCE,
    /** Nothing that changes the disk works any more. */
    FROM_THEN_ON
  }

  /** Stands for the end of the process. */
  public static final class Killed extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private final Way way;
  private final int at;
  private final int keptBytes;
  private int count;

  /**
   * Fails.
   *
   * @param way how
   * @param at at which operation, from 1
   */
  public FailingOps(Way way, int at) {
    this(way, at, -1);
  }

  /**
   * Fails at an append after a number of bytes.
   *
   * @param keptBytes bytes that get there; negative for half of them
   */
  FailingOps(Way way, int at, int keptBytes) {
    this.way = way;
    this.at = at;
    this.keptBytes = keptBytes;
  }

  /** Whether the failing operation was reached. */
  public boolean hasFailed() {
    return count >= at;
  }

  private boolean fails(boolean changesDisk) {
    count++;
    return switch (way) {
      case KILL -> count >= at;
      case ONCE -> count == at;
      case FROM_THEN_ON -> count >= at && changesDisk;
    };
  }

  private void step(boolean changesDisk) throws IOException {
    if (fails(changesDisk)) {
      if (way == Way.KILL) {
        throw new Killed();
      }
      throw new IOException("no space left on device");
    }
  }

  private void stepWithoutFault() {
    if (way == Way.KILL && fails(false)) {
      throw new Killed();
    }
  }

  @Override
  public boolean exists(Path path) {
    stepWithoutFault();
    return REAL.exists(path);
  }

  @Override
  public boolean isDirectory(Path path) {
    stepWithoutFault();
    return REAL.isDirectory(path);
  }

  @Override
  public boolean isRegularFile(Path path) {
    stepWithoutFault();
    return REAL.isRegularFile(path);
  }

  @Override
  public void createDirectory(Path path) throws IOException {
    step(true);
    REAL.createDirectory(path);
  }

  @Override
  public void write(Path path, byte[] bytes) throws IOException {
    try {
      step(true);
    } catch (IOException | Killed e) {
      if (count == at) {
        Files.write(path, Arrays.copyOf(bytes, bytes.length / 2));
      }
      throw e;
    }
    Files.write(path, bytes);
  }

  @Override
  public void append(Path path, byte[] bytes) throws IOException {
    try {
      step(true);
    } catch (IOException | Killed e) {
      if (count == at) {
        int kept = keptBytes < 0 ? bytes.length / 2 : Math.min(keptBytes, bytes.length);
        appended(path, Arrays.copyOf(bytes, kept));
      }
      throw e;
    }
    appended(path, bytes);
  }

  private static void appended(Path path, byte[] bytes) throws IOException {
    Files.write(path, bytes, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
  }

  @Override
  public byte[] read(Path path) throws IOException {
    step(false);
    return REAL.read(path);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    step(true);
    REAL.move(from, to);
  }

  @Override
  public void delete(Path path) throws IOException {
    step(true);
    REAL.delete(path);
  }

  @Override
  public List<String> list(Path directory) throws IOException {
    step(false);
    return REAL.list(directory);
  }

  @Override
  public void force(Path directory) {
    stepWithoutFault();
  }
}
