package dev.towerscribe.model;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;

/**
 * How sheets are printed.
 *
 * @param paper paper size
 * @param marginMm unprinted edge, not negative
 * @param scaleAcross printed over nominal along the paper's short side
 * @param scaleAlong printed over nominal along the paper's long side
 * @param skew how far the printed long side leans toward +across: the corner between the two check
 *     bars is a right angle less this; zero for a printer that prints square
 */
public record Print(
    Paper paper, double marginMm, double scaleAcross, double scaleAlong, Angle skew) {
  /** Checks the figures. */
  public Print {
    Require.notNegative("margin", marginMm);
    Require.positive("scale across", scaleAcross);
    Require.positive("scale along", scaleAlong);
  }

  /**
   * A printer that prints square.
   *
   * @param paper paper size
   * @param marginMm unprinted edge, not negative
   * @param scaleAcross printed over nominal along the paper's short side
   * @param scaleAlong printed over nominal along the paper's long side
   */
  public Print(Paper paper, double marginMm, double scaleAcross, double scaleAlong) {
    this(paper, marginMm, scaleAcross, scaleAlong, Angle.ZERO);
  }

  /**
   * How near to the paper's edge the corners of the sheets' frame are drawn. In print they come out
   * a margin away; in the file they lie elsewhere, as the drawing undoes what the printer does, and
   * it is the file that a printer cuts off.
   *
   * @return mm; negative where they lie beyond the edge
   */
  public double drawnEdgeMm() {
    double halfWidth = paper.widthMm() / 2;
    double halfHeight = paper.heightMm() / 2;
    double out =
        (halfWidth - marginMm + (halfHeight - marginMm) * Math.abs(skew.tan())) / scaleAcross;
    double up = (halfHeight - marginMm) / (scaleAlong * skew.cos());
    return Math.min(halfWidth - out, halfHeight - up);
  }

  /**
   * The same paper in another printer.
   *
   * @param across printed over nominal along the paper's short side
   * @param along printed over nominal along the paper's long side
   * @param lean how far the printed long side leans toward +across
   * @return the changed print
   */
  public Print by(double across, double along, Angle lean) {
    return new Print(paper, marginMm, across, along, lean);
  }

  /**
   * The same printer with other paper in it.
   *
   * @param other paper size
   * @return the changed print
   */
  public Print on(Paper other) {
    return new Print(other, marginMm, scaleAcross, scaleAlong, skew);
  }

  /**
   * Whether sheets are drawn as they are to come out.
   *
   * @return true for scales of 1 and no skew
   */
  public boolean isTrue() {
    return scaleAcross == 1.0 && scaleAlong == 1.0 && skew.radians() == 0.0;
  }
}
