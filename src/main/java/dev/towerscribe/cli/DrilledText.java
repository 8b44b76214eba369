package dev.towerscribe.cli;

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
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Version;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Drilled towers in words. Lengths in the job's unit, angles in degrees. */
final class DrilledText {
  private static final String HEAD = "Towerscribe drilled holes";

  private final TextLines text = new TextLines();
  private final LengthUnit unit;
  private final Set<String> accepted;

  private DrilledText(LengthUnit unit, Set<String> accepted) {
    this.unit = unit;
    this.accepted = accepted;
  }

  /**
   * Writes a report.
   *
   * @param drilled the towers
   * @param angles what they do to the alignment, where that is known
   * @param accepted ids of accepted stop findings
   * @return lines ended by line feeds
   */
  static String of(Drilled drilled, Map<Side, DrilledAngles> angles, Set<String> accepted) {
    DrilledText report = new DrilledText(drilled.job().units(), accepted);
    report.head(drilled);
    drilled
        .sides()
        .values()
        .forEach(s -> report.side(s, Optional.ofNullable(angles.get(s.side()))));
    return report.text.toString();
  }

  private void head(Drilled drilled) {
    text.line(HEAD);
    text.line("");
    text.line("job        " + drilled.job().title());
    text.line("readings   " + drilled.readings().title());
    drilled.readings().date().ifPresent(d -> text.line("date       " + d));
    text.line("program    Towerscribe " + Version.TEXT);
    text.line("");
    text.wrapped(
        "",
        "Lengths in "
            + (unit == LengthUnit.MM ? "mm" : "inches")
            + ". fore is forward, in is toward the car's middle, from the original strut-shaft"
            + " centre. +/- is one standard deviation, from the doubts of the readings. A record of"
            + " what was measured, not a certificate: the vehicle maker's limits and the law come"
            + " first.");
  }

  private void side(DrilledSide side, Optional<DrilledAngles> angles) {
    text.line("");
    String title = side.side().word().toUpperCase(Locale.ROOT) + " TOWER";
    text.line(title);
    text.line("=".repeat(title.length()));
    text.line("");
    side.fit()
        .ifPresentOrElse(
            this::fit,
            () ->
                text.wrapped(
                    "",
                    "NOT KNOWN WHETHER THE PLATE GOES ON: a hole is not fixed by the readings."));
    holes(side);
    spans(side);
    edges(side);
    side.asDrilled().ifPresent(a -> mount(side, a));
    angles.ifPresent(a -> angles(side, a));
    text.line("");
    for (Finding f : side.findings()) {
      text.wrapped(
          "  ",
          f.severity().word()
              + (f.isStop() && accepted.contains(f.id()) ? " (accepted) " : " ")
              + f.id()
              + ": "
              + f.say());
    }
  }

  private void fit(PlateFit fit) {
    text.line(fit.verdict().words());
    double slack = fit.mating().slackMm();
    List<String> blocked = fit.mating().blocked();
    text.wrapped(
        "",
        (blocked.isEmpty()
                ? ""
                : "does not enter its hole: " + String.join(", ", blocked) + "; else ")
            + (slack < 0 ? "too little play by " : "to spare ")
            + length(Math.abs(slack))
            + " +/- "
            + length(fit.slackSdMm())
            + ", tightest at "
            + String.join(", ", fit.mating().tight()));
    fit.play()
        .ifPresent(
            p ->
                text.wrapped(
                    "",
                    "before the bolts bind it turns by "
                        + degrees(p.turnBack().radians())
                        + " and "
                        + degrees(p.turnOn().radians())
                        + " deg (less and more rotation)"));
    fit.enlargement()
        .ifPresent(
            e -> {
              List<List<String>> rows = new ArrayList<>();
              rows.add(List.of("open alone", "to", "by"));
              for (Enlargement.One one : e.each()) {
                rows.add(
                    List.of(
                        "hole " + one.name(),
                        one.diameterMm().map(this::length).orElse("does not help"),
                        one.byMm().map(this::length).orElse("")));
              }
              text.table(rows);
            });
  }

  private void holes(DrilledSide side) {
    if (side.holes().isEmpty()) {
      return;
    }
    boolean tied = side.network().tied();
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("hole", "drawn", "size", "+/-"));
    if (tied) {
      head.addAll(
          List.of("planned fore", "in", "found fore", "+/-", "in", "+/-", "off fore", "in", "by"));
    }
    head.add("off the pattern");
    rows.add(head);
    for (Hole h : side.holes()) {
      List<String> row =
          new ArrayList<>(
              List.of(
                  h.found().name(),
                  length(h.found().planned().diameterMm()),
                  length(h.found().diameterMm()),
                  length(h.found().diameterSdMm())));
      h.error()
          .ifPresent(
              e ->
                  row.addAll(
                      List.of(
                          length(h.found().planned().at().x()),
                          length(h.found().planned().at().y()),
                          length(h.found().at().x()),
                          length(h.found().foreSdMm()),
                          length(h.found().at().y()),
                          length(h.found().inSdMm()),
                          length(e.x()),
                          length(e.y()),
                          length(e.norm()))));
      row.add(h.left().map(v -> length(v.norm())).orElse("-"));
      rows.add(row);
    }
    text.table(rows);
    text.wrapped(
        "  ",
        "off the pattern: what is left of a hole's error once the planned pattern is laid on the"
            + " holes as well as it goes.");
  }

  private void spans(DrilledSide side) {
    if (side.spans().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("centres", "planned", "found", "off", "+/-", "may be off"));
    for (SpanFound s : side.spans()) {
      rows.add(
          List.of(
              s.from() + " - " + s.to(),
              length(s.plannedMm()),
              length(s.foundMm()),
              length(s.errorMm()),
              length(s.sdMm()),
              length(s.toleranceMm())));
    }
    text.table(rows);
  }

  private void edges(DrilledSide side) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("metal beside hole", "needed", "to planned cut", "+/-", "to cut as read", "+/-"));
    for (EdgeMetal e : side.edges()) {
      rows.add(
          List.of(
              e.hole(),
              length(e.limitMm()),
              e.toPlannedMm().map(this::length).orElse("-"),
              e.toPlannedMm().map(mm -> length(e.toPlannedSdMm())).orElse("-"),
              e.toCut().map(r -> length(r.mean())).orElse("-"),
              e.toCut().map(r -> length(r.meanSd())).orElse("-")));
    }
    text.table(rows);
  }

  private void mount(DrilledSide side, AsDrilled as) {
    Mount planned = side.planned().job().mount();
    Mount now = as.mount();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("the plate's place", "planned", "as drilled", "off", "+/-"));
    rows.add(
        List.of(
            "rotation, deg",
            degrees(planned.rotation().radians()),
            degrees(now.rotation().radians()),
            degrees(now.rotation().radians() - planned.rotation().radians()),
            degrees(as.rotationSd())));
    rows.add(row("rearward", planned.rearwardMm(), now.rearwardMm(), as.rearwardSdMm()));
    rows.add(row("inboard", planned.inboardMm(), now.inboardMm(), as.inboardSdMm()));
    text.table(rows);
    text.wrapped(
        "  ",
        "as drilled: in the middle of its play; where it is bolted down within it counts too.");
  }

  private List<String> row(String name, double planned, double now, double sd) {
    return List.of(name, length(planned), length(now), length(now - planned), length(sd));
  }

  private void angles(DrilledSide side, DrilledAngles a) {
    if (a.caster().isEmpty() || a.camber().isEmpty()) {
      text.line("");
      text.wrapped(
          "  ",
          "alignment: not known, as the job gives nothing to work it out from, or no linkage.");
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "at setting " + length(side.planned().job().mount().settingMm()) + ", deg",
            "planned",
            "as drilled",
            "off",
            "+/-",
            "+/- with the points'"));
    rows.add(row("caster", a.caster().get()));
    rows.add(row("camber", a.camber().get()));
    a.toe().ifPresent(t -> rows.add(row("toe, not reset", t)));
    text.table(rows);
    text.wrapped(
        "  ",
        (a.basis() == DrilledAngles.Basis.AXIS_ESTIMATE
                ? "An estimate from the steering axis alone. "
                : "")
            + "+/- of what is off, from the holes' places; with the points' own share of it beside."
            + " Toe is what the tie rod leaves until the bay sets it.");
    a.nearest().ifPresent(this::nearest);
  }

  private static List<String> row(String name, DrilledAngles.Figure f) {
    return List.of(
        name,
        degrees(f.planned().radians()),
        degrees(f.drilled().radians()),
        degrees(f.change().radians()),
        f.doubt().map(d -> degrees(d.holes().radians())).orElse("-"),
        f.doubt()
            .flatMap(
                d ->
                    d.pointsOfChange()
                        .map(p -> degrees(Math.hypot(p.radians(), d.holes().radians()))))
            .orElse("-"));
  }

  private void nearest(NearestSetting n) {
    text.wrapped("  ", "nearest to the planned angles: setting " + words(n.anywhere()));
    n.atMark().ifPresent(m -> text.wrapped("  ", "of the marks: " + words(m)));
  }

  private String words(NearestSetting.Setting s) {
    return length(s.settingMm())
        + ", caster "
        + degrees(s.caster().radians())
        + ", camber "
        + degrees(s.camber().radians())
        + ", "
        + degrees(s.away().radians())
        + " deg away";
  }

  private static String degrees(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), 2);
  }

  private String length(double mm) {
    return Numbers.fixed(unit.fromMm(mm), unit == LengthUnit.MM ? 2 : 3);
  }
}
