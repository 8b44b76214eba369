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
    double radius = shaft(job).widened(slant);
    return new Sweep(
        asMeasured.from(),
        asMeasured.to(),
        radius,
        Region.inside(Contour.hullOfDiscs(centres, radius)),
        true,
        Math.toDegrees(slant),
        reach.rays().size());
  }

  private static Sweep asMeasured(SideJob job) {
    Plate plate = job.plate();
    Vec2 from = job.bearing(plate.slot().fromMm());
    Vec2 to = job.bearing(plate.slot().toMm());
    Shaft shaft = shaft(job);
    return sweep(
        new Vec2(shaft.throughX(from.x()), shaft.throughY(from.y())),
        new Vec2(shaft.throughX(to.x()), shaft.throughY(to.y())),
        shaft.radius(from.x(), from.y(), to.x(), to.y()),
        shaft.leans(),
        shaft.slant(from.x(), from.y(), to.x(), to.y()));
  }

  /**
   * The shaft of a side, wherever its plate goes.
   *
   * @param lower the strut's lower point as (fore, in, height) of the tower plane; null without one
   * @param heightMm bearing over the plane
   * @param halfMm half the moving diameter
   * @param clearanceMm room it needs
   * @param sheetMm thickness of the tower's metal
   */
  record Shaft(Vec3 lower, double heightMm, double halfMm, double clearanceMm, double sheetMm) {
    boolean leans() {
      return lower != null;
    }

    /** How far down the shaft meets the plane, as a fraction of the way to its lower point. */
    private double fraction() {
      return heightMm / (heightMm - lower.z());
    }

    /** Where the shaft of a bearing meets the plane. */
    double throughX(double bearingX) {
      return leans() ? bearingX + fraction() * (lower.x() - bearingX) : bearingX;
    }

    /** Where the shaft of a bearing meets the plane. */
    double throughY(double bearingY) {
      return leans() ? bearingY + fraction() * (lower.y() - bearingY) : bearingY;
    }

    /** Angle to the plane's normal at the greater of both ends of the slot, radians. */
    double slant(double fromX, double fromY, double toX, double toY) {
      if (!leans()) {
        return 0.0;
      }
      double aside =
          Math.max(
              Math.hypot(fromX - lower.x(), fromY - lower.y()),
              Math.hypot(toX - lower.x(), toY - lower.y()));
      return Math.atan2(aside, heightMm - lower.z());
    }

    /** Half of what moves, widened by the slant, with its clearance. */
    double radius(double fromX, double fromY, double toX, double toY) {
      return widened(slant(fromX, fromY, toX, toY));
    }

    /** Half the moving diameter on the tower plane at a slant, with the clearance. */
    double widened(double slant) {
      return halfMm / Math.cos(slant) + sheetMm * Math.tan(slant) + clearanceMm;
    }
  }

  static Shaft shaft(SideJob job) {
    Plate plate = job.plate();
    double height = plate.bearingHeightMm();
    Vec3 lower = job.strut().map(strut -> inTower(job, strut)).orElse(null);
    // The strut's lower end above the tower is a mistake of measurement that the strut's own
    // checks name; here it only means that the lean is of no use.
    boolean useful = lower != null && lower.z() < Math.min(0.0, height);
    return new Shaft(
        useful ? lower : null,
        height,
        plate.movingDiameterMm() / 2,
        plate.movingClearanceMm(),
        job.tower().sheetMm());
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
}
