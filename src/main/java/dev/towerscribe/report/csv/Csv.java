package dev.towerscribe.report.csv;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import java.util.List;

/**
 * Comma separated values (RFC 4180): lines end in carriage return and line feed, a point stands for
 * the decimals in every locale, cells are quoted where they must be.
 */
final class Csv {
  private static final String END = "\r\n";

  /** As people give them. */
  private static final int DECIMALS = 6;

  /** What spreadsheets take for the beginning of a formula. */
  private static final String FORMULA_STARTS = "=+-@";

  private final StringBuilder text = new StringBuilder();

  /**
   * Adds a line.
   *
   * @param cells figures as they are, words through {@link #words}
   */
  void row(List<String> cells) {
    text.append(String.join(",", cells.stream().map(Csv::quoted).toList())).append(END);
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    boolean trimmed = cell.strip().equals(cell);
    return plain && trimmed ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  /**
   * Words that no spreadsheet reads as a formula: an apostrophe goes before those that begin like
   * one. Control characters are shown as question marks.
   *
   * @param words what somebody wrote
   * @return the same, perhaps with an apostrophe before it
   */
  static String words(String words) {
    String clean =
        words
            .codePoints()
            .map(c -> Character.isISOControl(c) ? '?' : c)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    String bare = clean.stripLeading();
    boolean formula = !bare.isEmpty() && FORMULA_STARTS.indexOf(bare.charAt(0)) >= 0;
    return formula ? "'" + clean : clean;
  }

  static String degrees(Angle angle) {
    return Numbers.plain(angle.degrees(), DECIMALS);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
