package dev.towerscribe.model;

import java.util.Optional;

/**
 * The flat part that carries the bearing and moves along the slot, sizes resolved. Its frame:
 * origin at the bearing's centre, axes along the plate's. Lengths along x, widths along y.
 *
 * @param lengthMm along the slot
 * @param widthMm across it
 * @param thicknessMm its thickness
 * @param cornerMm radius of its corners, at most half the shorter side
 * @param bore seat of the bearing, about the origin
 * @param indexHoles the pin holes at (0, +-offset), if the plate has index holes
 */
public record Slider(
    Stated<Double> lengthMm,
    Stated<Double> widthMm,
    Stated<Double> thicknessMm,
    Stated<Double> cornerMm,
    PlateMake.BearingBore bore,
    Optional<PlateMake.IndexHoles> indexHoles) {
  /** Least metal round its holes where nothing is said (common practice, no source). */
  private static final double LEAST_METAL_MM = 6;

  /** Radius of its corners where nothing is said (common practice, no source). */
  private static final double CORNER_MM = 5;

  /**
   * The slider of a plate: one with a bearing bore and a slot that has length. What the job leaves
   * out: metal as wide as the plate is thick, but at least 6 mm, round the bore and the slot, and
   * across it round the index holes as well; the plate's thickness; corners of 5 mm.
   *
   * @param plate the plate
   * @return its slider, or empty
   */
  public static Optional<Slider> of(Plate plate) {
    Optional<PlateMake.BearingBore> bore = plate.make().bearingBore();
    if (bore.isEmpty() || !plate.slotHasLength()) {
      return Optional.empty();
    }
    PlateMake.SliderSize said = plate.make().slider().orElse(PlateMake.SliderSize.UNSAID);
    double metal = Math.max(LEAST_METAL_MM, plate.thicknessMm());
    double round = Math.max(bore.get().diameterMm(), plate.slotWidthMm().value()) / 2;
    double across =
        Math.max(
            round,
            plate.make().indexHoles().map(h -> h.offsetMm() + h.diameterMm() / 2).orElse(0.0));
    Stated<Double> length = Stated.or(said.lengthMm(), 2 * (round + metal));
    Stated<Double> width = Stated.or(said.widthMm(), 2 * (across + metal));
    double most = Math.min(length.value(), width.value()) / 2;
    return Optional.of(
        new Slider(
            length,
            width,
            Stated.or(said.thicknessMm(), plate.thicknessMm()),
            Stated.or(said.cornerMm(), Math.min(CORNER_MM, most)),
            bore.get(),
            plate.make().indexHoles()));
  }
}
