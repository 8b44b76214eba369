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
import java.util.Arrays;
import java.util.List;
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
    List<Block> blocks = new ArrayList<>();
    blocks.add(Phrases.head(job));
    blocks.add(
        Phrases.say(
            (job.sides().size() > 1 ? "One placement for both towers. " : "")
                + "None has a stop finding. "
                + columns(lengths)));
    if (found.estimate()) {
      blocks.add(
          Phrases.say(
              "CASTER AND CAMBER ARE ESTIMATES from the measured steering axis; no bump steer."));
    }
    if (job.sides().values().stream().anyMatch(s -> s.aims().isEmpty())) {
      blocks.add(Phrases.say("The job gives no [aims]; those of a road and track car were taken."));
    }
    blocks.add(offers(offers, found.estimate()));
    blocks.add(new Block.Section("What holds each back from more caster"));
    blocks.add(
        new Block.Points(
            IntStream.range(0, offers.size())
                .mapToObj(i -> "%s: %s.".formatted(letter(i), offers.get(i).heldBackBy()))
                .toList()));
    blocks.add(Phrases.say("%s placements looked at.", found.looked()));
    return new Report("Towerscribe placements", lengths, blocks);
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
    List<String> heads =
        new ArrayList<>(
            Arrays.asList(
                "", "best at", "rotation", "rearward", "inboard", "setting", "caster", "camber"));
    if (!estimate) {
      heads.add("bump steer");
    }
    heads.addAll(List.of("metal", "edges"));
    Block.Table table = new Block.Table(heads, List.of());
    for (int i = 0; i < offers.size(); i++) {
      Offer offer = offers.get(i);
      Mount mount = offer.mount();
      List<Cell> row =
          new ArrayList<>(
              List.of(
                  words(letter(i)),
                  words(offer.name()),
                  figure(Amount.Kind.ROTATION, mount.rotation().radians()),
                  figure(Amount.Kind.PLACE, mount.rearwardMm()),
                  figure(Amount.Kind.PLACE, mount.inboardMm()),
                  figure(Amount.Kind.PLACE, mount.settingMm()),
                  angle(offer.caster()),
                  angle(offer.camber())));
      if (!estimate) {
        row.add(
            offer
                .bumpSteer()
                .<Cell>map(b -> figure(Amount.Kind.FINE_ANGLE, b.radians()))
                .orElse(Cell.EMPTY));
      }
      row.add(figure(Amount.Kind.AREA, offer.metalRemovedMm2()));
      row.add(figure(Amount.Kind.PLACE, offer.edgeSlackMm()));
      table = table.plus(row);
    }
    return table;
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
