package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import java.util.List;

/**
 * The signed depth of points in one region, for callers that ask for millions of them: the figures
 * of {@link Region#depth} to rounding, from plain arrays and without making an object per question.
 *
 * <p>Contract: in mm, positive inside, negative outside; right to about 1e-13 of the coordinates.
 * Within that of a boundary the sign may be either. Unlike {@link Region#depth} it makes no use of
 * boxes: it asks every edge, which for the few dozen edges of a tower or a plate is quicker.
 *
 * <p>Example: for the disc of radius 31 about (0,0) the depth of (3,4) is 31 - 5 = 26 and that of
 * (40,0) is -9. For the square from (0,0) to (10,10) that of (4,7) is 3, and that of (13,14) is -5.
 */
public final class RegionDepths {
  private static final double TURN = 2 * Math.PI;

  /** An edge from a to b; of an arc the centre c and the radius too, which is zero otherwise. */
  private record Piece(
      double ax,
      double ay,
      double bx,
      double by,
      double cx,
      double cy,
      double radius,
      double sweep) {
    static Piece of(Edge edge) {
      Vec2 a = edge.start();
      Vec2 b = edge.end();
      if (!(edge instanceof Arc arc)) {
        return new Piece(a.x(), a.y(), b.x(), b.y(), 0, 0, 0, 0);
      }
      Vec2 c = arc.centre();
      double sweep = arc.isFullCircle() ? Math.copySign(TURN, arc.sweep()) : arc.sweep();
      return new Piece(a.x(), a.y(), b.x(), b.y(), c.x(), c.y(), arc.radius(), sweep);
    }

    /** Whether an arc passes the direction of a point from its centre. */
    private boolean passes(double dx, double dy) {
      double sign = sweep > 0 ? 1.0 : -1.0;
      boolean afterStart = sign * ((ax - cx) * dy - (ay - cy) * dx) >= 0;
      boolean beforeEnd = sign * (dx * (by - cy) - dy * (bx - cx)) >= 0;
      return Math.abs(sweep) <= Math.PI ? afterStart && beforeEnd : afterStart || beforeEnd;
    }

    private double toSegment(double x, double y) {
      double ux = bx - ax;
      double uy = by - ay;
      double t = ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy);
      double k = t <= 0 ? 0 : Math.min(t, 1.0);
      return squared(ax + k * ux - x, ay + k * uy - y);
    }
  }

  private final Region region;
  private final Piece[] pieces;
  private final boolean oneCircle;

  /**
   * Prepares a region.
   *
   * @param region not empty
   */
  public RegionDepths(Region region) {
    this.region = region;
    List<Contour> contours = region.contours();
    pieces =
        contours.stream()
            .flatMap(contour -> contour.edges().stream())
            .map(Piece::of)
            .toArray(Piece[]::new);
    oneCircle = pieces.length == 1 && contours.get(0).signedArea() > 0 && pieces[0].radius > 0;
  }

  /**
   * Whether the region is one whole disc.
   *
   * @return true if so
   */
  public boolean isDisc() {
    return oneCircle;
  }

  /**
   * Radius of the disc.
   *
   * @return mm; of no meaning unless {@link #isDisc()}
   */
  public double discRadius() {
    return pieces[0].radius;
  }

  /**
   * Centre of the disc.
   *
   * @return its first coordinate; of no meaning unless {@link #isDisc()}
   */
  public double discX() {
    return pieces[0].cx;
  }

  /**
   * Centre of the disc.
   *
   * @return its second coordinate; of no meaning unless {@link #isDisc()}
   */
  public double discY() {
    return pieces[0].cy;
  }

  /**
   * The boundary point nearest to another. Asked once in a while.
   *
   * @param p any point
   * @return nearest boundary point
   */
  public Vec2 nearest(Vec2 p) {
    return region.nearest(p);
  }

  /**
   * Signed distance of a point to the boundary.
   *
   * @param x first coordinate
   * @param y second coordinate
   * @return mm, positive inside, negative outside
   */
  public double at(double x, double y) {
    if (oneCircle) {
      Piece disc = pieces[0];
      return disc.radius - Math.sqrt(squared(x - disc.cx, y - disc.cy));
    }
    double least = Double.POSITIVE_INFINITY;
    int around = 0;
    for (Piece p : pieces) {
      // Winding as Contour.encloses has it: the polygon of chords, then chord against arc.
      boolean left = Contour.isLeft(p.ax, p.ay, p.bx, p.by, x, y);
      if (p.ay <= y && y < p.by && left) {
        around++;
      } else if (p.by <= y && y < p.ay && !left) {
        around--;
      }
      if (p.radius == 0.0) {
        least = Math.min(least, p.toSegment(x, y));
        continue;
      }
      double dx = x - p.cx;
      double dy = y - p.cy;
      double distance = Math.sqrt(squared(dx, dy));
      boolean full = Math.abs(p.sweep) == TURN;
      if (distance < p.radius) {
        if (p.sweep > 0 && (!left || full)) {
          around++;
        } else if (p.sweep < 0 && (left || full)) {
          around--;
        }
      }
      if (full || p.passes(dx, dy)) {
        double off = Math.abs(p.radius - distance);
        least = Math.min(least, off * off);
      } else {
        least = Math.min(least, Math.min(squared(p.ax - x, p.ay - y), squared(p.bx - x, p.by - y)));
      }
    }
    double distance = Math.sqrt(least);
    return around > 0 ? distance : -distance;
  }

  private static double squared(double x, double y) {
    return x * x + y * y;
  }
}
