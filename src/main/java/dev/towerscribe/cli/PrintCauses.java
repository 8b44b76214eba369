package dev.towerscribe.cli;

import dev.towerscribe.geometry.PrintReading;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.tower.RulerPage;
import java.util.ArrayList;
import java.util.List;

/**
 * Why a print may read as it does. The likely causes are common practice, with no source.
 *
 * @param r what was read of it
 * @param units the unit that it was read in
 */
record PrintCauses(PrintReading r, LengthUnit units) {
  /** Common practice, no source: office printers leave 4 to 6 mm of the edge blank. */
  private static final double MARGIN_MM = 10.0;

  static final double MOST_SKEW_DEG = 3.0;

  /** By how much a ratio may miss the one that would explain it. */
  private static final double LIKE = 0.03;

  /** Bars of two units differ by 1.6 per cent; a reading this near to the other one is suspect. */
  private static final double OTHER_BAR_MM = 0.3;

  private static final double CM_PER_MM = 0.1;

  /** How a page that belongs to no job is printed. */
  static Print usual(Paper paper) {
    return new Print(paper, MARGIN_MM, 1.0, 1.0);
  }

  /** Whether a ratio is one that no usable printer has. */
  static boolean isOff(double ratio) {
    // A reading at the limit is not past it, whatever the last digit of a double says.
    return !(Math.abs(ratio - 1) <= RulerPage.REFUSED_PAST + 1e-9);
  }

  /** Why no printer prints so; empty if one may. */
  List<String> all() {
    List<String> lines = ofBars();
    if (Math.abs(r.skew().orElse(Angle.ZERO).degrees()) > MOST_SKEW_DEG) {
      lines.add(ofSkew());
    }
    return lines;
  }

  /** A line for each bar that is further off than a printer can be. */
  private List<String> ofBars() {
    List<String> lines = new ArrayList<>();
    if (isOff(r.across())) {
      lines.add(bar("across", r.acrossMm(), r.barAcrossMm()));
    }
    if (isOff(r.along())) {
      lines.add(bar("along", r.alongMm(), r.barAlongMm()));
    }
    return lines;
  }

  private String bar(String which, double readMm, double barMm) {
    double ratio = readMm / barMm;
    return "%s: %s on a bar of %s is %s %% %s, and more than %s %% is no printer's own doing. %s"
        .formatted(
            which,
            length(readMm),
            length(barMm),
            Numbers.plain(100 * Math.abs(ratio - 1), 1),
            ratio < 1 ? "short" : "long",
            Numbers.plain(100 * RulerPage.REFUSED_PAST, 0),
            cause(readMm, ratio));
  }

  private String cause(double readMm, double ratio) {
    double inch = LengthUnit.INCH.toMm(1);
    if (isLike(ratio, 1 / inch)) {
      return "Read in inches? Write in right behind each reading: 3.985in.";
    }
    if (isLike(ratio, inch)) {
      return "Read in mm? Write mm right behind each reading: 101.3mm.";
    }
    if (isLike(ratio, CM_PER_MM)) {
      return "Read in cm? Give it in mm.";
    }
    if (isLike(ratio, Math.sqrt(2))) {
      return "That is the distance from cross to cross, which comes last.";
    }
    for (Paper paper : Paper.values()) {
      RulerPage.Bars bars = RulerPage.Bars.of(usual(paper));
      if (bars.acrossMm() != r.barAcrossMm()
          && (isLike(readMm, bars.acrossMm()) || isLike(readMm, bars.alongMm()))) {
        return "A long bar of the print-check page? Say how long its bars are, for %s: --bars %s,%s."
            .formatted(
                paper.word(),
                Numbers.plain(units.fromMm(bars.acrossMm()), 3),
                Numbers.plain(units.fromMm(bars.alongMm()), 3));
      }
    }
    if (ratio > 0.9 && ratio < 1) {
      return "Page scaling is on, most likely: \"fit to page\", or a page for A4 put on Letter,"
          + " prints at 94 to 97 %. Print at 100 %, \"actual size\", and measure again.";
    }
    if (ratio > 1 && ratio < 1.1) {
      return "Page scaling is on, most likely: \"fill the page\" or a set scale. Print at 100 %,"
          + " \"actual size\", and measure again.";
    }
    return "The wrong bar was measured, or not from end to end.";
  }

  private static boolean isLike(double value, double other) {
    return Math.abs(value / other - 1) <= LIKE;
  }

  /** Why no print can have these three lengths. */
  List<String> ofTriangle() {
    List<String> lines = ofBars();
    lines.add(
        ("far ends: %s cannot be: with bars of %s and %s it lies between %s and %s. Measure from"
                + " cross to cross; commas between the readings, a point for decimals")
            .formatted(
                length(r.farEndsMm().orElseThrow()),
                length(r.acrossMm()),
                length(r.alongMm()),
                length(Math.abs(r.acrossMm() - r.alongMm())),
                length(r.acrossMm() + r.alongMm())));
    return lines;
  }

  /** Why a print may lean further than a printer can. */
  private String ofSkew() {
    return ("far ends: %s makes the print %s deg out of square, and more than %s is never the"
            + " printer alone. If square, it would read %s: measure again from cross to cross,"
            + " not from the bars' shared corner")
        .formatted(
            length(r.farEndsMm().orElseThrow()),
            Lengths.degrees(r.skew().orElseThrow()),
            Numbers.plain(MOST_SKEW_DEG, 0),
            length(Math.hypot(r.acrossMm(), r.alongMm())));
  }

  /** What is believable but should be looked at. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    LengthUnit other = units == LengthUnit.MM ? LengthUnit.INCH : LengthUnit.MM;
    double theirs = RulerPage.Bars.ofSheets(other).acrossMm();
    boolean ours = r.barAcrossMm() == RulerPage.Bars.ofSheets(units).acrossMm();
    if (ours
        && Math.abs(r.acrossMm() - theirs) <= OTHER_BAR_MM
        && Math.abs(r.alongMm() - theirs) <= OTHER_BAR_MM) {
      boolean inches = other == LengthUnit.INCH;
      notes.add(
          ("Both bars read %s, as the sheets of a job in %s have them. If that is what stands"
                  + " beside them, the print is true.")
              .formatted(inches ? "4 in" : "100 mm", inches ? "inches" : "mm"));
    }
    boolean alike = Math.abs(r.across() - r.along()) <= 0.003;
    if (alike && r.across() < 0.98) {
      notes.add(
          "Both bars are short alike by more than 2 %: is page scaling on? A page for Letter put on"
              + " A4 to fit prints at 97.3 %.");
    }
    return notes;
  }

  /** A length as calipers show it. */
  private String length(double mm) {
    return Lengths.in(units).with(mm);
  }
}
