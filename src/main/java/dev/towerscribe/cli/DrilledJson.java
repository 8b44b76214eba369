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
import dev.towerscribe.drilled.Network;
import dev.towerscribe.drilled.PlateFit;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Drilled towers as data: one JSON object, format 1, mm and degrees whatever the job's units; every
 * {@code plus_minus} is one standard deviation. A member that is not known is left out.
 */
final class DrilledJson {
  private static final int FORMAT = 1;

  private final JsonWriter json = new JsonWriter();

  private DrilledJson() {}

  /**
   * Writes drilled towers.
   *
   * @param drilled the towers
   * @param angles what they do to the alignment, where that is known
   * @param accepted ids of accepted stop findings
   * @return one line of JSON with its line end
   */
  static String of(Drilled drilled, Map<Side, DrilledAngles> angles, Set<String> accepted) {
    DrilledJson results = new DrilledJson();
    results.all(drilled, angles, accepted);
    return results.json + "\n";
  }

  private void all(Drilled drilled, Map<Side, DrilledAngles> angles, Set<String> accepted) {
    json.beginObject();
    json.key("format").value(FORMAT);
    json.key("title").value(drilled.job().title());
    json.key("readings").value(drilled.readings().title());
    drilled.readings().date().ifPresent(d -> json.key("date").value(d.toString()));
    json.key("units").value("mm");
    json.key("sides").beginObject();
    for (Map.Entry<Side, DrilledSide> side : drilled.sides().entrySet()) {
      json.key(side.getKey().word());
      side(side.getValue(), Optional.ofNullable(angles.get(side.getKey())));
    }
    json.endObject();
    json.key("accepted").beginArray();
    accepted.forEach(json::value);
    json.endArray().endObject();
  }

  private void side(DrilledSide side, Optional<DrilledAngles> angles) {
    json.beginObject();
    json.key("tied").value(side.network().tied());
    json.key("complete").value(side.network().complete());
    json.key("spare_readings").value(side.network().spare());
    json.key("scatter").value(side.network().scatter());
    json.key("holes").beginArray();
    side.holes().forEach(this::hole);
    json.endArray();
    json.key("contradictions").beginArray();
    side.network().contradictions().forEach(this::contradiction);
    json.endArray();
    json.key("unchecked").beginArray();
    side.network().unchecked().forEach(json::value);
    json.endArray();
    side.fit().ifPresent(this::fit);
    json.key("spans").beginArray();
    side.spans().forEach(this::span);
    json.endArray();
    json.key("edges").beginArray();
    side.edges().forEach(this::edge);
    json.endArray();
    side.asDrilled().ifPresent(a -> mount(side, a));
    angles.filter(a -> a.basis() != DrilledAngles.Basis.NOTHING).ifPresent(this::alignment);
    json.key("findings").beginArray();
    for (Finding finding : side.findings()) {
      ResultsJson.finding(json, finding);
    }
    json.endArray().endObject();
  }

  private void hole(Hole h) {
    Network.Found f = h.found();
    json.beginObject().key("name").value(f.name());
    json.key("diameter").value(f.diameterMm());
    json.key("diameter_plus_minus").value(f.diameterSdMm());
    json.key("planned");
    place(f.planned().at());
    json.key("planned_diameter").value(f.planned().diameterMm());
    h.error()
        .ifPresent(
            e -> {
              json.key("found");
              place(f.at());
              json.key("plus_minus");
              place(new Vec2(f.foreSdMm(), f.inSdMm()));
              json.key("worst_plus_minus").value(f.worstSdMm());
              json.key("error");
              place(e);
            });
    h.left()
        .ifPresent(
            v -> {
              json.key("off_pattern");
              place(v);
            });
    json.endObject();
  }

  private void place(Vec2 p) {
    json.beginObject().key("fore").value(p.x()).key("in").value(p.y()).endObject();
  }

  private void contradiction(Network.Contradiction c) {
    json.beginObject().key("readings").beginArray();
    c.readings().forEach(json::value);
    json.endArray();
    json.key("off").value(c.offMm());
    json.key("deviations").value(c.deviations());
    json.key("left_out").value(c.leftOut()).endObject();
  }

  private void fit(PlateFit fit) {
    json.key("fit").beginObject();
    json.key("verdict").value(fit.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    json.key("slack").value(fit.mating().slackMm());
    json.key("plus_minus").value(fit.slackSdMm());
    json.key("tight").beginArray();
    fit.mating().tight().forEach(json::value);
    json.endArray();
    fit.enlargement()
        .ifPresent(
            e -> {
              json.key("enlarge").beginArray();
              for (Enlargement.One one : e.each()) {
                if (one.diameterMm().isPresent()) {
                  json.beginObject().key("hole").value(one.name());
                  json.key("diameter").value(one.diameterMm().get());
                  json.key("by").value(one.byMm().orElseThrow()).endObject();
                }
              }
              json.endArray();
              e.allByMm().ifPresent(mm -> json.key("enlarge_all_by").value(mm));
            });
    fit.play()
        .ifPresent(
            p -> {
              json.key("turns_back").value(p.turnBack().degrees());
              json.key("turns_on").value(p.turnOn().degrees());
            });
    json.endObject();
  }

  private void span(SpanFound s) {
    json.beginObject().key("from").value(s.from()).key("to").value(s.to());
    json.key("planned").value(s.plannedMm()).key("found").value(s.foundMm());
    json.key("plus_minus").value(s.sdMm());
    json.key("tolerance").value(s.toleranceMm()).endObject();
  }

  private void edge(EdgeMetal e) {
    json.beginObject().key("hole").value(e.hole());
    json.key("limit").value(e.limitMm());
    e.toPlannedMm()
        .ifPresent(
            mm -> {
              json.key("to_planned_cut").value(mm);
              json.key("to_planned_cut_plus_minus").value(e.toPlannedSdMm());
            });
    e.toCut()
        .ifPresent(
            r -> {
              json.key("to_cut").value(r.meanMm());
              json.key("to_cut_plus_minus").value(r.plusMinusMm());
            });
    json.endObject();
  }

  private void mount(DrilledSide side, AsDrilled as) {
    json.key("mount").beginObject();
    json.key("planned");
    mount(side.planned().job().mount());
    json.key("as_drilled");
    mount(as.mount());
    json.key("plus_minus").beginObject();
    json.key("rotation").value(Math.toDegrees(as.rotationSd()));
    json.key("rearward").value(as.rearwardSdMm());
    json.key("inboard").value(as.inboardSdMm()).endObject();
    json.endObject();
  }

  private void mount(Mount m) {
    json.beginObject().key("rotation").value(m.rotation().degrees());
    json.key("rearward").value(m.rearwardMm());
    json.key("inboard").value(m.inboardMm()).endObject();
  }

  private void alignment(DrilledAngles a) {
    json.key("alignment").beginObject();
    json.key("estimate").value(a.basis() == DrilledAngles.Basis.AXIS_ESTIMATE);
    a.caster().ifPresent(f -> figure("caster", f));
    a.camber().ifPresent(f -> figure("camber", f));
    a.toe().ifPresent(f -> figure("toe_not_reset", f));
    a.nearest()
        .ifPresent(
            n -> {
              setting("nearest_setting", n.anywhere());
              n.atMark().ifPresent(m -> setting("nearest_mark", m));
            });
    json.endObject();
  }

  private void figure(String key, DrilledAngles.Figure f) {
    json.key(key).beginObject();
    json.key("planned").value(f.planned().degrees());
    json.key("as_drilled").value(f.drilled().degrees());
    f.doubt()
        .ifPresent(
            d -> {
              json.key("plus_minus_holes").value(d.holes().degrees());
              d.points().ifPresent(p -> json.key("plus_minus_points").value(p.degrees()));
              d.pointsOfChange()
                  .ifPresent(p -> json.key("change_plus_minus_points").value(p.degrees()));
            });
    json.endObject();
  }

  private void setting(String key, NearestSetting.Setting s) {
    json.key(key).beginObject().key("setting").value(s.settingMm());
    json.key("caster").value(s.caster().degrees()).key("camber").value(s.camber().degrees());
    json.key("away").value(s.away().degrees()).endObject();
  }
}
