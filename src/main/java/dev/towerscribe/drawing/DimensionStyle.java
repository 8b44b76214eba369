package dev.towerscribe.drawing;

/**
 * Sizes of dimensions on paper, whatever the scale of what they measure.
 *
 * @param capHeightMm height of a capital in the words, mm; 2.5 or more
 * @param arrowLengthMm length of an arrowhead, mm, positive
 * @param gapMm from the measured point to the start of its extension line, and from a line to the
 *     words above it, mm, positive
 * @param overshootMm how far an extension line runs past the dimension line, mm, zero or more
 * @param firstOffsetMm from the part to the nearest dimension line, mm, positive
 * @param stepMm from one dimension line to the next further out, mm, positive
 */
public record DimensionStyle(
    double capHeightMm,
    double arrowLengthMm,
    double gapMm,
    double overshootMm,
    double firstOffsetMm,
    double stepMm) {
  /** Smallest lettering that may be printed; source: the product's own rule, after ISO 3098. */
  public static final double LEAST_CAP_HEIGHT_MM = 2.5;

  /**
   * Lettering 3.5 mm, arrows as long as it is high, overshoot eight times the line's width of 0.25
   * mm (ISO 129-1, from memory); gap 1 mm, first line 10 mm from the part and 8 mm between lines
   * (common practice, no source).
   */
  public static final DimensionStyle ISO = new DimensionStyle(3.5, 3.5, 1.0, 2.0, 10.0, 8.0);

  /** The line of everything but arrowheads: continuous thin (ISO 128). */
  static final Pen LINE = Pen.THIN;

  /**
   * The angle a filled arrowhead closes, degrees: common practice, no source; ISO 129-1 allows 15
   * to 90 by kind of arrow (from memory).
   */
  static final double ARROW_DEGREES = 18;

  /**
   * Least white between words and whatever is not theirs, mm: the least space between lines of a
   * drawing, 0.7 (ISO 128, from memory), and half a thin line.
   */
  static final double CLEAR_MM = 0.7 + 0.25 / 2;

  /** Lines that run side by side nearer than this print as one; ISO 128, from memory. */
  static final double LEAST_APART_MM = 0.7;

  /** Checks the sizes. */
  public DimensionStyle {
    if (!(capHeightMm >= LEAST_CAP_HEIGHT_MM
        && arrowLengthMm > 0
        && gapMm > 0
        && overshootMm >= 0
        && firstOffsetMm > 0
        && stepMm > 0)) {
      throw new IllegalArgumentException(
          "not a style of dimensions: %s, %s, %s, %s, %s, %s"
              .formatted(capHeightMm, arrowLengthMm, gapMm, overshootMm, firstOffsetMm, stepMm));
    }
  }

  /** Room that an arrow outside its lines takes, with a tail as long as itself, mm. */
  double outsideArrowMm() {
    return 2 * arrowLengthMm;
  }
}
