package dev.towerscribe.report.csv;

import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.Curves;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The curves of an alignment as comma separated values (RFC 4180): a heading, then a line for each
 * point that the linkage reaches. Degrees and millimetres, a point for the decimals in every
 * locale.
 */
public final class AlignmentCsv {
  /** The heading. */
  static final String HEAD =
      "side,state,curve,travel_mm,steer_deg,toe_deg,camber_deg,caster_deg,inclination_deg,"
          + "damper_mm";

  /** A millionth of a degree or mm: far below what is measured, enough to draw slopes from. */
  private static final int DECIMALS = 6;

  private final Csv csv = new Csv();

  private AlignmentCsv() {}

  /**
   * Writes the curves.
   *
   * @param alignment any; a side without strut points has none
   * @return the heading, and a line for each point
   */
  public static String of(JobAlignment alignment) {
    AlignmentCsv all = new AlignmentCsv();
    all.csv.row(List.of(HEAD.split(",")));
    for (SideAlignment side : alignment.sides().values()) {
      side.strut().flatMap(s -> s.before()).ifPresent(c -> all.curves(side, "before", c));
      side.strut().flatMap(s -> s.at()).ifPresent(c -> all.curves(side, "at", c));
    }
    return all.csv.toString();
  }

  private void curves(SideAlignment side, String state, Curves curves) {
    String word = side.side().word();
    for (Bay.Point p : curves.travel()) {
      point(p, word, state, "travel", input(p), "0");
    }
    for (Bay.Point p : curves.steer()) {
      point(p, word, state, "steer", "0", input(p));
    }
  }

  private static String input(Bay.Point point) {
    return Numbers.plain(point.input(), DECIMALS);
  }

  private void point(Bay.Point point, String... before) {
    if (point.reached()) {
      Pose pose = point.pose();
      List<String> cells = new ArrayList<>(List.of(before));
      cells.add(degrees(pose.toe()));
      cells.add(degrees(pose.camber()));
      cells.add(degrees(pose.caster()));
      cells.add(degrees(pose.inclination()));
      cells.add(Numbers.fixed(pose.damperMm(), DECIMALS));
      csv.row(cells);
    }
  }

  private static String degrees(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), DECIMALS);
  }
}
