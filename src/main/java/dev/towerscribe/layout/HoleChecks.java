package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Findings.Candidate;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.layout.HoleMargin.Kind;
import dev.towerscribe.model.EdgeRule;
import dev.towerscribe.model.Tower;
import java.util.List;

/** Holes, and the washers and nuts on them: metal around each, and what must not be under it. */
final class HoleChecks {
  private static final String MOVE = "Turn or shift the plate, or use a smaller cut";

  private static final String WELD =
      "have a body shop weld the hole up and drill it anew, or ask an engineer";

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
    PatternChecks.run(layout, findings);
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
    judge(i, Kind.SEAT_LIP);
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
    String move = findings.advise(MOVE, "Metal cannot be put back: " + WELD);
    return switch (m.kind()) {
      case EDGE_CUT ->
          candidate(
              m, "edge-cut", "final cut", edge, "from hole centre to the finished opening", move);
      case EDGE_FACE -> {
        String meaning = "from hole centre to the edge of the bolting face";
        yield candidate(m, "edge-land", "bolting face edge", edge, meaning, move);
      }
      case EDGE_LANDMARK -> {
        String name = tower.landmarks().get(m.thing()).name();
        String meaning = "from hole centre to the edge of " + name;
        String advice = "An existing hole is an edge too. " + move;
        yield candidate(m, "edge-landmark", name, edge, meaning, advice);
      }
      case SEAT_FACE -> {
        String meaning = "from hole centre to the edge of the bolting face, for the washer or nut";
        String advice =
            "The washer would hang over; "
                + findings.advise(
                    "turn or shift the plate", "bridge it by a backing plate, or " + WELD);
        yield candidate(m, "seat-land", "washer, bolting face", seat, meaning, advice);
      }
      case SEAT_CUT -> {
        String meaning = "from hole centre to the finished opening, for the washer or nut";
        String advice =
            "The washer would hang over the opening"
                + findings.advise("", "; bridge it by a backing plate, or " + WELD);
        yield candidate(m, "seat-cut", "washer and final cut", seat, meaning, advice);
      }
      case SEAT_LIP -> {
        String meaning = "from hole centre to where the flat begins, for the washer or nut";
        String advice = "The washer would stand on the lip's bend; turn or shift the plate";
        yield candidate(m, "seat-lip", "washer, lip", seat, meaning, advice);
      }
      case KEEP_OUT -> {
        String name = tower.keepOuts().get(m.thing()).name();
        String meaning = "between the washer or nut and " + name;
        String advice =
            "Nothing may be placed there; " + findings.advise("turn or shift the plate", WELD);
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
    return new Candidate(
        id, m.isEdge() ? about.impossibleAt(hole.diameterMm() / 2) : about, meaning, advice);
  }

  private String suffix(HoleMargin m) {
    return switch (m.kind()) {
      case EDGE_LANDMARK -> "." + landmarks.get(m.thing());
      case KEEP_OUT -> "." + keepOuts.get(m.thing());
      default -> "";
    };
  }
}
