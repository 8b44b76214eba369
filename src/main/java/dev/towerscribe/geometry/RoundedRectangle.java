package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** Upright rectangles with rounded corners. */
public final class RoundedRectangle {
  private RoundedRectangle() {}

  /**
   * A rectangle whose corners are quarter circles.
   *
   * @param box its sides, neither of no length
   * @param radiusMm corner radius, not negative, at most half the shorter side
   * @return counter-clockwise boundary; a circle where nothing straight is left
   * @throws IllegalArgumentException for a radius out of range
   */
  public static Contour rectangle(Box box, double radiusMm) {
    double most = Math.min(box.width(), box.height()) / 2;
    if (!(radiusMm >= 0 && radiusMm <= most + Tolerances.COMPUTED_MM)) {
      throw new IllegalArgumentException("a corner of " + radiusMm + " mm in " + box);
    }
    if (radiusMm < Tolerances.SAME_POINT_MM) {
      return Contour.rectangle(box);
    }
    if (Math.max(box.width(), box.height()) - 2 * radiusMm < Tolerances.SAME_POINT_MM) {
      return Contour.circle(box.centre(), radiusMm);
    }
    double r = Math.min(radiusMm, most);
    List<Vec2> centres =
        List.of(
            new Vec2(box.maxX() - r, box.maxY() - r),
            new Vec2(box.minX() + r, box.maxY() - r),
            new Vec2(box.minX() + r, box.minY() + r),
            new Vec2(box.maxX() - r, box.minY() + r));
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Arc arc = new Arc(centres.get(i), r, i * Math.PI / 2, Math.PI / 2);
      Vec2 next = new Arc(centres.get((i + 1) % 4), r, (i + 1) * Math.PI / 2, Math.PI / 2).start();
      edges.add(arc);
      if (arc.end().distanceTo(next) > Tolerances.SAME_POINT_MM) {
        edges.add(new Segment(arc.end(), next));
      }
    }
    return Contour.of(edges);
  }
}
