package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Points that two edges share, in closed form. Edges that lie on each other share stretches; of
 * those the ends are given. Where edges only touch, one point is given rather than the two that a
 * root of rounding noise would make.
 *
 * <p>Example: the arc of radius 5 about (0,0) and the segment (-6,3)-(6,3) share (-4,3) and (4,3);
 * the segment (-6,5)-(6,5) touches it at (0,5) alone.
 */
final class Crossings {
  private Crossings() {}

  /**
   * Shared points of two edges.
   *
   * @param a an edge
   * @param b another edge
   * @param roomMm how close counts as touching
   * @return points on both to within the room, perhaps some of them twice
   */
  static List<Vec2> of(Edge a, Edge b, double roomMm) {
    List<Vec2> points = new ArrayList<>(4);
    endsOn(a, b, roomMm, points);
    endsOn(b, a, roomMm, points);
    if (a instanceof Arc arcA) {
      if (b instanceof Arc arcB) {
        arcs(arcA, arcB, roomMm, points);
      } else {
        segmentArc((Segment) b, arcA, roomMm, points);
      }
    } else if (b instanceof Arc arcB) {
      segmentArc((Segment) a, arcB, roomMm, points);
    } else {
      // An end on the other segment has been found already.
      Vec2 p = proper((Segment) a, (Segment) b, roomMm);
      if (p != null) {
        points.add(p);
      }
    }
    return points;
  }

  private static void endsOn(Edge ends, Edge on, double roomMm, List<Vec2> points) {
    if (EdgeGeometry.isFullCircle(ends)) {
      return;
    }
    for (Vec2 p : List.of(ends.start(), ends.end())) {
      if (on.nearest(p).distanceTo(p) <= roomMm) {
        points.add(p);
      }
    }
  }

  /** Where two segments truly cross, each reaching past the other by the room; null if nowhere. */
  static Vec2 proper(Segment a, Segment b, double roomMm) {
    Vec2 alongA = a.end().minus(a.start());
    Vec2 alongB = b.end().minus(b.start());
    double normA = alongA.norm();
    double normB = alongB.norm();
    double b0 = alongA.cross(b.start().minus(a.start())) / normA;
    double b1 = alongA.cross(b.end().minus(a.start())) / normA;
    double a0 = alongB.cross(a.start().minus(b.start())) / normB;
    double a1 = alongB.cross(a.end().minus(b.start())) / normB;
    boolean crosses = straddles(b0, b1, roomMm) && straddles(a0, a1, roomMm);
    return crosses ? a.start().toward(a.end(), a0 / (a0 - a1)) : null;
  }

  private static boolean straddles(double side0, double side1, double roomMm) {
    return (side0 > roomMm && side1 < -roomMm) || (side0 < -roomMm && side1 > roomMm);
  }

  private static void segmentArc(Segment s, Arc arc, double roomMm, List<Vec2> points) {
    Vec2 along = s.end().minus(s.start());
    double length = along.norm();
    Vec2 unit = along.times(1 / length);
    double foot = arc.centre().minus(s.start()).dot(unit);
    double height = Math.abs(unit.cross(arc.centre().minus(s.start())));
    double r = arc.radius();
    if (height > r + roomMm) {
      return;
    }
    double half = half(r, height, roomMm);
    for (double t : half == 0.0 ? new double[] {foot} : new double[] {foot - half, foot + half}) {
      if (t >= -roomMm && t <= length + roomMm) {
        Vec2 p = s.start().plus(unit.times(t));
        if (EdgeGeometry.passes(arc, p, roomMm)) {
          points.add(p);
        }
      }
    }
  }

  /** Half the chord at a height; nothing when it all but touches, where a root would be noise. */
  private static double half(double radius, double height, double roomMm) {
    double sag = radius - height;
    return sag <= roomMm / 10 ? 0.0 : Math.sqrt(sag * (radius + height));
  }

  private static void arcs(Arc a, Arc b, double roomMm, List<Vec2> points) {
    Vec2 between = b.centre().minus(a.centre());
    double d = between.norm();
    double ra = a.radius();
    double rb = b.radius();
    // Concentric: either apart, or on one circle, whose shared ends are found already.
    if (d <= roomMm || d > ra + rb + roomMm || d < Math.abs(ra - rb) - roomMm) {
      return;
    }
    Vec2 unit = between.times(1 / d);
    // Distance of the common chord from a's centre, written so that near radii do not cancel.
    double foot = (d + (ra - rb) * (ra + rb) / d) / 2;
    double half = half(ra, Math.abs(foot), roomMm);
    boolean touching = ra + rb - d <= roomMm / 10 || d - Math.abs(ra - rb) <= roomMm / 10;
    if (touching || half == 0.0) {
      addIfOnBoth(a, b, a.centre().plus(unit.times(Math.copySign(ra, foot))), roomMm, points);
      return;
    }
    Vec2 middle = a.centre().plus(unit.times(foot));
    Vec2 side = unit.quarterTurn().times(half);
    addIfOnBoth(a, b, middle.plus(side), roomMm, points);
    addIfOnBoth(a, b, middle.minus(side), roomMm, points);
  }

  private static void addIfOnBoth(Arc a, Arc b, Vec2 p, double roomMm, List<Vec2> points) {
    if (EdgeGeometry.passes(a, p, roomMm) && EdgeGeometry.passes(b, p, roomMm)) {
      points.add(p);
    }
  }
}
