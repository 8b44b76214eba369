package dev.towerscribe.report.json;

import dev.towerscribe.model.Job;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.placement.Placements;
import java.util.List;

/**
 * Offers of a placement search as data, format 1; areas in mm2. An offer that is an estimate says
 * so and has no bump steer.
 */
public final class PlacementJson {
  private PlacementJson() {}

  /**
   * Writes what a search found.
   *
   * @param job the job
   * @param offers what was found; empty where no placement stands
   * @return one line of JSON with its line end
   */
  public static String of(Job job, List<Offer> offers) {
    return Json.of(
        json ->
            json.head(job.title())
                .put("figures", Placements.isEstimate(job) ? "estimate" : "linkage")
                .objects("offers", offers, offer -> offer(json, offer)));
  }

  private static void offer(Json json, Offer offer) {
    json.put("name", offer.name())
        .put("rotation", offer.mount().rotation())
        .put("rearward", offer.mount().rearwardMm())
        .put("inboard", offer.mount().inboardMm())
        .put("setting", offer.mount().settingMm())
        .put("caster", offer.caster())
        .put("camber", offer.camber());
    offer.bumpSteer().ifPresent(b -> json.put("bump_steer", b));
    json.put("metal_removed", offer.metalRemovedMm2())
        .put("edge_slack", offer.edgeSlackMm())
        .put("held_back_by", offer.heldBackBy());
  }
}
