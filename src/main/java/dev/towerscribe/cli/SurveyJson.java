package dev.towerscribe.cli;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.survey.Figure;
import dev.towerscribe.survey.Fit;
import dev.towerscribe.survey.PointResult;
import dev.towerscribe.survey.ReadingResult;
import dev.towerscribe.survey.SideResult;
import dev.towerscribe.survey.Spread;
import dev.towerscribe.survey.SurveyResult;
import dev.towerscribe.survey.TowerResult;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A survey's result as data: one JSON object, format 1, mm and degrees whatever the survey's unit.
 * Points of both sides as if on the left, stations in vehicle axes; covariances in mm2, in the
 * order XX, YY, ZZ, XY, YZ, ZX.
 */
final class SurveyJson {
  private static final int FORMAT = 1;

  private final JsonWriter json = new JsonWriter();

  private SurveyJson() {}

  /**
   * Writes a result.
   *
   * @param result any result
   * @param accepted ids of accepted stop findings
   * @return one line of JSON with its line end
   */
  static String of(SurveyResult result, Set<String> accepted) {
    SurveyJson writer = new SurveyJson();
    writer.all(result, accepted);
    return writer.json + "\n";
  }

  private void all(SurveyResult result, Set<String> accepted) {
    json.beginObject();
    json.key("format").value(FORMAT);
    json.key("title").value(result.survey().title());
    json.key("units").value("mm");
    json.key("fit");
    fit(result.fit());
    json.key("stations");
    points(result, Optional.empty());
    json.key("sides").beginObject();
    for (Map.Entry<Side, SideResult> side : result.sides().entrySet()) {
      json.key(side.getKey().word()).beginObject();
      json.key("points");
      points(result, Optional.of(side.getKey()));
      SideResult s = side.getValue();
      length("tyre_radius", s.tyreRadius());
      angle("camber", s.camber());
      angle("toe", s.toe());
      s.tower().ifPresent(this::tower);
      json.endObject();
    }
    json.endObject();
    json.key("readings").beginArray();
    result.readings().forEach(this::reading);
    json.endArray();
    json.key("findings").beginArray();
    result.findings().forEach(f -> ResultsJson.finding(json, f));
    json.endArray();
    json.key("accepted").beginArray();
    accepted.forEach(json::value);
    json.endArray().endObject();
  }

  private void points(SurveyResult result, Optional<Side> side) {
    json.beginArray();
    for (PointResult p : result.points()) {
      if (!p.point().side().equals(side)) {
        continue;
      }
      json.beginObject().key("name").value(p.point().name());
      json.key("fixed").value(p.found());
      if (p.found()) {
        json.key("at");
        vector(p.at());
        json.key("plus_minus");
        vector(p.spread().sd());
        Spread s = p.spread();
        json.key("covariance").beginArray();
        json.value(s.xx()).value(s.yy()).value(s.zz()).value(s.xy()).value(s.yz()).value(s.zx());
        json.endArray();
      }
      json.endObject();
    }
    json.endArray();
  }

  private void vector(Vec3 v) {
    json.beginArray().value(v.x()).value(v.y()).value(v.z()).endArray();
  }

  private void tower(TowerResult t) {
    json.key("tower").beginObject();
    length("sheet", t.sheet());
    length("opening", t.opening());
    length("mark", t.mark());
    angle("lean_inboard", t.leanInboard());
    angle("lean_rearward", t.leanRearward());
    length("crown_across", t.crownAcross());
    length("crown_rise", t.crownRise());
    length("pivot_height", t.pivotHeight());
    json.key("landmarks").beginArray();
    for (TowerResult.Hole h : t.landmarks()) {
      json.beginObject().key("name").value(h.name());
      json.key("fixed").value(h.found());
      if (h.found()) {
        json.key("fore").value(h.at().x()).key("in").value(h.at().y());
        json.key("plus_minus").beginArray().value(h.sd().x()).value(h.sd().y()).endArray();
      }
      length("diameter", Optional.of(h.diameter()));
      json.endObject();
    }
    json.endArray();
    t.datum()
        .ifPresent(
            d -> {
              json.key("landmarks_together").beginObject();
              json.key("turned").value(Math.toDegrees(d.turnSd()));
              json.key("shifted").value(d.shiftSdMm());
              json.key("each").value(d.landmarkSdMm()).endObject();
            });
    json.key("straightedges").beginArray();
    for (TowerResult.Line l : t.lines()) {
      json.beginObject().key("name").value(l.name());
      json.key("from").beginArray().value(l.from().x()).value(l.from().y()).endArray();
      json.key("to").beginArray().value(l.to().x()).value(l.to().y()).endArray();
      json.key("plus_minus").value(l.sd()).endObject();
    }
    json.endArray();
    json.key("fit");
    fit(t.fit());
    json.endObject();
  }

  private void length(String key, Optional<Figure> figure) {
    figure.ifPresent(f -> figure(key, f.value(), f.sd()));
  }

  private void angle(String key, Optional<Figure> figure) {
    figure.ifPresent(f -> figure(key, Math.toDegrees(f.value()), Math.toDegrees(f.sd())));
  }

  private void figure(String key, double value, double sd) {
    json.key(key).beginObject().key("is").value(value);
    json.key("plus_minus").value(sd).endObject();
  }

  private void fit(Fit fit) {
    json.beginObject().key("entries").value(fit.entries());
    json.key("freedom").value(fit.freedom());
    json.key("s0").value(fit.ratio()).key("chance").value(fit.chance());
    json.key("widened").value(fit.widened());
    json.key("kinds").beginArray();
    for (Fit.Kind kind : fit.kinds()) {
      json.beginObject().key("name").value(kind.name());
      json.key("freedom").value(kind.freedom()).key("s0").value(kind.ratio()).endObject();
    }
    json.endArray().endObject();
  }

  private void reading(ReadingResult r) {
    json.beginObject().key("id").value(r.id()).key("words").value(r.words());
    json.key("count").value(r.count());
    json.key("read").value(r.readMm()).key("fits").value(r.computedMm());
    json.key("redundancy").value(r.redundancy()).key("checked").value(r.checked());
    if (r.checked()) {
      json.key("deviations").value(r.deviations()).key("slip").value(r.slipMm());
    }
    json.endObject();
  }
}
