package dev.towerscribe.report;

import static dev.towerscribe.report.Cell.figure;
import static dev.towerscribe.report.Cell.length;
import static dev.towerscribe.report.Cell.words;

import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Grip;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.Span;
import dev.towerscribe.layout.StarterHole;
import dev.towerscribe.model.Seating;
import dev.towerscribe.quantity.Lengths;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A layout: per side the holes, the bearing, the cuts, notches and spans, and every finding, most
 * serious first.
 */
public final class LayoutReport {
  /** The first line of the report as text, by which a file is known as ours. */
  public static final String TITLE = "Towerscribe report";

  private final Lengths lengths;
  private final Blocks blocks = new Blocks();

  private LayoutReport(Lengths lengths) {
    this.lengths = lengths;
  }

  /**
   * The report of a whole job.
   *
   * @param layout any layout
   * @param accepted ids of accepted stop findings
   * @param packMark the code on the sheets, if sheets are made
   * @param notice sentences that a reader must see first, perhaps none
   * @return the report
   */
  public static Report of(
      JobLayout layout, Set<String> accepted, Optional<String> packMark, List<String> notice) {
    Lengths lengths = Lengths.in(layout.job().units());
    LayoutReport report = new LayoutReport(lengths);
    notice.forEach(report.blocks::say);
    List<Block.Fact> facts = Phrases.facts("job", layout.job().title(), layout.job().date());
    packMark.ifPresent(m -> facts.add(Phrases.fact("pack mark", m)));
    facts.add(Phrases.program());
    facts.add(new Block.Fact("result", result(layout, accepted)));
    report
        .blocks
        .add(new Block.Facts(facts))
        .say(
            "Lengths in %s, from the original strut rod centre in the plane of the tower top: fore"
                + " is forward, in is toward the car's centre line. %s",
            Phrases.unit(lengths), Phrases.SETTING_MEANS);
    for (SideLayout side : layout.sides().values()) {
      report.side(side);
      report.blocks.addAll(findings(side, accepted));
    }
    return report.blocks.report(TITLE, lengths);
  }

  /**
   * How a job came out.
   *
   * @param layout any layout
   * @param accepted ids of accepted stop findings
   * @return one line, then each open stop with its id
   */
  public static List<String> result(JobLayout layout, Set<String> accepted) {
    return FindingWords.result(layout.stops(), accepted, "no sheets", "every sheet says so");
  }

  /**
   * The result of every check of one tower.
   *
   * @param side the tower
   * @param accepted ids of accepted stop findings
   * @return a block for each severity, also where there is none of it
   */
  public static List<Block.FoundList> findings(SideLayout side, Set<String> accepted) {
    return FindingWords.all(
        side.findings(),
        accepted,
        "do not cut",
        "read before cutting",
        "passed, or for information");
  }

  private void side(SideLayout side) {
    String bearing =
        "%s, height %s".formatted(at(side.bearing()), lengths.with(side.job().bearingHeightMm()));
    blocks
        .section(side.side(), "tower")
        .add(
            new Block.Facts(
                List.of(
                    Phrases.fact("mount", Phrases.placeAndSetting(side.job().mount(), lengths)),
                    Phrases.fact("bearing", bearing),
                    Phrases.fact("plate", lies(side.job().seating())))))
        .add(
            Block.Table.of("hole", "fore", "in", "diameter", "bolt", "drills in order")
                .each(side.holes(), this::hole))
        .add(
            Block.Table.of("bolt", "gap under the plate", "grip", "bolt's length, at least")
                .each(side.holes(), hole -> grip(hole, side.grip(hole))))
        .add(
            Block.Table.of("cut", "area", "length", "shape")
                .plus(cut("rough", side.roughCut()))
                .plus(cut("final", side.finalCut())));
    if (!side.starters().isEmpty()) {
      blocks.add(new Block.Points(side.starters().stream().map(this::starter).toList()));
    }
    blocks
        .add(
            Block.Table.of("notch in", "area", "width left", "for bolt")
                .each(side.notches(), LayoutReport::notch)
                .ifAny())
        .add(
            Block.Table.of("span", "centres", "inside", "outside", Phrases.OFF_BY)
                .each(side.spans(), LayoutReport::span));
  }

  private static String lies(Seating seating) {
    return seating.seat().words()
        + (seating.stated().isPresent() ? "" : ", as the job does not say")
        + seating.packing().map(p -> "; packing: " + p.word()).orElse("");
  }

  private static List<Cell> grip(PlacedHole hole, Grip grip) {
    return List.of(
        words(hole.name()),
        length(grip.packingMm()),
        length(grip.gripMm()),
        length(grip.leastLengthMm()));
  }

  private List<Cell> hole(PlacedHole hole) {
    String drills = String.join(", ", hole.drillsMm().stream().map(lengths::figure).toList());
    return List.of(
        words(hole.name()),
        length(hole.at().x()),
        length(hole.at().y()),
        length(hole.diameterMm()),
        words(hole.bolt().thread().name()),
        words(drills));
  }

  private String at(Vec2 place) {
    return "fore %s, in %s".formatted(lengths.with(place.x()), lengths.with(place.y()));
  }

  private List<Cell> cut(String name, Region cut) {
    return List.of(
        words(name), figure(Amount.AREA, cut.area()), length(cut.length()), words(shape(cut)));
  }

  private String shape(Region cut) {
    if (cut.isEmpty()) {
      return "nothing to cut";
    }
    if (cut.contours().size() > 1) {
      return Phrases.count(cut.contours().size(), "boundary line");
    }
    return cut.contours()
        .get(0)
        .asCircle()
        .map(
            c ->
                "circle, diameter %s, centre %s"
                    .formatted(lengths.with(2 * c.radius()), at(c.centre())))
        .orElse("outline");
  }

  private String starter(StarterHole starter) {
    return "Saw starter hole: %s, diameter %s"
        .formatted(at(starter.at()), lengths.with(starter.diameterMm()));
  }

  private static List<Cell> notch(Notch notch) {
    return List.of(
        words(notch.bracket().name()),
        figure(Amount.AREA, notch.removed().area()),
        length(notch.widthLeftMm()),
        words(String.join(", ", notch.bolts())));
  }

  private static List<Cell> span(Span span) {
    return List.of(
        words(span.from() + "-" + span.to()),
        length(span.centresMm()),
        length(span.insideMm()),
        length(span.outsideMm()),
        length(span.toleranceMm()));
  }
}
