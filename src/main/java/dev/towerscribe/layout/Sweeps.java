package dev.towerscribe.layout;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.ShaftReach;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.Tower;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What moves through the opening. With the strut's points known the shaft runs from the bearing to
 * the lower end of the strut and meets the tower plane off the bearing's own place; with its
 * mechanism known as well, it does so all the way from droop to bump and from lock to lock. Without
 * points it is taken along the plane's normal.
 */
final class Sweeps {
  private Sweeps() {}

  static Sweep of(SideJob job, Optional<ShaftReach> reach) {
    Sweep asMeasured = asMeasured(job);
    return reach.map(r -> moving(job, asMeasured, r)).orElse(asMeasured);
  }

  /**
   * Over the slot, travel and steer together. The hull of discs of the greatest slant is a little
   * more than what sweeps, never less: what lies between two places of the strut lies between their
   * discs.
   */
  private static Sweep moving(SideJob job, Sweep asMeasured, ShaftReach reach) {
    double height = job.plate().bearingHeightMm();
    List<Vec2> centres = new ArrayList<>(List.of(asMeasured.from(), asMeasured.to()));
    double slant = Math.toRadians(asMeasured.slantDegrees());
    for (ShaftReach.Ray ray : reach.rays()) {
      centres.add(job.bearing(ray.settingMm()).plus(ray.perMm().times(height)));
      slant = Math.max(slant, Math.atan(ray.perMm().norm()));
    }
    double radius = widened(job, slant);
    return new Sweep(
        asMeasured.from(),
        asMeasured.to(),
        radius,
        Region.inside(Contour.hullOfDiscs(centres, radius)),
        true,
        Math.toDegrees(slant),
        reach.rays().size());
  }

  /** Half the moving diameter on the tower plane at a slant, with the clearance. */
  private static double widened(SideJob job, double slant) {
    Plate plate = job.plate();
    return plate.movingDiameterMm() / 2 / Math.cos(slant)
        + job.tower().sheetMm() * Math.tan(slant)
        + plate.movingClearanceMm();
  }

  private static Sweep asMeasured(SideJob job) {
    Plate plate = job.plate();
    Vec2 from = job.bearing(plate.slot().fromMm());
    Vec2 to = job.bearing(plate.slot().toMm());
    double radius = plate.movingDiameterMm() / 2 + plate.movingClearanceMm();
    if (job.strut().isEmpty()) {
      return sweep(from, to, radius, false, 0.0);
    }
    Vec3 lower = inTower(job, job.strut().get());
    double height = plate.bearingHeightMm();
    if (!(lower.z() < Math.min(0.0, height))) {
      // The strut's lower end above the tower is a mistake of measurement that the strut's own
      // checks name; here it only means that the lean is of no use.
      return sweep(from, to, radius, false, 0.0);
    }
    double slant = Math.max(slant(from, height, lower), slant(to, height, lower));
    return sweep(
        throughPlane(from, height, lower),
        throughPlane(to, height, lower),
        widened(job, slant),
        true,
        slant);
  }

  private static Sweep sweep(Vec2 from, Vec2 to, double radius, boolean known, double slant) {
    return new Sweep(
        from,
        to,
        radius,
        Region.inside(Contour.sweptDisc(from, to, radius)),
        known,
        Math.toDegrees(slant),
        0);
  }

  /** The strut's lower point as (fore, in, height) of the tower plane. */
  private static Vec3 inTower(SideJob job, StrutPoints strut) {
    Tower tower = job.tower();
    Vec3 d = strut.strutLower().minus(strut.top());
    return new Vec3(
        d.dot(tower.lean().fore(job.side())),
        d.dot(tower.lean().in(job.side())),
        d.dot(tower.lean().normal(job.side())) + tower.pivotHeightMm());
  }

  private static Vec2 throughPlane(Vec2 bearing, double height, Vec3 lower) {
    double t = height / (height - lower.z());
    return bearing.toward(new Vec2(lower.x(), lower.y()), t);
  }

  private static double slant(Vec2 bearing, double height, Vec3 lower) {
    return Math.atan2(bearing.distanceTo(new Vec2(lower.x(), lower.y())), height - lower.z());
  }
}
