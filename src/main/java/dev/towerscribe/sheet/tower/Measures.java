package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;

/** Lengths in words, in the job's unit first, and words that must fit. */
final class Measures {
  private Measures() {}

  /** A length to a tenth of a millimetre, and to a thousandth of an inch where inches are used. */
  static String length(double mm, LengthUnit units) {
    String metric = Numbers.fixed(mm, 1) + " mm";
    return units == LengthUnit.INCH ? inches(mm) + " in (" + metric + ")" : metric;
  }

  /** A length in the job's unit alone. */
  static String one(double mm, LengthUnit units) {
    return units == LengthUnit.INCH ? inches(mm) + " in" : Numbers.fixed(mm, 1) + " mm";
  }

  /** Two lengths, least and most. */
  static String range(double leastMm, double mostMm, LengthUnit units) {
    return units == LengthUnit.INCH
        ? inches(leastMm) + " to " + inches(mostMm) + " in"
        : Numbers.fixed(leastMm, 1) + " to " + Numbers.fixed(mostMm, 1) + " mm";
  }

  /** A text cut short with an ellipsis where it would not fit one line. */
  static String shortened(String text, double capMm, double widthMm) {
    if (Lettering.width(text, capMm) <= widthMm) {
      return text;
    }
    int end = text.length();
    while (end > 0 && Lettering.width(text.substring(0, end) + "\u2026", capMm) > widthMm) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "\u2026";
  }

  private static String inches(double mm) {
    return Numbers.fixed(LengthUnit.INCH.fromMm(mm), 3);
  }
}
