package dev.towerscribe.cli;

import dev.towerscribe.model.Job;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.placement.Placements;
import java.util.List;

/**
 * Offers as data: one JSON object, format 1, degrees, mm and mm2 whatever the job's units. An offer
 * that is an estimate says so and has no bump steer.
 */
final class PlacementJson {
  private static final int FORMAT = 1;

  private PlacementJson() {}

  /**
   * Writes what a search found.
   *
   * @param job the job
   * @param offers what was found; empty where no placement stands
   * @return one line of JSON with its line end
   */
  static String of(Job job, List<Offer> offers) {
    JsonWriter json = new JsonWriter();
    json.beginObject();
    json.key("format").value(FORMAT);
    json.key("title").value(job.title());
    json.key("units").value("mm");
    json.key("figures").value(Placements.isEstimate(job) ? "estimate" : "linkage");
    json.key("offers").beginArray();
    for (Offer offer : offers) {
      json.beginObject().key("name").value(offer.name());
      json.key("rotation").value(offer.mount().rotation().degrees());
      json.key("rearward").value(offer.mount().rearwardMm());
      json.key("inboard").value(offer.mount().inboardMm());
      json.key("setting").value(offer.mount().settingMm());
      json.key("caster").value(offer.caster().degrees());
      json.key("camber").value(offer.camber().degrees());
      offer.bumpSteer().ifPresent(b -> json.key("bump_steer").value(b.degrees()));
      json.key("metal_removed").value(offer.metalRemovedMm2());
      json.key("edge_slack").value(offer.edgeSlackMm());
      json.key("held_back_by").value(offer.heldBackBy()).endObject();
    }
    json.endArray().endObject();
    return json + "\n";
  }
}
