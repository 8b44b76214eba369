package dev.towerscribe.layout;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.layout.Findings.Candidate;
import dev.towerscribe.layout.Findings.Figure;
import dev.towerscribe.model.HoleRules;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Tower;
import java.util.ArrayList;
import java.util.List;

/** Holes, and the washers and nuts on them: metal around each, and what must not be under it. */
final class HoleChecks {
  private HoleChecks() {}

  static void run(SideLayout layout, Region finished, Findings findings) {
    for (PlacedHole hole : layout.holes()) {
      edges(layout, hole, finished, findings);
      seat(layout, hole, finished, findings);
      keepOuts(layout, hole, findings);
    }
    spacing(layout, findings);
    findings.add(
        "fatigue",
        Severity.NOTE,
        "all holes",
        0,
        0,
        "",
        "EN 1993-1-8:2005 Table 3.3",
        "Edge rules are for steady loads; a tower is loaded over and over. Keep more metal where"
            + " there is more, and leave no nick.");
  }

  /** Least distance of a hole's centre from any edge. */
  static double edgeLimit(HoleRules rules, PlacedHole hole) {
    return rules.edgeRule().edgeMm(hole.bolt().thread().nominalMm(), hole.diameterMm());
  }

  private static void edges(
      SideLayout layout, PlacedHole hole, Region finished, Findings findings) {
    Tower tower = layout.job().tower();
    HoleRules rules = layout.job().holes();
    double limit = edgeLimit(rules, hole);
    String source = rules.edgeRule().source();
    String move = "Turn or shift the plate, or use a smaller cut";
    findings.atLeast(
        new Figure(
            "edge-cut." + hole.name(),
            "bolt " + hole.name() + ", final cut",
            -finished.depth(hole.at()),
            limit,
            source),
        Severity.STOP,
        "from hole centre to the finished opening",
        move);
    if (tower.land().isPresent()) {
      findings.atLeast(
          new Figure(
              "edge-land." + hole.name(),
              "bolt " + hole.name() + ", edge of the land",
              Region.inside(tower.land().get()).depth(hole.at()),
              limit,
              source),
          Severity.STOP,
          "from hole centre to the edge of the land",
          move);
    }
    List<String> slugs = Findings.landmarks(tower);
    List<Candidate> landmarks = new ArrayList<>();
    for (int i = 0; i < slugs.size(); i++) {
      Landmark landmark = tower.landmarks().get(i);
      landmarks.add(
          new Candidate(
              new Figure(
                  "edge-landmark." + hole.name() + "." + slugs.get(i),
                  "bolt " + hole.name() + ", " + landmark.name(),
                  hole.at().distanceTo(landmark.at()) - landmark.diameterMm() / 2,
                  limit,
                  source),
              "from hole centre to the edge of " + landmark.name(),
              "An existing hole is an edge too. " + move));
    }
    findings.eachFailingOrTightest(landmarks, Severity.STOP);
    findings.atLeast(
        new Figure(
            "edge-plate." + hole.name(),
            "bolt " + hole.name() + ", edge of the plate",
            layout.plateOutline().depth(hole.at()),
            limit,
            source),
        Severity.CAUTION,
        "from hole centre to the plate's own edge",
        "Ask the plate's maker whether that is meant");
  }

  private static void seat(SideLayout layout, PlacedHole hole, Region finished, Findings findings) {
    Tower tower = layout.job().tower();
    double seat = hole.bolt().seatRadiusMm();
    String source = "washer: " + hole.bolt().thread().washerSource() + "; nut corners AF 2/sqrt 3";
    if (tower.land().isPresent()) {
      findings.atLeast(
          new Figure(
              "seat-land." + hole.name(),
              "bolt " + hole.name() + ", washer on the land",
              Region.inside(tower.land().get()).depth(hole.at()),
              seat,
              source),
          Severity.STOP,
          "from hole centre to the edge of the land, for the washer or nut",
          "The washer would hang over; turn or shift the plate");
    } else {
      findings.add(
          "seat-land." + hole.name(),
          Severity.CAUTION,
          "bolt " + hole.name() + ", washer on the land",
          0,
          seat,
          "mm",
          source,
          "The land was not measured: make sure that "
              + findings.length(2 * seat)
              + " of flat, sound metal lies round this hole.");
    }
    findings.atLeast(
        new Figure(
            "seat-cut." + hole.name(),
            "bolt " + hole.name() + ", washer and final cut",
            -finished.depth(hole.at()),
            seat,
            source),
        Severity.STOP,
        "from hole centre to the finished opening, for the washer or nut",
        "The washer would hang over the opening");
  }

  private static void keepOuts(SideLayout layout, PlacedHole hole, Findings findings) {
    List<String> slugs = Findings.keepOuts(layout.job().tower());
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < slugs.size(); i++) {
      KeepOut keepOut = layout.job().tower().keepOuts().get(i);
      double gap = -Region.inside(keepOut.outline()).depth(hole.at()) - hole.bolt().seatRadiusMm();
      candidates.add(
          new Candidate(
              new Figure(
                  "keep-out." + hole.name() + "." + slugs.get(i),
                  "bolt " + hole.name() + ", " + keepOut.name(),
                  gap,
                  keepOut.marginMm(),
                  "job: tower.keepout margin"),
              "between the washer or nut and " + keepOut.name(),
              "Nothing may go there; turn or shift the plate"));
    }
    findings.eachFailingOrTightest(candidates, Severity.STOP);
  }

  /** Distances between holes, which no placement changes. */
  static void spacing(SideLayout layout, Findings findings) {
    var holes = layout.holes();
    HoleRules rules = layout.job().holes();
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        PlacedHole a = holes.get(i);
        PlacedHole b = holes.get(j);
        double limit =
            rules
                .edgeRule()
                .spacingMm(
                    Math.max(a.bolt().thread().nominalMm(), b.bolt().thread().nominalMm()),
                    Math.max(a.diameterMm(), b.diameterMm()));
        candidates.add(
            new Candidate(
                new Figure(
                    "spacing." + a.name() + "-" + b.name(),
                    "bolts " + a.name() + " and " + b.name(),
                    a.at().distanceTo(b.at()),
                    limit,
                    rules.edgeRule().source()),
                "between hole centres",
                "The plate's holes are too close for this sheet"));
      }
    }
    findings.eachFailingOrTightest(candidates, Severity.STOP);
  }
}
