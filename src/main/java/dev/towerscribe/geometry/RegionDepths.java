package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;

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

  private final int count;
  private final double[] startX;
  private final double[] startY;
  private final double[] endX;
  private final double[] endY;

  /** Arcs only: centre, radius (zero for a segment), directions of both ends from the centre. */
  private final double[] centreX;

  private final double[] centreY;
  private final double[] radius;
  private final double[] sweep;

  /** Whether the contour that an edge belongs to is an outer one. */
  private final boolean[] outer;

  private final boolean oneCircle;

  /**
   * Prepares a region.
   *
   * @param region not empty
   */
  public RegionDepths(Region region) {
    count = region.contours().stream().mapToInt(c -> c.edges().size()).sum();
    startX = new double[count];
    startY = new double[count];
    endX = new double[count];
    endY = new double[count];
    centreX = new double[count];
    centreY = new double[count];
    radius = new double[count];
    sweep = new double[count];
    outer = new boolean[count];
    int i = 0;
    for (Contour contour : region.contours()) {
      for (Edge edge : contour.edges()) {
        Vec2 start = edge.start();
        Vec2 end = edge.end();
        startX[i] = start.x();
        startY[i] = start.y();
        endX[i] = end.x();
        endY[i] = end.y();
        outer[i] = contour.signedArea() > 0;
        if (edge instanceof Arc arc) {
          centreX[i] = arc.centre().x();
          centreY[i] = arc.centre().y();
          radius[i] = arc.radius();
          sweep[i] = arc.isFullCircle() ? Math.copySign(TURN, arc.sweep()) : arc.sweep();
        }
        i++;
      }
    }
    oneCircle = count == 1 && outer[0] && radius[0] > 0;
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
    return radius[0];
  }

  /**
   * Centre of the disc.
   *
   * @return its first coordinate; of no meaning unless {@link #isDisc()}
   */
  public double discX() {
    return centreX[0];
  }

  /**
   * Centre of the disc.
   *
   * @return its second coordinate; of no meaning unless {@link #isDisc()}
   */
  public double discY() {
    return centreY[0];
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
      double dx = x - centreX[0];
      double dy = y - centreY[0];
      return radius[0] - Math.sqrt(dx * dx + dy * dy);
    }
    double least = Double.POSITIVE_INFINITY;
    int around = 0;
    for (int i = 0; i < count; i++) {
      double ax = startX[i];
      double ay = startY[i];
      double bx = endX[i];
      double by = endY[i];
      // Winding as Contour.encloses has it: the polygon of chords, then chord against arc.
      boolean left = isLeft(ax, ay, bx, by, x, y);
      int turn = 0;
      if (ay <= y && y < by && left) {
        turn = 1;
      } else if (by <= y && y < ay && !left) {
        turn = -1;
      }
      if (radius[i] == 0.0) {
        least = Math.min(least, toSegment(ax, ay, bx, by, x, y));
      } else {
        double dx = x - centreX[i];
        double dy = y - centreY[i];
        double distance = Math.sqrt(dx * dx + dy * dy);
        boolean full = Math.abs(sweep[i]) == TURN;
        if (distance < radius[i]) {
          if (sweep[i] > 0 && (!left || full)) {
            turn++;
          } else if (sweep[i] < 0 && (left || full)) {
            turn--;
          }
        }
        if (full || passes(i, dx, dy)) {
          double off = Math.abs(radius[i] - distance);
          least = Math.min(least, off * off);
        } else {
          least = Math.min(least, Math.min(squared(ax - x, ay - y), squared(bx - x, by - y)));
        }
      }
      around += turn;
    }
    double distance = Math.sqrt(least);
    return around > 0 ? distance : -distance;
  }

  private static boolean isLeft(double ax, double ay, double bx, double by, double x, double y) {
    double side = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    if (side != 0.0) {
      return side > 0;
    }
    return ay == by ? bx > ax : by < ay;
  }

  private static double squared(double x, double y) {
    return x * x + y * y;
  }

  private static double toSegment(double ax, double ay, double bx, double by, double x, double y) {
    double ux = bx - ax;
    double uy = by - ay;
    double t = ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy);
    double k = t <= 0 ? 0 : Math.min(t, 1.0);
    return squared(ax + k * ux - x, ay + k * uy - y);
  }

  /** Whether an arc passes the direction of a point from its centre. */
  private boolean passes(int i, double dx, double dy) {
    double sx = startX[i] - centreX[i];
    double sy = startY[i] - centreY[i];
    double ex = endX[i] - centreX[i];
    double ey = endY[i] - centreY[i];
    double sign = sweep[i] > 0 ? 1.0 : -1.0;
    boolean afterStart = sign * (sx * dy - sy * dx) >= 0;
    boolean beforeEnd = sign * (dx * ey - dy * ex) >= 0;
    return Math.abs(sweep[i]) <= Math.PI ? afterStart && beforeEnd : afterStart || beforeEnd;
  }
}
