package dev.towerscribe.job;

import java.util.List;
import java.util.Optional;

/** Tells job files from the other files that lie beside them. */
public final class JobFiles {
  /**
   * Every job has these, for both sides or for each; no plate, survey, visit or readings file has
   * them, nor have the tables that a survey makes for a job.
   */
  private static final List<String> OF_A_JOB = List.of("mount", "plate");

  private JobFiles() {}

  /**
   * Whether a file is plainly something other than a job.
   *
   * @param bytes its content
   * @return true if it can be parsed and has no table that jobs have; false for a file that cannot
   *     be parsed, which may be a broken job
   */
  public static boolean isOfAnotherKind(byte[] bytes) {
    Faults faults = new Faults();
    Optional<TomlText> toml =
        TomlText.decode(bytes, "", faults).flatMap(text -> TomlText.parse(text, "", faults));
    return toml.isPresent()
        && OF_A_JOB.stream().noneMatch(toml.get()::has)
        && OF_A_JOB.stream()
            .noneMatch(k -> toml.get().has("left", k) || toml.get().has("right", k));
  }
}
