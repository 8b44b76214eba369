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
public record Region(List<Contour> contours) implements Boundaries {
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
   * The region moved, not turned.
   *
   * @param by how far
   * @return moved region
   */
  public Region shifted(Vec2 by) {
    return mapped(new Frame2(by, Frame2.IDENTITY.xAxis(), Frame2.IDENTITY.yAxis()));
  }

  /**
   * All points at least a distance inside: the region eroded by a disc.
   *
   * @param mm how far, not negative
   * @return the eroded region, perhaps empty or in several parts
   */
  public Region inset(double mm) {
    return new Region(Offsets.inset(this, mm));
  }

  /**
   * All points within a distance of the region: the region dilated by a disc.
   *
   * @param mm how far, not negative
   * @return the dilated region
   */
  public Region grown(double mm) {
    return new Region(Offsets.grown(this, mm));
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
    return new Region(Overlay.intersection(this, other));
  }

  /**
   * Both together.
   *
   * @param other another region
   * @return points in either
   */
  public Region union(Region other) {
    return new Region(Overlay.union(this, other));
  }

  /**
   * What remains.
   *
   * @param other another region
   * @return points in this one only
   */
  public Region minus(Region other) {
    return new Region(Overlay.minus(this, other));
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
    return RegionParts.of(this).stream().map(Region::new).toList();
  }
}
