package dev.towerscribe.cli;

import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.Curves;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.quantity.Numbers;
import java.util.List;

/**
 * The curves of an alignment as comma separated values (RFC 4180): a heading, then a line for each
 * point that the linkage reaches. Degrees and millimetres, a point for the decimals in every
 * locale.
 */
final class AlignmentCsv {
  /** The heading. */
  static final String HEAD =
      "side,state,curve,travel_mm,steer_deg,toe_deg,camber_deg,caster_deg,inclination_deg,"
          + "damper_mm";

  /** A millionth of a degree or mm: far below what is measured, enough to draw slopes from. */
  private static final int DECIMALS = 6;

  private static final String END = "\r\n";

  private AlignmentCsv() {}

  static String of(JobAlignment alignment) {
    StringBuilder text = new StringBuilder(HEAD).append(END);
    for (SideAlignment side : alignment.sides().values()) {
      side.strut().flatMap(s -> s.before()).ifPresent(c -> curves(text, side, "before", c));
      side.strut().flatMap(s -> s.at()).ifPresent(c -> curves(text, side, "at", c));
    }
    return text.toString();
  }

  private static void curves(StringBuilder text, SideAlignment side, String state, Curves curves) {
    String head = side.side().word() + "," + state + ",";
    points(text, head + "travel,", true, curves.travel());
    points(text, head + "steer,", false, curves.steer());
  }

  private static void points(
      StringBuilder text, String head, boolean travel, List<Bay.Point> curve) {
    for (Bay.Point point : curve) {
      if (point.reached()) {
        Pose pose = point.pose();
        String input = Numbers.plain(point.input(), DECIMALS);
        text.append(head).append(travel ? input + ",0" : "0," + input);
        number(text, Math.toDegrees(pose.toe()));
        number(text, Math.toDegrees(pose.camber()));
        number(text, Math.toDegrees(pose.caster()));
        number(text, Math.toDegrees(pose.inclination()));
        number(text, pose.damperMm());
        text.append(END);
      }
    }
  }

  private static void number(StringBuilder text, double value) {
    text.append(',').append(Numbers.fixed(value, DECIMALS));
  }
}
