package dev.towerscribe.strength;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Stage;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Job;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.List;

/** What the advisory figures have to say among a job's findings. */
public final class StrengthFindings {
  /** First part of the ids, after the side. */
  public static final String CHECK = "bolt-use";

  private static final double ALL_PERCENT = 100.0;

  private StrengthFindings() {}

  /**
   * Each bolt that would use more than its proof load; the most used one where none does.
   *
   * @param tower the tower, laid out
   * @param job its job
   * @param stage how far the work has come: what findings advise
   * @return findings, none where the job gives no load
   */
  public static List<Finding> of(SideLayout tower, Job job, Stage stage) {
    Findings findings = new Findings(tower.side().word(), Lengths.in(job.units()), stage);
    job.load()
        .ifPresent(
            load -> bolts(Strength.of(tower, StrengthInput.of(tower.job(), load)), findings));
    return findings.inOrder();
  }

  private static void bolts(StrengthReport report, Findings findings) {
    List<BoltFigures> past =
        report.bolts().stream().filter(b -> b.use().filter(use -> use > 1).isPresent()).toList();
    past.forEach(b -> use(b, Severity.STOP, findings));
    List<String> unknown =
        report.bolts().stream().filter(b -> b.use().isEmpty()).map(BoltFigures::name).toList();
    if (!unknown.isEmpty()) {
      findings.add(
          CHECK,
          Severity.CAUTION,
          About.words("bolts " + String.join(", ", unknown), BoltStrength.SOURCE),
          "No published proof load is held for these bolts: what they use of it under the load that"
              + " the job gives is not known. Ask the plate's maker.");
    } else if (past.isEmpty()) {
      report.mostUsed().ifPresent(b -> use(b, Severity.NOTE, findings));
    }
  }

  private static void use(BoltFigures bolt, Severity severity, Findings findings) {
    double percent = ALL_PERCENT * bolt.use().orElseThrow();
    boolean stop = severity == Severity.STOP;
    findings.add(
        CHECK + "." + bolt.name(),
        severity,
        new About(
            "bolt " + bolt.name() + ", load that the job gives",
            percent,
            ALL_PERCENT,
            "%",
            BoltStrength.SOURCE),
        "Bolt %s would use %s %% of its proof load, pull and shear together%s"
            .formatted(
                bolt.name(),
                Numbers.fixed(percent, 0),
                stop
                    ? ". Take larger bolts, a higher class or a plate with more of them, and look"
                        + " at the load again."
                    : ", the most of all bolts."));
  }
}
