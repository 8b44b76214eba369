package dev.towerscribe.cli;

import dev.towerscribe.store.FileOps;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * What a command works in.
 *
 * @param console where words go
 * @param directory what relative paths start from
 * @param ops how files are written
 */
record Context(Console console, Path directory, FileOps ops) {
  /**
   * A path as the user gave it.
   *
   * @param given absolute, or relative to the directory
   * @return the path
   * @throws Refusal if it cannot be a path
   */
  Path path(String given) throws Refusal {
    try {
      if (given.isEmpty()) {
        throw Refusal.wrongUse("a file name is empty");
      }
      return directory.resolve(given);
    } catch (InvalidPathException e) {
      throw Refusal.wrongUse("not a file name: " + given);
    }
  }
}
