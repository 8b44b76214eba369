package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Findings.Candidate;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.finding.Spot.Mover;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.HoleMargin.Kind;
import dev.towerscribe.model.EdgeRule;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import java.util.ArrayList;
import java.util.List;

/** Holes, and the washers and nuts on them: metal around each, and what must not be under it. */
final class HoleChecks {
  private static final String MOVE = "Turn or shift the plate, or use a smaller cut";

  private final SideLayout layout;
  private final Tower tower;
  private final EdgeRule rule;
  private final List<HoleMargin> margins;
  private final List<String> landmarks;
  private final List<String> keepOuts;
  private final Findings findings;

  private HoleChecks(SideLayout layout, Region finished, Findings findings) {
    this.layout = layout;
    this.findings = findings;
    tower = layout.job().tower();
    rule = layout.job().holes().edgeRule();
    margins = HoleMargin.of(tower, finished, layout.job().holes(), layout.holes());
    landmarks = Slugs.landmarks(tower);
    keepOuts = Slugs.keepOuts(tower);
  }

  static void run(SideLayout layout, Region finished, Findings findings) {
    HoleChecks checks = new HoleChecks(layout, finished, findings);
    for (int i = 0; i < layout.holes().size(); i++) {
      checks.hole(i);
    }
    spacing(layout, findings);
    findings.add(
        "fatigue",
        Severity.NOTE,
        About.words("all holes", "EN 1993-1-8:2005 Table 3.3"),
        "Edge rules are for steady loads; a tower is loaded over and over. Keep more metal where"
            + " there is more, and leave no nick.");
  }

  private void hole(int i) {
    PlacedHole hole = layout.holes().get(i);
    List.of(Kind.EDGE_CUT, Kind.EDGE_FACE, Kind.EDGE_LANDMARK).forEach(kind -> judge(i, kind));
    findings.atLeast(
        "edge-plate." + hole.name(),
        About.mm(
            "bolt " + hole.name() + ", edge of the plate",
            layout.plateOutline().depth(hole.at()),
            rule.edgeMm(hole.bolt().thread().nominalMm(), hole.diameterMm()),
            edgeSource(hole)),
        Severity.CAUTION,
        "from hole centre to the plate's own edge",
        "Ask the plate's maker whether that is meant");
    judge(i, Kind.SEAT_FACE);
    if (tower.boltingFace().isEmpty()) {
      double seat = hole.bolt().seatRadiusMm();
      findings.add(
          "seat-land." + hole.name(),
          Severity.CAUTION,
          About.mm("bolt " + hole.name() + ", washer, bolting face", 0, seat, seatSource(hole)),
          ("The bolting face was not measured: make sure that %s of flat, sound metal lies round"
                  + " this hole.")
              .formatted(findings.lengths().with(2 * seat)));
    }
    judge(i, Kind.SEAT_CUT);
    judge(i, Kind.KEEP_OUT);
  }

  private static String seatSource(PlacedHole hole) {
    return "washer: %s; nut corners AF 2/sqrt 3".formatted(hole.bolt().thread().washerSource());
  }

  private String edgeSource(PlacedHole hole) {
    return rule.edgeSource(hole.bolt().thread().nominalMm(), hole.diameterMm());
  }

  private void judge(int hole, Kind kind) {
    findings.eachFailingOrTightest(
        margins.stream()
            .filter(m -> m.hole() == hole && m.kind() == kind)
            .map(m -> inWords(m, layout.holes().get(hole)))
            .toList(),
        Severity.STOP);
  }

  private Candidate inWords(HoleMargin m, PlacedHole hole) {
    String seat = seatSource(hole);
    String edge = edgeSource(hole);
    return switch (m.kind()) {
      case EDGE_CUT ->
          candidate(
              m, "edge-cut", "final cut", edge, "from hole centre to the finished opening", MOVE);
      case EDGE_FACE -> {
        String meaning = "from hole centre to the edge of the bolting face";
        yield candidate(m, "edge-land", "bolting face edge", edge, meaning, MOVE);
      }
      case EDGE_LANDMARK -> {
        String name = tower.landmarks().get(m.thing()).name();
        String meaning = "from hole centre to the edge of " + name;
        String advice = "An existing hole is an edge too. " + MOVE;
        yield candidate(m, "edge-landmark", name, edge, meaning, advice);
      }
      case SEAT_FACE -> {
        String meaning = "from hole centre to the edge of the bolting face, for the washer or nut";
        String advice = "The washer would hang over; turn or shift the plate";
        yield candidate(m, "seat-land", "washer, bolting face", seat, meaning, advice);
      }
      case SEAT_CUT -> {
        String meaning = "from hole centre to the finished opening, for the washer or nut";
        String advice = "The washer would hang over the opening";
        yield candidate(m, "seat-cut", "washer and final cut", seat, meaning, advice);
      }
      case KEEP_OUT -> {
        String name = tower.keepOuts().get(m.thing()).name();
        String meaning = "between the washer or nut and " + name;
        String advice = "Nothing may be placed there; turn or shift the plate";
        yield candidate(m, "keep-out", name, "job: tower.keepout margin", meaning, advice);
      }
    };
  }

  private Candidate candidate(
      HoleMargin m, String check, String what, String source, String meaning, String advice) {
    PlacedHole hole = layout.holes().get(m.hole());
    double figure = m.figureMm(hole.at().x(), hole.at().y());
    String where = "bolt %s, %s".formatted(hole.name(), what);
    String id = check + "." + hole.name() + suffix(m);
    About about =
        About.mm(where, figure, m.limitMm(), source)
            .at(() -> Spots.of(m, hole, findings.lengths()));
    return new Candidate(id, about, meaning, advice);
  }

  private String suffix(HoleMargin m) {
    return switch (m.kind()) {
      case EDGE_LANDMARK -> "." + landmarks.get(m.thing());
      case KEEP_OUT -> "." + keepOuts.get(m.thing());
      default -> "";
    };
  }

  /** Distances between holes, which no placement changes. */
  static void spacing(SideLayout layout, Findings findings) {
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
                    .at(() -> apart(b, a, limit, findings.lengths())),
                "between hole centres",
                "The plate's holes are too close for this sheet"));
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
}
