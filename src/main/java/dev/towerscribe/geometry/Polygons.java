package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Questions about polygons as people write them, before they become regions. */
public final class Polygons {
  private Polygons() {}

  /**
   * Looks for what makes a ring of points unusable: fewer than three points, two neighbours in one
   * place, no area, or sides that cross or touch each other.
   *
   * @param points the ring, the first point not repeated
   * @return the reason in plain words, with the place of the fault, or empty when the ring is
   *     simple
   */
  public static Optional<String> fault(List<Vec2> points) {
    int n = points.size();
    if (n < 3) {
      return Optional.of("a ring needs at least three points and has " + n);
    }
    for (int i = 0; i < n; i++) {
      Vec2 p = points.get(i);
      if (p.distanceTo(points.get((i + 1) % n)) <= Tolerances.SAME_POINT_MM) {
        return Optional.of(
            "points " + (i + 1) + " and " + ((i + 1) % n + 1) + " are in one place, " + place(p));
      }
    }
    return thin(points)
        ? Optional.of("the ring has no area, at " + place(points.get(0)))
        : meetingSides(points);
  }

  /** Whether all points lie on one straight line. */
  private static boolean thin(List<Vec2> points) {
    Vec2 first = points.get(0);
    Vec2 far = points.stream().max(Comparator.comparingDouble(first::distanceTo)).orElseThrow();
    Vec2 along = far.minus(first).unit();
    return points.stream()
        .allMatch(p -> Math.abs(along.cross(p.minus(first))) <= Tolerances.SAME_POINT_MM);
  }

  private static Optional<String> meetingSides(List<Vec2> points) {
    int n = points.size();
    Segment[] sides = new Segment[n];
    Box[] boxes = new Box[n];
    for (int i = 0; i < n; i++) {
      sides[i] = new Segment(points.get(i), points.get((i + 1) % n));
      boxes[i] = sides[i].bounds().grown(Tolerances.SAME_POINT_MM);
    }
    for (int i = 0; i < n; i++) {
      if (turnsBack(sides[i], sides[(i + 1) % n])) {
        return Optional.of(
            "the ring turns back on itself at point %s, %s"
                .formatted((i + 1) % n + 1, place(sides[i].end())));
      }
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours && boxes[i].meets(boxes[j])) {
          List<Vec2> shared = Crossings.of(sides[i], sides[j], Tolerances.SAME_POINT_MM);
          if (!shared.isEmpty()) {
            return Optional.of(
                "the sides from points %s and %s cross or touch at %s"
                    .formatted(i + 1, j + 1, place(shared.get(0))));
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a side lies on the one before it. */
  private static boolean turnsBack(Segment before, Segment after) {
    boolean back = EdgeGeometry.endDirection(before).dot(EdgeGeometry.startDirection(after)) < 0;
    return back
        && (before.nearest(after.end()).distanceTo(after.end()) <= Tolerances.SAME_POINT_MM
            || after.nearest(before.start()).distanceTo(before.start())
                <= Tolerances.SAME_POINT_MM);
  }

  private static String place(Vec2 p) {
    return "(" + Numbers.plain(p.x(), 3) + ", " + Numbers.plain(p.y(), 3) + ")";
  }
}
