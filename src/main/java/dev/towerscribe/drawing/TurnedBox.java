package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;

/**
 * A rectangle at any angle: the room of a piece of lettering. Hundreds of thousands are asked about
 * for one sheet, so its answers are worked out on plain numbers, without a vector for each step.
 *
 * @param centre its middle, page mm
 * @param halfWidthMm half its size along {@code along}
 * @param halfHeightMm half its size across
 * @param along direction of its width, of length one
 */
public record TurnedBox(Vec2 centre, double halfWidthMm, double halfHeightMm, Vec2 along) {
  /** Boxes that overlap by less share no more than a boundary. */
  private static final double TOUCHING_MM = 1e-9;

  private static final Vec2 LEVEL = new Vec2(1, 0);

  /**
   * A box by its turn.
   *
   * @param centre its middle, page mm
   * @param halfWidthMm half its size along the turn
   * @param halfHeightMm half its size across
   * @param turn direction of its width from +x toward +y
   */
  public TurnedBox(Vec2 centre, double halfWidthMm, double halfHeightMm, Angle turn) {
    this(centre, halfWidthMm, halfHeightMm, turn == Angle.ZERO ? LEVEL : Vec2.polar(1.0, turn));
  }

  /**
   * An upright box.
   *
   * @param box page mm
   * @return the same box
   */
  public static TurnedBox of(Box box) {
    return new TurnedBox(box.centre(), box.width() / 2, box.height() / 2, LEVEL);
  }

  /**
   * A larger box.
   *
   * @param mm by how much each side moves outward; negative to shrink
   * @return with the same middle and turn
   */
  public TurnedBox grown(double mm) {
    return new TurnedBox(centre, halfWidthMm + mm, halfHeightMm + mm, along);
  }

  /**
   * Its corners.
   *
   * @return four, counter-clockwise from the start of its lower side
   */
  public List<Vec2> corners() {
    Vec2 a = along.times(halfWidthMm);
    Vec2 b = along.quarterTurn().times(halfHeightMm);
    return List.of(
        centre.minus(a).minus(b),
        centre.plus(a).minus(b),
        centre.plus(a).plus(b),
        centre.minus(a).plus(b));
  }

  /**
   * The upright box around it.
   *
   * @return page mm
   */
  public Box bounds() {
    double w = Math.abs(along.x()) * halfWidthMm + Math.abs(along.y()) * halfHeightMm;
    double h = Math.abs(along.y()) * halfWidthMm + Math.abs(along.x()) * halfHeightMm;
    return new Box(centre.x() - w, centre.y() - h, centre.x() + w, centre.y() + h);
  }

  /** How far a point lies from the centre along the box's width. */
  private double seenX(Vec2 p) {
    return (p.x() - centre.x()) * along.x() + (p.y() - centre.y()) * along.y();
  }

  /** How far a point lies from the centre across the box's width. */
  private double seenY(Vec2 p) {
    return (p.y() - centre.y()) * along.x() - (p.x() - centre.x()) * along.y();
  }

  /**
   * Whether a point lies in it or on its edge.
   *
   * @param p page mm
   * @return true if so
   */
  public boolean contains(Vec2 p) {
    return Math.abs(seenX(p)) <= halfWidthMm && Math.abs(seenY(p)) <= halfHeightMm;
  }

  /**
   * Distance from a point.
   *
   * @param p page mm
   * @return mm; zero inside
   */
  public double distanceTo(Vec2 p) {
    return Math.hypot(beyondWidth(p), beyondHeight(p));
  }

  private double beyondWidth(Vec2 p) {
    return Math.max(0, Math.abs(seenX(p)) - halfWidthMm);
  }

  private double beyondHeight(Vec2 p) {
    return Math.max(0, Math.abs(seenY(p)) - halfHeightMm);
  }

  /**
   * Whether a point is less than a distance away.
   *
   * @param mm the distance
   * @param p the point, page mm
   * @return true also for a point inside, if the distance is positive
   */
  public boolean isWithin(double mm, Vec2 p) {
    double x = beyondWidth(p);
    if (x >= mm) {
      return false;
    }
    double y = beyondHeight(p);
    return y < mm && Math.hypot(x, y) < mm;
  }

  /**
   * The point of the box's edge on the way from its centre toward another.
   *
   * @param p where to, page mm
   * @return a point of the edge, or {@code p} if that lies inside
   */
  public Vec2 edgeToward(Vec2 p) {
    double x = seenX(p);
    double y = seenY(p);
    if (x == 0.0 && y == 0.0) {
      return centre;
    }
    double k =
        Math.min(
            x == 0.0 ? Double.POSITIVE_INFINITY : halfWidthMm / Math.abs(x),
            y == 0.0 ? Double.POSITIVE_INFINITY : halfHeightMm / Math.abs(y));
    return centre.toward(p, Math.min(1.0, k));
  }

  /** How far it reaches from its centre in a direction of length one. */
  private double reach(double x, double y) {
    return Math.abs(x * along.x() + y * along.y()) * halfWidthMm
        + Math.abs(y * along.x() - x * along.y()) * halfHeightMm;
  }

  /**
   * Whether two boxes share more than a boundary: separating axes.
   *
   * @param o the other
   * @return true if they overlap
   */
  public boolean overlaps(TurnedBox o) {
    double ax = along.x();
    double ay = along.y();
    double bx = o.along.x();
    double by = o.along.y();
    return !apart(o, ax, ay) && !apart(o, -ay, ax) && !apart(o, bx, by) && !apart(o, -by, bx);
  }

  private boolean apart(TurnedBox o, double x, double y) {
    double between = (o.centre.x() - centre.x()) * x + (o.centre.y() - centre.y()) * y;
    return Math.abs(between) >= reach(x, y) + o.reach(x, y) - TOUCHING_MM;
  }

  /**
   * Whether a straight line of some length runs inside the box. Asked far more often than any other
   * question of it, so without working out a length.
   *
   * @param from one end
   * @param to other end
   * @return false also for a line that only touches the edge
   */
  public boolean isCrossedBy(Vec2 from, Vec2 to) {
    return insideShare(from, to) > 0 && !from.equals(to);
  }

  /**
   * Length of a straight line inside the box.
   *
   * @param from one end
   * @param to other end
   * @return mm; zero if it stays outside
   */
  public double lengthInside(Vec2 from, Vec2 to) {
    double share = insideShare(from, to);
    return share == 0.0 ? 0 : share * Math.hypot(seenX(to) - seenX(from), seenY(to) - seenY(from));
  }

  /** What share of a straight line lies inside (Liang and Barsky's clipping). */
  private double insideShare(Vec2 from, Vec2 to) {
    double x = seenX(from);
    double y = seenY(from);
    double toX = seenX(to);
    double toY = seenY(to);
    // Most lines asked about lie wholly to one side.
    if (isBeyond(x, toX, halfWidthMm) || isBeyond(y, toY, halfHeightMm)) {
      return 0;
    }
    double dx = toX - x;
    double dy = toY - y;
    double in = Math.max(0, Math.max(enters(x, dx, halfWidthMm), enters(y, dy, halfHeightMm)));
    double out = Math.min(1, Math.min(leaves(x, dx, halfWidthMm), leaves(y, dy, halfHeightMm)));
    return Math.max(0, out - in);
  }

  private static boolean isBeyond(double from, double to, double half) {
    return Math.min(from, to) > half || Math.max(from, to) < -half;
  }

  /** When something at {@code at}, moving at {@code speed}, comes between -half and half. */
  private static double enters(double at, double speed, double half) {
    if (speed == 0.0) {
      return Math.abs(at) > half ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }
    return speed > 0 ? (-half - at) / speed : (half - at) / speed;
  }

  /** When it leaves again. */
  private static double leaves(double at, double speed, double half) {
    if (speed == 0.0) {
      return Double.POSITIVE_INFINITY;
    }
    return speed > 0 ? (half - at) / speed : (-half - at) / speed;
  }
}
