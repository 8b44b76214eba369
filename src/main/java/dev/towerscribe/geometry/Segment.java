package dev.towerscribe.geometry;

/**
 * A straight piece of boundary.
 *
 * @param start first point
 * @param end last point, not the first
 */
public record Segment(Vec2 start, Vec2 end) implements Edge {
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

  /** As generated, but written out: marks of jobs rest on it, and making one takes long. */
  @Override
  public String toString() {
    return "Segment[start=" + start + ", end=" + end + "]";
  }
}
