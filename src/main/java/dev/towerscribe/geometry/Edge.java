package dev.towerscribe.geometry;

/** One piece of a boundary: a straight segment or a circular arc, with a direction of travel. */
public sealed interface Edge permits Segment, Arc {
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
}
