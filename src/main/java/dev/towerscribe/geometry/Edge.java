package dev.towerscribe.geometry;

/** One piece of a boundary: a straight segment or a circular arc, with a direction of travel. */
public sealed interface Edge {
  /**
   * Where it begins.
   *
   * @return first point
   */
  Vec2 start();

  /**
   * Where it ends.
   *
   * @return last point
   */
  Vec2 end();

  /**
   * Its length.
   *
   * @return mm, positive
   */
  double length();

  /**
   * A point on it.
   *
   * @param t 0 at the start, 1 at the end, proportional to length
   * @return the point
   */
  Vec2 at(double t);

  /**
   * The point on it nearest to another.
   *
   * @param p any point
   * @return nearest point on the edge
   */
  Vec2 nearest(Vec2 p);

  /**
   * The same piece travelled the other way.
   *
   * @return the reversed edge
   */
  Edge reversed();

  /**
   * The same piece seen from outside a frame.
   *
   * @param frame rigid map
   * @return mapped edge
   */
  Edge mapped(Frame2 frame);

  /**
   * The smallest upright box around it.
   *
   * @return box
   */
  Box bounds();

  /**
   * A straight piece of boundary.
   *
   * @param start first point
   * @param end last point, not the first
   */
  record Segment(Vec2 start, Vec2 end) implements Edge {
    @Override
    public double length() {
      return start.distanceTo(end);
    }

    @Override
    public Vec2 at(double t) {
      return start.toward(end, t);
    }

    @Override
    public Vec2 nearest(Vec2 p) {
      Vec2 along = end.minus(start);
      double squared = along.dot(along);
      if (squared == 0.0) {
        return start;
      }
      double t = p.minus(start).dot(along) / squared;
      if (t <= 0) {
        return start;
      }
      return t >= 1 ? end : start.toward(end, t);
    }

    @Override
    public Segment reversed() {
      return new Segment(end, start);
    }

    @Override
    public Segment mapped(Frame2 frame) {
      return new Segment(frame.map(start), frame.map(end));
    }

    @Override
    public Box bounds() {
      return new Box(
          Math.min(start.x(), end.x()),
          Math.min(start.y(), end.y()),
          Math.max(start.x(), end.x()),
          Math.max(start.y(), end.y()));
    }
  }

  /**
   * A circular piece of boundary.
   *
   * @param centre centre of its circle
   * @param radius mm, positive
   * @param startAngle radians from +x toward +y, where it begins
   * @param sweep radians travelled, positive counter-clockwise, not zero, at most a full turn
   */
  record Arc(Vec2 centre, double radius, double startAngle, double sweep) implements Edge {
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
  }
}
