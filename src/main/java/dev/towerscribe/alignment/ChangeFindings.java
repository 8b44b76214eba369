package dev.towerscribe.alignment;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Tolerances;
import java.util.Optional;

/** What the work must not take away: caster, and the wheel's way down. */
final class ChangeFindings {
  /** Less droop than this and a wheel leaves the road on a crest. Common practice, no source. */
  private static final double LITTLE_DROOP_MM = 20.0;

  private ChangeFindings() {}

  /** Caster at the chosen setting against that before the work. */
  static void caster(Reading before, Reading at, Findings findings) {
    double change = at.caster().degrees() - before.caster().degrees();
    boolean less = change < -AlignmentTargets.PASS_DEG;
    findings.add(
        "caster-change",
        less ? Severity.STOP : Severity.NOTE,
        About.degrees(
            "caster at the chosen setting, before the work",
            at.caster().radians(),
            before.caster().radians(),
            "the work is to give caster"),
        less
            ? "Caster falls from %s to %s. %s"
                .formatted(
                    Lengths.withDegrees(before.caster()),
                    Lengths.withDegrees(at.caster()),
                    findings.advise(
                        "More rotation, more rearward offset or another setting gives more.",
                        "Another setting may give more."))
            : "Caster does not fall by the work.");
  }

  /** What is left of the wheel's way down until the damper is drawn out. */
  static void droop(StrutPoints.Limits limits, Optional<DamperTravel> travel, Findings findings) {
    String source =
        limits.droopStated() ? "job: strut.droop" : "strut.droop, assumed as the job leaves it out";
    if (travel.isEmpty()) {
      findings.add(
          "damper-droop",
          Severity.CAUTION,
          About.words("damper", source),
          "Not known how much droop is left: the linkage does not reach the travel that the job"
              + " gives.");
      return;
    }
    double droop = travel.get().droopMm();
    boolean none = droop < Tolerances.COMPUTED_MM;
    boolean little = droop < LITTLE_DROOP_MM - Tolerances.COMPUTED_MM;
    String thinner =
        " Less height under the bearing, a lower ride height or a longer damper gives some back.";
    findings.add(
        "damper-droop",
        none && limits.droopStated() ? Severity.STOP : little ? Severity.CAUTION : Severity.NOTE,
        About.mm(
            "damper, droop left",
            droop,
            none ? 0 : LITTLE_DROOP_MM,
            none ? source : Sources.PRACTICE + "; " + source),
        none
            ? "At ride height the damper is drawn out as far as it was at full droop before the"
                + " work: the wheel cannot go down."
                + thinner
            : little
                ? "The damper is soon drawn out, and the wheel leaves the road on a crest."
                    + thinner
                : "The damper still lets the wheel go down.");
  }
}
