package dev.towerscribe.writer.svg;

import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;

/**
 * What a circle of radius one is drawn as, so that the printer makes it round: an ellipse. SVG has
 * it as two radii and a turn.
 *
 * @param first half its length along its own first axis
 * @param second half its length along the other
 * @param turnDegrees from the page's x to the first axis, clockwise as SVG has it (its y runs down)
 */
record RoundShape(double first, double second, double turnDegrees) {
  /**
   * The image of the unit circle under the inverse of the printer's map A. Its points q have |A q|
   * = 1, so its axes are those of the symmetric matrix M M', where M is the inverse: half lengths
   * are roots of its eigenvalues.
   */
  static RoundShape of(PrintScale scale) {
    if (scale.isSquare()) {
      return new RoundShape(1 / scale.across(), 1 / scale.along(), 0);
    }
    Vec2 x = scale.undo(new Vec2(1, 0));
    Vec2 y = scale.undo(new Vec2(0, 1));
    double xx = x.x() * x.x() + y.x() * y.x();
    double xy = x.x() * x.y() + y.x() * y.y();
    double yy = x.y() * x.y() + y.y() * y.y();
    double mean = (xx + yy) / 2;
    double spread = Math.hypot((xx - yy) / 2, xy);
    double turn = Math.atan2(2 * xy, xx - yy) / 2;
    return new RoundShape(
        Math.sqrt(mean + spread), Math.sqrt(mean - spread), -Math.toDegrees(turn));
  }
}
