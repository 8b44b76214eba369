package dev.towerscribe.layout;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutRodReach;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What moves through the opening as the bearing runs from one end of the slot to the other.
 *
 * <p>With the strut's points known the strut rod runs from the bearing to the lower end of the
 * strut and meets the tower plane off the bearing's own place; with its mechanism known as well, it
 * does so all the way from droop to bump and from lock to lock. Without points it is taken along
 * the plane's normal.
 *
 * @param from where the strut rod's axis meets the tower plane with the bearing at the slot's least
 *     setting and the strut as measured, plan
 * @param to the same at its greatest setting
 * @param radiusMm half the moving diameter, widened by the greatest slant, plus the clearance
 * @param region the swept region, plan: over the slot, and where the strut's mechanism is known
 *     over travel and steer too
 * @param leanKnown false when the strut's points are not given and the strut rod was taken along
 *     the plane's normal
 * @param slantDegrees greatest angle between strut rod and normal, degrees
 * @param poses how many places of the strut over travel and steer were counted in; 0 if only the
 *     strut as measured was
 */
public record Sweep(
    Vec2 from,
    Vec2 to,
    double radiusMm,
    Region region,
    boolean leanKnown,
    double slantDegrees,
    int poses) {
  /**
   * What moves through a tower's opening.
   *
   * @param job the side, its plate where it goes
   * @param reach which ways the strut rod points over travel and steer, where that is known
   * @return the sweep over the whole slot. The hull of discs of the greatest slant is a little more
   *     than what sweeps, never less: what lies between two places of the strut lies between their
   *     discs.
   */
  public static Sweep of(SideJob job, Optional<StrutRodReach> reach) {
    Plate plate = job.plate();
    StrutRod rod = StrutRod.of(job);
    Vec2 from = job.bearing(plate.slot().fromMm());
    Vec2 to = job.bearing(plate.slot().toMm());
    Vec2 first = new Vec2(rod.throughX(from.x()), rod.throughY(from.y()));
    Vec2 last = new Vec2(rod.throughX(to.x()), rod.throughY(to.y()));
    double slant = rod.slant(from.x(), from.y(), to.x(), to.y());
    List<StrutRodReach.Ray> rays = reach.map(StrutRodReach::rays).orElse(List.of());
    List<Vec2> centres = new ArrayList<>(List.of(first, last));
    for (StrutRodReach.Ray ray : rays) {
      centres.add(job.bearing(ray.settingMm()).plus(ray.perMm().times(job.bearingOverRimMm())));
      slant = Math.max(slant, Math.atan(ray.perMm().norm()));
    }
    double radius = rod.widened(slant);
    Contour outline =
        rays.isEmpty()
            ? Contour.sweptDisc(first, last, radius)
            : Contour.hullOfDiscs(centres, radius);
    return new Sweep(
        first,
        last,
        radius,
        Region.inside(outline),
        rod.leans() || !rays.isEmpty(),
        Math.toDegrees(slant),
        rays.size());
  }
}
