package dev.towerscribe.part;

import dev.towerscribe.model.Fastening;
import dev.towerscribe.quantity.Numbers;

/**
 * How far a hole's axis may lie from its true place: the diameter of the cylinder that it must stay
 * in (ISO 1101), so that any bolt still goes through both parts.
 *
 * @param fastening whether the bolt floats in both parts or is fixed in one
 * @param leastHoleMm H, least diameter of the clearance hole
 * @param greatestBoltMm F, greatest diameter of the bolt: its nominal one
 */
public record PositionTolerance(Fastening fastening, double leastHoleMm, double greatestBoltMm) {
  /** Where the tolerance comes from. */
  public static final String SOURCE = "ISO 1101";

  /**
   * Its diameter: H - F for a floating bolt, half of that for a fixed one, where both parts share
   * the clearance of one hole.
   *
   * @return mm; not positive where the bolt has no room at all
   */
  public double diameterMm() {
    double room = leastHoleMm - greatestBoltMm;
    return fastening == Fastening.FIXED ? room / 2 : room;
  }

  /**
   * The formula with its figures, in mm.
   *
   * @return for instance "floating: T = H - F = 9.00 - 8.00 = 1.00 mm"
   */
  public String formula() {
    String h = Numbers.fixed(leastHoleMm, 2);
    String f = Numbers.fixed(greatestBoltMm, 2);
    String t = Numbers.fixed(diameterMm(), 2) + " mm";
    return fastening == Fastening.FIXED
        ? "fixed: T = (H - F) / 2 = (%s - %s) / 2 = %s".formatted(h, f, t)
        : "floating: T = H - F = %s - %s = %s".formatted(h, f, t);
  }
}
