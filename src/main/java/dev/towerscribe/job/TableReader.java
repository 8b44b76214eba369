package dev.towerscribe.job;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Tolerances;
import dev.towerscribe.quantity.Worded;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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

  // Tables and lists.

  /** A table that must be there. */
  Optional<TableReader> table(String key) {
    return has(key)
        ? optionalTable(key)
        : missing(key, "a table", "Add [" + origin().child(key).path() + "].");
  }

  /** A table that may be left out. */
  Optional<TableReader> optionalTable(String key) {
    return has(key)
        ? table(node(key), "Write its keys in braces or under a heading of its own.")
        : Optional.empty();
  }

  /** A table whose keys all have defaults: an empty one stands in for it. */
  Optional<TableReader> tableOrEmpty(String key) {
    return has(key) ? optionalTable(key) : table(TomlNode.Table.empty(origin().child(key)), "");
  }

  private Optional<TableReader> table(TomlNode node, String todo) {
    return node instanceof TomlNode.Table inner
        ? Optional.of(new TableReader(inner, faults(), printable, this))
        : fault(node, "a table", todo);
  }

  /** A list of tables; an empty list comes back when the key is missing and none are needed. */
  List<TableReader> tables(String key, int least, String what) {
    return items(key, least, MOST_ITEMS, what).orElse(List.of()).stream()
        .flatMap(node -> table(node, "Write its keys in braces.").stream())
        .toList();
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

  private Optional<List<TomlNode>> items(String key, int least, int most, String what) {
    String limit = least + " to " + most + " " + what;
    if (!has(key)) {
      return least == 0 ? Optional.of(List.of()) : missing(key, limit, "Add them.");
    }
    if (!(node(key) instanceof TomlNode.Items list)) {
      return fault(key, limit, "Write a list in square brackets.");
    }
    int count = list.items().size();
    return count >= least && count <= most
        ? Optional.of(list.items())
        : fault(key, limit, count < least ? "Add what is missing." : "Take some out.");
  }

  /** What is made of every node of a list, each looked at for its faults; nothing after any. */
  static <T> Optional<List<T>> all(List<TomlNode> nodes, Function<TomlNode, Optional<T>> read) {
    List<T> values = nodes.stream().flatMap(node -> read.apply(node).stream()).toList();
    return values.size() == nodes.size() ? Optional.of(values) : Optional.empty();
  }

  // Numbers.

  /** A length that must be there, mm. */
  Optional<Double> length(String key, AllowedRange mm) {
    return has(key) ? figure(node(key), mm) : unmeasured(key, mm.words(unit()));
  }

  /** A length with a default, mm. */
  Optional<Double> length(String key, AllowedRange mm, double otherwiseMm) {
    return has(key) ? length(key, mm) : Optional.of(otherwiseMm);
  }

  /** An angle that must be there. */
  Optional<Angle> angle(String key, AllowedRange degrees) {
    return length(key, degrees).map(Angle::ofDegrees);
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

  private <T> Optional<T> unmeasured(String key, String limit) {
    return missing(key, limit, "Measure it and write it down.");
  }

  /** A number in its own unit: mm for lengths. */
  Optional<Double> figure(TomlNode node, AllowedRange range) {
    return figure(node, range, Optional.empty());
  }

  private Optional<Double> figure(TomlNode node, AllowedRange range, Optional<String> advice) {
    SourcePosition origin = node.origin();
    if (node instanceof TomlNode.Text text) {
      return quoted(text, range, advice);
    }
    String limit = range.words(origin.unitOrMm());
    boolean length = range.kind() == AllowedRange.Kind.LENGTH;
    if (!(node instanceof TomlNode.Number number)) {
      return fault(node, limit, "Write one plain number.");
    }
    double written = number.value().doubleValue();
    double value = length ? origin.unitOrMm().toMm(written) : written;
    if (length) {
      faults().count(origin, range, written);
    }
    if (Double.isFinite(value) && range.holds(value)) {
      return Optional.of(settled(value));
    }
    if (length && origin.unit().isEmpty() && range.holdsInSomeUnit(written)) {
      // Perhaps right in the unit that was meant: the unit's own fault has to do.
      unsound();
      return Optional.empty();
    }
    return fault(node, limit, advice.orElseGet(() -> advice(value, range)));
  }

  /** A figure in quotes, in the unit that stands with it. */
  private Optional<Double> quoted(TomlNode.Text text, AllowedRange range, Optional<String> advice) {
    LengthUnit usual = text.origin().unitOrMm();
    var figure = QuotedFigure.of(text.value(), range.kind());
    if (figure.isEmpty()) {
      String todo = QuotedFigure.advice(text.value(), range.kind(), usual);
      return fault(text, range.words(usual), todo);
    }
    double value = figure.get().value();
    return range.holds(value)
        ? Optional.of(settled(value))
        : fault(
            text,
            range.words(figure.get().length().orElse(usual)),
            advice.orElseGet(() -> advice(value, range)));
  }

  /** What is smaller than the rounding of any length is nothing; it also rids us of minus zero. */
  private static double settled(double value) {
    return Math.abs(value) < Tolerances.COMPUTED_MM ? 0.0 : value;
  }

  /** A whole number that must be there. */
  Optional<Double> wholeNumber(String key, String limit, String todo) {
    if (!has(key)) {
      return missing(key, limit, todo);
    }
    return node(key) instanceof TomlNode.Number number
        ? Optional.of(number.value().doubleValue())
        : fault(key, limit, "Write a whole number without quotes.");
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
    return figures(key, 2, mm).map(TableReader::vec2);
  }

  /** A plane point with a default, mm. */
  Optional<Vec2> point(String key, AllowedRange mm, Vec2 otherwise) {
    return has(key) ? point(key, mm) : Optional.of(otherwise);
  }

  /** A point of space that must be there, mm. */
  Optional<Vec3> point3(String key, AllowedRange mm) {
    return figures(key, 3, mm).map(v -> new Vec3(v.get(0), v.get(1), v.get(2)));
  }

  /** Two angles that may be left out. */
  Optional<List<Angle>> optionalAngles(String key, AllowedRange degrees) {
    return has(key)
        ? figures(key, 2, degrees).map(v -> v.stream().map(Angle::ofDegrees).toList())
        : Optional.empty();
  }

  private static Vec2 vec2(List<Double> figures) {
    return new Vec2(figures.get(0), figures.get(1));
  }

  private Optional<List<Double>> figures(String key, int count, AllowedRange range) {
    return has(key) ? figures(node(key), count, range) : unmeasured(key, each(count, range));
  }

  private Optional<List<Double>> figures(TomlNode node, int count, AllowedRange range) {
    if (node instanceof TomlNode.Items list && list.items().size() == count) {
      return all(list.items(), item -> figure(item, range));
    }
    String todo = "Write " + count + " numbers in square brackets.";
    return fault(node, each(count, range), commas(node, count).orElse(todo));
  }

  /** What to say of a list that decimal commas have made too long. */
  static Optional<String> commas(TomlNode node, int count) {
    return node instanceof TomlNode.Items list
        ? DecimalCommas.advice(list, count)
        : Optional.empty();
  }

  /** Figures of a list, each within a range; a fault of the list alone if it has decimal commas. */
  Optional<List<Double>> figures(TomlNode.Items list, AllowedRange range) {
    boolean length = range.kind() == AllowedRange.Kind.LENGTH;
    LengthUnit unit = list.origin().unitOrMm();
    var commas = DecimalCommas.advice(list, v -> range.holds(length ? unit.toMm(v) : v));
    return commas.isPresent()
        ? fault(list, "figures, each " + range.words(unit), commas.get())
        : all(list.items(), item -> figure(item, range));
  }

  private String each(int count, AllowedRange range) {
    return (count == 2 ? "two" : "three") + " numbers, each " + range.words(unit());
  }

  /** Lengths in a list, mm; empty when the key is missing and none are needed. */
  Optional<List<Double>> lengths(String key, int least, int most, AllowedRange mm) {
    return items(key, least, most, "figures, each " + mm.words(unit()))
        .flatMap(
            items ->
                node(key) instanceof TomlNode.Items list
                    ? figures(list, mm)
                    : Optional.of(List.of()));
  }

  /** One length or a list of readings of it, which must be there, mm. */
  Optional<List<Double>> oneOrMore(String key, AllowedRange mm) {
    return node(key) instanceof TomlNode.Items && has(key)
        ? lengths(key, 1, Limits.MOST_READINGS, mm)
        : length(key, mm).map(List::of);
  }

  /** A ring of points, mm. */
  Optional<List<Vec2>> points(String key, AllowedRange mm) {
    return items(key, 3, MOST_POINTS, "points")
        .flatMap(items -> all(items, item -> figures(item, 2, mm).map(TableReader::vec2)));
  }

  // Words.

  /** A truth value that must be there. */
  Optional<Boolean> flag(String key, String todo) {
    String limit = "true or false";
    if (!has(key)) {
      return missing(key, limit, todo);
    }
    return node(key) instanceof TomlNode.Flag flag
        ? Optional.of(flag.value())
        : fault(key, limit, "Write true or false, without quotes.");
  }

  /** One of a few words, which must be there. */
  <T> Optional<T> word(String key, List<T> all, Function<T, String> wordOf) {
    List<String> words = all.stream().map(wordOf).toList();
    String limit = String.join(", ", words);
    if (!has(key)) {
      return missing(key, limit, "Choose one.");
    }
    Optional<String> text = string(key, limit);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    int index = words.indexOf(text.get());
    return index >= 0
        ? Optional.of(all.get(index))
        : fault(key, limit, SpellingHint.advice(text.get(), words, "Choose one of these."));
  }

  /** One of a kind's words, which must be there. */
  <E extends Enum<E> & Worded> Optional<E> word(String key, Class<E> kind) {
    return word(key, List.of(kind.getEnumConstants()), Worded::word);
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
        fault(item, limit, SpellingHint.advice(written, words, "Choose from these."));
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
    if (node(key) instanceof TomlNode.Text text && !Blanks.is(text)) {
      leave(key);
      return Optional.of(text.value());
    }
    return has(key) ? fault(key, limit, "Write it in quotes.") : missing(key, limit, "Add it.");
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
      return fault(key, limit, value.isBlank() ? "Give it a name." : "Shorten it.");
    }
    IntPredicate unprintable = c -> MessageText.isShapeless(c) || !printable.test(c);
    OptionalInt bad = value.codePoints().filter(unprintable).findFirst();
    if (bad.isPresent()) {
      int c = bad.getAsInt();
      String shape = MessageText.isShapeless(c) ? "" : " (" + Character.toString(c) + ")";
      return fault(
          key,
          "characters that the sheets can print",
          "Leave out or replace " + MessageText.codePoint(c) + shape + ".");
    }
    return text;
  }

  /** A name that no other thing of its kind has. */
  Optional<String> uniqueName(Set<String> taken) {
    return unique(label("name", Limits.NAME), taken);
  }

  Optional<String> unique(Optional<String> name, Set<String> taken) {
    return name.isPresent() && !taken.add(name.get())
        ? fault("name", "a name of its own", "Another has this name: change one.")
        : name;
  }
}
