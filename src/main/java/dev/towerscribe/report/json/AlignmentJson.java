package dev.towerscribe.report.json;

import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.Curves;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.alignment.StrutFigures;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.PlusMinus;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * An alignment as data, format 1. A member that is not known is left out, and so is a point of a
 * curve that the linkage does not reach; a finding says why.
 */
public final class AlignmentJson {
  private final Json json;

  private AlignmentJson(Json json) {
    this.json = json;
  }

  /**
   * Writes an alignment.
   *
   * @param job the job
   * @param alignment its alignment
   * @return one line of JSON with its line end
   */
  public static String of(Job job, JobAlignment alignment) {
    return Json.of(json -> new AlignmentJson(json).all(job, alignment));
  }

  private void all(Job job, JobAlignment alignment) {
    json.head(job.title()).sides(alignment.sides(), this::side);
    json.object(
        "cross",
        () -> {
          cross("before", alignment.crossBefore());
          cross("at", alignment.crossAt());
        });
    json.findings(alignment.findings());
  }

  private void cross(String key, Optional<JobAlignment.Cross> cross) {
    cross.ifPresent(
        c -> json.object(key, () -> json.put("caster", c.caster()).put("camber", c.camber())));
  }

  private void side(SideAlignment side) {
    json.put("estimate", side.estimate());
    side.before().ifPresent(r -> json.object("before", () -> reading(r)));
    side.at().ifPresent(r -> json.object("at", () -> setting(side.job().mount().settingMm(), r)));
    json.objects(
        "settings",
        side.settings().stream().filter(s -> s.reading().isPresent()).toList(),
        s -> setting(s.settingMm(), s.reading().orElseThrow()));
    side.strut().ifPresent(s -> strut(side, s));
    json.findings(side.findings());
  }

  private void setting(double settingMm, Reading reading) {
    json.put("setting", settingMm);
    reading(reading);
  }

  private void reading(Reading reading) {
    json.put("caster", reading.caster())
        .put("camber", reading.camber())
        .put("inclination", reading.inclination())
        .put("included", reading.includedAngle());
    reading
        .linkage()
        .ifPresent(
            m ->
                json.put("toe", Math.toDegrees(m.toe()))
                    .put("scrub", m.scrubMm())
                    .put("trail", m.trailMm())
                    .put("damper", m.damperMm())
                    .put("half_track", m.contactYMm()));
  }

  private void strut(SideAlignment side, StrutFigures strut) {
    strut.at().ifPresent(c -> curves("curves", c));
    strut.before().ifPresent(c -> curves("curves_before", c));
    json.object(
        "bump_steer",
        () -> {
          strut.before().ifPresent(c -> bumpSteer("before", c.bumpSteer()));
          strut.at().ifPresent(c -> bumpSteer("at", c.bumpSteer()));
        });
    json.object(
        "reachable",
        () -> {
          strut.reachableBefore().ifPresent(r -> reachable("before", r));
          strut.reachableAt().ifPresent(r -> reachable("at", r));
        });
    strut.sureAt().ifPresent(f -> plusMinus("plus_minus", f, strut.plusMinus()));
    strut.sureBefore().ifPresent(f -> plusMinus("plus_minus_before", f, strut.plusMinus()));
    strut.sureAt().ifPresent(this::per);
    json.object(
        "change",
        () -> {
          side.damperChangeMm().ifPresent(mm -> json.put("damper", mm));
          side.trackChangeMm().ifPresent(mm -> json.put("half_track", mm));
        });
  }

  private void curves(String key, Curves curves) {
    json.object(
        key,
        () -> {
          points("travel", curves.travel());
          points("steer", curves.steer());
        });
  }

  private void points(String input, List<Bay.Point> curve) {
    json.objects(
        input,
        curve.stream().filter(Bay.Point::reached).toList(),
        point -> {
          Pose pose = point.pose();
          json.put(input, point.input())
              .put("toe", Math.toDegrees(pose.toe()))
              .put("camber", Math.toDegrees(pose.camber()))
              .put("caster", Math.toDegrees(pose.caster()))
              .put("inclination", Math.toDegrees(pose.inclination()))
              .put("damper", pose.damperMm());
        });
  }

  private void bumpSteer(String key, Curves.BumpSteer b) {
    json.object(
        key,
        () ->
            json.put("slope", Math.toDegrees(b.slopeRadPerMm()))
                .put("steepest", Math.toDegrees(b.steepestRadPerMm()))
                .put("steepest_travel", b.steepestAtMm())
                .put("peak", Math.toDegrees(b.peakRad()))
                .put("peak_travel", b.peakAtMm())
                .put("from", -b.droopMm())
                .put("to", b.bumpMm()));
  }

  private void reachable(String key, StrutFigures.Reachable r) {
    json.object(key, () -> json.put("from", r.from()).put("to", r.to()));
  }

  private void plusMinus(String key, Sensitivity.Figures f, PlusMinus sure) {
    json.object(
        key,
        () -> {
          figures(f, figure -> figure.plusMinus(sure));
          // The bay sets it.
          json.put("toe", 0.0);
        });
  }

  /** By degree of rotation, by mm of the others. */
  private void per(Sensitivity.Figures f) {
    json.object(
        "per",
        () -> {
          for (Sensitivity.Choice choice : Sensitivity.Choice.values()) {
            double unit = choice == Sensitivity.Choice.ROTATION ? Math.toRadians(1.0) : 1.0;
            json.object(
                choice.name().toLowerCase(Locale.ROOT),
                () -> figures(f, figure -> unit * figure.byChoice()[choice.ordinal()]));
          }
        });
  }

  private void figures(Sensitivity.Figures f, ToDoubleFunction<Sensitivity.Figure> value) {
    json.put("caster", Math.toDegrees(value.applyAsDouble(f.caster())))
        .put("camber", Math.toDegrees(value.applyAsDouble(f.camber())))
        .put("inclination", Math.toDegrees(value.applyAsDouble(f.inclination())))
        .put("scrub", value.applyAsDouble(f.scrubMm()))
        .put("trail", value.applyAsDouble(f.trailMm()))
        .put("damper", value.applyAsDouble(f.damperMm()));
  }
}
