package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.finding.Stage;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The job as a whole: both towers together, and what it leaves out. */
final class JobChecks {
  private static final String BOTH = "both";

  /**
   * Two towers of one car, each measured for itself, agree within this. Twice what is taken for a
   * difference of the towers: both measured lengths have their own error.
   */
  private static final double TWIN_MM = 4.0;

  /** Holes of one name whose diameters differ by more are not one and the same hole. */
  private static final double SAME_SIZE_MM = 1.0;

  private JobChecks() {}

  /** Findings of both sides, and of single ones, each with its owner. */
  static List<Finding> of(Job job, Stage stage) {
    Findings findings = new Findings(BOTH, Lengths.in(job.units()), stage);
    if (job.sides().size() == 2) {
      mirrored(job, findings);
    } else {
      SideJob only = job.sides().values().iterator().next();
      findings.add(
          only.side().word(),
          "one-tower",
          Severity.CAUTION,
          About.words("job", "job: sides"),
          "The job has one tower only: nothing is compared with the other, and a car with its two"
              + " towers worked differently pulls to one side. Measure and lay out both.");
    }
    for (SideJob side : job.sides().values()) {
      if (side.strut().isEmpty() && side.axis().isEmpty()) {
        findings.add(
            side.side().word(),
            "alignment-unknown",
            Severity.CAUTION,
            About.words("caster and camber", "job: strut, axis"),
            "Alignment not known: the job gives neither the strut's points nor a steering axis, so"
                + " nothing is said of what the work does to caster and camber.");
      }
    }
    if (job.load().isEmpty()) {
      findings.add(
          "load",
          Severity.CAUTION,
          About.words("bolts", "job: load"),
          "The job gives no load, so what the bolts would carry is not known. Give [load] its"
              + " figures.");
    }
    MarginChecks.run(job, findings);
    return findings.inOrder();
  }

  /** A tower measured with a sign slipped is its twin's mirror image: outward instead of inward. */
  private static void mirrored(Job job, Findings findings) {
    Tower left = job.sides().get(Side.LEFT).tower();
    Tower right = job.sides().get(Side.RIGHT).tower();
    List<Pair> pairs = new ArrayList<>();
    for (Landmark l : left.landmarks()) {
      right.landmarks().stream()
          .filter(r -> r.name().equals(l.name()))
          .filter(r -> Math.abs(r.diameterMm() - l.diameterMm()) <= SAME_SIZE_MM)
          .findFirst()
          .ifPresent(r -> pairs.add(new Pair(l, r)));
    }
    mirrored(pairs, "in", l -> l.at().y(), l -> l.at().x(), "in or out", findings);
    mirrored(pairs, "fore", l -> l.at().x(), l -> l.at().y(), "forward or rearward", findings);
  }

  /** One landmark on both towers. */
  private record Pair(Landmark left, Landmark right) {
    /** Whether it lies on the other side of a middle line, as far off it and as far along. */
    boolean mirrors(Function<Landmark, Double> across, Function<Landmark, Double> along) {
      return Math.abs(across.apply(left) + across.apply(right)) <= TWIN_MM
          && Math.abs(along.apply(left) - along.apply(right)) <= TWIN_MM;
    }

    /** Whether it lies so far off that line that the two signs cannot be measuring errors. */
    boolean tells(Function<Landmark, Double> across) {
      return Math.min(Math.abs(across.apply(left)), Math.abs(across.apply(right))) > TWIN_MM;
    }
  }

  private static void mirrored(
      List<Pair> pairs,
      String key,
      Function<Landmark, Double> across,
      Function<Landmark, Double> along,
      String words,
      Findings findings) {
    List<Pair> telling = pairs.stream().filter(p -> p.tells(across)).toList();
    if (telling.isEmpty() || !pairs.stream().allMatch(p -> p.mirrors(across, along))) {
      return;
    }
    String names = String.join(", ", telling.stream().map(p -> p.left().name()).toList());
    findings.add(
        "towers-mirrored",
        Severity.STOP,
        new About("left against right, " + names, telling.size(), 0, "", Sources.OWN_CHOICE),
        ("Of all landmarks the %s of one tower is minus that of the other: %s, a sign slip?"
                + " Figures mean the same on both sides: in is toward the middle of the car.")
            .formatted(key, words));
  }
}
