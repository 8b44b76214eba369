package dev.towerscribe.part;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Webs;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;

/** Judges the metal between all that is cut out of a part, and between that and its edge. */
final class WebCheck {
  private WebCheck() {}

  /**
   * Adds a finding for each web that is thin or missing.
   *
   * @param findings where to
   * @param check first words of the ids: "part", "slider" or "jig"
   * @param solid the part
   * @param names what is cut out, in the solid's order
   * @param leastMm width below which a web is thin
   * @return false if some of it touches or crosses
   */
  static boolean passes(
      Findings findings, String check, FlatSolid solid, List<String> names, double leastMm) {
    boolean whole = true;
    for (Webs.Web web : Webs.of(solid)) {
      if (Findings.passes(web.mm(), leastMm)) {
        continue;
      }
      String first = names.get(web.first());
      String other = web.second() == Webs.EDGE ? "outer edge" : names.get(web.second());
      String thing = Findings.slug(first) + "." + Findings.slug(other);
      String where = first + ", " + other;
      if (web.mm() <= Tolerances.SAME_POINT_MM) {
        whole = false;
        findings.add(
            check + "-clash." + thing,
            Severity.STOP,
            About.mm(where, web.mm(), 0, Sources.GEOMETRY),
            "%s and %s run into each other: no such part can be made. Move one."
                .formatted(first, other));
      } else {
        findings.add(
            check + "-web." + thing,
            Severity.CAUTION,
            About.mm(where, web.mm(), leastMm, Sources.PRACTICE),
            "%s of metal between %s and %s; at least %s is usual. Move one, or make one smaller."
                .formatted(
                    findings.lengths().with(web.mm()),
                    first,
                    other,
                    findings.lengths().with(leastMm)));
      }
    }
    return whole;
  }
}
