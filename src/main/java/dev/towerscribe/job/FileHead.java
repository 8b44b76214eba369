package dev.towerscribe.job;

import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
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
    return open(root, faults, printable);
  }

  /** The top table of a file, every old spelling put right. */
  static TomlNode.Table root(
      byte[] bytes, Respelling respelling, Faults faults, Consumer<String> notes)
      throws JobRejected {
    Optional<TomlText> toml =
        TomlText.decode(bytes, "", faults).flatMap(text -> TomlText.parse(text, "", faults));
    faults.throwIfAny();
    TomlText file = toml.orElseThrow();
    return respelling.renewed(file.table("", unit(file), faults), faults, notes);
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
        ? text.topString(UNITS).flatMap(FileHead::unit)
        : Optional.of(LengthUnit.MM);
  }

  private static Optional<LengthUnit> unit(String word) {
    return Stream.of(LengthUnit.values()).filter(u -> u.symbol().equals(word)).findFirst();
  }

  /** Reads the unit again for its faults. */
  static Optional<LengthUnit> readUnits(TableReader t) {
    if (!t.has(UNITS)) {
      return Optional.of(LengthUnit.MM);
    }
    String limit = "\"mm\" or \"in\"";
    Optional<String> word = t.string(UNITS, limit);
    Optional<LengthUnit> unit = word.flatMap(FileHead::unit);
    if (word.isPresent() && unit.isEmpty()) {
      t.fault(UNITS, limit, advice(word.get().strip().toLowerCase(Locale.ROOT)));
    }
    return unit;
  }

  private static String advice(String word) {
    if (word.startsWith("in") || word.equals("\"")) {
      return "Did you mean \"in\"?";
    }
    if (word.startsWith("mil") || word.startsWith("mm")) {
      return "Did you mean \"mm\"?";
    }
    return "Choose one, and convert the figures if need be.";
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
    // With none that is right, both are read all the same, so that their faults are found too.
    return sides.isEmpty() ? all : all.stream().filter(sides::contains).toList();
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
