package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.quantity.LengthUnit;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Keeps account of one table's keys: which were asked for, which are missing, and whether anything
 * in it was at fault.
 */
abstract class KeyCursor {
  private final TomlNode.Table table;
  private final Faults faults;
  private final KeyCursor parent;
  private final Set<String> known = new LinkedHashSet<>();
  private final Map<String, Fault> missing = new LinkedHashMap<>();
  private boolean sound = true;

  KeyCursor(TomlNode.Table table, Faults faults, KeyCursor parent) {
    this.table = table;
    this.faults = faults;
    this.parent = parent;
  }

  /** Whether no question to this table, or to one in it, left a fault. */
  final boolean sound() {
    return sound;
  }

  /** The unit its limits are printed in. */
  final LengthUnit unit() {
    return table.origin().unitOrMm();
  }

  /** Whether a key is given; it counts as known from then on. */
  final boolean has(String key) {
    known.add(key);
    return table.entries().containsKey(key);
  }

  /** Makes keys known that somebody else reads. */
  final void leave(String... keys) {
    known.addAll(List.of(keys));
  }

  // Faults. Each method that files one gives nothing, for a question to answer with.

  /** Files a fault of this table. */
  final void add(Fault fault) {
    report(fault);
  }

  private <T> Optional<T> report(Fault fault) {
    unsound();
    return faults.add(fault);
  }

  /** Marks this table, and those it lies in, as holding a fault. */
  final void unsound() {
    for (KeyCursor reader = this; reader != null; reader = reader.parent) {
      reader.sound = false;
    }
  }

  /** The table that is read. */
  final TomlNode.Table all() {
    return table;
  }

  /** What a key holds, or null. */
  final TomlNode node(String key) {
    return table.entries().get(key);
  }

  /** Where this table is written. */
  final SourcePosition origin() {
    return table.origin();
  }

  final Faults faults() {
    return faults;
  }

  /** Where a key is written, or would be. */
  final SourcePosition origin(String key) {
    TomlNode node = table.entries().get(key);
    return node == null ? table.origin().child(key) : node.origin();
  }

  private String given(String key) {
    TomlNode node = table.entries().get(key);
    return node == null ? "missing" : node.given();
  }

  final <T> Optional<T> fault(String key, String limit, String todo) {
    if (Blanks.is(node(key))) {
      unsound();
      return Optional.empty();
    }
    return report(new Fault(origin(key).path(), given(key), limit, todo));
  }

  /** A fault of a key's length against a length of ours; left out while the unit is not certain. */
  final <T> Optional<T> lengthFault(String key, String limit, String todo) {
    if (origin(key).unit().isPresent()) {
      return fault(key, limit, todo);
    }
    unsound();
    return Optional.empty();
  }

  final <T> Optional<T> fault(TomlNode node, String limit, String todo) {
    unsound();
    return faults.add(node, limit, todo);
  }

  /** A key that must be there and is not. Held back: it may turn up misspelt. */
  final <T> Optional<T> missing(String key, String limit, String todo) {
    missing.put(key, new Fault(table.origin().child(key).path(), "missing", limit, todo));
    unsound();
    return Optional.empty();
  }

  /** Reports what is missing and what is unknown. To be called once, after all questions. */
  final void close() {
    List<String> free = known.stream().filter(k -> !table.entries().containsKey(k)).toList();
    for (String key : table.entries().keySet()) {
      if (!known.contains(key)) {
        Optional<String> meant =
            SpellingHint.nearest(key, free).or(() -> SpellingHint.nearest(key, known));
        meant.ifPresent(missing::remove);
        String todo =
            meant
                .map(word -> "Did you mean " + word + "?")
                .orElse("Known here: " + String.join(", ", known) + ".");
        report(new Fault(origin(key).path(), "unknown key", "", todo));
      }
    }
    reportMissing();
  }

  /**
   * Closes the table and makes what it holds.
   *
   * @param made called only while the table is sound, when every needed key has given a value
   * @return what was made, or empty after a fault
   */
  final <T> Optional<T> closed(Supplier<T> made) {
    close();
    return sound ? Optional.of(made.get()) : Optional.empty();
  }

  /** A length of ours as a least one, in the table's unit, rounded so that it is itself allowed. */
  final String atLeast(double mm) {
    return AllowedRange.atLeast(unit().fromMm(mm)) + " " + unit().symbol();
  }

  /** A length of ours as a greatest one, in the table's unit. */
  final String atMost(double mm) {
    return AllowedRange.atMost(unit().fromMm(mm)) + " " + unit().symbol();
  }

  /** Reports what is missing, where unknown keys are somebody else's business. */
  final void reportMissing() {
    missing.values().forEach(this::report);
    missing.clear();
  }
}
