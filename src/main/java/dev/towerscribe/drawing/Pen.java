package dev.towerscribe.drawing;

import java.util.List;

/** Line types after ISO 128, widths from its series 0.13 to 1.4 mm. */
public enum Pen {
  /** No line. */
  NONE(0.0),
  /** Continuous, very thick: warning frames. */
  HEAVY(1.4),
  /** Continuous thick: the final cut. */
  FINAL_CUT(0.7),
  /** Dashed thick: the rough cut. */
  ROUGH_CUT(0.5, 5.0, 2.0),
  /** Continuous thick: visible edges on drawings of parts. */
  EDGE(0.5),
  /** Continuous, medium: hole circles, plate outlines, tables. */
  OUTLINE(0.35),
  /** Continuous thin: marks and openings as found. */
  THIN(0.25),
  /** Continuous, hair: crosses, pilot circles. */
  FINE(0.13),
  /** Dashed thin: what lies behind or above. */
  HIDDEN(0.25, 3.0, 1.5),
  /** Long chain, thin: centre and straightedge lines. */
  CENTRE(0.25, 12.0, 2.0, 1.0, 2.0),
  /** Hatching. */
  HATCH(0.13);

  private final double widthMm;
  private final List<Double> dashesMm;

  Pen(double widthMm, Double... dashesMm) {
    this.widthMm = widthMm;
    this.dashesMm = List.of(dashesMm);
  }

  /**
   * Line width.
   *
   * @return mm; zero for no line
   */
  public double widthMm() {
    return widthMm;
  }

  /**
   * Lengths of dash, gap, dash, gap and so on.
   *
   * @return mm; empty for a continuous line
   */
  public List<Double> dashesMm() {
    return dashesMm;
  }
}
