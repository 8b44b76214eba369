package dev.towerscribe.report;

import static dev.towerscribe.report.Cell.angle;
import static dev.towerscribe.report.Cell.length;
import static dev.towerscribe.report.Cell.words;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.Drilled;
import dev.towerscribe.drilled.DrilledAngles;
import dev.towerscribe.drilled.DrilledSide;
import dev.towerscribe.drilled.DrilledSide.AsDrilled;
import dev.towerscribe.drilled.DrilledSide.EdgeMetal;
import dev.towerscribe.drilled.DrilledSide.Hole;
import dev.towerscribe.drilled.Enlargement;
import dev.towerscribe.drilled.HoleNetwork;
import dev.towerscribe.drilled.NearestSetting;
import dev.towerscribe.drilled.PlateFit;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Drilled towers: whether the plate goes on, where the holes are, and what the tower now has. */
public final class DrilledReport {
  /** Stands by metal that is too little. */
  private static final String SHORT = "SHORT";

  private final Lengths lengths;
  private final UnaryOperator<String> key;

  /**
   * The parts of a report, each as it is needed.
   *
   * @param lengths the unit
   * @param key what stands for a hole's name
   */
  public DrilledReport(Lengths lengths, UnaryOperator<String> key) {
    this.lengths = lengths;
    this.key = key;
  }

  /**
   * The report of all towers.
   *
   * @param drilled the towers
   * @param angles what they do to the alignment, where that is known
   * @param accepted ids of accepted stop findings
   * @return the report
   */
  public static Report of(Drilled drilled, Map<Side, DrilledAngles> angles, Set<String> accepted) {
    Lengths lengths = Lengths.in(drilled.job().units());
    DrilledReport words = new DrilledReport(lengths, UnaryOperator.identity());
    List<Block.Fact> facts =
        Phrases.facts("readings", drilled.readings().title(), drilled.readings().date());
    facts.add(0, Phrases.fact("job", drilled.job().title()));
    facts.add(Phrases.program());
    Blocks blocks =
        new Blocks()
            .add(new Block.Facts(facts))
            .say(words.signs())
            .say(
                "A record of what was measured, not a certificate: the vehicle maker's limits and"
                    + " the law come first.");
    for (DrilledSide side : drilled.sides().values()) {
      blocks
          .section(side.side(), "tower")
          .add(words.verdict(side))
          .add(play(side))
          .add(side.fit().flatMap(PlateFit::enlargement).map(words::enlargement))
          .add(words.holes(side))
          .add(words.spans(side))
          .add(words.metal(side))
          .add(Phrases.explain(words.explained(side)))
          .add(words.place(side))
          .addAll(words.angles(side, Optional.ofNullable(angles.get(side.side()))))
          .add(FindingWords.lines(side.findings(), accepted));
    }
    return blocks.report("Towerscribe drilled holes", lengths);
  }

  /**
   * Units, directions and what uncertainty means.
   *
   * @return sentences
   */
  public String signs() {
    return ("Lengths in %s. Fore is forward, in toward the car's middle, from the original strut"
            + " rod centre. %s, by the uncertainty of the readings.")
        .formatted(Phrases.unit(lengths), Phrases.LIKELY_MEANS);
  }

  /**
   * Whether the plate goes on.
   *
   * @param side a tower
   * @return the answer
   */
  public Block.Verdict verdict(DrilledSide side) {
    List<String> details = new ArrayList<>();
    side.fit()
        .ifPresentOrElse(
            fit -> fit(fit, details), () -> details.add("A hole is not fixed by the readings."));
    if (!side.network().tied()) {
      details.add("Nothing ties the holes to the tower firmly: rotation and offset are not known.");
    }
    return new Block.Verdict(
        side.fit().map(f -> f.verdict().words()).orElse("NOT KNOWN WHETHER THE PLATE GOES ON"),
        details);
  }

  private void fit(PlateFit fit, List<String> details) {
    double slack = fit.mating().slackMm();
    if (!fit.mating().blocked().isEmpty()) {
      details.add("Does not enter its hole: %s.".formatted(names(fit.mating().blocked())));
    }
    details.add(
        "%s %s%s%s, tightest at %s."
            .formatted(
                slack < 0 ? "Too little play by" : "Clearance left:",
                lengths.both(Math.abs(slack)),
                slack < 0 ? "" : " either way",
                Lengths.likelyWithin(lengths.with(fit.slackSdMm())),
                names(fit.mating().tight())));
    fit.enlargement()
        .flatMap(Enlargement::best)
        .ifPresent(
            one ->
                details.add(
                    "Least work: open hole %s to %s at the very least."
                        .formatted(
                            key.apply(one.name()), lengths.with(one.diameterMm().orElseThrow()))));
  }

  private static Optional<Block> play(DrilledSide side) {
    return side.fit()
        .flatMap(PlateFit::play)
        .map(
            p ->
                Phrases.explain(
                    "Before the bolts bind it turns by %s deg to less and %s deg to more rotation.",
                    Lengths.degrees(p.turnBack().radians()),
                    Lengths.degrees(p.turnOn().radians())));
  }

  private String names(Collection<String> holes) {
    return String.join(", ", holes.stream().map(key).toList());
  }

  private Block.Table enlargement(Enlargement e) {
    return Block.Table.of("open alone", "to", "by")
        .each(
            e.each(),
            one ->
                List.of(
                    words("hole " + key.apply(one.name())),
                    one.diameterMm().<Cell>map(Cell::length).orElse(words("does not help")),
                    one.byMm().<Cell>map(Cell::length).orElse(Cell.EMPTY)));
  }

  /**
   * Where the holes are.
   *
   * @param side a tower
   * @return a table; empty if no hole was found
   */
  public Optional<Block.Table> holes(DrilledSide side) {
    boolean tied = side.network().tied();
    List<String> heads = new ArrayList<>(List.of("hole", "drawn", "size"));
    if (tied) {
      heads.addAll(List.of("planned fore", "planned in", "found fore", "found in"));
      heads.addAll(List.of("off fore", "off in", "off by"));
    }
    heads.add("off the pattern");
    return new Block.Table(heads, List.of()).each(side.holes(), this::hole).ifAny();
  }

  private List<Cell> hole(Hole hole) {
    HoleNetwork.Found found = hole.found();
    Vec2 planned = found.planned().at();
    List<Cell> row = new ArrayList<>();
    row.add(words(key.apply(found.name())));
    row.add(length(found.planned().diameterMm()));
    row.add(length(found.diameterMm()).likely(found.diameterSdMm()));
    hole.error()
        .ifPresent(
            e -> {
              row.add(length(planned.x()));
              row.add(length(planned.y()));
              row.add(length(found.at().x()).likely(found.foreSdMm()));
              row.add(length(found.at().y()).likely(found.inSdMm()));
              row.addAll(List.of(length(e.x()), length(e.y()), length(e.norm())));
            });
    row.add(length(hole.left().map(Vec2::norm)));
    return row;
  }

  private Optional<Block.Table> spans(DrilledSide side) {
    return Block.Table.of("centres", "planned", "found", "off", Lengths.LIKELY, Phrases.OFF_BY)
        .each(
            side.spans(),
            s ->
                List.of(
                    words(key.apply(s.from()) + " - " + key.apply(s.to())),
                    length(s.plannedMm()),
                    length(s.foundMm()),
                    length(s.errorMm()),
                    length(s.sdMm()),
                    length(s.toleranceMm())))
        .ifAny();
  }

  /**
   * The metal left beside each hole.
   *
   * @param side a tower
   * @return a table
   */
  public Block.Table metal(DrilledSide side) {
    String likely = Lengths.LIKELY;
    return Block.Table.of(
            "metal beside hole", "needed", "to planned cut", likely, "to cut as read", likely)
        .each(side.edges(), this::metal);
  }

  private List<Cell> metal(EdgeMetal e) {
    List<Cell> row = new ArrayList<>();
    row.add(words(key.apply(e.hole())));
    row.add(length(e.limitMm()));
    row.addAll(metal(e.toPlannedMm(), e.toPlannedSdMm(), e.limitMm()));
    double cutSdMm = e.toCut().map(Repeated::meanSd).orElse(0.0);
    row.addAll(metal(e.toCut().map(Repeated::mean), cutSdMm, e.limitMm()));
    return row;
  }

  private static List<Cell> metal(Optional<Double> mm, double sdMm, double limitMm) {
    return mm.<List<Cell>>map(v -> List.of(length(v).marked(SHORT, v < limitMm), length(sdMm)))
        .orElse(List.of(Cell.NONE, Cell.NONE));
  }

  /**
   * What the tables of holes and metal mean.
   *
   * @param side a tower
   * @return sentences
   */
  public String explained(DrilledSide side) {
    String rules =
        side.edges().stream().map(EdgeMetal::source).distinct().collect(Collectors.joining("; "));
    return ("Off the pattern: what is left of a hole's error once the planned pattern is laid on"
            + " the holes as well as it goes. Metal: from the hole's edge; needed is %s, less"
            + " the hole's radius; %s is less than that.")
        .formatted(rules, SHORT);
  }

  /**
   * Where the plate now goes.
   *
   * @param side a tower
   * @return a table; empty where it is not known
   */
  public Optional<Block.Table> place(DrilledSide side) {
    return side.asDrilled().map(as -> place(side.planned().job().mount(), as));
  }

  private Block.Table place(Mount planned, AsDrilled as) {
    Mount now = as.mount();
    return Block.Table.of(
            "middle of the plate's play", "planned", "as drilled", "off", Lengths.LIKELY)
        .plus(
            words("rotation, deg"),
            angle(planned.rotation()),
            angle(now.rotation()),
            angle(now.rotation().radians() - planned.rotation().radians()),
            angle(as.rotationSd()))
        .plus(row("rearward", planned.rearwardMm(), now.rearwardMm(), as.rearwardSdMm()))
        .plus(row("inboard", planned.inboardMm(), now.inboardMm(), as.inboardSdMm()));
  }

  private List<Cell> row(String name, double planned, double now, double sd) {
    return List.of(
        words(name + ", " + lengths.unit().symbol()),
        length(planned),
        length(now),
        length(now - planned),
        length(sd));
  }

  /**
   * What the drilling does to the alignment.
   *
   * @param side a tower
   * @param known what is known of it
   * @return a table and its words; only words where nothing is known
   */
  public List<Block> angles(DrilledSide side, Optional<DrilledAngles> known) {
    return known.map(a -> angles(side, a)).orElse(List.of());
  }

  private List<Block> angles(DrilledSide side, DrilledAngles a) {
    if (a.caster().isEmpty() || a.camber().isEmpty()) {
      return List.of(
          Phrases.explain(
              "Alignment: not known, as the job gives nothing to calculate it from, or no"
                  + " linkage."));
    }
    String settingText = lengths.size(side.planned().job().mount().settingMm());
    Block.Table table =
        Block.Table.of(
            "at setting %s, deg".formatted(settingText),
            "planned",
            "as drilled",
            "off",
            Lengths.LIKELY,
            "with points");
    table = table.plus(row("caster", a.caster().get())).plus(row("camber", a.camber().get()));
    if (a.toe().isPresent()) {
      table = table.plus(row("toe, not reset", a.toe().get()));
    }
    boolean estimate = a.basis() == DrilledAngles.Basis.AXIS_ESTIMATE;
    List<Block> blocks = new ArrayList<>();
    blocks.add(table);
    blocks.add(
        Phrases.explain(
            "%sLikely, 2 in 3, of what is off: by the holes' places, then with the points'"
                + " share too. Toe is what the tie rod leaves: set it again before driving.",
            estimate ? "An estimate from the steering axis alone. " : ""));
    a.nearest()
        .map(
            n ->
                Phrases.explain(
                    "Nearest to the planned angles: setting %s%s.",
                    setting(n.anywhere()),
                    n.atMark().map(m -> "; of the marks " + setting(m)).orElse("")))
        .ifPresent(blocks::add);
    return blocks;
  }

  private static List<Cell> row(String name, DrilledAngles.Figure f) {
    return List.of(
        words(name),
        angle(f.planned()),
        angle(f.drilled()),
        angle(f.change()),
        angle(f.uncertainty().map(DrilledAngles.Uncertainty::holes)),
        angle(f.uncertainty().flatMap(DrilledReport::withPoints)));
  }

  private static Optional<Angle> withPoints(DrilledAngles.Uncertainty u) {
    return u.pointsOfChange()
        .map(points -> new Angle(Math.hypot(points.radians(), u.holes().radians())));
  }

  private String setting(NearestSetting.Setting s) {
    return "%s, caster %s, camber %s deg, %s deg away"
        .formatted(
            lengths.size(s.settingMm()),
            Lengths.degrees(s.caster()),
            Lengths.degrees(s.camber()),
            Lengths.degrees(s.away()));
  }

  /**
   * Stops, cautions, and what only looking can tell.
   *
   * @param side a tower
   * @param accepted ids of accepted stop findings
   * @return a line each
   */
  public static Block.Points toldOnPaper(DrilledSide side, Collection<String> accepted) {
    List<Finding> told =
        side.findings().stream()
            .filter(f -> f.severity() != Severity.NOTE || f.id().contains(".drilled-mirror"))
            .toList();
    return FindingWords.lines(told, accepted);
  }
}
