package dev.towerscribe.job;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A value of a job file together with where it was written. */
sealed interface Node {
  /** Where it was written. */
  Origin origin();

  /** The value in a message: as written, strings quoted, tables and lists by their kind. */
  String given();

  /** A table, its keys in the file's order. */
  record Table(Origin origin, Map<String, Node> entries) implements Node {
    public Table {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    static Table empty(Origin origin) {
      return new Table(origin, Map.of());
    }

    Table without(Iterable<String> keys) {
      Map<String, Node> rest = new LinkedHashMap<>(entries);
      keys.forEach(rest::remove);
      return new Table(origin, rest);
    }

    Table only(Iterable<String> keys) {
      Map<String, Node> some = new LinkedHashMap<>();
      for (String key : keys) {
        if (entries.containsKey(key)) {
          some.put(key, entries.get(key));
        }
      }
      return new Table(origin, some);
    }

    Table with(String key, Node value) {
      Map<String, Node> all = new LinkedHashMap<>(entries);
      all.put(key, value);
      return new Table(origin, all);
    }

    @Override
    public String given() {
      return "a table";
    }
  }

  /** A list. */
  record Items(Origin origin, List<Node> items) implements Node {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String given() {
      boolean point = items.size() <= 3 && items.stream().allMatch(Number.class::isInstance);
      if (items.isEmpty()) {
        return "an empty list";
      }
      return point
          ? items.stream().map(Node::given).collect(Collectors.joining(", ", "[", "]"))
          : "a list of " + items.size();
    }
  }

  /** A string, dates among them: the file writes both alike once quotes are gone. */
  record Text(Origin origin, String value) implements Node {
    @Override
    public String given() {
      return Texts.quoted(value);
    }
  }

  /** A finite number. */
  record Number(Origin origin, BigDecimal value) implements Node {
    @Override
    public String given() {
      return Texts.number(value);
    }
  }

  /** TOML's nan and inf. */
  record NotFinite(Origin origin, double value) implements Node {
    @Override
    public String given() {
      return Double.isNaN(value) ? "nan" : value > 0 ? "inf" : "-inf";
    }
  }

  /** A truth value. */
  record Flag(Origin origin, boolean value) implements Node {
    @Override
    public String given() {
      return value ? "true" : "false";
    }
  }

  /** What lies deeper than any key of a job file; never looked into. */
  record TooDeep(Origin origin) implements Node {
    @Override
    public String given() {
      return "tables in tables in tables";
    }
  }
}
