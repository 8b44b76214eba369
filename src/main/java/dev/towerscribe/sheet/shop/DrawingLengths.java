package dev.towerscribe.sheet.shop;

import dev.towerscribe.part.SizeTolerance;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.List;

/**
 * Lengths as drawings write them: without the unit, which the title block names; no zeros at the
 * end; mm to two decimals, inches to four. Where both are wanted the other stands below in
 * brackets.
 *
 * @param unit the unit that counts
 * @param both whether the other is shown too
 */
record DrawingLengths(LengthUnit unit, boolean both) {
  private static final String EITHER_WAY = "+/-";

  private static int decimals(LengthUnit unit) {
    return unit == LengthUnit.MM ? 2 : 4;
  }

  private static String text(double mm, LengthUnit unit) {
    return Numbers.plain(unit.fromMm(mm), decimals(unit));
  }

  private LengthUnit other() {
    return unit == LengthUnit.MM ? LengthUnit.INCH : LengthUnit.MM;
  }

  /** The figure in the unit that counts. */
  String figure(double mm) {
    return text(mm, unit);
  }

  /** A limit of size, with one decimal more: so narrow a tolerance as H7 must not be rounded up. */
  String limit(double mm) {
    return Numbers.plain(unit.fromMm(mm), decimals(unit) + 1);
  }

  /** The other unit's figure in brackets, or nothing. */
  String second(double mm) {
    return both ? "[" + text(mm, other()) + "]" : "";
  }

  /** Figure, and the other below it if wanted. */
  List<String> lines(double mm) {
    return lines("", mm, "");
  }

  /** The same with words before and after: "\u2300", "H13". */
  List<String> lines(String before, double mm, String after) {
    String first = before + figure(mm) + after;
    return both ? List.of(first, "[" + before + text(mm, other()) + "]") : List.of(first);
  }

  /** On one line: "6" or "0.2362 [6]". */
  String line(double mm) {
    return both ? figure(mm) + " " + second(mm) : figure(mm);
  }

  /** On one line with the unit: "6 mm". */
  String named(double mm) {
    String first = figure(mm) + " " + unit.symbol();
    return both ? first + " [" + text(mm, other()) + " " + other().symbol() + "]" : first;
  }

  /**
   * A tolerance as it stands behind a size: a grade by its name, equal deviations in the unit that
   * counts. Their own text is in mm, which behind a size in inches would be 25 times too wide.
   */
  String tolerance(SizeTolerance tolerance) {
    return tolerance.text().startsWith(EITHER_WAY)
        ? EITHER_WAY + figure(tolerance.upperMm())
        : tolerance.text();
  }

  /** What the title block says. */
  String words() {
    String name = unit == LengthUnit.MM ? "mm" : "inch";
    return both ? name + ", [" + (unit == LengthUnit.MM ? "inch" : "mm") + "] in brackets" : name;
  }

  /**
   * Room that dimensions want all round a view from above, mm of paper: the first line's offset, a
   * tier of lines, and the longest figure of an ordinate on end.
   */
  static double roomMm(boolean both) {
    return both ? 40 : 28;
  }
}
