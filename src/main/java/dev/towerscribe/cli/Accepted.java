package dev.towerscribe.cli;

import dev.towerscribe.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Stop findings, and which of them were accepted.
 *
 * @param ids what stood after {@code --accept} and may be accepted, sorted; each is one of the
 *     stops
 * @param stops every stop finding
 */
record Accepted(Set<String> ids, List<Finding> stops) {
  /**
   * Holds what was accepted against what there is.
   *
   * @param given ids
   * @param stops every stop finding
   * @param whose {@code this job}, {@code these readings}
   * @param told told of each id that stands for a stop which no switch lifts: it stays open
   * @return both
   * @throws Refusal if an id is none of a stop finding
   */
  static Accepted of(List<String> given, List<Finding> stops, String whose, Consumer<String> told)
      throws Refusal {
    Set<String> ids = new TreeSet<>(given);
    List<String> known = stops.stream().map(Finding::id).toList();
    List<String> lines = new ArrayList<>();
    ids.stream()
        .filter(id -> !known.contains(id))
        .forEach(id -> lines.add("--accept %s: not a stop finding of %s".formatted(id, whose)));
    if (!lines.isEmpty()) {
      boolean many = whose.startsWith("these");
      lines.add(
          known.isEmpty()
              ? "%s %s no stop finding".formatted(whose, many ? "have" : "has")
              : "%s stop findings are: %s"
                  .formatted(many ? "their" : "its", String.join(", ", known)));
      throw Refusal.wrongUse(lines);
    }
    stops.stream()
        .filter(f -> !f.acceptable() && ids.remove(f.id()))
        .forEach(f -> told.accept("--accept %s lifts nothing: %s".formatted(f.id(), f.say())));
    return new Accepted(ids, stops);
  }

  /** Stops that were not accepted: they bar the sheets. */
  List<Finding> open() {
    return stops.stream().filter(f -> !ids.contains(f.id())).toList();
  }

  /** Stops that were accepted: the sheets carry them. */
  List<Finding> carried() {
    return stops.stream().filter(f -> ids.contains(f.id())).toList();
  }

  /** The exit code of a command that has done all else. */
  int exit() {
    return open().isEmpty() ? Exit.DONE : Exit.STOPPED;
  }
}
