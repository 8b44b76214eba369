package dev.towerscribe.cli;

import dev.towerscribe.drilled.Readings.Uncertainty;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.BayUncertainty;
import dev.towerscribe.record.ReadingStage;
import dev.towerscribe.survey.JobTables;
import java.util.List;

/**
 * Files of readings to fill in for one job: its own holes, landmarks and sides stand in them, and a
 * blank for each reading. What may be left out stands behind a hash.
 */
final class ReadingsStartText {
  private static final String HEAD =
      """
      # Put a figure without quotes, or words in them, for each "___": while one is left the
      # file is refused, and all are named. What was not read is deleted or stays behind its
      # hash. Lengths are in the unit below, angles in degrees; "14 mm" or "0.551 in", in quotes,
      # is in its own unit.

      format = 1
      """;

  private final Job job;
  private final StringBuilder text = new StringBuilder();

  private ReadingsStartText(Job job) {
    this.job = job;
  }

  /**
   * A file for {@code drilled}.
   *
   * @param job the job that the holes were drilled by
   * @return every hole, every pair of holes and every hole with every landmark, a blank for each
   */
  static String ofHoles(Job job) {
    ReadingsStartText file = new ReadingsStartText(job);
    file.line("# Caliper readings of the drilled holes of a car, to fill in.");
    file.text.append(HEAD);
    file.line("title = " + JobTables.quoted(job.title()));
    file.line("# date = 2026-01-31            # when they were taken");
    file.line("units = \"%s\"".formatted(job.units().symbol()), "");
    file.line("# How far one reading may be off, one standard deviation: yours, or these count.");
    file.line("# [uncertainty]");
    Uncertainty usual = Uncertainty.ASSUMED;
    file.usual("caliper", usual.caliperMm().value(), "between two edges, or across a hole");
    file.usual("landmark", usual.landmarkMm().value(), "of each landmark's place in the job");
    file.usual("edge", usual.edgeMm().value(), "from a hole's edge to the edge of the cut");
    job.sides().values().forEach(file::holes);
    return file.text.toString();
  }

  /**
   * A file for {@code record}.
   *
   * @param job the job that the car was worked on by
   * @return each wheel before and after, a blank for each figure of the usual ones
   */
  static String ofVisit(Job job) {
    ReadingsStartText file = new ReadingsStartText(job);
    file.line("# A visit to the alignment bay, to fill in: " + job.title() + ".");
    file.text.append(HEAD);
    file.line("date = \"___\"                 # the visit's day: 2026-01-31");
    file.line("visit = \"___\"                # any words, to recognise it by");
    file.line("# bay = \"___\"");
    file.line("units = \"%s\"".formatted(job.units().symbol()), "");
    file.line(
        "# How far the bay's readings may be off, one standard deviation: yours, or these count.");
    file.line("# [uncertainty]");
    for (BayFigure figure : BayFigure.values()) {
      double usual = BayUncertainty.USUAL.of(figure).degrees();
      file.line("# %s = %s".formatted(figure.word(), Numbers.pointed(usual, 3)));
    }
    file.usual("ride", BayUncertainty.USUAL.rideMm(), "of the ride height");
    file.line(
        "",
        "# Caster positive when the axis's top is rearward, camber when the wheel's top leans"
            + " outward,",
        "# toe of this wheel alone and toe-in, inclination when the axis's top is inboard.");
    job.sides().values().forEach(file::wheel);
    return file.text.toString();
  }

  private void line(String... lines) {
    for (String line : lines) {
      text.append(line).append('\n');
    }
  }

  private void usual(String key, double mm, String words) {
    line("# %s = \"%s mm\"   # %s".formatted(key, Numbers.plain(mm, 3), words));
  }

  private static String named(String name) {
    return JobTables.quoted(name);
  }

  // Holes.

  private void holes(SideJob side) {
    List<String> bolts = side.plate().bolts().stream().map(Bolt::name).toList();
    // A landmark that is called as a hole cannot be told from it in a span.
    List<String> landmarks =
        side.tower().landmarks().stream()
            .map(Landmark::name)
            .filter(name -> !bolts.contains(name))
            .toList();
    line("", "[%s]".formatted(side.side().word()));
    line(
        "# Each hole as drilled, by the name of its bolt, across two ways: one that wandered"
            + " shows.");
    line("hole = [");
    bolts.forEach(b -> line("  { name = %s, diameter = [\"___\", \"___\"] },".formatted(named(b))));
    line("]");
    line(
        "# inside: between the NEAR edges, outside jaws, one in each hole; outside: across the"
            + " FAR");
    line("# edges, inside jaws. Holes to two landmarks each tie the pattern to the tower.");
    line("span = [");
    for (int i = 0; i < bolts.size(); i++) {
      for (int j = i + 1; j < bolts.size(); j++) {
        span(bolts.get(i), bolts.get(j), "inside");
        span(bolts.get(i), bolts.get(j), "outside");
      }
    }
    for (String bolt : bolts) {
      landmarks.forEach(landmark -> span(bolt, landmark, "inside"));
    }
    line(
        "]",
        "# The least metal from a hole's edge to the edge of the opening as you cut it.",
        "edge = [");
    bolts.forEach(b -> line("  # { hole = %s, gap = \"___\" },".formatted(named(b))));
    line("]");
  }

  private void span(String from, String to, String key) {
    line("  { from = %s, to = %s, %s = \"___\" },".formatted(named(from), named(to), key));
  }

  // Wheels.

  private void wheel(SideJob job) {
    String side = job.side().word();
    line("", "# The car as it came; not read: delete these lines.");
    line("[%s.%s]".formatted(side, ReadingStage.BEFORE.word()));
    figures();
    line("", "# The car as it left.", "[%s.%s]".formatted(side, ReadingStage.AFTER.word()));
    figures();
    if (job.plate().slotHasLength()) {
      String planned = Lengths.in(this.job.units()).with(job.mount().settingMm());
      line("setting = \"___\"   # where in the slot the bearing was left; planned: " + planned);
    }
    if (job.strut().flatMap(StrutPoints::knuckleBolt).isPresent()) {
      line("knuckle = \"___\"   # camber taken by the camber bolt; 0 if it was left alone");
    }
  }

  private void figures() {
    for (BayFigure figure : BayFigure.values()) {
      boolean usual = figure != BayFigure.INCLINATION;
      line((usual ? "" : "# ") + figure.word() + " = \"___\"");
    }
    line("# ride = \"___\"      # wheel centre up from where the job's points were measured");
  }
}
