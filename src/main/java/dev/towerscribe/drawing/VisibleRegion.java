package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * What shows of a page within its clips: a convex polygon. A window is a box as it comes out in
 * print; drawn for a printer that skews it leans.
 */
public final class VisibleRegion {
  private final List<Vec2> corners;

  private VisibleRegion(List<Vec2> corners) {
    this.corners = corners;
  }

  /**
   * All of a box.
   *
   * @param box paper mm
   * @return the box
   */
  public static VisibleRegion of(Box box) {
    return new VisibleRegion(box.corners());
  }

  /**
   * What is left of it inside a clip as well.
   *
   * @param clip corners of a convex polygon in order, either way round; repeats do no harm
   * @return the common part; nothing where there is none
   */
  public VisibleRegion within(List<Vec2> clip) {
    double area = 0;
    for (int i = 0; i < clip.size(); i++) {
      area += clip.get(i).cross(clip.get((i + 1) % clip.size()));
    }
    List<Vec2> left = area == 0 ? List.of() : corners;
    for (int i = 0; i < clip.size() && !left.isEmpty(); i++) {
      Vec2 from = clip.get(i);
      Vec2 way = clip.get((i + 1) % clip.size()).minus(from).times(Math.signum(area));
      left = cut(left, from, way);
    }
    return new VisibleRegion(left);
  }

  /** The part of a polygon at the left of a line, by the way of Sutherland and Hodgman (1974). */
  private static List<Vec2> cut(List<Vec2> polygon, Vec2 from, Vec2 way) {
    List<Vec2> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Vec2 a = polygon.get(i);
      Vec2 b = polygon.get((i + 1) % polygon.size());
      double sideA = way.cross(a.minus(from));
      double sideB = way.cross(b.minus(from));
      if (sideA >= 0) {
        kept.add(a);
      }
      if (sideA > 0 && sideB < 0 || sideA < 0 && sideB > 0) {
        kept.add(a.toward(b, sideA / (sideA - sideB)));
      }
    }
    return kept;
  }

  /**
   * Whether some of it lies in a box. Two convex shapes are apart just when the line of a side of
   * one of them parts them.
   *
   * @param box paper mm; may be a line or a point
   * @return true if they touch or overlap
   */
  boolean meets(Box box) {
    if (corners.isEmpty()) {
      return false;
    }
    List<Vec2> others = box.corners();
    return !isParted(corners, others) && !isParted(others, corners);
  }

  private static boolean isParted(List<Vec2> polygon, List<Vec2> others) {
    for (int i = 0; i < polygon.size(); i++) {
      Vec2 from = polygon.get(i);
      Vec2 way = polygon.get((i + 1) % polygon.size()).minus(from);
      if (others.stream().allMatch(p -> way.cross(p.minus(from)) < 0)) {
        return true;
      }
    }
    return false;
  }
}
