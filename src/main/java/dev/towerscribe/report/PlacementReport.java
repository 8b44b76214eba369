package dev.towerscribe.report;

import static dev.towerscribe.report.Cell.angle;
import static dev.towerscribe.report.Cell.figure;
import static dev.towerscribe.report.Cell.words;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.placement.Placements;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a search for placements offers. */
public final class PlacementReport {
  private PlacementReport() {}

  /**
   * The report of a search.
   *
   * @param job the job
   * @param found what was found, at least one offer
   * @return the report
   */
  public static Report of(Job job, Placements.Found found) {
    Lengths lengths = Lengths.in(job.units());
    List<Offer> offers = found.offers();
    Blocks blocks =
        new Blocks()
            .add(Phrases.head(job))
            .say(
                "%s%s %s",
                job.sides().size() > 1 ? "One placement for both towers. " : "",
                found.standing().isEmpty()
                    ? "None has a stop finding."
                    : "None has a stop finding but what stands below.",
                columns(lengths));
    if (found.estimate()) {
      blocks.say("CASTER AND CAMBER ARE ESTIMATES from the measured steering axis; no bump steer.");
    }
    if (job.sides().values().stream().anyMatch(s -> s.aims().isEmpty())) {
      blocks.say("The job gives no [aims]; those of a road and track car were taken.");
    }
    List<String> heldBack =
        IntStream.range(0, offers.size())
            .mapToObj(i -> "%s: %s.".formatted(letter(i), offers.get(i).heldBackBy()))
            .toList();
    blocks.add(offers(offers, found.estimate()));
    if (!found.standing().isEmpty()) {
      blocks
          .section("Stop findings that stand wherever the plates go")
          .add(FindingWords.lines(found.standing(), List.of()));
    }
    return blocks
        .section("What holds each back from more caster")
        .add(new Block.Points(heldBack))
        .say("%s placements looked at.", found.looked())
        .report("Towerscribe placements", lengths);
  }

  /**
   * What the columns of the table of offers are.
   *
   * @param lengths the unit
   * @return sentences
   */
  public static String columns(Lengths lengths) {
    return ("Angles in degrees, lengths in %s, metal in %s2. %s Caster is the smaller of both"
            + " sides, camber the more negative, bump steer the greater peak change of one"
            + " wheel's toe from the job's full droop to its full bump; edges: the clearance"
            + " left at the tightest bolt.")
        .formatted(Phrases.unit(lengths), lengths.unit().symbol(), Phrases.SETTING_MEANS);
  }

  /**
   * The offers.
   *
   * @param offers in the order of their letters
   * @param estimate whether caster is an estimate, without bump steer
   * @return a table
   */
  public static Block.Table offers(List<Offer> offers, boolean estimate) {
    List<String> heads = new ArrayList<>(List.of("", "best at"));
    heads.addAll(List.of("rotation", "rearward", "inboard", "setting", "caster", "camber"));
    if (!estimate) {
      heads.add("bump steer");
    }
    heads.addAll(List.of("metal", "edges"));
    return new Block.Table(heads, List.of())
        .each(
            IntStream.range(0, offers.size()).boxed().toList(),
            i -> row(letter(i), offers.get(i), estimate));
  }

  private static List<Cell> row(String letter, Offer offer, boolean estimate) {
    Mount mount = offer.mount();
    List<Cell> row = new ArrayList<>();
    row.add(words(letter));
    row.add(words(offer.name()));
    row.add(figure(Amount.ROTATION, mount.rotation().radians()));
    row.add(figure(Amount.PLACE, mount.rearwardMm()));
    row.add(figure(Amount.PLACE, mount.inboardMm()));
    row.add(figure(Amount.PLACE, mount.settingMm()));
    row.add(angle(offer.caster()));
    row.add(angle(offer.camber()));
    if (!estimate) {
      Optional<Cell> bump = offer.bumpSteer().map(b -> figure(Amount.FINE_ANGLE, b.radians()));
      row.add(bump.orElse(Cell.EMPTY));
    }
    row.add(figure(Amount.AREA, offer.metalRemovedMm2()));
    row.add(figure(Amount.PLACE, offer.edgeSlackMm()));
    return row;
  }

  /**
   * The letter of an offer.
   *
   * @param index its place in the list
   * @return A for the first
   */
  public static String letter(int index) {
    return String.valueOf((char) ('A' + index));
  }
}
