package dev.towerscribe.layout.quick;

import java.util.function.DoubleUnaryOperator;

/**
 * Bounds of a figure along a line, where the figure changes no faster than the way: a depth, for
 * instance. Pieces are halved until each is settled.
 *
 * <p>Example: along a line of 10 mm with 7 mm at its middle the figure is nowhere less than 2, so a
 * limit of 1 needs no second look.
 */
final class AlongLine {
  /** Pieces are halved down to this length before they are left undecided, mm. */
  private static final double LEAST_PIECE_MM = 1e-5;

  private AlongLine() {}

  /**
   * Whether the figure is nowhere less than a limit.
   *
   * @param figure the figure, mm, at a part of the line's length from 0 to 1
   * @param lengthMm the line's length
   * @param limitMm least that passes
   * @return whether it passes all along
   */
  static Answer atLeast(DoubleUnaryOperator figure, double lengthMm, double limitMm) {
    double enough = limitMm - Answer.UNSURE_MM;
    double most = limitMm + Answer.UNSURE_MM;
    double least = least(figure, 0, 1, lengthMm, enough, most);
    return least < enough ? Answer.NO : least < most ? Answer.UNSURE : Answer.YES;
  }

  /** The least of a piece; the search ends below one bound and does not look above another. */
  private static double least(
      DoubleUnaryOperator figure,
      double t0,
      double t1,
      double lengthMm,
      double enough,
      double most) {
    double t = (t0 + t1) / 2;
    double here = figure.applyAsDouble(t);
    double half = lengthMm * (t1 - t0) / 2;
    if (here < enough || here - half >= most) {
      return Math.min(here, most);
    }
    if (half < LEAST_PIECE_MM) {
      return Math.max(enough, here - half);
    }
    double first = least(figure, t0, t, lengthMm, enough, Math.min(here, most));
    return first < enough ? first : least(figure, t, t1, lengthMm, enough, first);
  }
}
