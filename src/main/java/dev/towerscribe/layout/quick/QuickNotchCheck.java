package dev.towerscribe.layout.quick;

import dev.towerscribe.finding.Findings;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.RegionDepths;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Margins;
import dev.towerscribe.layout.NotchSections;
import dev.towerscribe.layout.Notches;
import dev.towerscribe.model.Bracket;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a bracket stands a notch for sockets somewhere, quickly: yes, no, or not sure, where the
 * notch itself must be made to know. What is sure rests on two facts about {@link Notches}: metal
 * that a disc of the tip's radius can reach without leaving the bracket or meeting a socket stays,
 * and metal in a socket's circle goes. The sections and their widths are those of {@link
 * NotchSections}.
 */
final class QuickNotchCheck {
  private static final double TIP_MM = Notches.TIP_MM;

  private static final double UNSURE_MM = Answer.UNSURE_MM;

  /** A bite shallower than this may be too small to count as one, mm. */
  private static final double SHALLOW_MM = 0.05;

  private final Bracket bracket;
  private final double radius;
  private final RegionDepths metal;
  private final NotchSections sections;
  private final double[] polygonX;
  private final double[] polygonY;
  private final double middleX;
  private final double middleY;
  private final double boundingRadius;

  /** For each fastener whether no tip of the bracket's own is near. */
  private final boolean[] apart;

  /**
   * Prepares.
   *
   * @param bracket the bracket
   * @param radius what a socket needs, mm
   */
  QuickNotchCheck(Bracket bracket, double radius) {
    this.bracket = bracket;
    this.radius = radius;
    Region region = Region.inside(bracket.outline());
    metal = new RegionDepths(region);
    sections = new NotchSections(bracket.outline());
    List<Vec2> polygon = region.contours().get(0).flattened(0.01);
    polygonX = polygon.stream().mapToDouble(Vec2::x).toArray();
    polygonY = polygon.stream().mapToDouble(Vec2::y).toArray();
    Vec2 middle = bracket.outline().bounds().centre();
    middleX = middle.x();
    middleY = middle.y();
    boundingRadius = sections.wholeMm() / 2;
    apart = new boolean[bracket.fasteners().size()];
    Region tips = region.minus(region.opened(TIP_MM));
    for (int i = 0; i < apart.length; i++) {
      Bracket.Fastener f = bracket.fasteners().get(i);
      apart[i] = tips.isEmpty() || -tips.depth(f.at()) > need(f) + UNSURE_MM;
    }
  }

  /** How far a notch must stay from the middle of a fastener, mm. */
  private static double need(Bracket.Fastener fastener) {
    return fastener.diameterMm() / 2 + Margins.FASTENER_GAP_MM;
  }

  private boolean isFar(double x, double y) {
    double dx = x - middleX;
    double dy = y - middleY;
    double far = boundingRadius + radius;
    return dx * dx + dy * dy > far * far;
  }

  /** Whether the notch, if one is needed for the holes of a placement, passes its checks. */
  Answer stands(Scratch s) {
    List<Vec2> bites = null;
    for (int i = 0; i < s.x.length; i++) {
      double reach = isFar(s.x[i], s.y[i]) ? 0.0 : radius + metal.at(s.x[i], s.y[i]);
      if (reach > 0) {
        if (reach < SHALLOW_MM) {
          return Answer.UNSURE;
        }
        bites = bites == null ? new ArrayList<>() : bites;
        bites.add(new Vec2(s.x[i], s.y[i]));
      }
    }
    if (bites == null) {
      return Answer.YES;
    }
    Answer width = width(bites);
    return width == Answer.NO ? width : width.and(fasteners(bites));
  }

  private Answer fasteners(List<Vec2> bites) {
    Answer answer = Answer.YES;
    for (int i = 0; i < apart.length; i++) {
      Vec2 at = bracket.fasteners().get(i).at();
      double need = need(bracket.fasteners().get(i));
      for (Vec2 bite : bites) {
        double distance = bite.distanceTo(at);
        double gap = distance - radius;
        if (gap < need - UNSURE_MM) {
          // The nearest point of the circle goes if it is metal.
          Vec2 nearest = gap <= 0 ? at : at.toward(bite, gap / distance);
          if (metal.at(nearest.x(), nearest.y()) > UNSURE_MM) {
            return Answer.NO;
          }
        }
        if (gap <= need + 2 * TIP_MM + UNSURE_MM || !apart[i]) {
          answer = Answer.UNSURE;
        }
      }
    }
    return answer;
  }

  /** Whether every section that is too narrow surely is none. */
  private Answer width(List<Vec2> bites) {
    double limit = Margins.leastWidthMm(bracket);
    if (limit > sections.wholeMm()) {
      return Answer.UNSURE;
    }
    Answer[] worst = {Answer.YES};
    sections.each(
        bites,
        radius,
        section -> {
          if (!Findings.passes(section.widthMm(), limit)) {
            worst[0] = worst[0].and(isNone(section, bites));
          }
          return worst[0] != Answer.NO;
        });
    // With nothing left of the bracket, or in pieces, the width is nil.
    return worst[0] == Answer.YES && !(staysSomewhere(bites) && staysWhole(bites))
        ? Answer.UNSURE
        : worst[0];
  }

  /** Whether no bite surely divides the bracket: each has one mouth, and none meets another. */
  private boolean staysWhole(List<Vec2> bites) {
    for (int i = 0; i < bites.size(); i++) {
      for (Vec2 other : bites.subList(i + 1, bites.size())) {
        if (bites.get(i).distanceTo(other) < 2 * (radius + TIP_MM)) {
          return false;
        }
      }
      if (mostCrossings(bites.get(i)) > 2) {
        return false;
      }
    }
    return true;
  }

  /** How often a socket's circle may cross the bracket's edge; what is near it counts as more. */
  private int mostCrossings(Vec2 bite) {
    int crossings = 0;
    int n = polygonX.length;
    for (int i = 0; i < n; i++) {
      Vec2 a = new Vec2(polygonX[i], polygonY[i]);
      Vec2 b = new Vec2(polygonX[(i + 1) % n], polygonY[(i + 1) % n]);
      double from = bite.distanceTo(a) - radius;
      double to = bite.distanceTo(b) - radius;
      double nearest = bite.distanceTo(new Edge.Segment(a, b).nearest(bite)) - radius;
      if (Math.min(Math.abs(from), Math.min(Math.abs(to), Math.abs(nearest))) < SHALLOW_MM) {
        return Integer.MAX_VALUE;
      }
      if (from > 0 != to > 0) {
        crossings++;
      } else if (from > 0 && nearest < 0) {
        crossings += 2;
      }
    }
    return crossings;
  }

  /** Yes where a section does not run through metal that stays. */
  private Answer isNone(NotchSections.Section section, List<Vec2> bites) {
    Answer metal = Answer.YES;
    for (Vec2 p : section.tried()) {
      metal = metal.and(stays(p.x(), p.y(), bites));
    }
    return metal == Answer.NO ? Answer.YES : metal == Answer.YES ? Answer.NO : metal;
  }

  private boolean staysSomewhere(List<Vec2> bites) {
    for (int i = 0; i < polygonX.length; i++) {
      double x = (polygonX[i] + middleX) / 2;
      double y = (polygonY[i] + middleY) / 2;
      if (stays(x, y, bites) == Answer.YES) {
        return true;
      }
    }
    return false;
  }

  /** Whether metal at a point stays: surely where a tip's disc round it meets nothing. */
  private Answer stays(double x, double y, List<Vec2> bites) {
    double depth = metal.at(x, y);
    for (Vec2 bite : bites) {
      double dx = bite.x() - x;
      double dy = bite.y() - y;
      depth = Math.min(depth, Math.sqrt(dx * dx + dy * dy) - radius);
    }
    return depth > TIP_MM + UNSURE_MM ? Answer.YES : depth < -UNSURE_MM ? Answer.NO : Answer.UNSURE;
  }

  /** Metal of the bracket in a socket's circle, its tips left out, mm2. */
  double overlap(double x, double y) {
    if (isFar(x, y)) {
      return 0.0;
    }
    double twice = 0.0;
    int n = polygonX.length;
    for (int i = 0; i < n; i++) {
      int j = i + 1 == n ? 0 : i + 1;
      twice += sector(polygonX[i] - x, polygonY[i] - y, polygonX[j] - x, polygonY[j] - y, radius);
    }
    return Math.max(0.0, twice / 2);
  }

  /**
   * Twice the signed area that the triangle from the origin to an edge shares with a disc there.
   */
  private static double sector(double ax, double ay, double bx, double by, double r) {
    double ux = bx - ax;
    double uy = by - ay;
    double length = Math.sqrt(ux * ux + uy * uy);
    double foot = -(ax * ux + ay * uy) / length;
    double height = (ax * uy - ay * ux) / length;
    double half = r * r - height * height;
    double from = 0.0;
    double to = 0.0;
    if (half > 0) {
      double h = Math.sqrt(half);
      from = Math.min(length, Math.max(0.0, foot - h));
      to = Math.min(length, Math.max(0.0, foot + h));
    }
    if (from >= to) {
      return r * r * angle(ax, ay, bx, by);
    }
    double px = ax + ux * from / length;
    double py = ay + uy * from / length;
    double qx = ax + ux * to / length;
    double qy = ay + uy * to / length;
    return r * r * (angle(ax, ay, px, py) + angle(qx, qy, bx, by)) + px * qy - py * qx;
  }

  private static double angle(double ax, double ay, double bx, double by) {
    return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
}
