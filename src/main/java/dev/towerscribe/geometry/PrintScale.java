package dev.towerscribe.geometry;

import dev.towerscribe.quantity.Angle;

/**
 * What a printer does to a page, apart from laying it somewhere on the paper and turning it:
 * printed length over nominal length, by axis of the paper held upright, and how far the two axes
 * are from square. About the page's centre a nominal (x, y) is printed at
 *
 * <pre>
 *   (across x + along sin(skew) y, along cos(skew) y)
 * </pre>
 *
 * <p>so that a bar along the long side comes out {@code along} times its length, leaning toward +x
 * by {@code skew}. A page is drawn by the inverse, so that it comes out true.
 *
 * @param across along the paper's short side (page x); 0.9 to 1.1
 * @param along along the paper's long side (page y); 0.9 to 1.1
 * @param skew the lean of the printed long side toward +x; -10 to 10 degrees
 */
public record PrintScale(double across, double along, Angle skew) {
  /** A true printer. */
  public static final PrintScale TRUE = new PrintScale(1.0, 1.0);

  private static final double MOST_SKEW_DEG = 10;

  /** Checks the range. */
  public PrintScale {
    if (!(across >= 0.9
        && across <= 1.1
        && along >= 0.9
        && along <= 1.1
        && Math.abs(skew.degrees()) <= MOST_SKEW_DEG)) {
      throw new IllegalArgumentException(
          "not a print scale: " + across + ", " + along + ", skew " + skew.degrees());
    }
  }

  /**
   * A printer that prints square.
   *
   * @param across along the paper's short side (page x); 0.9 to 1.1
   * @param along along the paper's long side (page y); 0.9 to 1.1
   */
  public PrintScale(double across, double along) {
    this(across, along, Angle.ZERO);
  }

  /**
   * Whether nothing needs doing.
   *
   * @return true for 1, 1 and no skew
   */
  public boolean isTrue() {
    return across == 1.0 && along == 1.0 && isSquare();
  }

  /**
   * Whether right angles stay right angles.
   *
   * @return true for no skew
   */
  public boolean isSquare() {
    return skew.radians() == 0.0;
  }

  /**
   * Where a page point must be drawn.
   *
   * @param p where it is to come out, page mm
   * @param pageCentre centre of the page
   * @return where to draw it, page mm
   */
  public Vec2 compensate(Vec2 p, Vec2 pageCentre) {
    return isTrue() ? p : pageCentre.plus(undo(p.minus(pageCentre)));
  }

  /**
   * The same for a way from one point to another.
   *
   * @param way as it is to come out, mm
   * @return as it must be drawn, mm
   */
  public Vec2 undo(Vec2 way) {
    return new Vec2((way.x() - way.y() * skew.tan()) / across, way.y() / (along * skew.cos()));
  }

  /**
   * What becomes of a way from one point to another.
   *
   * @param way as drawn, mm
   * @return as printed, mm, except for the turn of the whole page
   */
  public Vec2 printed(Vec2 way) {
    double up = along * way.y();
    return new Vec2(across * way.x() + skew.sin() * up, skew.cos() * up);
  }

  /**
   * Both, one after the other: where a page drawn for {@code first} comes out of a printer as this
   * says, the printer itself is this after first. The turn that the product may hold is taken out,
   * as it means nothing.
   *
   * @param first what is done before this
   * @return the product
   */
  public PrintScale after(PrintScale first) {
    Vec2 x = printed(first.printed(new Vec2(1, 0)));
    Vec2 y = printed(first.printed(new Vec2(0, 1)));
    return new PrintScale(x.norm(), y.norm(), new Angle(Math.atan2(x.dot(y), x.cross(y))));
  }
}
