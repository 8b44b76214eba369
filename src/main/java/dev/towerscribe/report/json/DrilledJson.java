package dev.towerscribe.report.json;

import dev.towerscribe.drilled.Drilled;
import dev.towerscribe.drilled.DrilledAngles;
import dev.towerscribe.drilled.DrilledSide;
import dev.towerscribe.drilled.DrilledSide.AsDrilled;
import dev.towerscribe.drilled.DrilledSide.EdgeMetal;
import dev.towerscribe.drilled.DrilledSide.Hole;
import dev.towerscribe.drilled.Enlargement;
import dev.towerscribe.drilled.HoleNetwork;
import dev.towerscribe.drilled.NearestSetting;
import dev.towerscribe.drilled.PlateFit;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Drilled towers as data, format 1; every {@code plus_minus} is one standard deviation. A member
 * that is not known is left out.
 */
public final class DrilledJson {
  private final Json json;

  private DrilledJson(Json json) {
    this.json = json;
  }

  /**
   * Writes drilled towers.
   *
   * @param drilled the towers
   * @param angles what they do to the alignment, where that is known
   * @param accepted ids of accepted stop findings
   * @return one line of JSON with its line end
   */
  public static String of(Drilled drilled, Map<Side, DrilledAngles> angles, Set<String> accepted) {
    return Json.of(json -> new DrilledJson(json).all(drilled, angles, accepted));
  }

  private void all(Drilled drilled, Map<Side, DrilledAngles> angles, Set<String> accepted) {
    json.format().put("title", drilled.job().title()).put("readings", drilled.readings().title());
    drilled.readings().date().ifPresent(d -> json.put("date", d.toString()));
    json.put("units", "mm");
    json.sides(drilled.sides(), s -> side(s, Optional.ofNullable(angles.get(s.side()))));
    json.strings("accepted", accepted);
  }

  private void side(DrilledSide side, Optional<DrilledAngles> angles) {
    HoleNetwork network = side.network();
    json.put("tied", network.tied())
        .put("complete", network.complete())
        .put("spare_readings", network.spare())
        .put("scatter", network.scatter())
        .objects("holes", side.holes(), this::hole)
        .objects("contradictions", network.contradictions(), this::contradiction)
        .strings("unchecked", network.unchecked());
    side.fit().ifPresent(f -> json.object("fit", () -> fit(f)));
    json.objects(
            "spans",
            side.spans(),
            s ->
                json.put("from", s.from())
                    .put("to", s.to())
                    .put("planned", s.plannedMm())
                    .put("found", s.foundMm())
                    .put("plus_minus", s.sdMm())
                    .put("tolerance", s.toleranceMm()))
        .objects("edges", side.edges(), this::edge);
    side.asDrilled().ifPresent(a -> json.object("mount", () -> mounts(side, a)));
    angles
        .filter(a -> a.basis() != DrilledAngles.Basis.NOTHING)
        .ifPresent(a -> json.object("alignment", () -> alignment(a)));
    json.findings(side.findings());
  }

  private void hole(Hole h) {
    HoleNetwork.Found f = h.found();
    json.put("name", f.name())
        .put("diameter", f.diameterMm())
        .put("diameter_plus_minus", f.diameterSdMm());
    place("planned", f.planned().at());
    json.put("planned_diameter", f.planned().diameterMm());
    h.error()
        .ifPresent(
            e -> {
              place("found", f.at());
              place("plus_minus", new Vec2(f.foreSdMm(), f.inSdMm()));
              json.put("worst_plus_minus", f.worstSdMm());
              place("error", e);
            });
    h.left().ifPresent(v -> place("off_pattern", v));
  }

  private void place(String key, Vec2 p) {
    json.object(key, () -> json.put("fore", p.x()).put("in", p.y()));
  }

  private void contradiction(HoleNetwork.Contradiction c) {
    json.strings("readings", c.readings())
        .put("off", c.offMm())
        .put("deviations", c.deviations())
        .put("left_out", c.leftOut());
  }

  private void fit(PlateFit fit) {
    json.put("verdict", fit.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .put("slack", fit.mating().slackMm())
        .put("plus_minus", fit.slackSdMm())
        .strings("tight", fit.mating().tight());
    fit.enlargement()
        .ifPresent(
            e -> {
              json.objects(
                  "enlarge",
                  e.each().stream().filter(one -> one.diameterMm().isPresent()).toList(),
                  this::enlarged);
              e.allByMm().ifPresent(mm -> json.put("enlarge_all_by", mm));
            });
    fit.play().ifPresent(p -> json.put("turns_back", p.turnBack()).put("turns_on", p.turnOn()));
  }

  private void enlarged(Enlargement.One one) {
    json.put("hole", one.name())
        .put("diameter", one.diameterMm().orElseThrow())
        .put("by", one.byMm().orElseThrow());
  }

  private void edge(EdgeMetal e) {
    json.put("hole", e.hole()).put("limit", e.limitMm());
    e.toPlannedMm()
        .ifPresent(
            mm ->
                json.put("to_planned_cut", mm).put("to_planned_cut_plus_minus", e.toPlannedSdMm()));
    e.toCut().ifPresent(r -> json.put("to_cut", r.mean()).put("to_cut_plus_minus", r.meanSd()));
  }

  private void mounts(DrilledSide side, AsDrilled as) {
    mount("planned", side.planned().job().mount());
    mount("as_drilled", as.mount());
    json.object(
        "plus_minus",
        () ->
            json.put("rotation", Math.toDegrees(as.rotationSd()))
                .put("rearward", as.rearwardSdMm())
                .put("inboard", as.inboardSdMm()));
  }

  private void mount(String key, Mount m) {
    json.object(
        key,
        () ->
            json.put("rotation", m.rotation())
                .put("rearward", m.rearwardMm())
                .put("inboard", m.inboardMm()));
  }

  private void alignment(DrilledAngles a) {
    json.put("estimate", a.basis() == DrilledAngles.Basis.AXIS_ESTIMATE);
    a.caster().ifPresent(f -> figure("caster", f));
    a.camber().ifPresent(f -> figure("camber", f));
    a.toe().ifPresent(f -> figure("toe_not_reset", f));
    a.nearest()
        .ifPresent(
            n -> {
              setting("nearest_setting", n.anywhere());
              n.atMark().ifPresent(m -> setting("nearest_mark", m));
            });
  }

  private void figure(String key, DrilledAngles.Figure f) {
    json.object(
        key,
        () -> {
          json.put("planned", f.planned()).put("as_drilled", f.drilled());
          f.uncertainty()
              .ifPresent(
                  d -> {
                    json.put("plus_minus_holes", d.holes());
                    d.points().ifPresent(p -> json.put("plus_minus_points", p));
                    d.pointsOfChange().ifPresent(p -> json.put("change_plus_minus_points", p));
                  });
        });
  }

  private void setting(String key, NearestSetting.Setting s) {
    json.object(
        key,
        () ->
            json.put("setting", s.settingMm())
                .put("caster", s.caster())
                .put("camber", s.camber())
                .put("away", s.away()));
  }
}
