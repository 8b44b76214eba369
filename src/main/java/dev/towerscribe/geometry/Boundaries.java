package dev.towerscribe.geometry;

import java.util.Comparator;
import java.util.List;

/**
 * What closed boundaries enclose, and the plain questions about it: outer boundaries
 * counter-clockwise, holes clockwise, none crossing another or itself.
 */
interface Boundaries {
  /**
   * The boundaries.
   *
   * @return contours, none for nothing
   */
  List<Contour> contours();

  /**
   * Whether there is nothing in it.
   *
   * @return true if empty
   */
  default boolean isEmpty() {
    return contours().isEmpty();
  }

  /**
   * Area.
   *
   * @return mm2
   */
  default double area() {
    return area(contours());
  }

  /**
   * Length of all boundaries.
   *
   * @return mm
   */
  default double length() {
    return contours().stream().mapToDouble(Contour::length).sum();
  }

  /**
   * The smallest upright box around it.
   *
   * @return box
   * @throws java.util.NoSuchElementException if empty
   */
  default Box bounds() {
    return contours().stream().map(Contour::bounds).reduce(Box::union).orElseThrow();
  }

  /**
   * Whether a point is inside; on a boundary either answer may come.
   *
   * @param p any point
   * @return true if inside
   */
  default boolean contains(Vec2 p) {
    int around = 0;
    for (Contour contour : contours()) {
      if (contour.encloses(p)) {
        around += contour.signedArea() > 0 ? 1 : -1;
      }
    }
    return around > 0;
  }

  /**
   * The boundary point nearest to another.
   *
   * @param p any point
   * @return nearest point of any boundary
   * @throws java.util.NoSuchElementException if empty
   */
  default Vec2 nearest(Vec2 p) {
    return contours().stream()
        .map(c -> c.nearest(p))
        .min(Comparator.comparingDouble(p::distanceTo))
        .orElseThrow();
  }

  /**
   * Signed distance of a point to the boundary.
   *
   * @param p any point
   * @return mm, positive inside, negative outside
   * @throws java.util.NoSuchElementException if empty
   */
  default double depth(Vec2 p) {
    double distance = nearest(p).distanceTo(p);
    return contains(p) ? distance : -distance;
  }

  /** The area that boundaries enclose, mm2: holes, which run clockwise, count against it. */
  static double area(List<Contour> contours) {
    return contours.stream().mapToDouble(Contour::signedArea).sum();
  }
}
