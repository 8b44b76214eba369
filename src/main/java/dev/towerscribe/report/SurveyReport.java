package dev.towerscribe.report;

import static dev.towerscribe.report.Cell.figure;
import static dev.towerscribe.report.Cell.length;
import static dev.towerscribe.report.Cell.words;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.survey.Figure;
import dev.towerscribe.survey.Fit;
import dev.towerscribe.survey.PointResult;
import dev.towerscribe.survey.ReadingResult;
import dev.towerscribe.survey.SideResult;
import dev.towerscribe.survey.SurveyResult;
import dev.towerscribe.survey.TowerResult;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A survey's result. */
public final class SurveyReport {
  /** So many of the worst readings are told. */
  private static final int WORST = 8;

  private static final Cell NOT_FIXED = words("not fixed");
  private static final Cell GIVEN = words("given");

  private final SurveyResult result;
  private final Lengths lengths;
  private final Blocks blocks = new Blocks();

  private SurveyReport(SurveyResult result) {
    this.result = result;
    this.lengths = Lengths.in(result.survey().units());
  }

  /**
   * The report of a survey.
   *
   * @param result any result
   * @param accepted ids of accepted stop findings
   * @return the report
   */
  public static Report of(SurveyResult result, Set<String> accepted) {
    SurveyReport report = new SurveyReport(result);
    report.head(accepted);
    report
        .points(Optional.empty(), "left")
        .ifPresent(stations -> report.blocks.section("Stations").add(stations));
    result.sides().forEach(report::side);
    report.readings();
    report.blocks.addAll(
        FindingWords.all(
            result.findings(),
            accepted,
            "the tables wait for them",
            "look at these readings again",
            "passed, or for information"));
    return report.blocks.report("Towerscribe survey", report.lengths);
  }

  private void head(Set<String> accepted) {
    List<Block.Fact> facts =
        Phrases.facts("survey", result.survey().title(), result.survey().date());
    facts.add(Phrases.program());
    String told = "what they are about is left out or widened";
    facts.add(
        new Block.Fact("result", FindingWords.result(result.stops(), accepted, "no tables", told)));
    blocks
        .add(new Block.Facts(facts))
        .say(
            "Lengths in %s, angles in degrees. Points of both sides as if on the left: forward of"
                + " the wheel centres, out from the car's middle, up from the floor. %s, from the"
                + " uncertainty of the readings; readings of stop findings are left out.",
            Phrases.unit(lengths), Phrases.LIKELY_MEANS);
  }

  private Optional<Block.Table> points(Optional<Side> side, String outward) {
    String likely = Lengths.LIKELY + ": forward";
    return Block.Table.of("point", "forward", outward, "up", likely, outward, "up")
        .each(
            result.points().stream().filter(p -> p.point().side().equals(side)).toList(),
            SurveyReport::point)
        .ifAny();
  }

  private static List<Cell> point(PointResult p) {
    boolean sure = p.found() && !p.given();
    Cell notSure = p.given() ? GIVEN : Cell.NONE;
    return List.of(
        words(p.point().name()),
        tape(p.at().x(), p.found(), NOT_FIXED),
        tape(p.at().y(), p.found(), NOT_FIXED),
        tape(p.at().z(), p.found(), NOT_FIXED),
        tape(p.spread().sd().x(), sure, notSure),
        tape(p.spread().sd().y(), sure, notSure),
        tape(p.spread().sd().z(), sure, notSure));
  }

  private static Cell tape(double mm, boolean known, Cell otherwise) {
    return known ? figure(Amount.TAPE_LENGTH, mm) : otherwise;
  }

  private void side(Side side, SideResult s) {
    blocks.section(side.word()).add(points(Optional.of(side), "out"));
    Stream<List<Cell>> wheel =
        Stream.of(
                row("tyre radius", s.tyreRadius(), Amount.LENGTH),
                row("camber", s.camber(), Amount.ANGLE),
                row("toe", s.toe(), Amount.ANGLE))
            .flatMap(Optional::stream);
    Stream<List<Cell>> tower = s.tower().stream().flatMap(SurveyReport::tower);
    blocks.add(
        Block.Table.of("figure", "is", Lengths.LIKELY)
            .each(Stream.concat(wheel, tower).toList(), row -> row)
            .ifAny());
    s.tower().filter(t -> !t.landmarks().isEmpty()).ifPresent(this::holes);
  }

  private static Stream<List<Cell>> tower(TowerResult t) {
    return Stream.of(
            row("sheet", t.sheet(), Amount.LENGTH),
            row("opening", t.opening(), Amount.LENGTH),
            row("mark", t.mark(), Amount.LENGTH),
            row("lean inboard", t.leanInboard(), Amount.ANGLE),
            row("lean rearward", t.leanRearward(), Amount.ANGLE),
            row("crown across", t.crownAcross(), Amount.LENGTH),
            row("crown rise", t.crownRise(), Amount.LENGTH),
            row("pivot height", t.pivotHeight(), Amount.LENGTH))
        .flatMap(Optional::stream);
  }

  private static Optional<List<Cell>> row(String name, Optional<Figure> figure, Amount amount) {
    return figure.map(f -> List.of(words(name), figure(amount, f.value()), figure(amount, f.sd())));
  }

  private void holes(TowerResult t) {
    String likely = Lengths.LIKELY;
    blocks
        .add(
            Block.Table.of("landmark", "fore", "in", likely + ": fore", "in", "diameter", likely)
                .each(t.landmarks(), SurveyReport::hole))
        .add(
            t.datum()
                .map(
                    d ->
                        Phrases.explain(
                            "Of this uncertainty, all landmarks turned together: %s deg, shifted"
                                + " together: %s; each by itself: %s.",
                            Lengths.degrees(d.turnSd()),
                            lengths.with(d.shiftSdMm()),
                            lengths.with(d.landmarkSdMm()))));
  }

  private static List<Cell> hole(TowerResult.Hole h) {
    return List.of(
        words(h.name()),
        h.found() ? length(h.at().x()) : NOT_FIXED,
        h.found() ? length(h.at().y()) : NOT_FIXED,
        h.found() ? length(h.sd().x()) : Cell.NONE,
        h.found() ? length(h.sd().y()) : Cell.NONE,
        length(h.diameter().value()),
        length(h.diameter().sd()));
  }

  private void readings() {
    blocks.section("Readings");
    fit("the car's points", result.fit());
    result
        .sides()
        .forEach(
            (side, s) ->
                s.tower().ifPresent(t -> fit("the %s tower".formatted(side.word()), t.fit())));
    List<ReadingResult> worst =
        result.readings().stream()
            .filter(ReadingResult::checked)
            .sorted(Comparator.comparingDouble(r -> -Math.abs(r.deviations())))
            .limit(WORST)
            .toList();
    if (!worst.isEmpty()) {
      blocks
          .say(
              "The readings that fit worst. Off: from what the others make of it, in standard"
                  + " deviations; a slip as large as the last column is found four times in"
                  + " five.")
          .add(
              Block.Table.of("reading", "mean", "fits", "off", "slip found")
                  .each(worst, SurveyReport::reading));
    }
    List<String> alone =
        result.readings().stream().filter(r -> !r.checked()).map(SurveyReport::name).toList();
    if (!alone.isEmpty()) {
      blocks.say("Readings that no other reading checks:").add(new Block.Points(alone));
    }
  }

  private static List<Cell> reading(ReadingResult r) {
    return List.of(
        words(name(r)),
        length(r.readMm()),
        length(r.computedMm()),
        figure(Amount.NUMBER, r.deviations()),
        length(r.slipMm()));
  }

  private static String name(ReadingResult r) {
    return r.id().substring(0, r.id().indexOf('.')) + ": " + r.words();
  }

  private void fit(String what, Fit fit) {
    if (fit.entries() == 0) {
      return;
    }
    String kinds =
        String.join(
            ", ",
            fit.kinds().stream().map(k -> k.name() + " " + Numbers.fixed(k.ratio(), 2)).toList());
    String good =
        fit.freedom() < 1
            ? "; nothing tells how good they are"
            : ", s0 %s%s%s"
                .formatted(
                    Numbers.fixed(fit.ratio(), 2),
                    kinds.isEmpty() ? "" : " (" + kinds + ")",
                    fit.widened() > 1
                        ? "; every uncertainty widened by " + Numbers.fixed(fit.widened(), 2)
                        : "");
    blocks.say(
        "%s: %s entries, %s spare readings%s.",
        Phrases.capital(what), fit.entries(), fit.freedom(), good);
  }
}
