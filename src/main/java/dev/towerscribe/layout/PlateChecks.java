package dev.towerscribe.layout;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.layout.Findings.Figure;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Tower;
import java.util.List;

/** The plate as a whole: what it must cover, and what it must stay clear of. */
final class PlateChecks {
  /** A washer's bend at the rim that a spherical or shimmed seat still takes up. */
  private static final double STAND_OFF_MM = 1.0;

  private PlateChecks() {}

  static void run(SideLayout layout, Region finished, Findings findings) {
    Plate plate = layout.job().plate();
    Tower tower = layout.job().tower();
    findings.atLeast(
        new Figure(
            "plate-cover",
            "plate, finished opening",
            layout.plateOutline().marginAround(finished),
            plate.coverMm(),
            "job: plate.cover"),
        Severity.STOP,
        "of plate beyond the finished opening, all round",
        "The plate would not cover the opening; shift it back or keep more");
    tower
        .wall()
        .ifPresent(
            wall ->
                findings.atLeast(
                    new Figure(
                        "plate-wall",
                        "plate, tower wall",
                        Region.inside(wall).marginAround(layout.plateOutline()),
                        plate.wallGapMm(),
                        "job: plate.wall_gap"),
                    Severity.STOP,
                    "between the plate and the tower's wall",
                    "The plate meets the wall; turn or shift it"));
    List<String> keepOutSlugs = Findings.keepOuts(tower);
    for (int i = 0; i < keepOutSlugs.size(); i++) {
      KeepOut keepOut = tower.keepOuts().get(i);
      double gap = CutChecks.gapBetween(layout.plateOutline(), keepOut.outline());
      if (gap <= 0) {
        findings.add(
            new Figure(
                "plate-keep-out." + keepOutSlugs.get(i),
                "plate, " + keepOut.name(),
                gap,
                0,
                Findings.PRACTICE),
            Severity.NOTE,
            "The plate lies over "
                + keepOut.name()
                + ": see that it sits flat there, or relieve the plate.");
      }
    }
    List<String> bracketSlugs = Findings.brackets(tower);
    for (int i = 0; i < bracketSlugs.size(); i++) {
      Bracket bracket = tower.brackets().get(i);
      double gap = CutChecks.gapBetween(layout.plateOutline(), bracket.outline());
      if (gap <= 0 && bracket.undersideMm() < plate.thicknessMm()) {
        findings.add(
            new Figure(
                "plate-bracket." + bracketSlugs.get(i),
                "plate, " + bracket.name(),
                bracket.undersideMm(),
                plate.thicknessMm(),
                "job: tower.bracket underside, plate.thickness"),
            Severity.CAUTION,
            "A plate laid on top of the tower does not go under " + bracket.name() + ".");
      }
    }
    setting(layout, findings);
    tower.crown().ifPresent(crown -> standOff(layout, crown, findings));
  }

  private static void setting(SideLayout layout, Findings findings) {
    double setting = layout.job().mount().settingMm();
    var index = layout.job().plate().slot().indexMm();
    if (index.isEmpty()) {
      return;
    }
    double nearest = index.stream().mapToDouble(i -> Math.abs(i - setting)).min().orElseThrow();
    findings.atMost(
        new Figure("setting", "adjuster setting", nearest, 0.5, "job: plate.slot index"),
        Severity.CAUTION,
        "from the nearest marked setting",
        "It can't be found again by its mark; choose a marked one or scribe one");
  }

  private static void standOff(SideLayout layout, Crown crown, Findings findings) {
    double radius = crown.radiusMm();
    double farthest = layout.holes().stream().mapToDouble(h -> h.at().norm()).max().orElseThrow();
    double drop = radius - Math.sqrt(radius * radius - farthest * farthest);
    findings.atMost(
        new Figure("stand-off", "flat plate on a domed top", drop, STAND_OFF_MM, Findings.PRACTICE),
        Severity.CAUTION,
        "that the dome falls away at the farthest bolt, under a flat plate",
        "Shim or form a seat so that tightening does not bend the tower (dome radius "
            + findings.length(radius)
            + ")");
  }
}
