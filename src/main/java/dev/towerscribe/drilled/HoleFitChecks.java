package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.DrilledSide.EdgeMetal;
import dev.towerscribe.drilled.HoleNetwork.Found;
import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.model.Fastening;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.Thread;
import dev.towerscribe.quantity.Lengths;
import java.util.Optional;

/** What is to be said of the holes' sizes, of the plate's fit, and of the metal left. */
final class HoleFitChecks {
  /** A difference that figures of two decimals show as none. */
  private static final double AS_DRAWN_MM = 0.005;

  private final DrilledSide side;
  private final Findings findings;
  private final Lengths lengths;

  HoleFitChecks(DrilledSide side, Findings findings) {
    this.side = side;
    this.findings = findings;
    this.lengths = findings.lengths();
  }

  void run() {
    for (PlacedHole hole : side.planned().holes()) {
      side.readings().diameter(hole.name()).ifPresent(read -> size(hole, read));
    }
    side.fit().ifPresent(this::fit);
    side.edges().forEach(this::edge);
  }

  private void size(PlacedHole hole, Repeated read) {
    Thread thread = hole.bolt().thread();
    // Readings across a hole's far and near edges say something of its size, too.
    Optional<Found> found = side.network().found(hole.name());
    double mm = found.map(Found::diameterMm).orElse(read.mean());
    double sd = found.map(Found::diameterSdMm).orElse(read.meanSd());
    String wide = "Hole %s is %s wide".formatted(hole.name(), lengths.with(mm));
    if (mm < thread.nominalMm()) {
      String say = "%s: its bolt, %s, does not go in. Drill it to %s.";
      size(
          hole,
          Severity.STOP,
          mm,
          thread.nominalMm(),
          "nominal diameter of " + thread.name(),
          say.formatted(wide, lengths.with(thread.nominalMm()), lengths.with(hole.diameterMm())));
    } else if (mm > thread.coarseMm() + 2 * sd) {
      String say =
          "%s; the coarse series ends at %s. The washer bears on less metal: take a thick, wide"
              + " one, or repair the hole.";
      String source = thread.holeSource(Fit.COARSE);
      double limit = thread.coarseMm();
      size(hole, Severity.CAUTION, mm, limit, source, say.formatted(wide, lengths.with(limit)));
    } else {
      double off = mm - hole.diameterMm();
      String drawn =
          Math.abs(off) < AS_DRAWN_MM
              ? "as drawn"
              : "%s %s than drawn"
                  .formatted(lengths.with(Math.abs(off)), off < 0 ? "less" : "more");
      String source = thread.holeSource(side.planned().job().holes().fit());
      String say = "%s, %s.".formatted(wide, drawn);
      size(hole, Severity.NOTE, mm, hole.diameterMm(), source, say);
    }
  }

  private void size(
      PlacedHole hole, Severity severity, double mm, double limitMm, String source, String say) {
    findings.add(
        "drilled-size." + Findings.slug(hole.name()),
        severity,
        About.mm("hole " + hole.name(), mm, limitMm, source),
        say);
  }

  private void fit(PlateFit fit) {
    PlateFitSolver mating = fit.mating();
    double slack = mating.slackMm();
    boolean on = mating.blocked().isEmpty() && slack >= 0;
    boolean close = on && fit.verdict() == PlateFit.Verdict.CLOSE;
    boolean fixed = side.planned().job().plate().make().fastening().value() == Fastening.FIXED;
    findings.add(
        "drilled-fit",
        !on ? Severity.STOP : close ? Severity.CAUTION : Severity.NOTE,
        About.mm(
            "plate and its bolts",
            slack,
            0,
            fixed
                ? "hole wider than bolt, studs fixed in the plate"
                : "holes of tower and plate wider than bolt"),
        fitWords(fit, close));
  }

  private String fitWords(PlateFit fit, boolean close) {
    PlateFitSolver mating = fit.mating();
    if (!mating.blocked().isEmpty()) {
      return ("The plate does not go on: no bolt goes through at %s, whose hole in tower or plate"
              + " is narrower than it.%s")
          .formatted(String.join(", ", mating.blocked()), remedy(fit));
    }
    String sure =
        lengths.with(Math.abs(mating.slackMm()))
            + Lengths.likelyWithin(lengths.with(fit.slackSdMm()));
    if (close) {
      return ("The plate goes on with %s of clearance left, less than the readings are sure to."
              + " Offer it up before anything else.")
          .formatted(sure);
    }
    String tight = String.join(", ", mating.tight());
    return mating.slackMm() < 0
        ? "By the readings the plate does not go on: %s too little play at %s.%s"
            .formatted(sure, tight, remedy(fit))
        : "The plate goes on with all its bolts, %s of clearance left at %s."
            .formatted(sure, tight);
  }

  private String remedy(PlateFit fit) {
    String alone =
        " Least work: open hole %s to %s at the very least, and a little more for the uncertainty"
            + " of the readings.%s";
    String all =
        " No one hole alone helps: opened all alike, every hole needs %s more, and a little for the"
            + " uncertainty of the readings.";
    Optional<Enlargement> by = fit.enlargement();
    return by.flatMap(Enlargement::best)
        .map(one -> alone.formatted(one.name(), with(one.diameterMm()), afterwards(one)))
        .or(
            () ->
                by.filter(e -> e.allByMm().isPresent()).map(e -> all.formatted(with(e.allByMm()))))
        .orElse(" The plate's own holes are too small for its bolts.");
  }

  private String with(Optional<Double> mm) {
    return lengths.with(mm.orElseThrow());
  }

  /** A hole that is opened comes nearer to the edge, and the rule may want more. */
  private String afterwards(Enlargement.One one) {
    double mm = one.diameterMm().orElseThrow();
    Optional<EdgeMetal> edge =
        side.edges().stream().filter(e -> e.hole().equals(one.name())).findFirst();
    Optional<PlacedHole> hole =
        side.planned().holes().stream().filter(h -> h.name().equals(one.name())).findFirst();
    Optional<Double> now = edge.flatMap(e -> e.toCut().map(Repeated::mean).or(e::toPlannedMm));
    if (now.isEmpty() || hole.isEmpty()) {
      return "";
    }
    double left = now.get() - one.byMm().orElseThrow() / 2;
    double needed =
        side.planned().job().holes().edgeRule().edgeMm(hole.get().bolt().thread().nominalMm(), mm)
            - mm / 2;
    return left < needed
        ? " But that leaves %s of metal to the cut, less than the %s that the edge rule needs."
            .formatted(lengths.with(left), lengths.with(needed))
        : "";
  }

  /** What was read of the edge as cut; the planned edge is judged with the plan's own checks. */
  private void edge(EdgeMetal edge) {
    if (edge.toCut().isEmpty()) {
      return;
    }
    Repeated read = edge.toCut().get();
    double metal = read.mean();
    boolean fails = metal < edge.limitMm();
    boolean close = !fails && metal < edge.limitMm() + 2 * read.meanSd();
    findings.add(
        "drilled-edge-read." + Findings.slug(edge.hole()),
        fails ? Severity.STOP : close ? Severity.CAUTION : Severity.NOTE,
        About.mm(
                "hole " + edge.hole() + ", edge as cut",
                metal,
                edge.limitMm(),
                edge.source() + ", less the hole's radius")
            .impossibleAt(0),
        "%s of metal from the edge of hole %s to the edge as cut; %s %s%s"
            .formatted(
                lengths.with(metal),
                edge.hole(),
                fails ? "needs" : "at least",
                lengths.with(edge.limitMm()),
                fails
                    ? ". Metal cannot be put back: have the tower reinforced there by a welder who"
                        + " knows the car's structure, or take another plate."
                    : close ? ", within the uncertainty of the reading." : "."));
  }
}
