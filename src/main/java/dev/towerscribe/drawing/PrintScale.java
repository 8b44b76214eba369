package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;

/**
 * What a printer does to a page: printed length over nominal length, by axis of the paper held
 * upright. A page is drawn by the inverse about its centre, so that it comes out true.
 *
 * @param across along the paper's short side (page x); 0.9 to 1.1
 * @param along along the paper's long side (page y); 0.9 to 1.1
 */
public record PrintScale(double across, double along) {
  /** A true printer. */
  public static final PrintScale TRUE = new PrintScale(1.0, 1.0);

  /** Checks the range. */
  public PrintScale {
    if (!(across >= 0.9 && across <= 1.1 && along >= 0.9 && along <= 1.1)) {
      throw new IllegalArgumentException("not a print scale: " + across + ", " + along);
    }
  }

  /**
   * Whether nothing needs doing.
   *
   * @return true for 1, 1
   */
  public boolean isTrue() {
    return across == 1.0 && along == 1.0;
  }

  /**
   * Where a page point must be drawn.
   *
   * @param p where it is to come out, page mm
   * @param pageCentre centre of the page
   * @return where to draw it, page mm
   */
  public Vec2 compensate(Vec2 p, Vec2 pageCentre) {
    return isTrue()
        ? p
        : new Vec2(
            pageCentre.x() + (p.x() - pageCentre.x()) / across,
            pageCentre.y() + (p.y() - pageCentre.y()) / along);
  }
}
