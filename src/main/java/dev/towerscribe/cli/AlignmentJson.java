package dev.towerscribe.cli;

import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.Curves;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.Metrics;
import dev.towerscribe.alignment.Pose;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.alignment.StrutFigures;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * An alignment as data: one JSON object, format 1, degrees and millimetres whatever the job's
 * units. A member that is not known is left out, and so is a point of a curve that the linkage does
 * not reach; a finding says why.
 */
final class AlignmentJson {
  private static final int FORMAT = 1;

  private final JsonWriter json = new JsonWriter();

  private AlignmentJson() {}

  /**
   * Writes an alignment.
   *
   * @param job the job
   * @param alignment its alignment
   * @return one line of JSON with its line end
   */
  static String of(Job job, JobAlignment alignment) {
    AlignmentJson results = new AlignmentJson();
    results.job(job, alignment);
    return results.json + "\n";
  }

  private void job(Job job, JobAlignment alignment) {
    json.beginObject();
    json.key("format").value(FORMAT);
    json.key("title").value(job.title());
    json.key("units").value("mm");
    json.key("sides").beginObject();
    for (Map.Entry<Side, SideAlignment> side : alignment.sides().entrySet()) {
      json.key(side.getKey().word());
      side(side.getValue());
    }
    json.endObject();
    json.key("cross").beginObject();
    cross("before", alignment.crossBefore());
    cross("at", alignment.crossAt());
    json.endObject();
    findings(alignment.findings());
    json.endObject();
  }

  private void cross(String key, Optional<JobAlignment.Cross> cross) {
    cross.ifPresent(
        c -> {
          json.key(key).beginObject();
          json.key("caster").value(c.caster().degrees());
          json.key("camber").value(c.camber().degrees()).endObject();
        });
  }

  private void findings(List<Finding> findings) {
    json.key("findings").beginArray();
    findings.forEach(f -> ResultsJson.finding(json, f));
    json.endArray();
  }

  private void side(SideAlignment side) {
    json.beginObject();
    json.key("estimate").value(side.estimate());
    side.before()
        .ifPresent(
            r -> {
              json.key("before").beginObject();
              reading(r);
              json.endObject();
            });
    side.at().ifPresent(r -> setting("at", side.job().mount().settingMm(), r));
    json.key("settings").beginArray();
    for (SideAlignment.AtSetting setting : side.settings()) {
      setting.reading().ifPresent(r -> setting("", setting.settingMm(), r));
    }
    json.endArray();
    side.strut().ifPresent(s -> strut(side, s));
    findings(side.findings());
    json.endObject();
  }

  private void setting(String key, double settingMm, Reading reading) {
    if (!key.isEmpty()) {
      json.key(key);
    }
    json.beginObject().key("setting").value(settingMm);
    reading(reading);
    json.endObject();
  }

  private void reading(Reading reading) {
    json.key("caster").value(reading.caster().degrees());
    json.key("camber").value(reading.camber().degrees());
    json.key("inclination").value(reading.inclination().degrees());
    json.key("included").value(reading.includedAngle().degrees());
    reading
        .linkage()
        .ifPresent(
            m -> {
              json.key("toe").value(Math.toDegrees(m.toe()));
              json.key("scrub").value(m.scrubMm()).key("trail").value(m.trailMm());
              json.key("damper").value(m.damperMm());
              json.key("half_track").value(m.contactYMm());
            });
  }

  private void strut(SideAlignment side, StrutFigures strut) {
    strut.at().ifPresent(c -> curves("curves", c));
    strut.before().ifPresent(c -> curves("curves_before", c));
    json.key("bump_steer").beginObject();
    strut.before().ifPresent(c -> bumpSteer("before", c.bumpSteer()));
    strut.at().ifPresent(c -> bumpSteer("at", c.bumpSteer()));
    json.endObject();
    json.key("reachable").beginObject();
    strut.reachableBefore().ifPresent(r -> reachable("before", r));
    strut.reachableAt().ifPresent(r -> reachable("at", r));
    json.endObject();
    strut.sureAt().ifPresent(f -> plusMinus("plus_minus", f, strut.plusMinus()));
    strut.sureBefore().ifPresent(f -> plusMinus("plus_minus_before", f, strut.plusMinus()));
    strut.sureAt().ifPresent(this::per);
    json.key("change").beginObject();
    side.damperChangeMm().ifPresent(mm -> json.key("damper").value(mm));
    side.trackChangeMm().ifPresent(mm -> json.key("half_track").value(mm));
    json.endObject();
  }

  private void curves(String key, Curves curves) {
    json.key(key).beginObject();
    points("travel", curves.travel());
    points("steer", curves.steer());
    json.endObject();
  }

  private void points(String input, List<Bay.Point> curve) {
    json.key(input).beginArray();
    for (Bay.Point point : curve) {
      if (point.reached()) {
        Pose pose = point.pose();
        json.beginObject().key(input).value(point.input());
        json.key("toe").value(Math.toDegrees(pose.toe()));
        json.key("camber").value(Math.toDegrees(pose.camber()));
        json.key("caster").value(Math.toDegrees(pose.caster()));
        json.key("inclination").value(Math.toDegrees(pose.inclination()));
        json.key("damper").value(Metrics.of(pose).damperMm()).endObject();
      }
    }
    json.endArray();
  }

  private void bumpSteer(String key, Curves.BumpSteer b) {
    json.key(key).beginObject();
    json.key("slope").value(Math.toDegrees(b.slopeRadPerMm()));
    json.key("steepest").value(Math.toDegrees(b.steepestRadPerMm()));
    json.key("steepest_travel").value(b.steepestAtMm());
    json.key("peak").value(Math.toDegrees(b.peakRad()));
    json.key("peak_travel").value(b.peakAtMm());
    json.key("from").value(b.droopMm() == 0 ? 0.0 : -b.droopMm());
    json.key("to").value(b.bumpMm()).endObject();
  }

  private void reachable(String key, StrutFigures.Reachable r) {
    json.key(key).beginObject();
    json.key("from").value(r.from().degrees()).key("to").value(r.to().degrees()).endObject();
  }

  private void plusMinus(String key, Sensitivity.Figures f, PlusMinus sure) {
    json.key(key).beginObject();
    figures(f, figure -> figure.plusMinus(sure));
    // The bay sets it.
    json.key("toe").value(0.0).endObject();
  }

  /** By degree of rotation, by mm of the others. */
  private void per(Sensitivity.Figures f) {
    json.key("per").beginObject();
    for (Sensitivity.Choice choice : Sensitivity.Choice.values()) {
      double unit = choice == Sensitivity.Choice.ROTATION ? Math.toRadians(1.0) : 1.0;
      json.key(choice.name().toLowerCase(Locale.ROOT)).beginObject();
      figures(f, figure -> unit * figure.byChoice()[choice.ordinal()]);
      json.endObject();
    }
    json.endObject();
  }

  private void figures(Sensitivity.Figures f, ToDoubleFunction<Sensitivity.Figure> value) {
    json.key("caster").value(Math.toDegrees(value.applyAsDouble(f.caster())));
    json.key("camber").value(Math.toDegrees(value.applyAsDouble(f.camber())));
    json.key("inclination").value(Math.toDegrees(value.applyAsDouble(f.inclination())));
    json.key("scrub").value(value.applyAsDouble(f.scrubMm()));
    json.key("trail").value(value.applyAsDouble(f.trailMm()));
    json.key("damper").value(value.applyAsDouble(f.damperMm()));
  }
}
