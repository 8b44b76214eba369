package dev.towerscribe.cli;

import dev.towerscribe.alignment.Curves;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.alignment.StrutFigures;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Version;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An alignment in words. Angles in degrees, lengths in the job's unit. */
final class AlignmentText {
  private static final String HEAD = "Towerscribe alignment";

  /** What a bay shows. */
  private static final int DEGREE_DECIMALS = 2;

  private final TextLines text = new TextLines();
  private final LengthUnit unit;

  private AlignmentText(LengthUnit unit) {
    this.unit = unit;
  }

  /**
   * Writes a report.
   *
   * @param job the job
   * @param alignment its alignment
   * @return lines ended by line feeds
   */
  static String of(Job job, JobAlignment alignment) {
    AlignmentText report = new AlignmentText(job.units());
    report.head(job, alignment.sides().values().stream().allMatch(SideAlignment::estimate));
    alignment.sides().values().forEach(report::side);
    report.cross(alignment);
    return report.text.toString();
  }

  private void head(Job job, boolean estimate) {
    text.line(HEAD);
    text.line("");
    text.line("job        " + job.title());
    job.date().ifPresent(d -> text.line("date       " + d));
    text.line("program    Towerscribe " + Version.TEXT);
    text.line("");
    text.wrapped(
        "",
        (estimate
                ? "Estimated from the job's steering axis at ride height."
                : "Predicted from the job's points at ride height, toe set by the tie rod.")
            + " Angles in degrees, lengths in "
            + (unit == LengthUnit.MM ? "mm" : "inches")
            + ". Caster: positive when the top is rearward. Camber: positive when the wheel's top"
            + " leans outward. Inclination: positive when the top is inboard."
            + (estimate ? "" : " Toe of one wheel: positive for toe-in.")
            + " Measure on an alignment bay before driving at speed.");
  }

  private void side(SideAlignment side) {
    text.line("");
    String title = side.side().word().toUpperCase(Locale.ROOT) + " WHEEL";
    text.line(title);
    text.line("=".repeat(title.length()));
    Mount mount = side.job().mount();
    text.line(
        "rotation "
            + Numbers.fixed(mount.rotation().degrees(), 1)
            + " deg, rearward "
            + length(mount.rearwardMm())
            + ", inboard "
            + length(mount.inboardMm())
            + ", setting "
            + length(mount.settingMm()));
    if (side.estimate()) {
      text.wrapped("", "AN ESTIMATE from the measured steering axis alone, without +/-.");
    }
    readings(side);
    side.strut().ifPresent(s -> strut(side, s));
    findings(side.findings());
  }

  private void readings(SideAlignment side) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        side.estimate()
            ? List.of("", "caster", "camber", "inclination")
            : List.of("", "caster", "camber", "inclination", "toe", "scrub", "trail", "damper"));
    side.before().ifPresent(r -> rows.add(row("before the work", r)));
    side.strut()
        .flatMap(StrutFigures::sureBefore)
        .ifPresent(f -> rows.add(plusMinus(f, side.strut().orElseThrow().plusMinus())));
    side.at().ifPresent(r -> rows.add(row("at the chosen setting", r)));
    side.strut()
        .flatMap(StrutFigures::sureAt)
        .ifPresent(f -> rows.add(plusMinus(f, side.strut().orElseThrow().plusMinus())));
    for (SideAlignment.AtSetting setting : side.settings()) {
      String name = "setting " + length(setting.settingMm());
      rows.add(
          setting
              .reading()
              .map(r -> row(name, r))
              .orElseGet(() -> notReached(name, rows.get(0).size())));
    }
    text.table(rows);
  }

  private static List<String> notReached(String name, int columns) {
    List<String> row = new ArrayList<>(List.of(name, "not reached"));
    while (row.size() < columns) {
      row.add("");
    }
    return row;
  }

  private List<String> row(String name, Reading r) {
    List<String> row =
        new ArrayList<>(
            List.of(name, degrees(r.caster()), degrees(r.camber()), degrees(r.inclination())));
    r.linkage()
        .ifPresent(
            m ->
                row.addAll(
                    List.of(
                        degrees(new Angle(m.toe())),
                        length(m.scrubMm()),
                        length(m.trailMm()),
                        length(m.damperMm()))));
    return row;
  }

  private List<String> plusMinus(Sensitivity.Figures f, PlusMinus sure) {
    return List.of(
        "  +/-",
        degrees(new Angle(f.caster().plusMinus(sure))),
        degrees(new Angle(f.camber().plusMinus(sure))),
        degrees(new Angle(f.inclination().plusMinus(sure))),
        "set",
        length(f.scrubMm().plusMinus(sure)),
        length(f.trailMm().plusMinus(sure)),
        length(f.damperMm().plusMinus(sure)));
  }

  private void strut(SideAlignment side, StrutFigures strut) {
    text.line("");
    strut.reachableBefore().ifPresent(r -> reachable("before the work", r));
    strut.reachableAt().ifPresent(r -> reachable("at the chosen setting", r));
    strut.before().ifPresent(c -> bumpSteer("before the work", c.bumpSteer()));
    strut.at().ifPresent(c -> bumpSteer("at the chosen setting", c.bumpSteer()));
    side.damperChangeMm()
        .ifPresent(
            mm ->
                text.wrapped(
                    "",
                    "damper at ride height: "
                        + length(Math.abs(mm))
                        + (mm < 0 ? " shorter: less bump" : " longer: less droop")
                        + " travel left, as much more "
                        + (mm < 0 ? "droop" : "bump")));
    side.trackChangeMm()
        .ifPresent(
            mm ->
                text.line(
                    "this wheel's contact point: "
                        + length(Math.abs(mm))
                        + (mm < 0 ? " inward" : " outward")));
    strut.sureAt().ifPresent(this::per);
  }

  private void reachable(String when, StrutFigures.Reachable r) {
    text.line(
        "camber by the knuckle bolt, "
            + when
            + ": "
            + degrees(r.from())
            + " to "
            + degrees(r.to()));
  }

  private void bumpSteer(String when, Curves.BumpSteer b) {
    text.wrapped(
        "",
        "bump steer, "
            + when
            + ", from "
            + length(b.droopMm())
            + " of droop to "
            + length(b.bumpMm())
            + " of bump: "
            + slope(b.slopeRadPerMm())
            + (unit == LengthUnit.MM ? " deg for 10 mm" : " deg for 1 in")
            + " of bump at ride height; steepest "
            + slope(b.steepestRadPerMm())
            + " at "
            + length(b.steepestAtMm())
            + "; most toe change "
            + degrees(new Angle(b.peakRad()))
            + " at "
            + length(b.peakAtMm()));
  }

  /** For 10 mm or 1 inch of travel, which is how bump steer is told of in either. */
  private String slope(double radPerMm) {
    return thousandth(radPerMm * (unit == LengthUnit.MM ? 10 : unit.toMm(1)));
  }

  private void per(Sensitivity.Figures f) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("one more", "caster", "camber", "inclination", "scrub", "trail", "damper"));
    for (Sensitivity.Choice choice : Sensitivity.Choice.values()) {
      boolean angle = choice == Sensitivity.Choice.ROTATION;
      // A tenth of an inch is near enough to what a slot or a tape can be set to.
      double by = angle ? Math.toRadians(1.0) : unit == LengthUnit.MM ? 1.0 : unit.toMm(0.1);
      String of =
          angle
              ? "degree of rotation"
              : (unit == LengthUnit.MM ? "mm" : "0.1 in") + " " + name(choice);
      int i = choice.ordinal();
      rows.add(
          List.of(
              of,
              thousandth(by * f.caster().byChoice()[i]),
              thousandth(by * f.camber().byChoice()[i]),
              thousandth(by * f.inclination().byChoice()[i]),
              length(by * f.scrubMm().byChoice()[i]),
              length(by * f.trailMm().byChoice()[i]),
              length(by * f.damperMm().byChoice()[i])));
    }
    text.table(rows);
  }

  private static String name(Sensitivity.Choice choice) {
    return switch (choice) {
      case ROTATION -> "of rotation";
      case REARWARD -> "rearward";
      case INBOARD -> "inboard";
      case SETTING -> "of setting";
    };
  }

  private void cross(JobAlignment alignment) {
    if (alignment.crossAt().isEmpty()) {
      return;
    }
    text.line("");
    text.line("LEFT AGAINST RIGHT");
    text.line("==================");
    cross("before the work", alignment.crossBefore());
    cross("at the chosen setting", alignment.crossAt());
    findings(alignment.findings());
  }

  private void cross(String when, Optional<JobAlignment.Cross> cross) {
    cross.ifPresent(
        c ->
            text.line(
                when
                    + ", left minus right: caster "
                    + degrees(c.caster())
                    + ", camber "
                    + degrees(c.camber())));
  }

  private void findings(List<Finding> findings) {
    text.line("");
    for (Finding f : findings) {
      text.wrapped("  ", f.severity().word() + " " + f.id() + ": " + f.say());
    }
  }

  private static String degrees(Angle angle) {
    return Numbers.fixed(angle.degrees(), DEGREE_DECIMALS);
  }

  private static String thousandth(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), 3);
  }

  private String length(double mm) {
    return Numbers.fixed(unit.fromMm(mm), unit == LengthUnit.MM ? 2 : 3);
  }
}
