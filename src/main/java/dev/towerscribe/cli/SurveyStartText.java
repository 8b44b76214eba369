package dev.towerscribe.cli;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Mark;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import dev.towerscribe.sheet.worksheet.WorksheetPlan;
import dev.towerscribe.sheet.worksheet.WorksheetUncertainty;
import java.util.List;
import java.util.Locale;

/**
 * The empty survey file. Its lines stand in the order of the worksheet's rows; a reading is a line
 * behind a hash, so that what was not measured is simply left as it is.
 */
final class SurveyStartText {
  /** What stands where a figure goes; a survey is refused while one is left without its hash. */
  static final String GAP = "___";

  private final LengthUnit units;
  private final StringBuilder text = new StringBuilder();

  private SurveyStartText(LengthUnit units) {
    this.units = units;
  }

  static String of(LengthUnit units) {
    SurveyStartText file = new SurveyStartText(units);
    file.head();
    file.uncertainties();
    for (Side side : Side.values()) {
      file.corner(side);
      file.tower(side);
    }
    return file.text.toString();
  }

  private void line(String... lines) {
    for (String line : lines) {
      text.append(line).append('\n');
    }
  }

  /** A reading not taken yet, its gaps in quotes. */
  private void reading(String line, String comment) {
    line(
        "  # "
            + line.replaceAll("-?" + GAP, "\"$0\"")
            + (comment.isEmpty() ? "" : "   # " + comment));
  }

  private void head() {
    text.append(
        """
        # A survey to fill in. Its lines follow the worksheet, row by row, and so do their names.
        # For each reading that you took: remove the hash before it and put a figure for each "___".
        # Read fewer times than there are gaps? Take the spare ones out: [612.0, 611.5]. What was
        # not read stays behind its hash. Write what was read, nothing corrected by hand.
        # Lengths in the unit below, angles in degrees. X forward, Y left, Z up; but out is
        # positive away from the car's middle on either side, and in positive toward it.

        format = 1
        title = "survey of a car, not named yet"
        # date = 2026-01-31
        units = "%s"
        sides = ["left", "right"]

        # Marks on the middle line: [fore, left, up]. B is where the lines cross. A mark left behind
        # its hash has no known place: tapes from it are then ignored.
        station = [
        """
            .formatted(units.symbol()));
    for (Mark mark : Mark.values()) {
      String fore = mark.foreSign() == 0 ? "0.0" : (mark.foreSign() < 0 ? "-" : "") + GAP;
      String up = mark.isOnFloor() ? "0.0" : GAP;
      String line = "{ name = \"%s\", at = [%s, 0.0, %s] },".formatted(mark.key(), fore, up);
      // Where the lines cross there is nothing to read.
      if (line.contains(GAP)) {
        reading(line, mark.words());
      } else {
        line("  " + line + "   # " + mark.words());
      }
    }
    line("]");
  }

  private void uncertainties() {
    line(
        "",
        "# How far one reading may be off, one standard deviation. Put your own in.",
        "[uncertainty]");
    for (WorksheetUncertainty uncertainty : WorksheetUncertainty.values()) {
      line(uncertainty.word() + " = " + figure(uncertainty) + "   # " + uncertainty.words());
    }
  }

  private String figure(WorksheetUncertainty uncertainty) {
    String plain = uncertainty.usual(units);
    return plain.contains(".") ? plain : plain + ".0";
  }

  private void corner(Side side) {
    text.append(
        """

        # ---- %s CORNER
        [%s]
        # Plumb-bob plot: [fore of the wheel-centre line, out from the middle line].
        floor = [
        """
            .formatted(side.word().toUpperCase(Locale.ROOT), side.word()));
    for (Point point : Point.values()) {
      reading("{ point = \"%s\", at = [___, ___] },".formatted(point.key()), named(point));
    }
    line("]", "# Above the level floor.", "height = [");
    for (Point point : Point.values()) {
      reading("{ point = \"%s\", up = ___ },".formatted(point.key()), named(point));
    }
    line("]", "# Tape, each read three times.", "tape = [");
    int row = 0;
    for (List<WorksheetPlan.Tape> some :
        List.of(WorksheetPlan.between(), WorksheetPlan.fromMarks())) {
      for (WorksheetPlan.Tape tape : some) {
        reading(tape(tape, ""), WorksheetPlan.label(side, row++) + optional(tape.isOptional()));
      }
    }
    if (side == Side.LEFT) {
      line("  # Across the car, from a left point to a right one:");
      List<WorksheetPlan.Tape> across = WorksheetPlan.across();
      for (int i = 0; i < across.size(); i++) {
        reading(tape(across.get(i), Side.RIGHT.word() + "."), WorksheetPlan.acrossLabel(i));
      }
    }
    line("]", "# At the wheel.");
    reading("tyre_radius = [___, ___, ___]", "hub's middle to the floor");
    reading("camber = [___, ___, ___]", "degrees, top outward positive");
    reading("toe = [___, ___, ___]", "degrees, this wheel, toe-in positive");
  }

  private static String optional(boolean optional) {
    return optional ? ", only with a camber bolt" : "";
  }

  private static String named(Point point) {
    return point.sign() + " " + point.words() + optional(point.isOptional());
  }

  private static String tape(WorksheetPlan.Tape tape, String other) {
    return "{ from = \"%s\", to = \"%s%s\", length = [___, ___, ___] },"
        .formatted(tape.from().key(), other, tape.to().key());
  }

  private void tower(Side side) {
    line("", "[" + side.word() + ".tower]");
    reading("sheet = [___, ___]", "its thickness");
    reading("opening = [___, ___]", "diameters");
    reading("mark = [___, ___]", "inner edge of the ring");
    reading("shaft = ___", "the old strut rod's thread, for spans from it, inside or outside");
    reading("pivot_height = [___, ___]", "above the upper face");
    reading(
        "lean = { inboard = [___, ___], rearward = [___, ___] }",
        "degrees, the second turned end for end");
    reading("crown = { across = ___, rise = [___, ___] }", "not for a flat top");
    line("# Round holes: [fore, in] from the old strut rod centre. Give them names of your own.");
    line("landmark = [");
    for (String name : WorksheetPlan.landmarks()) {
      reading("{ name = \"%s\", at = [___, ___], diameter = [___, ___] },".formatted(name), "");
    }
    line("]", "# inside: near edges; outside: far edges; centres. Keep the one that you ticked.");
    line("span = [");
    for (WorksheetPlan.Span span : WorksheetPlan.spans()) {
      reading(
          "{ from = \"%s\", to = \"%s\", inside = [___, ___] },".formatted(span.from(), span.to()),
          "or outside, or centres");
    }
    line("]", "# A straight seam or edge, by two points of it.", "straightedge = [");
    reading("{ name = \"seam\", from = [___, ___], to = [___, ___] },", "");
    line("]");
  }
}
