package dev.towerscribe.sheet.shop;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.model.Paper;

/**
 * A drawing sheet: A4 and the other small papers upright, larger ones on their long side, as ISO
 * 5457 has them. The border is 20 mm at the filing edge; elsewhere 15 mm, where the standard has
 * 10, because its reference grid stands in the border and office printers leave the outermost 5 mm
 * blank.
 *
 * @param name word for the paper: "A4"
 * @param widthMm width as it lies
 * @param heightMm height as it lies
 */
record DrawingSheetSize(String name, double widthMm, double heightMm) {
  /** At the left, for filing; ISO 5457. */
  static final double FILING_MM = 20.0;

  /** At the other edges. */
  static final double BORDER_MM = 15.0;

  /** Width of the strip that carries the reference grid, just outside the frame; ISO 5457. */
  static final double GRID_MM = 5.0;

  /** Papers up to this long side are used upright, mm: A4 and Legal. */
  private static final double UPRIGHT_UP_TO_MM = 356.0;

  static DrawingSheetSize of(Paper paper) {
    return paper.heightMm() <= UPRIGHT_UP_TO_MM
        ? new DrawingSheetSize(paper.word(), paper.widthMm(), paper.heightMm())
        : new DrawingSheetSize(paper.word(), paper.heightMm(), paper.widthMm());
  }

  /** The frame that bounds the drawing. */
  Box frame() {
    return new Box(FILING_MM, BORDER_MM, widthMm - BORDER_MM, heightMm - BORDER_MM);
  }

  boolean isUpright() {
    return heightMm > widthMm;
  }
}
