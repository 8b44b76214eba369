package dev.towerscribe.job;

import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/** What stands at the top of every file alike: the format and the unit. */
final class FileHead {
  static final String FORMAT = "format";
  static final String UNITS = "units";
  static final List<String> KEYS_OF_ANY_FILE = List.of(FORMAT, UNITS);

  private static final int KNOWN_FORMAT = 1;

  private FileHead() {}

  /**
   * Opens a file that stands by itself, up to its format.
   *
   * @param bytes its content
   * @param faults where faults go
   * @param printable which characters sheets can carry
   * @param notes told of old spellings
   * @return a reader of its top, the format read
   * @throws JobRejected if it is no TOML or of a format that this program cannot know
   */
  static TableReader open(
      byte[] bytes, Faults faults, IntPredicate printable, Consumer<String> notes)
      throws JobRejected {
    TomlNode.Table root = root(bytes, Respelling.OF_READINGS, faults, notes);
    return open(new TableUnits(faults).applied(root), faults, printable);
  }

  /** The top table of a file, every old spelling put right. */
  static TomlNode.Table root(
      byte[] bytes, Respelling respelling, Faults faults, Consumer<String> notes)
      throws JobRejected {
    Optional<TomlText> toml =
        TomlText.decode(bytes, "", faults).flatMap(text -> TomlText.parse(text, "", faults));
    if (toml.isEmpty()) {
      faults.throwIfAny();
    }
    TomlText file = toml.orElseThrow();
    SaidUnit unit = faults.trusted(UNITS, unit(file));
    Consumer<String> once = faults.isSecondLook() ? note -> {} : notes;
    return respelling.renewed(file.table("", unit, faults), faults, once);
  }

  static TableReader open(TomlNode.Table root, Faults faults, IntPredicate printable)
      throws JobRejected {
    TableReader top = new TableReader(root, faults, printable);
    if (!readFormat(top)) {
      faults.throwIfAny();
    }
    return top;
  }

  /** The unit of a file's lengths: empty if its word for it is not known. */
  static Optional<LengthUnit> unit(TomlText text) {
    return text.has(UNITS)
        ? text.topString(UNITS).flatMap(UnitWord::of)
        : Optional.of(LengthUnit.MM);
  }

  /** Reads the unit again for its faults. */
  static Optional<LengthUnit> readUnits(TableReader t) {
    if (!t.has(UNITS)) {
      return Optional.of(LengthUnit.MM);
    }
    Optional<String> word = t.string(UNITS, UnitWord.ALLOWED);
    Optional<LengthUnit> unit = word.flatMap(UnitWord::of);
    if (word.isPresent() && unit.isEmpty()) {
      t.fault(UNITS, UnitWord.ALLOWED, UnitWord.advice(word.get()));
    }
    return unit;
  }

  /**
   * Reads the format.
   *
   * @return false if the file is of a format that this program cannot know, so that nothing else in
   *     it should be judged
   */
  static boolean readFormat(TableReader t) {
    Optional<Double> format =
        t.wholeNumber(FORMAT, "1", "Put format = 1 at the top: it says how to read the file.");
    if (format.isPresent() && format.get() != KNOWN_FORMAT) {
      t.fault(FORMAT, "1", "This program reads format 1 only.");
      return false;
    }
    return true;
  }

  /** The sides that a file is about, left first; both where it does not say. */
  static List<Side> sides(TableReader top) {
    List<Side> all = List.of(Side.values());
    if (!top.has("sides")) {
      return all;
    }
    List<Side> sides = top.words("sides", all, Side::word, "one or both of \"left\" and \"right\"");
    // What cannot be read may be either: both are read then, so that their faults are found too.
    return sides.isEmpty() || !sidesAreWords(top)
        ? all
        : all.stream().filter(sides::contains).toList();
  }

  /** Whether the sides are certain: not said, or each a word that names one. */
  static boolean sidesAreWords(TableReader top) {
    List<String> words = Stream.of(Side.values()).map(Side::word).toList();
    return !top.has("sides")
        || top.node("sides") instanceof TomlNode.Items list
            && list.items().stream()
                .allMatch(i -> i instanceof TomlNode.Text t && words.contains(t.value()));
  }

  /** The date of a file, if it has one. */
  static Optional<LocalDate> date(TableReader top) {
    return top.has("date") ? neededDate(top) : Optional.empty();
  }

  /** The date of a file that must have one. */
  static Optional<LocalDate> neededDate(TableReader top) {
    String limit = "a date, YYYY-MM-DD";
    try {
      Optional<LocalDate> date = top.string("date", limit).map(LocalDate::parse);
      boolean slip = date.stream().mapToInt(LocalDate::getYear).anyMatch(y -> y < 1900 || y > 2200);
      return slip ? top.fault("date", limit, "Check the year.") : date;
    } catch (DateTimeParseException e) {
      return top.fault("date", limit, "Write the year first, then month and day.");
    }
  }
}
