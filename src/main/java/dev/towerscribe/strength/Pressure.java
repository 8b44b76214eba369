package dev.towerscribe.strength;

import dev.towerscribe.geometry.Region;
import dev.towerscribe.quantity.Require;
import java.util.List;
import java.util.Optional;

/**
 * Mean pressure on the tower, under the plate and under the ring that the old mount left.
 *
 * @param loadN load square to the plane, N, not negative
 * @param originalMm2 area of the mark less the opening as found, mm2, positive
 * @param contactMm2 sound metal under the plate, mm2, positive
 */
public record Pressure(double loadN, double originalMm2, double contactMm2) {
  /** Checks the figures. */
  public Pressure {
    Require.atLeast("load", loadN, 0);
    Require.positive("area of the original ring", originalMm2);
    Require.positive("area under the plate", contactMm2);
  }

  /**
   * Measures both areas.
   *
   * @param loadN load square to the plane, N; its sign does not matter
   * @param original the ring that the old mount left
   * @param plate edge of the plate, plan
   * @param boltingFace flat sound metal, if measured
   * @param gone what has been cut away: the finished opening
   * @param holes bolt holes
   * @return the pressures; empty if either area is nothing
   */
  static Optional<Pressure> of(
      double loadN,
      Region original,
      Region plate,
      Optional<Region> boltingFace,
      Region gone,
      List<Region> holes) {
    Region sound = boltingFace.map(plate::intersection).orElse(plate).minus(gone);
    Region contact = holes.stream().reduce(sound, Region::minus);
    double before = original.area();
    double after = contact.area();
    return before > 0 && after > 0
        ? Optional.of(new Pressure(Math.abs(loadN), before, after))
        : Optional.empty();
  }

  /**
   * Under the old mount's ring.
   *
   * @return MPa
   */
  public double originalMPa() {
    return loadN / originalMm2;
  }

  /**
   * Under the plate.
   *
   * @return MPa
   */
  public double contactMPa() {
    return loadN / contactMm2;
  }

  /**
   * Pressure under the plate over that under the old mount; less than 1 is gentler.
   *
   * @return ratio of areas
   */
  public double ratio() {
    return originalMm2 / contactMm2;
  }
}
