package dev.towerscribe.cli;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Mark;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import dev.towerscribe.sheet.worksheet.WorksheetPlan;
import dev.towerscribe.sheet.worksheet.WorksheetUncertainty;
import java.util.List;

/**
 * The empty survey file. Its lines stand in the order of the worksheet's rows; a reading is a line
 * behind a hash, so that what was not measured is simply left as it is.
 */
final class SurveyStartText {
  /** What stands where a figure goes: no TOML, so that a forgotten one is found by its line. */
  static final String GAP = "___";

  private static final String TWICE = "[" + GAP + ", " + GAP + "]";
  private static final String THRICE = "[" + GAP + ", " + GAP + ", " + GAP + "]";

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

  /** A reading not taken yet. */
  private void reading(String line, String comment) {
    line("  # " + line + (comment.isEmpty() ? "" : "   # " + comment));
  }

  private void head() {
    line(
        "# A survey to fill in. Its lines follow the worksheet, row by row, and so do their names.",
        "# For each reading that you took: remove the hash before it and put figures for the "
            + GAP
            + "s.",
        "# Read fewer times than there are gaps? Take the spare ones out: [612.0, 611.5]. What was",
        "# not read stays behind its hash. Write what was read, nothing corrected by hand.",
        "# Lengths in the unit below, angles in degrees. X forward, Y left, Z up; but out is",
        "# positive away from the car's middle on either side, and in positive toward it.",
        "",
        "format = 1",
        "title = \"survey of a car, not named yet\"",
        "# date = 2026-01-31",
        "units = \"" + units.symbol() + "\"",
        "sides = [\"left\", \"right\"]",
        "",
        "# Marks on the middle line: [fore, left, up]. B is where the lines cross. A mark left"
            + " behind",
        "# its hash has no known place: tapes from it are then ignored.",
        "station = [");
    for (Mark mark : Mark.values()) {
      String fore = mark.foreSign() == 0 ? "0.0" : (mark.foreSign() < 0 ? "-" : "") + GAP;
      String up = mark.isOnFloor() ? "0.0" : GAP;
      String line = "{ name = \"" + mark.key() + "\", at = [" + fore + ", 0.0, " + up + "] },";
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
    line(
        "",
        "# ---- " + side.word().toUpperCase(java.util.Locale.ROOT) + " CORNER",
        "[" + side.word() + "]");
    line(
        "# Plumb-bob plot: [fore of the wheel-centre line, out from the middle line].",
        "floor = [");
    for (Point point : Point.values()) {
      reading(
          "{ point = \"" + point.key() + "\", at = [" + GAP + ", " + GAP + "] },", named(point));
    }
    line("]", "# Above the level floor.", "height = [");
    for (Point point : Point.values()) {
      reading("{ point = \"" + point.key() + "\", up = " + GAP + " },", named(point));
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
    reading("tyre_radius = " + THRICE, "hub's middle to the floor");
    reading("camber = " + THRICE, "degrees, top outward positive");
    reading("toe = " + THRICE, "degrees, this wheel, toe-in positive");
  }

  private static String optional(boolean optional) {
    return optional ? ", only with a camber bolt" : "";
  }

  private static String named(Point point) {
    return point.sign() + " " + point.words() + optional(point.isOptional());
  }

  private static String tape(WorksheetPlan.Tape tape, String other) {
    return "{ from = \""
        + tape.from().key()
        + "\", to = \""
        + other
        + tape.to().key()
        + "\", length = "
        + THRICE
        + " },";
  }

  private void tower(Side side) {
    line("", "[" + side.word() + ".tower]");
    reading("sheet = " + TWICE, "its thickness");
    reading("opening = " + TWICE, "diameters");
    reading("mark = " + TWICE, "inner edge of the ring");
    reading("shaft = " + GAP, "the old strut rod's thread, for spans from it, inside or outside");
    reading("pivot_height = " + TWICE, "above the upper face");
    reading(
        "lean = { inboard = " + TWICE + ", rearward = " + TWICE + " }",
        "degrees, the second turned end for end");
    reading("crown = { across = " + GAP + ", rise = " + TWICE + " }", "not for a flat top");
    line("# Round holes: [fore, in] from the old strut rod centre. Give them names of your own.");
    line("landmark = [");
    for (String name : WorksheetPlan.landmarks()) {
      reading(
          "{ name = \"" + name + "\", at = [" + GAP + ", " + GAP + "], diameter = " + TWICE + " },",
          "");
    }
    line("]", "# inside: near edges; outside: far edges; centres. Keep the one that you ticked.");
    line("span = [");
    for (WorksheetPlan.Span span : WorksheetPlan.spans()) {
      reading(
          "{ from = \"" + span.from() + "\", to = \"" + span.to() + "\", inside = " + TWICE + " },",
          "or outside, or centres");
    }
    line("]", "# A straight seam or edge, by two points of it.", "straightedge = [");
    reading(
        "{ name = \"seam\", from = [" + GAP + ", " + GAP + "], to = [" + GAP + ", " + GAP + "] },",
        "");
    line("]");
  }
}
