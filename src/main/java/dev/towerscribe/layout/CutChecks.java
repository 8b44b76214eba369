package dev.towerscribe.layout;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.layout.Findings.Figure;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Plate;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;

/** The cut itself: that there is one, that it holds what moves, that it misses what it must. */
final class CutChecks {
  private CutChecks() {}

  static void run(SideLayout layout, Cuts cuts, Findings findings) {
    shape(layout, cuts, findings);
    sweep(layout, cuts.finished(), findings);
    keepOuts(layout, cuts.finished(), findings);
  }

  /** What the cut must miss, wherever the plate goes. */
  static void keepOuts(SideLayout layout, Region finished, Findings findings) {
    List<String> slugs = Findings.keepOuts(layout.job().tower());
    for (int i = 0; i < slugs.size(); i++) {
      KeepOut keepOut = layout.job().tower().keepOuts().get(i);
      findings.atLeast(
          new Figure(
              "cut-keep-out." + slugs.get(i),
              "final cut, " + keepOut.name(),
              gapBetween(finished, keepOut.outline()),
              keepOut.marginMm(),
              "job: tower.keepout margin"),
          Severity.STOP,
          "between the finished opening and " + keepOut.name(),
          "Nothing may go there; keep more inside the mark");
    }
  }

  /** The cut lines, wherever the plate goes. */
  static void shape(SideLayout layout, Cuts cuts, Findings findings) {
    boolean empty = cuts.finalCut().isEmpty() || cuts.roughCut().isEmpty();
    String source = "job: cut.keep, cut.rough, cut.corner";
    if (empty) {
      findings.add(
          "cut-shape",
          Severity.STOP,
          "final and rough cut",
          cuts.finalCut().isEmpty() ? 0 : 1,
          2,
          "",
          source,
          "Nothing is left inside the mark for both cuts: less keep, rough or corner, or measure"
              + " the mark again.");
    } else if (cuts.pieces() > 1) {
      findings.add(
          "cut-shape",
          Severity.STOP,
          "final cut",
          cuts.pieces(),
          1,
          "",
          source,
          "The cut falls into separate pieces: the mark is too narrow somewhere for the keep and"
              + " corner asked for. Measure it again.");
    } else {
      findings.add(
          "cut-shape",
          Severity.NOTE,
          "final and rough cut",
          1,
          1,
          "",
          source,
          "One closed line each, inside corners rounded.");
      double past = layout.finalCut().marginAround(layout.opening());
      if (past < -Findings.PASS_MM) {
        findings.add(
            new Figure("cut-opening", "final cut, opening as found", past, 0, source),
            Severity.CAUTION,
            "The opening as found already reaches "
                + findings.length(-past)
                + " past the final cut: there is no metal to cut there.");
      }
    }
  }

  /** What is left between what moves and the finished opening. */
  static double sweepGap(Sweep sweep, Region finished, double clearanceMm) {
    return finished.marginAround(sweep.region()) + clearanceMm;
  }

  private static void sweep(SideLayout layout, Region finished, Findings findings) {
    Plate plate = layout.job().plate();
    Sweep sweep = layout.sweep();
    double gap = sweepGap(sweep, finished, plate.movingClearanceMm());
    findings.atLeast(
        new Figure(
            "sweep",
            "shaft and spacer, finished opening",
            gap,
            plate.movingClearanceMm(),
            "job: plate.moving clearance"),
        Severity.STOP,
        sweep.poses() == 0
            ? "between what moves with the bearing and the finished opening, over the whole slot"
            : "between what moves with the bearing and the finished opening, over the whole slot,"
                + " travel and steer",
        "The shaft would touch; shift the plate, keep less, or shorten the slot");
    if (!sweep.leanKnown()) {
      findings.add(
          "sweep-lean",
          Severity.CAUTION,
          "shaft and spacer",
          0,
          0,
          "",
          Findings.PRACTICE,
          "The strut's points are not given, so the shaft was taken square to the tower top. Try"
              + " the whole slot by hand before the final cut.");
    } else {
      findings.add(
          "sweep-lean",
          Severity.NOTE,
          "shaft and spacer",
          sweep.slantDegrees(),
          45,
          "deg",
          "strut points of the job",
          sweep.poses() == 0
              ? "The shaft's lean at rest is counted in."
              : "The shaft's lean is counted in over the whole slot, from full droop to full bump"
                  + " and from lock to lock.");
    }
  }

  /**
   * Shortest way between two areas; where they meet, minus how deep one reaches into the other, so
   * that meeting never passes a limit of zero.
   */
  static double gapBetween(Region region, Contour other) {
    Region second = Region.inside(other);
    double gap = region.boundaryGap(second).mm();
    double deepest = Math.max(deepest(region, second), deepest(second, region));
    if (gap > 0 && deepest <= 0) {
      return gap;
    }
    return -Math.max(deepest, Tolerances.SAME_POINT_MM);
  }

  /** How far the second area reaches into the first; not positive when it stays outside. */
  private static double deepest(Region region, Region intruder) {
    return intruder.contours().stream()
        .flatMap(c -> c.flattened(Tolerances.FLATTEN_MM).stream())
        .mapToDouble(region::depth)
        .max()
        .orElse(0.0);
  }
}
