package dev.towerscribe.geometry;

import java.util.List;

/**
 * A bounded part of the plane: outer boundaries counter-clockwise, holes clockwise. Boundaries do
 * not cross each other or themselves. May be empty.
 *
 * <p>All operations keep arcs as arcs: the results are exact to rounding, not to a chord.
 *
 * @param contours the boundaries; none for the empty region
 */
public record Region(List<Contour> contours) {
  /** Nothing. */
  public static final Region EMPTY = new Region(List.of());

  /** Copies the list. */
  public Region {
    contours = List.copyOf(contours);
  }

  /**
   * What one simple boundary goes round.
   *
   * @param boundary either way of travel
   * @return the region inside it
   */
  public static Region inside(Contour boundary) {
    return new Region(List.of(boundary.signedArea() < 0 ? boundary.reversed() : boundary));
  }

  /**
   * Whether there is nothing in it.
   *
   * @return true if empty
   */
  public boolean isEmpty() {
    return contours.isEmpty();
  }

  /**
   * Area.
   *
   * @return mm2
   */
  public double area() {
    return contours.stream().mapToDouble(Contour::signedArea).sum();
  }

  /**
   * Length of all boundaries.
   *
   * @return mm
   */
  public double length() {
    return contours.stream().mapToDouble(Contour::length).sum();
  }

  /**
   * The smallest upright box around it.
   *
   * @return box
   * @throws java.util.NoSuchElementException if empty
   */
  public Box bounds() {
    return contours.stream().map(Contour::bounds).reduce(Box::union).orElseThrow();
  }

  /**
   * Whether a point is inside; on a boundary either answer may come.
   *
   * @param p any point
   * @return true if inside
   */
  public boolean contains(Vec2 p) {
    int around = 0;
    for (Contour contour : contours) {
      if (contour.encloses(p)) {
        around += contour.signedArea() > 0 ? 1 : -1;
      }
    }
    return around > 0;
  }

  /**
   * Signed distance of a point to the boundary.
   *
   * @param p any point
   * @return mm, positive inside, negative outside
   * @throws java.util.NoSuchElementException if empty
   */
  public double depth(Vec2 p) {
    double distance = contours.stream().mapToDouble(c -> c.distanceTo(p)).min().orElseThrow();
    return contains(p) ? distance : -distance;
  }

  /**
   * The region seen from outside a frame.
   *
   * @param frame rigid map
   * @return mapped region
   */
  public Region mapped(Frame2 frame) {
    return new Region(
        contours.stream()
            .map(c -> c.mapped(frame))
            .map(c -> frame.reflects() ? c.reversed() : c)
            .toList());
  }

  /**
   * All points at least a distance inside: the region eroded by a disc.
   *
   * @param mm how far, not negative
   * @return the eroded region, perhaps empty or in several parts
   */
  public Region inset(double mm) {
    return Offsets.inset(this, mm);
  }

  /**
   * All points within a distance of the region: the region dilated by a disc.
   *
   * @param mm how far, not negative
   * @return the dilated region
   */
  public Region grown(double mm) {
    return Offsets.grown(this, mm);
  }

  /**
   * What a disc can reach without leaving the region: every corner that points outward is rounded
   * to at least the radius, and whatever is too narrow for the disc is gone.
   *
   * @param radiusMm disc radius, not negative
   * @return the opened region
   */
  public Region opened(double radiusMm) {
    return inset(radiusMm).grown(radiusMm);
  }

  /**
   * The common part.
   *
   * @param other another region
   * @return points in both
   */
  public Region intersection(Region other) {
    return Overlay.intersection(this, other);
  }

  /**
   * Both together.
   *
   * @param other another region
   * @return points in either
   */
  public Region union(Region other) {
    return Overlay.union(this, other);
  }

  /**
   * What remains.
   *
   * @param other another region
   * @return points in this one only
   */
  public Region minus(Region other) {
    return Overlay.minus(this, other);
  }

  /**
   * The shortest way between the boundaries of two regions.
   *
   * @param other another region, not empty
   * @return the gap, of length zero where they cross
   */
  public Gap boundaryGap(Region other) {
    return Gaps.between(contours, other.contours);
  }

  /**
   * How much room there is all round another region inside this one.
   *
   * @param inner the region that should be inside, not empty
   * @return positive: the shortest way from its boundary to this one's; negative: how far it sticks
   *     out at most
   */
  public double marginAround(Region inner) {
    return Gaps.marginAround(this, inner);
  }

  /**
   * Its separate parts, each an outer boundary with its holes, largest first.
   *
   * @return parts
   */
  public List<Region> parts() {
    return Overlay.parts(this);
  }
}
