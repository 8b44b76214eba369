package dev.towerscribe.part;

import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.GeneralTolerance;
import dev.towerscribe.model.Stated;
import java.util.List;

/**
 * A flat part to be made.
 *
 * <p>Part frames, always seen from above, upper face toward the reader. Plate: the plate frame, x
 * along the slot; a right-hand plate is the mirror image, y negated. Slider: origin at the
 * bearing's centre, axes along the plate's. Jig: x to the page's right and y forward, as it lies on
 * its tower, origin at the original strut-rod centre.
 *
 * @param name what it is called
 * @param kind what it is for
 * @param hand which tower it is for
 * @param quantity how many of it the job needs
 * @param solid its shape, part frame; z = 0 is the under face
 * @param features what is cut out: the solid's cut-outs, then its bores, in their order
 * @param material what it is made of
 * @param finish what is done to it after cutting
 * @param edgeBreakMm size of its broken edges
 * @param general class of the tolerances of sizes without one of their own
 * @param densityGPerCm3 density of its material
 * @param assumed what of all this was not specified, in words
 */
public record Part(
    String name,
    PartKind kind,
    Hand hand,
    int quantity,
    FlatSolid solid,
    List<Feature> features,
    Stated<String> material,
    Stated<String> finish,
    Stated<Double> edgeBreakMm,
    Stated<GeneralTolerance> general,
    Stated<Double> densityGPerCm3,
    List<String> assumed) {
  /** The other hand: y negated. */
  static final Frame2 MIRROR = new Frame2(Vec2.ZERO, new Vec2(1, 0), new Vec2(0, -1));

  private static final double KG_PER_G_MM3_PER_CM3 = 1e-6;

  /** Copies the lists. */
  public Part {
    features = List.copyOf(features);
    assumed = List.copyOf(assumed);
    if (quantity < 1) {
      throw new IllegalArgumentException("a part is made at least once");
    }
    if (features.size() != solid.cutouts().size() + solid.bores().size()) {
      throw new IllegalArgumentException("each cut-out is one feature");
    }
  }

  /**
   * Its volume, sharp edges and nominal sizes.
   *
   * @return mm3
   */
  public double volumeMm3() {
    return solid.volumeMm3();
  }

  /**
   * Its mass: volume times density.
   *
   * @return kg
   */
  public double massKg() {
    return volumeMm3() * densityGPerCm3.value() * KG_PER_G_MM3_PER_CM3;
  }

  /**
   * The same part in the other hand.
   *
   * @param other which tower that is for
   * @return y negated; upper and under face stay what they are
   */
  Part mirrored(Hand other) {
    return new Part(
        name,
        kind,
        other,
        quantity,
        solid.mapped(MIRROR),
        features.stream().map(f -> f.mapped(MIRROR)).toList(),
        material,
        finish,
        edgeBreakMm,
        general,
        densityGPerCm3,
        assumed);
  }
}
