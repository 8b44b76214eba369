package dev.towerscribe.geometry;

/**
 * A circular piece of boundary.
 *
 * @param centre centre of its circle
 * @param radius mm, positive
 * @param startAngle radians from +x toward +y, where it begins
 * @param sweep radians travelled, positive counter-clockwise, not zero, at most a full turn
 */
public record Arc(Vec2 centre, double radius, double startAngle, double sweep) implements Edge {
  private static final double TURN = 2 * Math.PI;

  /**
   * Checks radius and sweep.
   *
   * @throws IllegalArgumentException if the radius is not positive or the sweep is zero or past a
   *     full turn
   */
  public Arc {
    if (!(radius > 0) || !Double.isFinite(radius)) {
      throw new IllegalArgumentException("an arc's radius must be positive, not " + radius);
    }
    if (!(Math.abs(sweep) <= TURN + 1e-12) || sweep == 0.0 || !Double.isFinite(startAngle)) {
      throw new IllegalArgumentException("not an arc: from " + startAngle + " by " + sweep);
    }
  }

  /**
   * Whether it is a whole circle.
   *
   * @return true for a full turn
   */
  public boolean isFullCircle() {
    return Math.abs(Math.abs(sweep) - TURN) <= 1e-12;
  }

  private Vec2 atAngle(double a) {
    return new Vec2(centre.x() + radius * Math.cos(a), centre.y() + radius * Math.sin(a));
  }

  @Override
  public Vec2 start() {
    return atAngle(startAngle);
  }

  @Override
  public Vec2 end() {
    return isFullCircle() ? start() : atAngle(startAngle + sweep);
  }

  @Override
  public double length() {
    return radius * Math.abs(sweep);
  }

  @Override
  public Vec2 at(double t) {
    return atAngle(startAngle + t * sweep);
  }

  /**
   * Whether a direction from the centre falls within the sweep, ends included.
   *
   * @param angle radians from +x toward +y
   * @return true if the arc passes there
   */
  public boolean spans(double angle) {
    double from = sweep > 0 ? startAngle : startAngle + sweep;
    double turned = (angle - from) % TURN;
    if (turned < 0) {
      turned += TURN;
    }
    return turned <= Math.abs(sweep);
  }

  @Override
  public Vec2 nearest(Vec2 p) {
    Vec2 out = p.minus(centre);
    if (out.norm() == 0.0) {
      return start();
    }
    double angle = Math.atan2(out.y(), out.x());
    if (spans(angle)) {
      return centre.plus(out.times(radius / out.norm()));
    }
    Vec2 s = start();
    Vec2 e = end();
    return p.distanceTo(s) <= p.distanceTo(e) ? s : e;
  }

  @Override
  public Arc reversed() {
    return new Arc(centre, radius, startAngle + sweep, -sweep);
  }

  @Override
  public Arc mapped(Frame2 frame) {
    Vec2 from = frame.mapVector(new Vec2(Math.cos(startAngle), Math.sin(startAngle)));
    return new Arc(
        frame.map(centre),
        radius,
        Math.atan2(from.y(), from.x()),
        frame.reflects() ? -sweep : sweep);
  }

  @Override
  public Box bounds() {
    Vec2 s = start();
    Vec2 e = end();
    double minX = Math.min(s.x(), e.x());
    double maxX = Math.max(s.x(), e.x());
    double minY = Math.min(s.y(), e.y());
    double maxY = Math.max(s.y(), e.y());
    for (int quarter = 0; quarter < 4; quarter++) {
      double angle = quarter * Math.PI / 2;
      if (spans(angle)) {
        Vec2 p = atAngle(angle);
        minX = Math.min(minX, p.x());
        maxX = Math.max(maxX, p.x());
        minY = Math.min(minY, p.y());
        maxY = Math.max(maxY, p.y());
      }
    }
    return new Box(minX, minY, maxX, maxY);
  }

  /** As generated, but written out: marks of jobs rest on it, and making one takes long. */
  @Override
  public String toString() {
    return "Arc[centre="
        + centre
        + ", radius="
        + radius
        + ", startAngle="
        + startAngle
        + ", sweep="
        + sweep
        + "]";
  }
}
