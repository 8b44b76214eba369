package dev.towerscribe.sheet.shop;

import dev.towerscribe.part.SizeTolerance;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.sheet.text.Table;
import java.util.List;

/**
 * Lengths as drawings write them: without the unit, which the title block names, and no zeros at
 * the end. Where both units are wanted the other stands below in brackets.
 *
 * @param lengths in the unit that counts
 * @param both whether the other is shown too
 */
record DrawingLengths(Lengths lengths, boolean both) {
  private static final String EITHER_WAY = "+/-";

  DrawingLengths(DrawingStyle style) {
    this(Lengths.in(style.unit()), style.both());
  }

  private String other(double mm) {
    return lengths.other().plain(mm, Fineness.DRAWING);
  }

  /** The figure in the unit that counts. */
  String figure(double mm) {
    return lengths.plain(mm, Fineness.DRAWING);
  }

  /** A limit of size, with one decimal more: so narrow a tolerance as H7 must not be rounded up. */
  String limit(double mm) {
    return lengths.plain(mm, Fineness.LIMIT);
  }

  /** The other unit's figure in brackets, or nothing. */
  String second(double mm) {
    return both ? "[" + other(mm) + "]" : "";
  }

  /** Figure, and the other below it if wanted. */
  List<String> lines(double mm) {
    return lines("", mm, "");
  }

  /** The same with words before and after: "\u2300", "H13". */
  List<String> lines(String before, double mm, String after) {
    String first = before + figure(mm) + after;
    return both ? List.of(first, "[" + before + other(mm) + "]") : List.of(first);
  }

  /** A cell of a table: figure, and the other below it if wanted. */
  Table.Cell cell(double mm, String before) {
    return new Table.Cell(before + figure(mm), second(mm));
  }

  /** On one line: "6" or "0.2362 [6]". */
  String line(double mm) {
    return both ? figure(mm) + " " + second(mm) : figure(mm);
  }

  /** On one line with the unit: "6 mm". */
  String named(double mm) {
    String first = figure(mm) + " " + lengths.unit().symbol();
    return both ? "%s [%s %s]".formatted(first, other(mm), lengths.other().unit().symbol()) : first;
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
    String name = lengths.metric() ? "mm" : "inch";
    return both ? "%s, [%s] in brackets".formatted(name, lengths.metric() ? "inch" : "mm") : name;
  }

  /**
   * Room that dimensions want all round a view from above, mm of paper: the first line's offset, a
   * tier of lines, and the longest figure of an ordinate on end.
   */
  double roomMm() {
    return both ? 40 : 28;
  }
}
