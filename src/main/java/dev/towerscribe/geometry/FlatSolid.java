package dev.towerscribe.geometry;

import java.util.List;

/**
 * A flat part: an outline drawn up from z = 0 (lower face) to z = thickness (upper face), less
 * cut-outs of any outline right through it, less round holes. Nothing of it may touch or cross; who
 * makes one checks that ({@code part} names such faults), and kernels reject it otherwise.
 *
 * @param outline outer edge, kept counter-clockwise
 * @param thicknessMm height, positive
 * @param cutouts edges of what is cut right through, kept counter-clockwise
 * @param bores round holes
 */
public record FlatSolid(
    Contour outline, double thicknessMm, List<Contour> cutouts, List<Bore> bores) {
  /** Turns contours counter-clockwise, copies the lists, checks depths. */
  public FlatSolid {
    if (!(thicknessMm > 0) || Double.isInfinite(thicknessMm)) {
      throw new IllegalArgumentException("not a thickness: " + thicknessMm);
    }
    outline = counterClockwise(outline);
    cutouts = cutouts.stream().map(FlatSolid::counterClockwise).toList();
    bores = List.copyOf(bores);
    for (Bore bore : bores) {
      double deep = bore.recess().map(r -> r.depthMm(bore.diameterMm())).orElse(0.0);
      if (deep >= thicknessMm) {
        throw new IllegalArgumentException("a recess as deep as the part: " + bore);
      }
    }
  }

  private static Contour counterClockwise(Contour c) {
    return c.signedArea() < 0 ? c.reversed() : c;
  }

  /**
   * Volume, from the closed forms of its pieces.
   *
   * @return mm3
   */
  public double volumeMm3() {
    double area = outline.signedArea();
    for (Contour cutout : cutouts) {
      area -= cutout.signedArea();
    }
    double volume = area * thicknessMm;
    for (Bore bore : bores) {
      double d = bore.diameterMm();
      volume -= Math.PI / 4 * d * d * thicknessMm;
      volume -= bore.recess().map(r -> r.volumeMm3(d)).orElse(0.0);
    }
    return volume;
  }

  /**
   * The same part moved, turned or made in the other hand; faces stay what they are.
   *
   * @param frame rigid map of the plane, perhaps a reflection
   * @return mapped part
   */
  public FlatSolid mapped(Frame2 frame) {
    return new FlatSolid(
        outline.mapped(frame),
        thicknessMm,
        cutouts.stream().map(c -> c.mapped(frame)).toList(),
        bores.stream().map(b -> b.mapped(frame)).toList());
  }
}
