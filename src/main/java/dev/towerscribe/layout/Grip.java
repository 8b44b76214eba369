package dev.towerscribe.layout;

import dev.towerscribe.geometry.Recess;
import dev.towerscribe.model.NutAndWasher;
import dev.towerscribe.model.SideJob;

/**
 * What a bolt goes through: plate, what fills the gap under it, and the tower, whose two skins and
 * the gap between them count where there are two.
 *
 * @param packingMm height of the shim or formed seat at the bolt, not negative
 * @param gripMm from the face under the bolt's head to the face under its nut, washers left out
 * @param leastLengthMm least length of a bolt from under its head, two pitches past its nut counted
 *     in (common practice, no source); of a countersunk one over all
 */
public record Grip(double packingMm, double gripMm, double leastLengthMm) {
  /** A gap that a washer's and a tower's own unevenness takes up. */
  private static final double NO_SHIM_MM = 0.1;

  /**
   * The grip of a bolt.
   *
   * @param job its side
   * @param rest where the plate rests there
   * @param hole its hole
   * @return what it goes through there
   */
  static Grip of(SideJob job, RestingPlane rest, PlacedHole hole) {
    double gap = rest.gapMm(hole.at());
    double packing = gap < NO_SHIM_MM ? 0.0 : gap;
    double plate = job.plate().thicknessMm();
    int washers = 2;
    if (hole.bolt().recess().isPresent()) {
      washers = 1;
      if (hole.bolt().recess().get() instanceof Recess.Counterbore bore) {
        plate -= bore.depthMm(hole.diameterMm());
      }
    }
    NutAndWasher nut = NutAndWasher.of(hole.bolt().thread());
    double grip = plate + packing + job.tower().throughMm();
    double length = grip + washers * nut.washerMm() + nut.nutMm() + 2 * nut.pitchMm();
    return new Grip(packing, grip, length);
  }
}
