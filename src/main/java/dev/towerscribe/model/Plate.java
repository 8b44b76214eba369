package dev.towerscribe.model;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.quantity.Require;
import java.util.List;
import java.util.Objects;

/**
 * The new top mount. Plate frame: x along the slot, y to its left seen from above on the left side.
 *
 * @param name what it is called
 * @param thicknessMm its thickness
 * @param outline its edge
 * @param handed true for a mirrored pair; false for one part used on both sides
 * @param slot its adjuster
 * @param bearingXMm bearing centre at setting 0, along the slot from the plate's centre
 * @param bearingHeightMm bearing centre above the tower plane
 * @param movingDiameterMm what passes through the opening with the bearing
 * @param movingClearanceMm room it needs all round
 * @param coverMm least overlap of the plate over the finished opening, all round
 * @param wallGapMm least gap between the plate and the tower's walls
 * @param bolts its fasteners, at least two
 * @param make what a machinist needs to know beside these
 */
public record Plate(
    String name,
    double thicknessMm,
    Contour outline,
    boolean handed,
    Slot slot,
    double bearingXMm,
    double bearingHeightMm,
    double movingDiameterMm,
    double movingClearanceMm,
    double coverMm,
    double wallGapMm,
    List<Bolt> bolts,
    PlateMake make) {
  /**
   * Where the bearing can be fixed.
   *
   * @param fromMm least setting
   * @param toMm greatest setting, not less
   * @param indexMm marked settings, ascending, within the range
   */
  public record Slot(double fromMm, double toMm, List<Double> indexMm) {
    /** Checks the order. */
    public Slot {
      Require.finite("slot from", fromMm);
      Require.finite("slot to", toMm);
      if (fromMm > toMm) {
        throw new IllegalArgumentException("slot runs backward");
      }
      indexMm = List.copyOf(indexMm);
    }
  }

  /** Checks the figures and copies the list. */
  public Plate {
    Require.positive("plate thickness", thicknessMm);
    Require.finite("bearing x", bearingXMm);
    Require.finite("bearing height", bearingHeightMm);
    Require.positive("moving diameter", movingDiameterMm);
    Require.notNegative("moving clearance", movingClearanceMm);
    Require.notNegative("cover", coverMm);
    Require.notNegative("wall gap", wallGapMm);
    Objects.requireNonNull(make);
    bolts = List.copyOf(bolts);
    if (bolts.size() < 2) {
      throw new IllegalArgumentException("a plate has at least two bolts");
    }
  }

  /**
   * Width of the slot: what the job says, or room for what moves through it.
   *
   * @return mm
   */
  public Stated<Double> slotWidthMm() {
    return Stated.or(make.slotWidthMm(), movingDiameterMm + 2 * movingClearanceMm);
  }

  /**
   * Whether the bearing can be moved at all.
   *
   * @return false where the slot is a single setting
   */
  public boolean slotHasLength() {
    return slot.toMm() > slot.fromMm();
  }
}
