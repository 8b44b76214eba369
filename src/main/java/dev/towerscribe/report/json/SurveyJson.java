package dev.towerscribe.report.json;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.survey.Figure;
import dev.towerscribe.survey.Fit;
import dev.towerscribe.survey.PointCovariance;
import dev.towerscribe.survey.PointResult;
import dev.towerscribe.survey.ReadingResult;
import dev.towerscribe.survey.SideResult;
import dev.towerscribe.survey.SurveyResult;
import dev.towerscribe.survey.TowerResult;
import java.util.Optional;
import java.util.Set;

/**
 * A survey's result as data, format 1. Points of both sides as if on the left, stations in vehicle
 * axes; covariances in mm2, in the order XX, YY, ZZ, XY, YZ, ZX.
 */
public final class SurveyJson {
  private final Json json;

  private SurveyJson(Json json) {
    this.json = json;
  }

  /**
   * Writes a result.
   *
   * @param result any result
   * @param accepted ids of accepted stop findings
   * @return one line of JSON with its line end
   */
  public static String of(SurveyResult result, Set<String> accepted) {
    return Json.of(json -> new SurveyJson(json).all(result, accepted));
  }

  private void all(SurveyResult result, Set<String> accepted) {
    json.head(result.survey().title());
    fit(result.fit());
    points("stations", result, Optional.empty());
    json.object(
        "sides",
        () ->
            result
                .sides()
                .forEach((side, s) -> json.object(side.word(), () -> side(result, side, s))));
    json.objects("readings", result.readings(), this::reading)
        .findings(result.findings())
        .strings("accepted", accepted);
  }

  private void side(SurveyResult result, Side side, SideResult s) {
    points("points", result, Optional.of(side));
    length("tyre_radius", s.tyreRadius());
    angle("camber", s.camber());
    angle("toe", s.toe());
    s.tower().ifPresent(t -> json.object("tower", () -> tower(t)));
  }

  private void points(String key, SurveyResult result, Optional<Side> side) {
    json.objects(
        key,
        result.points().stream().filter(p -> p.point().side().equals(side)).toList(),
        this::point);
  }

  private void point(PointResult p) {
    json.put("name", p.point().name()).put("fixed", p.found());
    if (p.found()) {
      PointCovariance s = p.spread();
      vector("at", p.at());
      vector("plus_minus", s.sd());
      json.numbers("covariance", s.xx(), s.yy(), s.zz(), s.xy(), s.yz(), s.zx());
    }
  }

  private void vector(String key, Vec3 v) {
    json.numbers(key, v.x(), v.y(), v.z());
  }

  private void tower(TowerResult t) {
    length("sheet", t.sheet());
    length("opening", t.opening());
    length("mark", t.mark());
    angle("lean_inboard", t.leanInboard());
    angle("lean_rearward", t.leanRearward());
    length("crown_across", t.crownAcross());
    length("crown_rise", t.crownRise());
    length("pivot_height", t.pivotHeight());
    json.objects("landmarks", t.landmarks(), this::landmark);
    t.datum()
        .ifPresent(
            d ->
                json.object(
                    "landmarks_together",
                    () ->
                        json.put("turned", Math.toDegrees(d.turnSd()))
                            .put("shifted", d.shiftSdMm())
                            .put("each", d.landmarkSdMm())));
    json.objects(
        "straightedges",
        t.lines(),
        l ->
            json.put("name", l.name())
                .numbers("from", l.from().x(), l.from().y())
                .numbers("to", l.to().x(), l.to().y())
                .put("plus_minus", l.sd()));
    fit(t.fit());
  }

  private void landmark(TowerResult.Hole h) {
    json.put("name", h.name()).put("fixed", h.found());
    if (h.found()) {
      json.put("fore", h.at().x())
          .put("in", h.at().y())
          .numbers("plus_minus", h.sd().x(), h.sd().y());
    }
    length("diameter", Optional.of(h.diameter()));
  }

  private void length(String key, Optional<Figure> figure) {
    figure.ifPresent(f -> figure(key, f.value(), f.sd()));
  }

  private void angle(String key, Optional<Figure> figure) {
    figure.ifPresent(f -> figure(key, Math.toDegrees(f.value()), Math.toDegrees(f.sd())));
  }

  private void figure(String key, double value, double sd) {
    json.object(key, () -> json.put("is", value).put("plus_minus", sd));
  }

  private void fit(Fit fit) {
    json.object(
        "fit",
        () ->
            json.put("entries", fit.entries())
                .put("freedom", fit.freedom())
                .put("s0", fit.ratio())
                .put("chance", fit.chance())
                .put("widened", fit.widened())
                .objects(
                    "kinds",
                    fit.kinds(),
                    k ->
                        json.put("name", k.name())
                            .put("freedom", k.freedom())
                            .put("s0", k.ratio())));
  }

  private void reading(ReadingResult r) {
    json.put("id", r.id())
        .put("words", r.words())
        .put("count", r.count())
        .put("read", r.readMm())
        .put("fits", r.computedMm())
        .put("redundancy", r.redundancy())
        .put("checked", r.checked());
    if (r.checked()) {
      json.put("deviations", r.deviations()).put("slip", r.slipMm());
    }
  }
}
