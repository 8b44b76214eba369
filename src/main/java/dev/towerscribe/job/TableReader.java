package dev.towerscribe.job;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import dev.towerscribe.quantity.Worded;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntPredicate;

/**
 * Walks one table, key by key. Each question either gives a valid value or leaves a fault and gives
 * nothing; {@link #close} then reports the keys nobody asked for. While a table is {@link #sound},
 * every question for a key that must be there has given a value.
 */
final class TableReader extends KeyCursor {
  /** Longest of the lists whose items are tables or plain figures. */
  private static final int MOST_ITEMS = 200;

  /** A traced outline: more than anybody marks by hand, few enough to compare side with side. */
  static final int MOST_POINTS = 500;

  /** More readings of one length are a slip. */
  private static final int MOST_READINGS = 20;

  private final IntPredicate printable;

  /**
   * A reader of a file's top table.
   *
   * @param table the table
   * @param faults where faults go
   * @param printable which characters sheets can carry
   */
  TableReader(TomlNode.Table table, Faults faults, IntPredicate printable) {
    this(table, faults, printable, null);
  }

  private TableReader(
      TomlNode.Table table, Faults faults, IntPredicate printable, KeyCursor parent) {
    super(table, faults, parent);
    this.printable = printable;
  }

  private TableReader inner(TomlNode.Table inner) {
    return new TableReader(inner, faults(), printable, this);
  }

  // Tables and lists.

  /** A table that must be there. */
  Optional<TableReader> table(String key) {
    if (!has(key)) {
      missing(key, "a table", "Add [" + origin().child(key).path() + "].");
      return Optional.empty();
    }
    return optionalTable(key);
  }

  /** A table that may be left out. */
  Optional<TableReader> optionalTable(String key) {
    if (!has(key)) {
      return Optional.empty();
    }
    TomlNode node = node(key);
    if (node instanceof TomlNode.Table inner) {
      return Optional.of(inner(inner));
    }
    fault(node, "a table", "Write its keys in braces or under a heading of its own.");
    return Optional.empty();
  }

  /** A table whose keys all have defaults: an empty one stands in for it. */
  Optional<TableReader> tableOrEmpty(String key) {
    return has(key)
        ? optionalTable(key)
        : Optional.of(inner(TomlNode.Table.empty(origin().child(key))));
  }

  /** A list of tables; an empty list comes back when the key is missing and none are needed. */
  List<TableReader> tables(String key, int least, String what) {
    List<TableReader> readers = new ArrayList<>();
    for (TomlNode node : items(key, least, MOST_ITEMS, what)) {
      if (node instanceof TomlNode.Table inner) {
        readers.add(inner(inner));
      } else {
        fault(node, "a table", "Write its keys in braces.");
      }
    }
    return readers;
  }

  /** What is made of each table of a list; those at fault are left out. */
  <T> List<T> each(String key, int least, String what, Function<TableReader, Optional<T>> read) {
    return tables(key, least, what).stream().flatMap(t -> read.apply(t).stream()).toList();
  }

  /** The same for things that have names of their own: the reader is given those that are taken. */
  <T> List<T> named(
      String key, int least, String what, BiFunction<TableReader, Set<String>, Optional<T>> read) {
    Set<String> names = new HashSet<>();
    return each(key, least, what, t -> read.apply(t, names));
  }

  private List<TomlNode> items(String key, int least, int most, String what) {
    String limit = least + " to " + most + " " + what;
    if (!has(key)) {
      if (least > 0) {
        missing(key, limit, "Add them.");
      }
      return List.of();
    }
    TomlNode node = node(key);
    if (!(node instanceof TomlNode.Items list)) {
      fault(node, limit, "Write a list in square brackets.");
      return List.of();
    }
    int count = list.items().size();
    if (count < least || count > most) {
      fault(node, limit, count < least ? "Add what is missing." : "Take some out.");
      return List.of();
    }
    return list.items();
  }

  // Numbers.

  /** A length that must be there, mm. */
  Optional<Double> length(String key, AllowedRange mm) {
    return figure(key, mm);
  }

  /** A length with a default, mm. */
  Optional<Double> length(String key, AllowedRange mm, double otherwiseMm) {
    return has(key) ? figure(key, mm) : Optional.of(otherwiseMm);
  }

  /** An angle that must be there. */
  Optional<Angle> angle(String key, AllowedRange degrees) {
    return figure(key, degrees).map(Angle::ofDegrees);
  }

  /** An angle with a default. */
  Optional<Angle> angle(String key, AllowedRange degrees, Angle otherwise) {
    return has(key) ? angle(key, degrees) : Optional.of(otherwise);
  }

  /** An angle with a default, and what to do if it is out of its range. */
  Optional<Angle> angle(String key, AllowedRange degrees, Angle otherwise, String todo) {
    return has(key)
        ? figure(node(key), degrees, Optional.of(todo)).map(Angle::ofDegrees)
        : Optional.of(otherwise);
  }

  /** An angle that may be left out. */
  Optional<Angle> optionalAngle(String key, AllowedRange degrees) {
    return has(key) ? angle(key, degrees) : Optional.empty();
  }

  /** A plain number with a default, and what to do if it is out of its range. */
  Optional<Double> ratio(String key, AllowedRange range, double otherwise, String todo) {
    return has(key) ? figure(node(key), range, Optional.of(todo)) : Optional.of(otherwise);
  }

  private Optional<Double> figure(String key, AllowedRange range) {
    if (!has(key)) {
      missing(key, range.words(unit()), "Measure it and write it down.");
      return Optional.empty();
    }
    return figure(node(key), range);
  }

  Optional<Double> figure(TomlNode node, AllowedRange range) {
    return figure(node, range, Optional.empty());
  }

  /** A number in its own unit: mm for lengths. */
  private Optional<Double> figure(TomlNode node, AllowedRange range, Optional<String> advice) {
    SourcePosition origin = node.origin();
    String limit = range.words(origin.unitOrMm());
    boolean length = range.kind() == AllowedRange.Kind.LENGTH;
    if (!(node instanceof TomlNode.Number number)) {
      String todo =
          node instanceof TomlNode.Text
              ? "Write a number without quotes or unit."
              : "Write one plain number.";
      fault(node, limit, todo);
      return Optional.empty();
    }
    double written = number.value().doubleValue();
    double value = length ? origin.unitOrMm().toMm(written) : written;
    if (Double.isFinite(value) && range.holds(value)) {
      // What is smaller than the rounding of any length is nothing; it also rids us of minus zero.
      return Optional.of(Math.abs(value) < Tolerances.COMPUTED_MM ? 0.0 : value);
    }
    if (length && origin.unit().isEmpty() && range.holdsInSomeUnit(written)) {
      // Perhaps right in the unit that was meant: the unit's own fault has to do.
      unsound();
      return Optional.empty();
    }
    fault(node, limit, advice.orElseGet(() -> advice(value, range)));
    return Optional.empty();
  }

  /** A whole number that must be there. */
  Optional<Double> wholeNumber(String key, String limit, String todo) {
    if (!has(key)) {
      missing(key, limit, todo);
      return Optional.empty();
    }
    if (node(key) instanceof TomlNode.Number number) {
      return Optional.of(number.value().doubleValue());
    }
    fault(key, limit, "Write a whole number without quotes.");
    return Optional.empty();
  }

  private static String advice(double value, AllowedRange range) {
    if (value < 0 && range.least() >= 0) {
      return "It cannot be negative.";
    }
    if (value == 0) {
      return "It cannot be zero.";
    }
    String size =
        Math.abs(value) > Math.max(Math.abs(range.least()), range.most())
            ? "Too large: "
            : "Out of range: ";
    return size
        + (range.kind() == AllowedRange.Kind.LENGTH
            ? "check the figure and the unit."
            : "check it.");
  }

  // Points.

  /** A plane point that must be there, mm. */
  Optional<Vec2> point(String key, AllowedRange mm) {
    return figures(key, 2, "two numbers, each " + mm.words(unit()), mm)
        .map(v -> new Vec2(v.get(0), v.get(1)));
  }

  /** A plane point with a default, mm. */
  Optional<Vec2> point(String key, AllowedRange mm, Vec2 otherwise) {
    return has(key) ? point(key, mm) : Optional.of(otherwise);
  }

  /** A point of space that must be there, mm. */
  Optional<Vec3> point3(String key, AllowedRange mm) {
    return figures(key, 3, "three numbers, each " + mm.words(unit()), mm)
        .map(v -> new Vec3(v.get(0), v.get(1), v.get(2)));
  }

  /** Two angles that may be left out. */
  Optional<List<Angle>> optionalAngles(String key, AllowedRange degrees) {
    return has(key)
        ? figures(key, 2, "two numbers, each " + degrees.words(unit()), degrees)
            .map(v -> v.stream().map(Angle::ofDegrees).toList())
        : Optional.empty();
  }

  private Optional<List<Double>> figures(String key, int count, String limit, AllowedRange range) {
    if (!has(key)) {
      missing(key, limit, "Measure it and write it down.");
      return Optional.empty();
    }
    return figures(node(key), count, limit, range);
  }

  private Optional<List<Double>> figures(
      TomlNode node, int count, String limit, AllowedRange range) {
    if (!(node instanceof TomlNode.Items list) || list.items().size() != count) {
      fault(node, limit, "Write " + count + " numbers in square brackets.");
      return Optional.empty();
    }
    List<Double> values = new ArrayList<>();
    for (TomlNode item : list.items()) {
      figure(item, range).ifPresent(values::add);
    }
    return values.size() == count ? Optional.of(values) : Optional.empty();
  }

  /** Lengths in a list, mm; empty when the key is missing and none are needed. */
  Optional<List<Double>> lengths(String key, int least, int most, AllowedRange mm) {
    List<TomlNode> items = items(key, least, most, "figures, each " + mm.words(unit()));
    List<Double> values = new ArrayList<>();
    for (TomlNode item : items) {
      figure(item, mm).ifPresent(values::add);
    }
    boolean all = values.size() == items.size() && (least == 0 || !values.isEmpty());
    return all ? Optional.of(values) : Optional.empty();
  }

  /** One length or a list of readings of it, which must be there, mm. */
  Optional<List<Double>> oneOrMore(String key, AllowedRange mm) {
    return node(key) instanceof TomlNode.Items && has(key)
        ? lengths(key, 1, MOST_READINGS, mm)
        : length(key, mm).map(List::of);
  }

  /** A ring of points, mm. */
  Optional<List<Vec2>> points(String key, AllowedRange mm) {
    List<TomlNode> items = items(key, 3, MOST_POINTS, "points");
    List<Vec2> points = new ArrayList<>();
    for (TomlNode item : items) {
      figures(item, 2, "two numbers, each " + mm.words(unit()), mm)
          .ifPresent(v -> points.add(new Vec2(v.get(0), v.get(1))));
    }
    return !items.isEmpty() && points.size() == items.size()
        ? Optional.of(points)
        : Optional.empty();
  }

  // Words.

  /** A truth value that must be there. */
  Optional<Boolean> flag(String key, String todo) {
    if (!has(key)) {
      missing(key, "true or false", todo);
      return Optional.empty();
    }
    if (node(key) instanceof TomlNode.Flag flag) {
      return Optional.of(flag.value());
    }
    fault(key, "true or false", "Write true or false, without quotes.");
    return Optional.empty();
  }

  /** One of a few words, with a default if one is given. */
  <T> Optional<T> word(String key, List<T> all, Function<T, String> wordOf, Optional<T> otherwise) {
    List<String> words = all.stream().map(wordOf).toList();
    String limit = String.join(", ", words);
    if (!has(key)) {
      if (otherwise.isEmpty()) {
        missing(key, limit, "Choose one.");
      }
      return otherwise;
    }
    Optional<String> text = string(key, limit);
    Optional<T> found =
        text.flatMap(t -> all.stream().filter(one -> wordOf.apply(one).equals(t)).findFirst());
    if (text.isPresent() && found.isEmpty()) {
      fault(
          key,
          limit,
          SpellingHint.nearest(text.get(), words)
              .map(word -> "Did you mean \"" + word + "\"?")
              .orElse("Choose one of these."));
    }
    return found;
  }

  /** One of a kind's words, which must be there. */
  <E extends Enum<E> & Worded> Optional<E> word(String key, Class<E> kind) {
    return word(key, List.of(kind.getEnumConstants()), Worded::word, Optional.empty());
  }

  /** One of a kind's words, with a default. */
  <E extends Enum<E> & Worded> Optional<E> word(String key, E otherwise) {
    return has(key) ? word(key, otherwise.getDeclaringClass()) : Optional.of(otherwise);
  }

  /** A list of different words, at least one, that is there; what is wrong in it is left out. */
  <T> List<T> words(String key, List<T> all, Function<T, String> wordOf, String limit) {
    List<String> words = all.stream().map(wordOf).toList();
    List<T> found = new ArrayList<>();
    if (!(node(key) instanceof TomlNode.Items list) || list.items().isEmpty()) {
      fault(key, limit, "Write a list in square brackets.");
      return found;
    }
    for (TomlNode item : list.items()) {
      String written = item instanceof TomlNode.Text text ? text.value() : "";
      int index = words.indexOf(written);
      if (index < 0) {
        fault(
            item,
            limit,
            SpellingHint.nearest(written, words)
                .map(word -> "Did you mean \"" + word + "\"?")
                .orElse("Choose from these."));
      } else if (found.contains(all.get(index))) {
        fault(item, limit, "It is in the list twice: drop one.");
      } else {
        found.add(all.get(index));
      }
    }
    return found;
  }

  /** A string, whatever it says. */
  Optional<String> string(String key, String limit) {
    if (node(key) instanceof TomlNode.Text text) {
      leave(key);
      return Optional.of(text.value());
    }
    if (has(key)) {
      fault(key, limit, "Write it in quotes.");
    } else {
      missing(key, limit, "Add it.");
    }
    return Optional.empty();
  }

  /** A line of text for the sheets, with a default. */
  Optional<String> label(String key, int most, String otherwise) {
    return has(key) ? label(key, most) : Optional.of(otherwise);
  }

  /** A line of text for the sheets. */
  Optional<String> label(String key, int most) {
    String limit = "1 to " + most + " characters";
    Optional<String> text = string(key, limit);
    if (text.isEmpty()) {
      return text;
    }
    String value = text.get();
    int count = value.codePointCount(0, value.length());
    if (value.isBlank() || count > most) {
      fault(key, limit, value.isBlank() ? "Give it a name." : "Shorten it.");
      return Optional.empty();
    }
    Optional<Integer> bad =
        value
            .codePoints()
            .filter(c -> MessageText.isShapeless(c) || !printable.test(c))
            .boxed()
            .findFirst();
    if (bad.isPresent()) {
      int c = bad.get();
      String shape = MessageText.isShapeless(c) ? "" : " (" + Character.toString(c) + ")";
      fault(
          key,
          "characters that the sheets can print",
          "Leave out or replace " + MessageText.codePoint(c) + shape + ".");
      return Optional.empty();
    }
    return text;
  }
}
