package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

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

  /** Thinner sheet carries no strut. Common practice, no source. */
  private static final double THIN_SHEET_MM = 0.7;

  /** Common practice, no source. */
  private static final double THIN_PLATE_MM = 4.0;

  /** 5/16 in is 7.94 mm, M8 8 mm. Common practice, no source. */
  private static final double SMALL_BOLT_MM = 7.9;

  /** Our own choice, no source. */
  private static final double SHARP_MM = 6.0;

  private TowerChecks() {}

  static void run(SideLayout layout, Job whole, Findings findings) {
    seat(layout.job(), findings);
    metal(layout, findings);
    registration(layout.job().tower(), findings);
    printing(layout.job().print(), findings);
    if (whole.sides().size() == 2) {
      Side otherSide = layout.side() == Side.LEFT ? Side.RIGHT : Side.LEFT;
      difference(layout, whole.sides().get(otherSide), findings);
    }
  }

  /** What the work stands on: sheet, plate, bolts and the cut's corners. */
  private static void metal(SideLayout layout, Findings findings) {
    Tower tower = layout.job().tower();
    sheet("sheet", "tower, its sheet", tower.sheetMm(), findings);
    tower
        .secondSkin()
        .ifPresent(s -> sheet("sheet.second", "tower, second skin", s.sheetMm(), findings));
    findings.atLeast(
        "plate-thickness",
        About.mm("plate", layout.job().plate().thicknessMm(), THIN_PLATE_MM, Sources.PRACTICE),
        Severity.CAUTION,
        "of plate",
        "A thin plate bends between its bolts: ask its maker what it was made for");
    findings.eachFailingOrTightest(
        layout.job().plate().bolts().stream()
            .map(
                bolt ->
                    new Findings.Candidate(
                        "bolt-size." + bolt.name(),
                        About.mm(
                            "bolt " + bolt.name(),
                            bolt.thread().nominalMm(),
                            SMALL_BOLT_MM,
                            Sources.PRACTICE),
                        "of bolt, nominal",
                        "A strut mount is held by M8 or 5/16 in at the least: ask the plate's"
                            + " maker"))
            .toList(),
        Severity.CAUTION);
    corner(layout, findings);
  }

  private static void sheet(String check, String where, double mm, Findings findings) {
    findings.atLeast(
        check,
        About.mm(where, mm, THIN_SHEET_MM, Sources.PRACTICE),
        Severity.CAUTION,
        "of sheet",
        "Measure it again on bare metal; so thin a sheet tears at its holes, ask a body shop");
  }

  /** The sharpest inside corner of the cut, where a crack would start. */
  private static void corner(SideLayout layout, Findings findings) {
    layout.finalCut().contours().stream()
        .flatMap(c -> c.edges().stream())
        .filter(e -> e instanceof Edge.Arc arc && !arc.isFullCircle())
        .map(e -> ((Edge.Arc) e).radius())
        .min(Double::compare)
        .ifPresent(
            radius ->
                findings.atLeast(
                    "cut-corner",
                    About.mm("final cut, its corners", radius, SHARP_MM, Sources.OWN_CHOICE),
                    Severity.CAUTION,
                    "is the least radius of the cut's corners",
                    "A crack starts in a sharp corner: make cut.corner larger"));
  }

  /** That the job names the face that the plate lies against. */
  static void seat(SideJob job, Findings findings) {
    boolean said = job.seating().stated().isPresent();
    findings.add(
        "seat",
        said ? Severity.NOTE : Severity.STOP,
        About.words("plate, tower", "job: mount.seat"),
        said
            ? "The plate lies %s.".formatted(job.seating().seat().words())
            : "The job does not say which face of the tower the plate lies against; it is worked"
                + " as if on top. Write seat = \"top\" or \"under\" into [mount].");
  }

  /**
   * The opening's edge places a sheet; landmarks and lines keep it from turning about the strut rod
   * centre. The sheet's own line along the car is a check on both, not a substitute.
   */
  static void registration(Tower tower, Findings findings) {
    List<Landmark> landmarks = tower.landmarks();
    int features = landmarks.size() + tower.straightedges().size();
    boolean sure = features >= 2;
    findings.add(
        "registration",
        sure ? Severity.NOTE : Severity.CAUTION,
        new About(
            "landmarks and straightedge lines",
            features,
            2,
            "",
            "two landmarks, or one and a straightedge line"),
        sure
            ? "The sheets can be laid in one way only."
            : "One landmark alone: its error turns the whole sheet. Carry the sheet's line along"
                + " the car on with a straightedge before you tape, or measure a second"
                + " landmark.");
    if (!tower.straightedges().isEmpty()) {
      return;
    }
    double longest = 0.0;
    for (Landmark a : landmarks) {
      longest = Math.max(longest, a.at().norm());
      for (Landmark b : landmarks) {
        longest = Math.max(longest, a.at().distanceTo(b.at()));
      }
    }
    boolean bad = longest < HALF_BASELINE_MM;
    findings.atLeast(
        "registration-baseline",
        About.mm(
            "landmarks, strut rod centre",
            longest,
            bad ? HALF_BASELINE_MM : BASELINE_MM,
            Sources.PRACTICE),
        bad ? Severity.STOP : Severity.CAUTION,
        "between the landmarks, or from one to the strut rod centre, whichever is longest",
        "A little play there turns the whole sheet: find a landmark farther away");
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
          new About("printer", 100 * worst, 3, "%", "job: print.scale"),
          ("Sheets are drawn to undo this printer's scale (%s across, %s along): print them on no"
                  + " other.")
              .formatted(
                  Numbers.fixed(print.scaleAcross(), 4), Numbers.fixed(print.scaleAlong(), 4)));
    }
    double skew = print.skew().degrees();
    if (skew != 0) {
      findings.add(
          "print-skew",
          Severity.NOTE,
          new About("printer", Math.abs(skew), 3, "deg", "job: print.skew"),
          "Sheets are drawn to undo this printer's skew (%s): print them on no other."
              .formatted(Lengths.withDegrees(print.skew())));
    }
    double edge = print.drawnEdgeMm();
    if (!Findings.passes(edge, PRINTED_EDGE_MM)) {
      findings.atLeast(
          "print-edge",
          About.mm("printer", edge, PRINTED_EDGE_MM, Sources.PRACTICE),
          edge < 0 ? Severity.STOP : Severity.CAUTION,
          "from the paper's edge to the corner of the sheets as they are drawn for this printer",
          "It may cut them off there: make print.margin larger.");
    }
  }

  private static void difference(SideLayout layout, SideJob other, Findings findings) {
    Tower mine = layout.job().tower();
    Tower theirs = other.tower();
    compare("opening", mine.opening(), theirs.opening(), findings);
    compare("mark", mine.mark(), theirs.mark(), findings);
    // A landmark may be called "mark": what this check names itself comes first.
    List<String> names = new ArrayList<>(List.of("opening", "mark", "lean"));
    int own = names.size();
    mine.landmarks().forEach(l -> names.add(l.name()));
    List<String> slugs = Findings.slugs(names);
    for (int i = 0; i < mine.landmarks().size(); i++) {
      Landmark landmark = mine.landmarks().get(i);
      String slug = slugs.get(own + i);
      theirs.landmarks().stream()
          .filter(l -> l.name().equals(landmark.name()))
          .findFirst()
          .ifPresent(
              twin ->
                  differ(
                      slug,
                      landmark.name(),
                      landmark.at().distanceTo(twin.at()),
                      "between " + landmark.name() + " and its twin on the other tower",
                      findings));
    }
    double lean =
        Math.max(
            Math.abs(mine.lean().inboard().degrees() - theirs.lean().inboard().degrees()),
            Math.abs(mine.lean().rearward().degrees() - theirs.lean().rearward().degrees()));
    boolean leans = lean > DIFFERENCE_DEG;
    findings.add(
        "towers-differ.lean",
        leans ? Severity.CAUTION : Severity.NOTE,
        new About("left against right, lean", lean, DIFFERENCE_DEG, "deg", Sources.PRACTICE),
        "%s deg between the leans of both tower tops%s."
            .formatted(Numbers.fixed(lean, 1), leans ? ". Measure both again before cutting" : ""));
  }

  /** The greatest distance of one boundary from the other, taken at fine steps of both. */
  private static void compare(String what, Contour mine, Contour theirs, Findings findings) {
    Region own = Region.inside(mine);
    Region other = Region.inside(theirs);
    double worst = mine.equals(theirs) ? 0.0 : Math.max(farthest(own, other), farthest(other, own));
    differ(what, what, worst, "at most between the " + what + " of both towers", findings);
  }

  private static void differ(
      String slug, String what, double mm, String meaning, Findings findings) {
    findings.atMost(
        "towers-differ." + slug,
        About.mm("left against right, " + what, mm, DIFFERENCE_MM, Sources.PRACTICE),
        Severity.CAUTION,
        meaning,
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
