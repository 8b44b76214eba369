package dev.towerscribe.report;

import dev.towerscribe.record.Entry;
import java.util.List;
import java.util.Optional;

/**
 * A job in a folder, and one of its visits.
 *
 * @param file the job file's name
 * @param title what the job is called; empty if that is not known
 * @param entry the visit; absent for a job without any
 */
public record RecordedVisit(String file, String title, Optional<Entry> entry) {
  /**
   * Which visit it is.
   *
   * @return its number, its date and its state, each empty if not known
   */
  public List<String> about() {
    return List.of(
        entry.flatMap(Entry::number).map(n -> Integer.toString(n)).orElse(""),
        entry.flatMap(Entry::date).map(Object::toString).orElse(""),
        entry.map(e -> e.state().hyphened()).orElse("no visit"));
  }

  /**
   * How many figures lie outside two standard deviations.
   *
   * @return a whole number; empty without a visit
   */
  public String outside() {
    return entry
        .map(e -> e.figures().stream().filter(f -> f.within().filter(w -> !w).isPresent()).count())
        .map(Object::toString)
        .orElse("");
  }

  /**
   * Words of the visit.
   *
   * @param key as the record has it
   * @return empty if it has none
   */
  public String words(String key) {
    return entry.map(e -> e.words().getOrDefault(key, "")).orElse("");
  }
}
