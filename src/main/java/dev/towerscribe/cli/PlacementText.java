package dev.towerscribe.cli;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.placement.Placements;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.sheet.report.PlacementMap;
import java.util.ArrayList;
import java.util.List;

/** Offers in words. Angles in degrees, lengths in the job's unit. */
final class PlacementText {
  private static final String HEAD = "Towerscribe placements";

  private final TextLines text = new TextLines();
  private final LengthUnit unit;

  private PlacementText(LengthUnit unit) {
    this.unit = unit;
  }

  /**
   * Writes what a search found.
   *
   * @param job the job
   * @param found what was found, at least one offer
   * @return lines ended by line feeds
   */
  static String of(Job job, Placements.Found found) {
    PlacementText report = new PlacementText(job.units());
    report.all(job, found);
    return report.text.toString();
  }

  private void all(Job job, Placements.Found found) {
    text.line(HEAD);
    text.line("");
    text.line("job        " + job.title());
    job.date().ifPresent(d -> text.line("date       " + d));
    text.line("program    Towerscribe " + Version.TEXT);
    text.line("");
    text.wrapped(
        "",
        (job.sides().size() > 1 ? "One placement for both towers. " : "")
            + "None has a stop finding. Angles in degrees, lengths in "
            + (unit == LengthUnit.MM ? "mm" : "inches")
            + ", metal in "
            + unit.symbol()
            + "2. Caster is the lesser of both sides, camber the more negative, bump steer the"
            + " greater peak change of one wheel's toe from the job's full droop to its full bump;"
            + " edges: what is left at the tightest bolt.");
    if (found.estimate()) {
      text.wrapped(
          "", "CASTER AND CAMBER ARE ESTIMATES from the measured steering axis; no bump steer.");
    }
    if (job.sides().values().stream().anyMatch(s -> s.aims().isEmpty())) {
      text.wrapped("", "The job gives no [aims]; those of a road and track car were taken.");
    }
    List<List<String>> rows = new ArrayList<>();
    List<String> head =
        new ArrayList<>(
            List.of("", "rotation", "rearward", "inboard", "setting", "caster", "camber"));
    if (!found.estimate()) {
      head.add("bump steer");
    }
    head.addAll(List.of("metal", "edges", "best at"));
    rows.add(head);
    for (int i = 0; i < found.offers().size(); i++) {
      rows.add(row(PlacementMap.letter(i), found.offers().get(i)));
    }
    text.table(rows);
    text.line("");
    text.line("What holds each back from more caster:");
    for (int i = 0; i < found.offers().size(); i++) {
      text.wrapped("  ", PlacementMap.letter(i) + ": " + found.offers().get(i).heldBackBy() + ".");
    }
    text.line("");
    text.line(found.looked() + " placements looked at");
  }

  private List<String> row(String letter, Offer offer) {
    Mount mount = offer.mount();
    List<String> row = new ArrayList<>();
    row.add(letter);
    row.add(Numbers.fixed(mount.rotation().degrees(), 1));
    row.add(length(mount.rearwardMm()));
    row.add(length(mount.inboardMm()));
    row.add(length(mount.settingMm()));
    row.add(Numbers.fixed(offer.caster().degrees(), 2));
    row.add(Numbers.fixed(offer.camber().degrees(), 2));
    offer.bumpSteer().ifPresent(b -> row.add(Numbers.fixed(b.degrees(), 3)));
    row.add(metal(offer.metalRemovedMm2()));
    row.add(length(offer.edgeSlackMm()));
    row.add(offer.name());
    return row;
  }

  /** Area in the square of the job's unit. */
  private String metal(double mm2) {
    return Numbers.fixed(unit.fromMm(unit.fromMm(mm2)), unit == LengthUnit.MM ? 0 : 2);
  }

  private String length(double mm) {
    return Numbers.fixed(unit.fromMm(mm), unit == LengthUnit.MM ? 1 : 3);
  }
}
