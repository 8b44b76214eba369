package dev.towerscribe.writer.svg;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;

/** Path data of one page: its points as they lie in the file, its arcs as they are drawn. */
final class SvgPaths {
  /** Decimals of coordinates: half of 1e-6 mm. */
  private static final int DECIMALS = 6;

  /**
   * An arc is written in pieces of a quarter turn at most. SVG gives ends and radius but not the
   * centre: for a half turn a last digit in the ends would move the centre by the root of it.
   */
  private static final double LONGEST_PIECE = Math.PI / 2;

  private final Page page;
  private final Vec2 pageCentre;
  private final RoundShape round;

  SvgPaths(Page page) {
    this.page = page;
    this.pageCentre = page.centre();
    this.round = RoundShape.of(page.scale());
  }

  void contour(StringBuilder data, Contour contour) {
    moveTo(data, contour.edges().get(0).start());
    for (Edge edge : contour.edges()) {
      if (edge instanceof Arc arc) {
        arcTo(data, arc);
      } else {
        lineTo(data, edge.end());
      }
    }
    data.append('Z');
  }

  void moveTo(StringBuilder data, Vec2 p) {
    data.append('M');
    point(data, p);
  }

  void lineTo(StringBuilder data, Vec2 p) {
    data.append('L');
    point(data, p);
  }

  void arcTo(StringBuilder data, Arc arc) {
    int pieces = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / LONGEST_PIECE - 1e-9));
    String radii =
        number(arc.radius() * round.first()) + "," + number(arc.radius() * round.second());
    String turn = " " + number(round.turnDegrees());
    // Counter-clockwise on the page is against the growing angle of an axis that points down.
    String way = turn + (arc.sweep() > 0 ? " 0 0 " : " 0 1 ");
    for (int i = 1; i <= pieces; i++) {
      data.append('A').append(radii).append(way);
      point(data, i == pieces ? arc.end() : arc.at((double) i / pieces));
    }
  }

  void point(StringBuilder data, Vec2 p) {
    Vec2 q = drawn(p);
    data.append(number(q.x())).append(',').append(number(q.y()));
  }

  /** The one place where the axis turns over: y runs down from the top of the paper. */
  Vec2 drawn(Vec2 p) {
    Vec2 q = page.scale().compensate(p, pageCentre);
    return new Vec2(q.x(), page.heightMm() - q.y());
  }

  static String number(double mm) {
    return Numbers.plain(mm, DECIMALS);
  }

  /**
   * What a circle of radius one is drawn as, so that the printer makes it round: an ellipse. SVG
   * has it as two radii and a turn.
   *
   * @param first half its length along its own first axis
   * @param second half its length along the other
   * @param turnDegrees from the page's x to the first axis, clockwise as SVG has it (its y runs
   *     down)
   */
  private record RoundShape(double first, double second, double turnDegrees) {
    /**
     * The image of the unit circle under the inverse of the printer's map A. Its points q have |A
     * q| = 1, so its axes are those of the symmetric matrix M M', where M is the inverse: half
     * lengths are roots of its eigenvalues.
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
}
