package dev.towerscribe.drilled;

import dev.towerscribe.drilled.DrilledFindings.What;
import dev.towerscribe.drilled.DrilledSide.EdgeMetal;
import dev.towerscribe.drilled.Network.Found;
import dev.towerscribe.drilled.SideReadings.HoleSize;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.model.Fastening;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.HoleRules;
import dev.towerscribe.model.Thread;
import java.util.Optional;

/** What is to be said of the holes' sizes, of the plate's fit, and of the metal left. */
final class HoleFitChecks {
  private final DrilledSide side;
  private final DrilledFindings findings;

  /** A difference that figures of two decimals show as none. */
  private static final double AS_DRAWN_MM = 0.005;

  HoleFitChecks(DrilledSide side, DrilledFindings findings) {
    this.side = side;
    this.findings = findings;
  }

  void run() {
    for (PlacedHole hole : side.planned().holes()) {
      side.readings().holes().stream()
          .filter(h -> h.name().equals(hole.name()))
          .findFirst()
          .ifPresent(h -> size(hole, h));
    }
    side.fit().ifPresent(this::fit);
    side.edges().forEach(this::edge);
  }

  private void size(PlacedHole hole, HoleSize read) {
    Thread thread = hole.bolt().thread();
    // Readings across a hole's far and near edges say something of its size, too.
    Optional<Found> found =
        side.network().holes().stream().filter(f -> f.name().equals(hole.name())).findFirst();
    double mm = found.map(Found::diameterMm).orElse(read.diameter().meanMm());
    double sd = found.map(Found::diameterSdMm).orElse(read.diameter().plusMinusMm());
    String name = hole.name();
    String check = "size." + DrilledFindings.slug(name);
    String where = "hole " + name;
    HoleRules rules = side.planned().job().holes();
    if (mm < thread.nominalMm()) {
      findings.add(
          What.length(check, where, mm, thread.nominalMm(), "nominal diameter of " + thread.name()),
          Severity.STOP,
          "Hole "
              + name
              + " is "
              + findings.length(mm)
              + " wide: its bolt, "
              + findings.length(thread.nominalMm())
              + ", does not go in. Drill it to "
              + findings.length(hole.diameterMm())
              + ".");
    } else if (mm > thread.coarseMm() + 2 * sd) {
      findings.add(
          What.length(check, where, mm, thread.coarseMm(), thread.holeSource(Fit.COARSE)),
          Severity.CAUTION,
          "Hole "
              + name
              + " is "
              + findings.length(mm)
              + " wide; the coarse series ends at "
              + findings.length(thread.coarseMm())
              + ". The washer bears on less metal: take a thick, wide one, or repair the hole.");
    } else {
      double off = mm - hole.diameterMm();
      findings.add(
          What.length(check, where, mm, hole.diameterMm(), thread.holeSource(rules.fit())),
          Severity.NOTE,
          "Hole "
              + name
              + " is "
              + findings.length(mm)
              + " wide, "
              + (Math.abs(off) < AS_DRAWN_MM
                  ? "as drawn."
                  : findings.length(Math.abs(off))
                      + (off < 0 ? " less" : " more")
                      + " than drawn."));
    }
  }

  private void fit(PlateFit fit) {
    double slack = fit.mating().slackMm();
    boolean fixed = side.planned().job().plate().make().fastening().value() == Fastening.FIXED;
    String source =
        fixed
            ? "hole wider than bolt, studs fixed in the plate"
            : "holes of tower and plate wider than bolt";
    What what = What.length("fit", "plate and its bolts", slack, 0, source);
    String sure = " (+/- " + findings.length(fit.slackSdMm()) + ")";
    if (!fit.mating().blocked().isEmpty()) {
      findings.add(
          what,
          Severity.STOP,
          "The plate does not go on: no bolt goes through at "
              + String.join(", ", fit.mating().blocked())
              + ", whose hole in tower or plate is narrower than it."
              + remedy(fit));
    } else if (slack < 0) {
      findings.add(
          what,
          Severity.STOP,
          "By the readings the plate does not go on: "
              + findings.length(-slack)
              + sure
              + " too little play at "
              + String.join(", ", fit.mating().tight())
              + "."
              + remedy(fit));
    } else if (fit.verdict() == PlateFit.Verdict.CLOSE) {
      findings.add(
          what,
          Severity.CAUTION,
          "The plate goes on with "
              + findings.length(slack)
              + sure
              + " to spare, less than the readings are sure to. Offer it up before anything else.");
    } else {
      findings.add(
          what,
          Severity.NOTE,
          "The plate goes on with all its bolts, "
              + findings.length(slack)
              + sure
              + " to spare at "
              + String.join(", ", fit.mating().tight())
              + ".");
    }
  }

  private String remedy(PlateFit fit) {
    Optional<Enlargement.One> one = fit.enlargement().flatMap(Enlargement::best);
    if (one.isPresent()) {
      return " Least work: open hole "
          + one.get().name()
          + " to "
          + findings.length(one.get().diameterMm().orElseThrow())
          + " at the very least, and a little more for the doubt of the readings."
          + afterwards(one.get());
    }
    return fit.enlargement()
        .flatMap(Enlargement::allByMm)
        .map(
            mm ->
                " No one hole alone helps: opened all alike, every hole needs "
                    + findings.length(mm)
                    + " more, and a little for the doubt of the readings.")
        .orElse(" The plate's own holes are too small for its bolts.");
  }

  /** A hole that is opened comes nearer to the edge, and the rule may want more. */
  private String afterwards(Enlargement.One one) {
    double mm = one.diameterMm().orElseThrow();
    Optional<EdgeMetal> edge =
        side.edges().stream().filter(e -> e.hole().equals(one.name())).findFirst();
    Optional<PlacedHole> hole =
        side.planned().holes().stream().filter(h -> h.name().equals(one.name())).findFirst();
    Optional<Double> now = edge.flatMap(e -> e.toCut().map(Repeated::meanMm).or(e::toPlannedMm));
    if (now.isEmpty() || hole.isEmpty()) {
      return "";
    }
    double left = now.get() - one.byMm().orElseThrow() / 2;
    double needed =
        side.planned().job().holes().edgeRule().edgeMm(hole.get().bolt().thread().nominalMm(), mm)
            - mm / 2;
    return left < needed
        ? " But that leaves "
            + findings.length(left)
            + " of metal to the cut, less than the "
            + findings.length(needed)
            + " that the edge rule needs."
        : "";
  }

  /** What was read of the edge as cut; the planned edge is judged with the plan's own checks. */
  private void edge(EdgeMetal edge) {
    if (edge.toCut().isEmpty()) {
      return;
    }
    Repeated read = edge.toCut().get();
    double metal = read.meanMm();
    boolean fails = metal < edge.limitMm();
    boolean close = !fails && metal < edge.limitMm() + 2 * read.plusMinusMm();
    findings.add(
        What.length(
            "edge-read." + DrilledFindings.slug(edge.hole()),
            "hole " + edge.hole() + ", edge as cut",
            metal,
            edge.limitMm(),
            side.planned().job().holes().edgeRule().source() + ", less the hole's radius"),
        fails ? Severity.STOP : close ? Severity.CAUTION : Severity.NOTE,
        findings.length(metal)
            + " of metal from the edge of hole "
            + edge.hole()
            + " to the edge as cut; "
            + (fails ? "needs " : "at least ")
            + findings.length(edge.limitMm())
            + (fails
                ? ". Nothing puts metal back: have the tower reinforced there by a welder who knows"
                    + " the car's structure, or take another plate."
                : close ? ", within the doubt of the reading." : "."));
  }
}
