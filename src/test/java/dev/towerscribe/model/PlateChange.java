package dev.towerscribe.model;

import dev.towerscribe.geometry.Contour;
import java.util.List;

/** A plate like another but for what a test says. */
public final class PlateChange {
  private final Plate base;
  private Contour outline;
  private List<Bolt> bolts;
  private Plate.Slot slot;
  private double bearingXMm;
  private double bearingHeightMm;
  private double coverMm;
  private double wallGapMm;

  private PlateChange(Plate base) {
    this.base = base;
    withShape(base.outline(), base.bolts());
    withBearing(base.slot(), base.bearingXMm(), base.bearingHeightMm());
    withMargins(base.coverMm(), base.wallGapMm());
  }

  public static PlateChange of(Plate base) {
    return new PlateChange(base);
  }

  public PlateChange withShape(Contour edge, List<Bolt> fasteners) {
    outline = edge;
    bolts = fasteners;
    return this;
  }

  /** Another slot, the bearing's centre at setting 0 and its height above the tower plane, mm. */
  public PlateChange withBearing(Plate.Slot adjuster, double xMm, double heightMm) {
    slot = adjuster;
    bearingXMm = xMm;
    bearingHeightMm = heightMm;
    return this;
  }

  /** Another least overlap over the finished opening and least gap to the tower's walls, mm. */
  public PlateChange withMargins(double overlapMm, double gapMm) {
    coverMm = overlapMm;
    wallGapMm = gapMm;
    return this;
  }

  public Plate plate() {
    return new Plate(
        base.name(),
        base.thicknessMm(),
        outline,
        base.handed(),
        slot,
        bearingXMm,
        bearingHeightMm,
        base.movingDiameterMm(),
        base.movingClearanceMm(),
        coverMm,
        wallGapMm,
        bolts,
        base.make());
  }
}
