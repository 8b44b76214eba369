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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A survey's result. */
public final class SurveyReport {
  /** So many of the worst readings are told. */
  private static final int WORST = 8;

  private static final Cell NOT_FIXED = words("not fixed");
  private static final Cell GIVEN = words("given");

  private final SurveyResult result;
  private final Lengths lengths;
  private final List<Block> blocks = new ArrayList<>();

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
    report.stations();
    result.sides().forEach(report::side);
    report.readings();
    report.blocks.addAll(
        FindingWords.all(
            result.findings(),
            accepted,
            "the tables wait for them",
            "look at these readings again",
            "passed, or for information"));
    return new Report("Towerscribe survey", report.lengths, report.blocks);
  }

  private void head(Set<String> accepted) {
    List<Block.Fact> facts =
        Phrases.facts("survey", result.survey().title(), result.survey().date());
    facts.add(Phrases.program());
    facts.add(
        new Block.Fact(
            "result",
            FindingWords.result(
                result.stops(),
                accepted,
                "no tables",
                "what they are about is left out or widened")));
    blocks.add(new Block.Facts(facts));
    blocks.add(
        Phrases.say(
            "Lengths in %s, angles in degrees. Points of both sides as if on the left: forward of"
                + " the wheel centres, out from the car's middle, up from the floor. %s, from the"
                + " uncertainty of the readings; readings of stop findings are left out.",
            Phrases.unit(lengths), Phrases.LIKELY_MEANS));
  }

  private List<PointResult> pointsOf(Optional<Side> side) {
    return result.points().stream().filter(p -> p.point().side().equals(side)).toList();
  }

  private void stations() {
    List<PointResult> stations = pointsOf(Optional.empty());
    if (!stations.isEmpty()) {
      blocks.add(new Block.Section("Stations"));
      blocks.add(points(stations, "left"));
    }
  }

  private static Block.Table points(List<PointResult> points, String outward) {
    Block.Table table =
        Block.Table.of(
            "point", "forward", outward, "up", Phrases.LIKELY + ": forward", outward, "up");
    for (PointResult p : points) {
      boolean sure = p.found() && !p.given();
      Cell notSure = p.given() ? GIVEN : Cell.NONE;
      table =
          table.plus(
              List.of(
                  words(p.point().name()),
                  tape(p.at().x(), p.found(), NOT_FIXED),
                  tape(p.at().y(), p.found(), NOT_FIXED),
                  tape(p.at().z(), p.found(), NOT_FIXED),
                  tape(p.spread().sd().x(), sure, notSure),
                  tape(p.spread().sd().y(), sure, notSure),
                  tape(p.spread().sd().z(), sure, notSure)));
    }
    return table;
  }

  private static Cell tape(double mm, boolean known, Cell otherwise) {
    return known ? figure(Amount.Kind.TAPE_LENGTH, mm) : otherwise;
  }

  private void side(Side side, SideResult s) {
    blocks.add(new Block.Section(side.word()));
    List<PointResult> points = pointsOf(Optional.of(side));
    if (!points.isEmpty()) {
      blocks.add(points(points, "out"));
    }
    List<List<Cell>> rows = new ArrayList<>();
    row(rows, "tyre radius", s.tyreRadius(), Amount.Kind.LENGTH);
    row(rows, "camber", s.camber(), Amount.Kind.ANGLE);
    row(rows, "toe", s.toe(), Amount.Kind.ANGLE);
    s.tower().ifPresent(t -> tower(t, rows));
    Block.Table table = Block.Table.of("figure", "is", Phrases.LIKELY);
    for (List<Cell> row : rows) {
      table = table.plus(row);
    }
    if (!rows.isEmpty()) {
      blocks.add(table);
    }
    s.tower().filter(t -> !t.landmarks().isEmpty()).ifPresent(this::holes);
  }

  private static void tower(TowerResult t, List<List<Cell>> rows) {
    row(rows, "sheet", t.sheet(), Amount.Kind.LENGTH);
    row(rows, "opening", t.opening(), Amount.Kind.LENGTH);
    row(rows, "mark", t.mark(), Amount.Kind.LENGTH);
    row(rows, "lean inboard", t.leanInboard(), Amount.Kind.ANGLE);
    row(rows, "lean rearward", t.leanRearward(), Amount.Kind.ANGLE);
    row(rows, "crown across", t.crownAcross(), Amount.Kind.LENGTH);
    row(rows, "crown rise", t.crownRise(), Amount.Kind.LENGTH);
    row(rows, "pivot height", t.pivotHeight(), Amount.Kind.LENGTH);
  }

  private static void row(
      List<List<Cell>> rows, String name, Optional<Figure> figure, Amount.Kind kind) {
    figure.ifPresent(
        f -> rows.add(List.of(words(name), figure(kind, f.value()), figure(kind, f.sd()))));
  }

  private void holes(TowerResult t) {
    Block.Table table =
        Block.Table.of(
            "landmark", "fore", "in", Phrases.LIKELY + ": fore", "in", "diameter", Phrases.LIKELY);
    for (TowerResult.Hole h : t.landmarks()) {
      table =
          table.plus(
              List.of(
                  words(h.name()),
                  h.found() ? length(h.at().x()) : NOT_FIXED,
                  h.found() ? length(h.at().y()) : NOT_FIXED,
                  h.found() ? length(h.sd().x()) : Cell.NONE,
                  h.found() ? length(h.sd().y()) : Cell.NONE,
                  length(h.diameter().value()),
                  length(h.diameter().sd())));
    }
    blocks.add(table);
    t.datum()
        .ifPresent(
            d ->
                blocks.add(
                    Phrases.explain(
                        "Of this uncertainty, all landmarks turned together: %s deg, shifted"
                            + " together: %s; each by itself: %s.",
                        Lengths.degrees(d.turnSd()),
                        lengths.with(d.shiftSdMm()),
                        lengths.with(d.landmarkSdMm()))));
  }

  private void readings() {
    blocks.add(new Block.Section("Readings"));
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
      blocks.add(
          Phrases.say(
              "The readings that fit worst. Off: from what the others make of it, in standard"
                  + " deviations; a slip as large as the last column is found four times in"
                  + " five."));
      Block.Table table = Block.Table.of("reading", "mean", "fits", "off", "slip found");
      for (ReadingResult r : worst) {
        table =
            table.plus(
                List.of(
                    words(name(r)),
                    length(r.readMm()),
                    length(r.computedMm()),
                    figure(Amount.Kind.NUMBER, r.deviations()),
                    length(r.slipMm())));
      }
      blocks.add(table);
    }
    List<String> alone =
        result.readings().stream().filter(r -> !r.checked()).map(SurveyReport::name).toList();
    if (!alone.isEmpty()) {
      blocks.add(Phrases.say("Readings that no other reading checks:"));
      blocks.add(new Block.Points(alone));
    }
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
    blocks.add(
        Phrases.say(
            "%s: %s entries, %s spare readings%s.",
            Phrases.capital(what), fit.entries(), fit.freedom(), good));
  }
}
