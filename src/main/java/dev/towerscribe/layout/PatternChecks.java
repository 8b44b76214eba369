package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Findings.Candidate;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.finding.Spot.Mover;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Hull;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.EdgeRule;
import dev.towerscribe.model.Plate;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The plate's bolts among themselves: what comes out the same wherever the plate goes. */
final class PatternChecks {
  /** Two bolts are a line, about which the plate tips. */
  private static final int LEAST_BOLTS = 3;

  private PatternChecks() {}

  static void run(SideLayout layout, Findings findings) {
    plateEdges(layout, findings);
    spacing(layout, findings);
    bolts(layout, findings);
  }

  private static void plateEdges(SideLayout layout, Findings findings) {
    EdgeRule rule = layout.job().holes().edgeRule();
    Region outline = layout.plateOutline();
    for (PlacedHole hole : layout.holes()) {
      findings.atLeast(
          "edge-plate." + hole.name(),
          About.mm(
                  "bolt " + hole.name() + ", edge of the plate",
                  outline.depth(hole.at()),
                  rule.edgeMm(hole.bolt().thread().nominalMm(), hole.diameterMm()),
                  rule.edgeSource(hole.bolt().thread().nominalMm(), hole.diameterMm()))
              .impossibleAt(hole.diameterMm() / 2),
          Severity.CAUTION,
          "from hole centre to the plate's own edge",
          "Ask the plate's maker whether that is meant");
    }
  }

  private static void spacing(SideLayout layout, Findings findings) {
    EdgeRule rule = layout.job().holes().edgeRule();
    List<PlacedHole> holes = layout.holes();
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      for (PlacedHole b : holes.subList(i + 1, holes.size())) {
        PlacedHole a = holes.get(i);
        double bolt = Math.max(a.bolt().thread().nominalMm(), b.bolt().thread().nominalMm());
        double wide = Math.max(a.diameterMm(), b.diameterMm());
        double limit = rule.spacingMm(bolt, wide);
        candidates.add(
            new Candidate(
                "spacing." + a.name() + "-" + b.name(),
                About.mm(
                        "bolts " + a.name() + " and " + b.name(),
                        a.at().distanceTo(b.at()),
                        limit,
                        rule.spacingSource(bolt, wide))
                    .impossibleAt((a.diameterMm() + b.diameterMm()) / 2)
                    .at(() -> apart(b, a, limit, findings.lengths())),
                "between hole centres",
                findings.advise(
                    "The plate's holes are too close for this sheet",
                    "Too little metal stays between the holes: have a body shop weld one up and"
                        + " drill it anew, or ask an engineer")));
      }
    }
    findings.eachFailingOrTightest(candidates, Severity.STOP);
  }

  private static Spot apart(PlacedHole hole, PlacedHole other, double limit, Lengths lengths) {
    double centres = hole.at().distanceTo(other.at());
    Vec2 way = centres == 0 ? new Vec2(1, 0) : hole.at().minus(other.at()).unit();
    double step = lengths.stepMm(Fineness.PLACE);
    return new Spot(
        hole.at(), other.at(), Mover.HOLE, Clearing.along(way, mm -> centres + mm, limit, step));
  }

  private static void bolts(SideLayout layout, Findings findings) {
    int count = layout.holes().size();
    boolean enough = count >= LEAST_BOLTS;
    findings.add(
        "bolt-count",
        enough ? Severity.NOTE : Severity.STOP,
        new About("plate, its bolts", count, LEAST_BOLTS, "", "statics: two bolts are a line")
            .impossibleAt(LEAST_BOLTS - 1.0),
        enough
            ? "%s bolts hold the plate.".formatted(count)
            : "%s bolts cannot hold it: the plate tips about their line. Take a plate with at least"
                    .formatted(count)
                + " three.");
    if (enough) {
      findings.atLeast(
          "bearing-hull",
          About.mm("bearing, line round the bolts", bearingDepth(layout), 0, "statics")
              .impossibleBelow(0)
              .at(() -> outside(layout)),
          Severity.STOP,
          "inside the line round the bolts, the bearing at the slot's worse end",
          "Outside it the plate tips about two bolts and lifts off the others: take a plate with"
              + " other bolts or a shorter slot");
    }
  }

  /**
   * How far the bearing stays inside the hull of the bolts. A hull is convex, so over the whole
   * slot it is least at one of its ends.
   */
  private static double bearingDepth(SideLayout layout) {
    List<Vec2> hull = Hull.of(layout.holes().stream().map(PlacedHole::at).toList());
    Plate.Slot slot = layout.job().plate().slot();
    return Math.min(
        depth(hull, layout.job().bearing(slot.fromMm())),
        depth(hull, layout.job().bearing(slot.toMm())));
  }

  /** The bearing moves with the plate and its bolts: no shift brings it inside. */
  private static Spot outside(SideLayout layout) {
    List<Vec2> hull = Hull.of(layout.holes().stream().map(PlacedHole::at).toList());
    Plate.Slot slot = layout.job().plate().slot();
    Vec2 first = layout.job().bearing(slot.fromMm());
    Vec2 last = layout.job().bearing(slot.toMm());
    Vec2 worse = depth(hull, first) <= depth(hull, last) ? first : last;
    Vec2 nearest =
        hull.size() >= LEAST_BOLTS
            ? Region.inside(Contour.polygon(hull)).nearest(worse)
            : new Edge.Segment(hull.get(0), hull.get(hull.size() - 1)).nearest(worse);
    return new Spot(worse, nearest, Mover.PLATE, Optional.empty());
  }

  private static double depth(List<Vec2> hull, Vec2 at) {
    if (hull.size() >= LEAST_BOLTS) {
      return Region.inside(Contour.polygon(hull)).depth(at);
    }
    // Bolts on one line have no inside.
    Vec2 nearest = new Edge.Segment(hull.get(0), hull.get(hull.size() - 1)).nearest(at);
    return -Math.max(nearest.distanceTo(at), Tolerances.SAME_POINT_MM);
  }
}
