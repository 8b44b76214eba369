package dev.towerscribe.job;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure in quotes, with its own unit: "0.551 in", "14 mm", "2.5 deg". It counts whatever unit
 * its file or table is in.
 *
 * @param written the figure in that unit
 * @param length the unit of a length; empty for anything else
 */
record QuotedFigure(double written, Optional<LengthUnit> length) {
  private static final String NUMBER = "([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+))";
  private static final Pattern SHAPE = Pattern.compile(NUMBER + " *([^0-9.,/ ][^ ]*)");
  private static final Pattern PLAIN = Pattern.compile(NUMBER);
  private static final Pattern COMMA = Pattern.compile("([+-]?[0-9]+),([0-9]+)( *[^ ,]*)");
  private static final Pattern FRACTION =
      Pattern.compile("(?:([0-9]{1,3})[ -])?([0-9]{1,3})/([0-9]{1,3}) *(in|\"|inch|inches)?");

  /**
   * Reads what stands in quotes.
   *
   * @param text without the quotes
   * @param kind what it should be
   * @return the figure, if it has a unit of that kind
   */
  static Optional<QuotedFigure> of(String text, AllowedRange.Kind kind) {
    Matcher m = SHAPE.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    double value = Double.parseDouble(m.group(1));
    if (kind == AllowedRange.Kind.LENGTH) {
      return UnitWord.of(m.group(2)).map(unit -> new QuotedFigure(value, Optional.of(unit)));
    }
    return !kind.symbol().isEmpty() && m.group(2).equals(kind.symbol())
        ? Optional.of(new QuotedFigure(value, Optional.empty()))
        : Optional.empty();
  }

  /** The value in mm, or in the unit of its kind. */
  double value() {
    return length.map(unit -> unit.toMm(written)).orElse(written);
  }

  /**
   * What to do about quotes that hold no such figure.
   *
   * @param text without the quotes
   * @param kind what it should be
   * @param usual the unit of plain figures there
   * @return one sentence
   */
  static String advice(String text, AllowedRange.Kind kind, LengthUnit usual) {
    String bare = text.strip();
    boolean isLength = kind == AllowedRange.Kind.LENGTH;
    String unit = isLength ? usual.symbol() : kind.symbol();
    Matcher comma = COMMA.matcher(bare);
    if (comma.matches()) {
      String point = comma.group(1) + "." + comma.group(2);
      boolean said = !comma.group(3).isBlank();
      return "A decimal takes a point, not a comma: write "
          + (said ? "\"" + MessageText.shown(point + comma.group(3)) + "\"" : point)
          + ".";
    }
    Matcher fraction = FRACTION.matcher(bare);
    if (isLength && fraction.matches() && Integer.parseInt(fraction.group(3)) > 0) {
      double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
      double part = Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
      return "Write a fraction as a decimal: \"%s in\".".formatted(Numbers.plain(whole + part, 6));
    }
    if (PLAIN.matcher(bare).matches()) {
      return unit.isEmpty()
          ? "Write a number without quotes."
          : "Write a number without quotes, or with its unit in them: \"%s %s\"."
              .formatted(MessageText.shown(bare), unit);
    }
    Matcher other = SHAPE.matcher(bare);
    if (other.matches()) {
      boolean angle = other.group(2).equals(AllowedRange.Kind.ANGLE.symbol());
      return isLength
          ? "A length in quotes has mm or in for its unit: "
              + (angle ? "this is an angle." : "convert it.")
          : unit.isEmpty()
              ? "It has no unit: write a number without quotes."
              : "In quotes its unit is %s, no other.".formatted(unit);
    }
    return "Write a number without quotes"
        + (unit.isEmpty() ? "." : ", or with its unit in them: \"12.5 %s\".".formatted(unit));
  }
}
