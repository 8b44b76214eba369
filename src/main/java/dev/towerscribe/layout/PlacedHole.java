package dev.towerscribe.layout;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bolt;
import java.util.List;

/**
 * A bolt hole of the tower.
 *
 * @param bolt the fastener it is for
 * @param at centre, plan
 * @param diameterMm clearance hole diameter
 * @param drillsMm drills in the order of use after the centre punch: pilot, steps, final
 */
public record PlacedHole(Bolt bolt, Vec2 at, double diameterMm, List<Double> drillsMm) {
  /** Copies the list. */
  public PlacedHole {
    drillsMm = List.copyOf(drillsMm);
  }

  /**
   * The name printed beside it.
   *
   * @return the bolt's name
   */
  public String name() {
    return bolt.name();
  }

  /**
   * How much wider than its bolt it is.
   *
   * @return hole minus bolt diameter, mm
   */
  public double clearanceMm() {
    return diameterMm - bolt.thread().nominalMm();
  }

  /**
   * The same hole elsewhere.
   *
   * @param by how far, plan
   * @return the moved hole
   */
  PlacedHole shifted(Vec2 by) {
    return new PlacedHole(bolt, at.plus(by), diameterMm, drillsMm);
  }
}
