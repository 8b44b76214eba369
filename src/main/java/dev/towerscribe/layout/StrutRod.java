package dev.towerscribe.layout;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.Tower;
import java.util.Optional;

/**
 * The strut rod of a side with the strut as measured, wherever its plate goes. Without strut points
 * it is taken along the normal of the tower plane.
 *
 * @param lower the strut's lower point as (fore, in, height over the rim); null without one
 * @param heightMm bearing over the finished opening's rim, where the metal is
 * @param halfMm half the moving diameter
 * @param clearanceMm room it needs
 * @param sheetMm from the tower's upper face to its lower
 */
public record StrutRod(
    Vec3 lower, double heightMm, double halfMm, double clearanceMm, double sheetMm) {
  /**
   * A side's strut rod.
   *
   * @param job the side; its mount does not matter
   * @return its strut rod
   */
  public static StrutRod of(SideJob job) {
    Plate plate = job.plate();
    double height = job.bearingOverRimMm();
    // The strut's lower end above the tower is a mistake of measurement that the strut's own
    // checks name; here it only means that the lean is of no use.
    Optional<Vec3> lower =
        job.strut().map(s -> inTower(job, s)).filter(l -> l.z() < Math.min(0.0, height));
    return new StrutRod(
        lower.orElse(null),
        height,
        plate.movingDiameterMm() / 2,
        plate.movingClearanceMm(),
        job.tower().throughMm());
  }

  /** The strut's lower point as (fore, in, height over the rim of the finished opening). */
  private static Vec3 inTower(SideJob job, StrutPoints strut) {
    Tower tower = job.tower();
    Vec3 d = strut.strutLower().minus(strut.top());
    return new Vec3(
        d.dot(tower.lean().fore(job.side())),
        d.dot(tower.lean().in(job.side())),
        d.dot(tower.lean().normal(job.side())) + tower.pivotHeightMm() - job.seating().rimMm());
  }

  /**
   * Whether its lean is known.
   *
   * @return false where it is taken along the normal
   */
  public boolean leans() {
    return lower != null;
  }

  /** How far down it meets the plane, as a fraction of the way to its lower point. */
  private double fraction() {
    return heightMm / (heightMm - lower.z());
  }

  /**
   * Where it meets the plane with a bearing.
   *
   * @param bearingX bearing centre, plan, fore
   * @return fore
   */
  public double throughX(double bearingX) {
    return leans() ? bearingX + fraction() * (lower.x() - bearingX) : bearingX;
  }

  /**
   * Where it meets the plane with a bearing.
   *
   * @param bearingY bearing centre, plan, in
   * @return in
   */
  public double throughY(double bearingY) {
    return leans() ? bearingY + fraction() * (lower.y() - bearingY) : bearingY;
  }

  /**
   * Angle to the plane's normal, the greater of those with the bearing at either end of the slot.
   *
   * @param fromX bearing at one end, plan, fore
   * @param fromY bearing at one end, plan, in
   * @param toX bearing at the other end, plan, fore
   * @param toY bearing at the other end, plan, in
   * @return radians, 0 without a known lean
   */
  public double slant(double fromX, double fromY, double toX, double toY) {
    if (!leans()) {
      return 0.0;
    }
    double aside =
        Math.max(
            Math.hypot(fromX - lower.x(), fromY - lower.y()),
            Math.hypot(toX - lower.x(), toY - lower.y()));
    return Math.atan2(aside, heightMm - lower.z());
  }

  /**
   * Half the moving diameter on the tower plane, widened by a slant, with the clearance.
   *
   * @param slant angle to the plane's normal, radians
   * @return mm
   */
  public double widened(double slant) {
    return halfMm / Math.cos(slant) + sheetMm * Math.tan(slant) + clearanceMm;
  }
}
