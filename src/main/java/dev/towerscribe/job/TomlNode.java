package dev.towerscribe.job;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A value of a job file together with where it was written. */
sealed interface TomlNode {
  /** Where it was written. */
  SourcePosition origin();

  /** The value in a message: as written, strings quoted, tables and lists by their kind. */
  String given();

  /** A table, its keys in the file's order. */
  record Table(SourcePosition origin, Map<String, TomlNode> entries) implements TomlNode {
    public Table {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    static Table empty(SourcePosition origin) {
      return new Table(origin, Map.of());
    }

    Table without(Collection<String> keys) {
      Map<String, TomlNode> rest = new LinkedHashMap<>(entries);
      rest.keySet().removeAll(keys);
      return new Table(origin, rest);
    }

    Table only(Collection<String> keys) {
      Map<String, TomlNode> some = new LinkedHashMap<>(entries);
      some.keySet().retainAll(keys);
      return new Table(origin, some);
    }

    Table with(String key, TomlNode value) {
      Map<String, TomlNode> all = new LinkedHashMap<>(entries);
      all.put(key, value);
      return new Table(origin, all);
    }

    @Override
    public String given() {
      return "a table";
    }
  }

  /** A list. */
  record Items(SourcePosition origin, List<TomlNode> items) implements TomlNode {
    /** A point of space, every figure of it with a decimal comma. */
    private static final int MOST_SHOWN = 6;

    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String given() {
      boolean point =
          items.size() <= MOST_SHOWN && items.stream().allMatch(Number.class::isInstance);
      if (items.isEmpty()) {
        return "an empty list";
      }
      return point
          ? items.stream().map(TomlNode::given).collect(Collectors.joining(", ", "[", "]"))
          : "a list of " + items.size();
    }
  }

  /** A string, dates among them: the file writes both alike once quotes are gone. */
  record Text(SourcePosition origin, String value) implements TomlNode {
    @Override
    public String given() {
      return MessageText.quoted(value);
    }
  }

  /** A finite number; whole if it was written without a point. */
  record Number(SourcePosition origin, BigDecimal value, boolean whole) implements TomlNode {
    @Override
    public String given() {
      return MessageText.number(value);
    }
  }

  /** A truth value. */
  record Flag(SourcePosition origin, boolean value) implements TomlNode {
    @Override
    public String given() {
      return value ? "true" : "false";
    }
  }

  /** What no question takes: nan and inf, and what lies deeper than any key of a job file. */
  record Unusable(SourcePosition origin, String given) implements TomlNode {}
}
