package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.finding.Spot.Mover;
import dev.towerscribe.geometry.Gap;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Packing;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Seating;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** The plate as a whole: what it must cover, and what it must stay clear of. */
final class PlateChecks {
  /** A gap under the plate that a spherical or shimmed seat at the rim still takes up. */
  private static final double GAP_UNDER_MM = 1.0;

  private PlateChecks() {}

  static void run(SideLayout layout, Region finished, Findings findings) {
    Plate plate = layout.job().plate();
    Tower tower = layout.job().tower();
    Region outline = layout.plateOutline();
    findings.atLeast(
        "plate-cover",
        About.mm(
                "plate, finished opening",
                Margins.plateCover(outline, finished),
                plate.coverMm(),
                "job: plate.cover")
            .impossibleBelow(0)
            .at(() -> uncovered(layout, finished, findings.lengths())),
        Severity.STOP,
        "of plate beyond the finished opening, all round",
        "The plate would not cover the opening; "
            + findings.advise("shift it back or keep more", "take a larger plate"));
    tower
        .wall()
        .ifPresent(
            wall ->
                findings.atLeast(
                    "plate-wall",
                    About.mm(
                            "plate, tower wall",
                            Margins.plateToWall(Region.inside(wall), outline),
                            plate.wallGapMm(),
                            "job: plate.wall_gap")
                        .impossibleBelow(0)
                        .at(() -> atWall(Region.inside(wall), layout, findings.lengths())),
                    Severity.STOP,
                    "between the plate and the tower's wall",
                    "The plate meets the wall; "
                        + findings.advise(
                            "turn or shift it",
                            "have its edge trimmed if its maker agrees, or take a smaller one")));
    List<String> keepOuts = Slugs.keepOuts(tower);
    for (int i = 0; i < keepOuts.size(); i++) {
      KeepOut keepOut = tower.keepOuts().get(i);
      double gap = Margins.between(outline, keepOut.outline());
      if (gap <= 0) {
        findings.add(
            "plate-keep-out." + keepOuts.get(i),
            Severity.NOTE,
            About.mm("plate, " + keepOut.name(), gap, 0, Sources.PRACTICE),
            "The plate lies over %s: see that it sits flat there, or relieve the plate."
                .formatted(keepOut.name()));
      }
    }
    List<String> brackets = Slugs.brackets(tower);
    for (int i = 0; i < brackets.size(); i++) {
      Bracket bracket = tower.brackets().get(i);
      if (layout.job().seating().seat() == Seat.ON_TOP
          && bracket.undersideMm() < plate.thicknessMm()
          && Margins.between(outline, bracket.outline()) <= 0) {
        findings.add(
            "plate-bracket." + brackets.get(i),
            Severity.CAUTION,
            About.mm(
                "plate, " + bracket.name(),
                bracket.undersideMm(),
                plate.thicknessMm(),
                "job: tower.bracket underside, plate.thickness"),
            "A plate laid on top of the tower does not go under %s.".formatted(bracket.name()));
      }
    }
    setting(layout, findings);
    gapUnder(layout, findings);
    tower
        .secondSkin()
        .filter(skin -> skin.apartMm() > 0)
        .ifPresent(
            skin ->
                findings.add(
                    "skins-apart",
                    Severity.CAUTION,
                    About.mm("the tower's two sheets", skin.apartMm(), 0, Sources.PRACTICE),
                    ("Two sheets %s apart: without a sleeve between them on every bolt, tightening"
                            + " draws them together and bends both.")
                        .formatted(findings.lengths().with(skin.apartMm()))));
  }

  private static Spot uncovered(SideLayout layout, Region finished, Lengths lengths) {
    Region outline = layout.plateOutline();
    Gap nearest = Spots.around(outline, finished);
    return Spots.of(
        Spots.gap(nearest.to(), nearest.from()),
        0,
        Mover.PLATE,
        v -> Margins.plateCover(outline.shifted(v), finished),
        layout.job().plate().coverMm(),
        lengths);
  }

  private static Spot atWall(Region wall, SideLayout layout, Lengths lengths) {
    Region outline = layout.plateOutline();
    return Spots.of(
        Spots.around(wall, outline),
        0,
        Mover.PLATE,
        v -> Margins.plateToWall(wall, outline.shifted(v)),
        layout.job().plate().wallGapMm(),
        lengths);
  }

  private static void setting(SideLayout layout, Findings findings) {
    double setting = layout.job().mount().settingMm();
    layout.job().plate().slot().indexMm().stream()
        .map(i -> Math.abs(i - setting))
        .min(Double::compare)
        .ifPresent(
            nearest ->
                findings.atMost(
                    "setting",
                    About.mm("adjuster setting", nearest, 0.5, "job: plate.slot index"),
                    Severity.CAUTION,
                    "from the nearest marked setting",
                    "It can't be found again by its mark; choose a marked one or scribe one"));
  }

  /** What a dome, or a lip that stands toward the plate, leaves between the two at a bolt. */
  private static void gapUnder(SideLayout layout, Findings findings) {
    Tower tower = layout.job().tower();
    Seating seating = layout.job().seating();
    boolean lipped = tower.lip().filter(l -> l.facesPlate(seating.seat())).isPresent();
    if (tower.crown().isEmpty() && !lipped) {
      return;
    }
    PlacedHole widest =
        Collections.max(
            layout.holes(),
            Comparator.comparingDouble((PlacedHole h) -> layout.rest().gapMm(h.at())));
    double gap = layout.rest().gapMm(widest.at());
    String what =
        tower.crown().isPresent() ? "flat plate on a domed top" : "flat plate, lip of the opening";
    About about =
        About.mm("%s, bolt %s".formatted(what, widest.name()), gap, GAP_UNDER_MM, Sources.PRACTICE);
    String meaning =
        "of gap under a flat plate at bolt %s, where it rests on %s"
            .formatted(widest.name(), layout.restsOn());
    if (seating.packing().isPresent() && !Findings.passes(GAP_UNDER_MM, gap)) {
      String fill =
          seating.packing().get() == Packing.SHIMS
              ? "The shims of the steps page fill it."
              : "A seat formed to the tower fills it: heights on the steps page.";
      findings.add(
          "stand-off",
          Severity.NOTE,
          About.words(about.where(), "job: mount.packing"),
          "%s %s. %s".formatted(findings.lengths().with(gap), meaning, fill));
      return;
    }
    findings.atMost(
        "stand-off",
        about,
        Severity.STOP,
        meaning,
        "Tightening would bend the tower: name what fills it, mount.packing = \"shims\" or"
            + " \"formed seat\"");
  }
}
