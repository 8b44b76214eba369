package dev.towerscribe.layout;

import dev.towerscribe.finding.Findings;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Tower;
import java.util.List;

/** The names of a tower's things as parts of findings' ids, in the job's order, no two alike. */
final class Slugs {
  private Slugs() {}

  static List<String> keepOuts(Tower tower) {
    return Findings.slugs(tower.keepOuts().stream().map(KeepOut::name).toList());
  }

  static List<String> landmarks(Tower tower) {
    return Findings.slugs(tower.landmarks().stream().map(Landmark::name).toList());
  }

  static List<String> brackets(Tower tower) {
    return Findings.slugs(tower.brackets().stream().map(Bracket::name).toList());
  }
}
