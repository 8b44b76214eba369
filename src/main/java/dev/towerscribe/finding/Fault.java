package dev.towerscribe.finding;

import java.util.Objects;

/**
 * One fault of an input file.
 *
 * @param key dotted key path, for instance {@code tower.landmark[0].at}; empty for the whole file
 * @param given the value as written, or "missing"
 * @param limit what is allowed, with its unit: "0.3 to 10 mm"
 * @param todo what to do about it, one short sentence
 */
public record Fault(String key, String given, String limit, String todo) {
  /** Checks that nothing is missing. */
  public Fault {
    Objects.requireNonNull(key);
    Objects.requireNonNull(given);
    Objects.requireNonNull(limit);
    Objects.requireNonNull(todo);
  }

  /**
   * The fault as one line.
   *
   * @return key, value, limit and advice
   */
  public String line() {
    return (key.isEmpty() ? "file" : key)
        + ": "
        + given
        + (limit.isEmpty() ? "" : "; allowed: " + limit)
        + (todo.isEmpty() ? "" : ". " + todo);
  }
}
