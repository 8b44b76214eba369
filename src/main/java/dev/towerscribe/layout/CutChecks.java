package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.finding.Spot.Mover;
import dev.towerscribe.geometry.Gap;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Lip;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The cut itself: that there is one, that it holds what moves, that it misses what it must. */
final class CutChecks {
  private CutChecks() {}

  static void run(
      SideLayout layout, Function<SideJob, Sweep> sweeps, Cuts cuts, Findings findings) {
    shape(layout, cuts, findings);
    lip(layout, cuts.finished(), findings);
    sweep(layout, sweeps, cuts.finished(), findings);
    keepOuts(layout, cuts.finished(), findings);
  }

  /** What the cut must miss, wherever the plate goes. */
  static void keepOuts(SideLayout layout, Region finished, Findings findings) {
    List<String> slugs = Slugs.keepOuts(layout.job().tower());
    for (int i = 0; i < slugs.size(); i++) {
      KeepOut keepOut = layout.job().tower().keepOuts().get(i);
      findings.atLeast(
          "cut-keep-out." + slugs.get(i),
          About.mm(
                  "final cut, " + keepOut.name(),
                  Margins.between(finished, keepOut.outline()),
                  keepOut.marginMm(),
                  "job: tower.keepout margin")
              .at(() -> smaller(layout, finished, keepOut, findings.lengths())),
          Severity.STOP,
          "between the finished opening and " + keepOut.name(),
          "Nothing may be placed there; keep more inside the mark");
    }
  }

  /** Where a keep-out is too near, and how much more must be kept inside the mark. */
  private static Spot smaller(
      SideLayout layout, Region finished, KeepOut keepOut, Lengths lengths) {
    Gap nearest = Spots.between(finished, keepOut.outline());
    Vec2 inward = Clearing.uphill(v -> finished.depth(nearest.from().plus(v)));
    CutRules rules = layout.job().cut();
    Optional<Vec2> move =
        Clearing.along(
            inward,
            mm -> {
              Cuts smaller = Cuts.of(layout.job().with(rules.keeping(mm)));
              return Margins.between(smaller.finished(), keepOut.outline());
            },
            keepOut.marginMm(),
            lengths.stepMm(Fineness.PLACE));
    return new Spot(nearest.from(), nearest.to(), Mover.CUT, move);
  }

  /** The cut lines, wherever the plate goes. */
  static void shape(SideLayout layout, Cuts cuts, Findings findings) {
    String source = "job: cut.keep, cut.rough, cut.corner";
    if (cuts.finalCut().isEmpty() || cuts.roughCut().isEmpty()) {
      findings.add(
          "cut-shape",
          Severity.STOP,
          new About("final and rough cut", cuts.finalCut().isEmpty() ? 0 : 1, 2, "", source)
              .impossibleAt(1),
          "Nothing is left inside the mark for both cuts: less keep, rough or corner, or measure"
              + " the mark again.");
      return;
    }
    if (cuts.pieces() > 1) {
      findings.add(
          "cut-shape",
          Severity.STOP,
          new About("final cut", cuts.pieces(), 1, "", source).impossibleAt(cuts.pieces()),
          "The cut falls into separate pieces: the mark is too narrow somewhere for the keep and"
              + " corner asked for. Measure it again.");
      return;
    }
    findings.add(
        "cut-shape",
        Severity.NOTE,
        new About("final and rough cut", 1, 1, "", source),
        "One closed line each, inside corners rounded.");
    double past = layout.finalCut().marginAround(layout.opening());
    if (past < -Tolerances.COMPUTED_MM) {
      findings.add(
          "cut-opening",
          Severity.CAUTION,
          About.mm("final cut, opening as found", past, 0, source).at(() -> past(layout)),
          ("The opening as found already reaches %s past the final cut: there is no metal to cut"
                  + " there.")
              .formatted(findings.lengths().with(-past)));
    }
  }

  private static Spot past(SideLayout layout) {
    Gap nearest = Spots.around(layout.finalCut(), layout.opening());
    return new Spot(nearest.from(), nearest.to(), Mover.CUT, Optional.empty());
  }

  /** A lip goes with the waste where the cut goes round it; else part of it stays. */
  private static void lip(SideLayout layout, Region finished, Findings findings) {
    Optional<Lip> lip = layout.job().tower().lip();
    if (lip.isEmpty()) {
      return;
    }
    double past = finished.marginAround(Region.inside(lip.get().flat()));
    boolean whole = Findings.passes(past, 0);
    findings.add(
        "cut-lip",
        whole ? Severity.NOTE : Severity.CAUTION,
        About.mm("finished opening, lip", past, 0, "job: tower.lip"),
        whole
            ? "The lip goes with the waste: the cut runs in flat metal all round."
            : ("The cut leaves up to %s of the lip and its bend: saw and file run in curved metal"
                    + " there, and the template does not lie on it. Keep less, so that the cut"
                    + " goes round the lip, or true it up by hand.")
                .formatted(findings.lengths().with(-past)));
  }

  private static void sweep(
      SideLayout layout, Function<SideJob, Sweep> sweeps, Region finished, Findings findings) {
    Sweep sweep = layout.sweep();
    double clearance = layout.job().plate().movingClearanceMm();
    boolean atRest = sweep.poses() == 0;
    findings.atLeast(
        "sweep",
        About.mm(
                "strut rod and spacer, opening",
                Margins.aroundSweep(sweep, finished, clearance),
                clearance,
                "job: plate.moving clearance")
            .impossibleBelow(0)
            .at(() -> touching(layout, sweeps, finished, findings.lengths())),
        Severity.STOP,
        "between what moves with the bearing and the finished opening, over the whole slot"
            + (atRest ? "" : ", travel and steer"),
        "The strut rod would touch; "
            + findings.advise(
                "shift the plate, keep less, or shorten the slot",
                "bar that end of the slot, or ask a body shop what more can be cut"));
    if (!sweep.leanKnown()) {
      findings.add(
          "sweep-lean",
          Severity.CAUTION,
          About.words("strut rod and spacer", Sources.PRACTICE),
          "The strut's points are not given, so the strut rod was taken square to the tower top."
              + " Try the whole slot by hand before the final cut.");
      return;
    }
    findings.add(
        "sweep-lean",
        Severity.NOTE,
        new About(
            "strut rod and spacer", sweep.slantDegrees(), 45, "deg", "strut points of the job"),
        atRest
            ? "The strut rod's lean at rest is included."
            : "The strut rod's lean is included over the whole slot, from full droop to full bump"
                + " and from lock to lock.");
  }

  private static Spot touching(
      SideLayout layout, Function<SideJob, Sweep> sweeps, Region finished, Lengths lengths) {
    SideJob job = layout.job();
    double clearance = job.plate().movingClearanceMm();
    // The clearance is part of the region, not of the strut rod.
    return Spots.of(
        Spots.around(finished, layout.sweep().region()),
        -clearance,
        Mover.PLATE,
        v -> {
          Sweep there = sweeps.apply(job.with(job.mount().shifted(v)));
          return Margins.aroundSweep(there, finished, clearance);
        },
        clearance,
        lengths);
  }
}
