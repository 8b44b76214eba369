package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.model.Defaults;
import dev.towerscribe.model.EdgeRule;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Margins that a job asks less for than is usual: each is named with its default, for a check that
 * passes by a margin of the job's own says nothing of how small that margin is.
 */
final class MarginChecks {
  /**
   * One such margin.
   *
   * @param check the rest of its finding's id
   * @param about its figure against its default
   * @param say the sentence
   */
  private record Small(String check, About about, String say) {}

  private final Findings findings;
  private final List<Small> small = new ArrayList<>();

  private MarginChecks(Findings findings) {
    this.findings = findings;
  }

  /** Says what both sides share once, and the rest of each side. */
  static void run(Job job, Findings findings) {
    Map<String, List<Small>> bySide = new LinkedHashMap<>();
    for (SideJob side : job.sides().values()) {
      bySide.put(side.side().word(), new MarginChecks(findings).of(side));
    }
    List<Small> shared = new ArrayList<>();
    if (bySide.size() > 1) {
      shared.addAll(bySide.values().iterator().next());
      bySide.values().forEach(shared::retainAll);
    }
    shared.forEach(s -> findings.add(s.check(), Severity.CAUTION, s.about(), s.say()));
    bySide.forEach(
        (side, all) ->
            all.stream()
                .filter(s -> !shared.contains(s))
                .forEach(s -> findings.add(side, s.check(), Severity.CAUTION, s.about(), s.say())));
  }

  private List<Small> of(SideJob job) {
    Plate plate = job.plate();
    length("plate.cover", plate.coverMm(), Defaults.COVER_MM);
    length("plate.wall_gap", plate.wallGapMm(), Defaults.WALL_GAP_MM);
    length("plate.moving.clearance", plate.movingClearanceMm(), Defaults.CLEARANCE_MM);
    length("tools.room", job.tools().roomMm(), Defaults.ROOM_MM);
    length("cut.keep", job.cut().keepMm(), Defaults.KEEP_MM);
    length("cut.corner", job.cut().cornerMm(), Defaults.CORNER_MM);
    List<String> slugs = Slugs.keepOuts(job.tower());
    for (int i = 0; i < slugs.size(); i++) {
      length(
          "tower.keepout.margin",
          slugs.get(i),
          job.tower().keepOuts().get(i).marginMm(),
          Defaults.KEEP_OUT_MM);
    }
    EdgeRule rule = job.holes().edgeRule();
    if (rule != Defaults.EDGE_RULE) {
      small.add(
          new Small(
              "margin.holes-edge-rule",
              About.words("holes.edge_rule", "job: holes.edge_rule"),
              "The job asks for holes.edge_rule \"%s\"; the default is \"%s\", the severest."
                  .formatted(rule.word(), Defaults.EDGE_RULE.word())));
    }
    return small;
  }

  private void length(String key, double mm, double usualMm) {
    length(key, "", mm, usualMm);
  }

  private void length(String key, String thing, double mm, double usualMm) {
    if (Findings.passes(mm, usualMm)) {
      return;
    }
    small.add(
        new Small(
            "margin." + Findings.slug(key) + (thing.isEmpty() ? "" : "." + thing),
            About.mm(key, mm, usualMm, "job: " + key + "; default: " + Sources.PRACTICE),
            "The job asks for %s %s; the default is %s. See that the smaller one is meant."
                .formatted(key, findings.lengths().with(mm), findings.lengths().with(usualMm))));
  }
}
