package dev.towerscribe.cli;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Version;
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
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** A survey's result in words. Lengths in the survey's unit, angles in degrees. */
final class SurveyText {
  /** So many of the worst readings are told. */
  private static final int WORST = 8;

  private final TextLines text = new TextLines();
  private final SurveyResult result;
  private final Set<String> accepted;
  private final LengthUnit unit;

  private SurveyText(SurveyResult result, Set<String> accepted) {
    this.result = result;
    this.accepted = accepted;
    this.unit = result.survey().units();
  }

  /**
   * Writes a result.
   *
   * @param result any result
   * @param accepted ids of accepted stop findings
   * @return lines ended by line feeds
   */
  static String of(SurveyResult result, Set<String> accepted) {
    SurveyText report = new SurveyText(result, accepted);
    report.all();
    return report.text.toString();
  }

  private void all() {
    text.line("Towerscribe survey");
    text.line("");
    text.line("survey     " + result.survey().title());
    result.survey().date().ifPresent(d -> text.line("date       " + d));
    text.line("program    Towerscribe " + Version.TEXT);
    long open = result.stops().stream().filter(f -> !accepted.contains(f.id())).count();
    text.line(
        "result     "
            + (open > 0
                ? open
                    + " stop finding"
                    + (open == 1 ? "" : "s")
                    + ": no tables until put right or"
                    + " accepted by id"
                : accepted.isEmpty()
                    ? "no stop finding"
                    : accepted.size()
                        + " stop finding"
                        + (accepted.size() == 1 ? "" : "s")
                        + " accepted: what they are about is left out or widened"));
    result.stops().stream()
        .filter(f -> !accepted.contains(f.id()))
        .forEach(f -> text.wrapped("           ", f.id() + ": " + f.say()));
    text.line("");
    text.wrapped(
        "",
        "Lengths in "
            + (unit == LengthUnit.MM ? "mm" : "inches")
            + ", angles in degrees. Points of both sides as if on the left: forward of the wheel"
            + " centres, out from the car's middle, up from the floor. +/- is one standard"
            + " deviation, from the doubts of the readings; readings of stop findings are left"
            + " out.");
    stations();
    result.sides().forEach(this::side);
    readings();
    for (Severity severity : Severity.values()) {
      List<Finding> these =
          result.findings().stream().filter(f -> f.severity() == severity).toList();
      text.line("");
      text.line(severity.word() + " findings: " + (these.isEmpty() ? "none" : these.size()));
      these.forEach(this::finding);
    }
  }

  private void stations() {
    List<PointResult> stations =
        result.points().stream().filter(p -> p.point().side().isEmpty()).toList();
    if (!stations.isEmpty()) {
      title("STATIONS");
      points(stations, "left");
    }
  }

  private void title(String words) {
    text.line("");
    text.line(words);
    text.line("=".repeat(words.length()));
  }

  private void points(List<PointResult> points, String outward) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("point", "forward", outward, "up", "+/- forward", outward, "up"));
    for (PointResult p : points) {
      List<String> row = new ArrayList<>();
      row.add(p.point().name());
      for (double v : parts(p.at())) {
        row.add(p.found() ? coarse(v) : "not fixed");
      }
      for (double v : parts(p.spread().sd())) {
        row.add(p.given() ? "given" : p.found() ? coarse(v) : "-");
      }
      rows.add(row);
    }
    text.table(rows);
  }

  private static double[] parts(Vec3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }

  private void side(Side side, SideResult s) {
    title(side.word().toUpperCase(Locale.ROOT));
    List<PointResult> points =
        result.points().stream().filter(p -> p.point().side().equals(Optional.of(side))).toList();
    if (!points.isEmpty()) {
      points(points, "out");
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("figure", "is", "+/-"));
    s.tyreRadius().ifPresent(f -> rows.add(row("tyre radius", f, false)));
    s.camber().ifPresent(f -> rows.add(row("camber", f, true)));
    s.toe().ifPresent(f -> rows.add(row("toe", f, true)));
    s.tower().ifPresent(t -> tower(t, rows));
    if (rows.size() > 1) {
      text.table(rows);
    }
    s.tower().ifPresent(this::holes);
  }

  private void tower(TowerResult t, List<List<String>> rows) {
    t.sheet().ifPresent(f -> rows.add(row("sheet", f, false)));
    t.opening().ifPresent(f -> rows.add(row("opening", f, false)));
    t.mark().ifPresent(f -> rows.add(row("mark", f, false)));
    t.leanInboard().ifPresent(f -> rows.add(row("lean inboard", f, true)));
    t.leanRearward().ifPresent(f -> rows.add(row("lean rearward", f, true)));
    t.crownAcross().ifPresent(f -> rows.add(row("crown across", f, false)));
    t.crownRise().ifPresent(f -> rows.add(row("crown rise", f, false)));
    t.pivotHeight().ifPresent(f -> rows.add(row("pivot height", f, false)));
  }

  private List<String> row(String name, Figure f, boolean angle) {
    return angle
        ? List.of(
            name,
            Numbers.fixed(Math.toDegrees(f.value()), 2),
            Numbers.fixed(Math.toDegrees(f.sd()), 2))
        : List.of(name, fine(f.value()), fine(f.sd()));
  }

  private void holes(TowerResult t) {
    if (t.landmarks().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("landmark", "fore", "in", "+/- fore", "in", "diameter", "+/-"));
    for (TowerResult.Hole h : t.landmarks()) {
      rows.add(
          List.of(
              h.name(),
              h.found() ? fine(h.at().x()) : "not fixed",
              h.found() ? fine(h.at().y()) : "not fixed",
              h.found() ? fine(h.sd().x()) : "-",
              h.found() ? fine(h.sd().y()) : "-",
              fine(h.diameter().value()),
              fine(h.diameter().sd())));
    }
    text.table(rows);
    t.datum()
        .ifPresent(
            d ->
                text.line(
                    "  of these +/-, all landmarks turned together: "
                        + Numbers.fixed(Math.toDegrees(d.turnSd()), 2)
                        + " deg, shifted together: "
                        + fine(d.shiftSdMm())
                        + "; each by itself: "
                        + fine(d.landmarkSdMm())));
  }

  private void readings() {
    title("READINGS");
    fit("the car's points", result.fit());
    result
        .sides()
        .forEach(
            (side, s) -> s.tower().ifPresent(t -> fit("the " + side.word() + " tower", t.fit())));
    List<ReadingResult> worst =
        result.readings().stream()
            .filter(ReadingResult::checked)
            .sorted(Comparator.comparingDouble(r -> -Math.abs(r.deviations())))
            .limit(WORST)
            .toList();
    if (!worst.isEmpty()) {
      text.line("");
      text.wrapped(
          "",
          "The readings that fit worst. off: from what the others make of it, in standard"
              + " deviations; a slip as large as the last column is found four times in five.");
      List<List<String>> rows = new ArrayList<>();
      rows.add(List.of("reading", "mean", "fits", "off", "slip found"));
      for (ReadingResult r : worst) {
        rows.add(
            List.of(
                r.id().substring(0, r.id().indexOf('.')) + ": " + r.words(),
                fine(r.readMm()),
                fine(r.computedMm()),
                Numbers.fixed(r.deviations(), 1),
                fine(r.slipMm())));
      }
      text.table(rows);
    }
    List<ReadingResult> alone = result.readings().stream().filter(r -> !r.checked()).toList();
    if (!alone.isEmpty()) {
      text.line("");
      text.line("Readings that no other reading checks:");
      alone.forEach(
          r -> text.wrapped("  ", r.id().substring(0, r.id().indexOf('.')) + ": " + r.words()));
    }
  }

  private void fit(String what, Fit fit) {
    if (fit.entries() == 0) {
      return;
    }
    text.wrapped(
        "",
        what
            + ": "
            + fit.entries()
            + " entries, "
            + fit.freedom()
            + " readings to spare"
            + (fit.freedom() < 1
                ? "; nothing tells how good they are"
                : ", s0 "
                    + Numbers.fixed(fit.ratio(), 2)
                    + (fit.kinds().isEmpty()
                        ? ""
                        : " ("
                            + String.join(
                                ", ",
                                fit.kinds().stream()
                                    .map(k -> k.name() + " " + Numbers.fixed(k.ratio(), 2))
                                    .toList())
                            + ")")
                    + (fit.widened() > 1
                        ? "; every +/- widened by " + Numbers.fixed(fit.widened(), 2)
                        : "")));
  }

  private void finding(Finding f) {
    text.line("  " + f.id() + (accepted.contains(f.id()) ? "  ACCEPTED" : ""));
    text.wrapped("    ", f.say() + (f.source().isEmpty() ? "" : " (" + f.source() + ")"));
  }

  private String coarse(double mm) {
    return Numbers.fixed(unit.fromMm(mm), unit == LengthUnit.MM ? 1 : 2);
  }

  private String fine(double mm) {
    return Numbers.fixed(unit.fromMm(mm), unit == LengthUnit.MM ? 2 : 3);
  }
}
