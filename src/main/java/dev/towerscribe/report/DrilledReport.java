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
import dev.towerscribe.drilled.DrilledSide.SpanFound;
import dev.towerscribe.drilled.Enlargement;
import dev.towerscribe.drilled.NearestSetting;
import dev.towerscribe.drilled.PlateFit;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

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
    DrilledReport words =
        new DrilledReport(Lengths.in(drilled.job().units()), UnaryOperator.identity());
    List<Block> blocks = new ArrayList<>();
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Phrases.fact("job", drilled.job().title()));
    facts.addAll(Phrases.facts("readings", drilled.readings().title(), drilled.readings().date()));
    facts.add(Phrases.program());
    blocks.add(new Block.Facts(facts));
    blocks.add(Phrases.say(words.signs()));
    blocks.add(
        Phrases.say(
            "A record of what was measured, not a certificate: the vehicle maker's limits and the"
                + " law come first."));
    for (DrilledSide side : drilled.sides().values()) {
      blocks.add(Phrases.section(side.side(), "tower"));
      blocks.add(words.verdict(side));
      play(side).ifPresent(blocks::add);
      words.enlargement(side).ifPresent(blocks::add);
      words.holes(side).ifPresent(blocks::add);
      words.spans(side).ifPresent(blocks::add);
      blocks.add(words.metal(side));
      blocks.add(Phrases.explain(words.explained(side)));
      words.place(side).ifPresent(blocks::add);
      blocks.addAll(words.angles(side, Optional.ofNullable(angles.get(side.side()))));
      blocks.add(FindingWords.lines(side.findings(), accepted));
    }
    return new Report("Towerscribe drilled holes", words.lengths, blocks);
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
    if (side.fit().isPresent()) {
      fit(side.fit().get(), details);
    } else {
      details.add("A hole is not fixed by the readings.");
    }
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
                Phrases.likelyWithin(lengths.with(fit.slackSdMm())),
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

  private Optional<Block.Table> enlargement(DrilledSide side) {
    return side.fit().flatMap(PlateFit::enlargement).map(this::enlargement);
  }

  private Block.Table enlargement(Enlargement e) {
    Block.Table table = Block.Table.of("open alone", "to", "by");
    for (Enlargement.One one : e.each()) {
      Optional<Cell> to = one.diameterMm().map(Cell::length);
      table =
          table.plus(
              List.of(
                  words("hole " + key.apply(one.name())),
                  to.orElse(words("does not help")),
                  one.byMm().<Cell>map(Cell::length).orElse(Cell.EMPTY)));
    }
    return table;
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
    Block.Table table = new Block.Table(heads, List.of());
    for (Hole hole : side.holes()) {
      var found = hole.found();
      List<Cell> row = new ArrayList<>();
      row.add(words(key.apply(found.name())));
      row.add(length(found.planned().diameterMm()));
      row.add(length(found.diameterMm()).likely(found.diameterSdMm()));
      hole.error()
          .ifPresent(
              e ->
                  row.addAll(
                      List.of(
                          length(found.planned().at().x()),
                          length(found.planned().at().y()),
                          length(found.at().x()).likely(found.foreSdMm()),
                          length(found.at().y()).likely(found.inSdMm()),
                          length(e.x()),
                          length(e.y()),
                          length(e.norm()))));
      row.add(length(hole.left().map(v -> v.norm())));
      table = table.plus(row);
    }
    return Optional.of(table).filter(t -> !t.rows().isEmpty());
  }

  private Optional<Block.Table> spans(DrilledSide side) {
    Block.Table table =
        Block.Table.of("centres", "planned", "found", "off", Phrases.LIKELY, Phrases.OFF_BY);
    for (SpanFound s : side.spans()) {
      table =
          table.plus(
              List.of(
                  words(key.apply(s.from()) + " - " + key.apply(s.to())),
                  length(s.plannedMm()),
                  length(s.foundMm()),
                  length(s.errorMm()),
                  length(s.sdMm()),
                  length(s.toleranceMm())));
    }
    return Optional.of(table).filter(t -> !t.rows().isEmpty());
  }

  /**
   * The metal left beside each hole.
   *
   * @param side a tower
   * @return a table
   */
  public Block.Table metal(DrilledSide side) {
    Block.Table table =
        Block.Table.of(
            "metal beside hole",
            "needed",
            "to planned cut",
            Phrases.LIKELY,
            "to cut as read",
            Phrases.LIKELY);
    for (EdgeMetal e : side.edges()) {
      List<Cell> row = new ArrayList<>();
      row.add(words(key.apply(e.hole())));
      row.add(length(e.limitMm()));
      row.addAll(metal(e.toPlannedMm(), e.toPlannedSdMm(), e.limitMm()));
      row.addAll(
          metal(
              e.toCut().map(Repeated::mean),
              e.toCut().map(Repeated::meanSd).orElse(0.0),
              e.limitMm()));
      table = table.plus(row);
    }
    return table;
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
    return ("Off the pattern: what is left of a hole's error once the planned pattern is laid on"
            + " the holes as well as it goes. Metal: from the hole's edge; needed is %s, less"
            + " the hole's radius; %s is less than that.")
        .formatted(side.planned().job().holes().edgeRule().source(), SHORT);
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
            "middle of the plate's play", "planned", "as drilled", "off", Phrases.LIKELY)
        .plus(
            List.of(
                words("rotation, deg"),
                angle(planned.rotation()),
                angle(now.rotation()),
                angle(now.rotation().radians() - planned.rotation().radians()),
                angle(as.rotationSd())))
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
    if (known.isEmpty()) {
      return List.of();
    }
    DrilledAngles a = known.get();
    if (a.caster().isEmpty() || a.camber().isEmpty()) {
      return List.of(
          Phrases.explain(
              "Alignment: not known, as the job gives nothing to calculate it from, or no"
                  + " linkage."));
    }
    Block.Table table =
        Block.Table.of(
                "at setting %s, deg"
                    .formatted(lengths.size(side.planned().job().mount().settingMm())),
                "planned",
                "as drilled",
                "off",
                Phrases.LIKELY,
                "with points")
            .plus(row("caster", a.caster().get()))
            .plus(row("camber", a.camber().get()));
    if (a.toe().isPresent()) {
      table = table.plus(row("toe, not reset", a.toe().get()));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(table);
    blocks.add(
        Phrases.explain(
            (a.basis() == DrilledAngles.Basis.AXIS_ESTIMATE
                    ? "An estimate from the steering axis alone. "
                    : "")
                + "Likely, 2 in 3, of what is off: by the holes' places, then with the points'"
                + " share too. Toe is what the tie rod leaves: set it again before driving."));
    a.nearest()
        .ifPresent(
            n ->
                blocks.add(
                    Phrases.explain(
                        "Nearest to the planned angles: setting %s%s.",
                        setting(n.anywhere()),
                        n.atMark().map(m -> "; of the marks " + setting(m)).orElse(""))));
    return blocks;
  }

  private static List<Cell> row(String name, DrilledAngles.Figure f) {
    return List.of(
        words(name),
        angle(f.planned()),
        angle(f.drilled()),
        angle(f.change()),
        f.uncertainty().<Cell>map(d -> angle(d.holes())).orElse(Cell.NONE),
        f.uncertainty()
            .flatMap(
                d ->
                    d.pointsOfChange()
                        .<Cell>map(p -> angle(Math.hypot(p.radians(), d.holes().radians()))))
            .orElse(Cell.NONE));
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
