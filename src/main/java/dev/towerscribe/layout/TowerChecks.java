package dev.towerscribe.layout;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.layout.Findings.Figure;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tower itself: that a sheet can be laid on it, and that its fellow is like it. */
final class TowerChecks {
  /** Landmarks closer than this turn half a millimetre of play into more than half a degree. */
  private static final double BASELINE_MM = 50.0;

  /** Below this a sheet can be turned by degrees without anyone noticing. */
  private static final double HALF_BASELINE_MM = 25.0;

  /** Two towers of one car that differ by more have been hit, repaired or measured wrong. */
  private static final double DIFFERENCE_MM = 2.0;

  private static final double DIFFERENCE_DEG = 1.0;

  /** Most printers leave 4 to 6.4 mm of the paper blank; also the least margin of a job. */
  private static final double PRINTED_EDGE_MM = 4.0;

  private TowerChecks() {}

  static void run(SideLayout layout, Job whole, Findings findings) {
    registration(layout.job().tower(), findings);
    printing(layout.job().print(), findings);
    if (whole.sides().size() == 2) {
      Side otherSide = layout.side() == Side.LEFT ? Side.RIGHT : Side.LEFT;
      difference(layout, whole.sides().get(otherSide), findings);
    }
  }

  /**
   * The opening's edge places a sheet; landmarks and lines keep it from turning about the shaft's
   * centre. The sheet's own line along the car is a check on both, not a substitute.
   */
  static void registration(Tower tower, Findings findings) {
    List<Landmark> landmarks = tower.landmarks();
    int features = landmarks.size() + tower.straightedges().size();
    boolean sure = features >= 2;
    findings.add(
        "registration",
        sure ? Severity.NOTE : Severity.CAUTION,
        "landmarks and straightedge lines",
        features,
        2,
        "",
        "two landmarks, or one and a straightedge line",
        sure
            ? "The sheets can be laid in one way only."
            : "One landmark alone: its error turns the whole sheet. Carry the sheet's line along the"
                + " car on with a straightedge before you tape, or measure a second landmark.");
    double longest = 0.0;
    for (Landmark a : landmarks) {
      longest = Math.max(longest, a.at().norm());
      for (Landmark b : landmarks) {
        longest = Math.max(longest, a.at().distanceTo(b.at()));
      }
    }
    if (tower.straightedges().isEmpty()) {
      findings.atLeast(
          new Figure(
              "registration-baseline",
              "landmarks and shaft centre",
              longest,
              longest < HALF_BASELINE_MM ? HALF_BASELINE_MM : BASELINE_MM,
              Findings.PRACTICE),
          longest < HALF_BASELINE_MM ? Severity.STOP : Severity.CAUTION,
          "between the landmarks, or from one to the shaft centre, whichever is longest",
          "A little play there turns the whole sheet: find a landmark farther away");
    }
  }

  private static void printing(Print print, Findings findings) {
    if (print.isTrue()) {
      return;
    }
    double worst = Math.max(Math.abs(print.scaleAcross() - 1), Math.abs(print.scaleAlong() - 1));
    if (worst > 0) {
      findings.add(
          "print-scale",
          Severity.NOTE,
          "printer",
          100 * worst,
          3,
          "%",
          "job: print.scale",
          "Sheets are drawn to undo this printer's scale ("
              + Numbers.fixed(print.scaleAcross(), 4)
              + " across, "
              + Numbers.fixed(print.scaleAlong(), 4)
              + " along): print them on no other.");
    }
    double skew = print.skew().degrees();
    if (skew != 0) {
      findings.add(
          "print-skew",
          Severity.NOTE,
          "printer",
          Math.abs(skew),
          3,
          "deg",
          "job: print.skew",
          "Sheets are drawn to undo this printer's skew ("
              + Numbers.fixed(skew, 2)
              + " deg): print them on no other.");
    }
    double edge = print.drawnEdgeMm();
    if (!Findings.passes(edge, PRINTED_EDGE_MM)) {
      findings.atLeast(
          new Figure("print-edge", "printer", edge, PRINTED_EDGE_MM, Findings.PRACTICE),
          edge < 0 ? Severity.STOP : Severity.CAUTION,
          "from the paper's edge to the corner of the sheets as they are drawn for this printer",
          "It may cut them off there: give print.margin more.");
    }
  }

  private static void difference(SideLayout layout, SideJob other, Findings findings) {
    Tower mine = layout.job().tower();
    Tower theirs = other.tower();
    compare(
        "opening",
        mine.opening().equals(theirs.opening()),
        layout.opening(),
        Region.inside(theirs.opening()),
        findings);
    compare(
        "mark",
        mine.mark().equals(theirs.mark()),
        layout.mark(),
        Region.inside(theirs.mark()),
        findings);
    // A landmark may be called "mark": what this check names itself comes first.
    List<String> names = new ArrayList<>(List.of("opening", "mark", "lean"));
    int own = names.size();
    mine.landmarks().forEach(l -> names.add(l.name()));
    List<String> slugs = Findings.slugs(names);
    for (int i = 0; i < mine.landmarks().size(); i++) {
      Landmark landmark = mine.landmarks().get(i);
      String slug = slugs.get(own + i);
      Optional<Landmark> twin =
          theirs.landmarks().stream().filter(l -> l.name().equals(landmark.name())).findFirst();
      twin.ifPresent(
          t ->
              findings.atMost(
                  new Figure(
                      "towers-differ." + slug,
                      "left against right, " + landmark.name(),
                      landmark.at().distanceTo(t.at()),
                      DIFFERENCE_MM,
                      Findings.PRACTICE),
                  Severity.CAUTION,
                  "between " + landmark.name() + " and its twin on the other tower",
                  "Measure both again before cutting"));
    }
    double lean =
        Math.max(
            Math.abs(mine.lean().inboard().degrees() - theirs.lean().inboard().degrees()),
            Math.abs(mine.lean().rearward().degrees() - theirs.lean().rearward().degrees()));
    boolean leans = lean > DIFFERENCE_DEG;
    findings.add(
        "towers-differ.lean",
        leans ? Severity.CAUTION : Severity.NOTE,
        "left against right, lean",
        lean,
        DIFFERENCE_DEG,
        "deg",
        Findings.PRACTICE,
        Numbers.fixed(lean, 1)
            + " deg between the leans of both tower tops"
            + (leans ? ". Measure both again before cutting." : "."));
  }

  /** The greatest distance of one boundary from the other, taken at fine steps of both. */
  private static void compare(
      String what, boolean same, Region mine, Region theirs, Findings findings) {
    double worst = same ? 0.0 : Math.max(farthest(mine, theirs), farthest(theirs, mine));
    findings.atMost(
        new Figure(
            "towers-differ." + what,
            "left against right, " + what,
            worst,
            DIFFERENCE_MM,
            Findings.PRACTICE),
        Severity.CAUTION,
        "at most between the " + what + " of both towers",
        "Measure both again before cutting");
  }

  private static double farthest(Region from, Region to) {
    return from.contours().stream()
        .flatMap(c -> c.flattened(0.05).stream())
        .mapToDouble(p -> Math.abs(to.depth(p)))
        .max()
        .orElse(0.0);
  }
}
