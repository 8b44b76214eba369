package dev.towerscribe.layout;

import dev.towerscribe.geometry.Depths;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import java.util.List;

/**
 * Whether a bracket stands a notch for sockets somewhere, quickly: yes, no, or not sure, where the
 * notch itself must be made to know. What is sure rests on two facts about {@link Notches}: metal
 * that a disc of the tip's radius can reach without leaving the bracket or meeting a socket stays,
 * and metal in a socket's circle goes.
 */
final class NotchFit {
  private static final double TIP_MM = Notches.TIP_MM;

  /** Room for figures reckoned in two ways, mm; wide of any rounding. */
  private static final double UNSURE_MM = 1e-6;

  /** Nearer than this a foot is an end of its edge, whatever the rounding, mm. */
  private static final double NO_END_MM = 1e-10;

  /** A bite shallower than this may be too small to count as one, mm. */
  private static final double SHALLOW_MM = 0.05;

  private final Bracket bracket;
  private final Depths metal;
  private final List<Edge> edges;
  private final double[] polygonX;
  private final double[] polygonY;
  private final double middleX;
  private final double middleY;
  private final double boundingRadius;
  private final List<Vec2> reentrant;
  private final double widest;

  /** Per fastener: where it is, what it needs, and whether no tip of the bracket's own is near. */
  private final double[] fastenerX;

  private final double[] fastenerY;
  private final double[] fastenerNeed;
  private final boolean[] fastenerApart;

  NotchFit(Bracket bracket) {
    this.bracket = bracket;
    Region region = Region.inside(bracket.outline());
    metal = new Depths(region);
    edges = bracket.outline().edges();
    List<Vec2> polygon = region.contours().get(0).flattened(0.01);
    polygonX = polygon.stream().mapToDouble(Vec2::x).toArray();
    polygonY = polygon.stream().mapToDouble(Vec2::y).toArray();
    Vec2 middle = bracket.outline().bounds().centre();
    middleX = middle.x();
    middleY = middle.y();
    boundingRadius =
        Math.hypot(bracket.outline().bounds().width(), bracket.outline().bounds().height()) / 2;
    widest = 2 * boundingRadius;
    reentrant =
        bracket.outline().corners().stream()
            .filter(c -> NotchWidths.isReentrant(bracket.outline(), c))
            .toList();
    int n = bracket.fasteners().size();
    fastenerX = new double[n];
    fastenerY = new double[n];
    fastenerNeed = new double[n];
    fastenerApart = new boolean[n];
    Region tips = region.minus(region.opened(TIP_MM));
    for (int i = 0; i < n; i++) {
      Bracket.Fastener f = bracket.fasteners().get(i);
      fastenerX[i] = f.at().x();
      fastenerY[i] = f.at().y();
      fastenerNeed[i] = f.diameterMm() / 2 + SocketChecks.FASTENER_GAP_MM;
      fastenerApart[i] = tips.isEmpty() || -tips.depth(f.at()) > fastenerNeed[i] + UNSURE_MM;
    }
  }

  /** What it takes to know. */
  enum Answer {
    YES,
    NO,
    UNSURE
  }

  /**
   * Whether the notch, if one is needed, passes its checks.
   *
   * @param holeX hole centres
   * @param holeY hole centres
   * @param radius what a socket needs
   * @param bites room for the indices of the holes it stands in the way of
   */
  Answer stands(double[] holeX, double[] holeY, double radius, int[] bites) {
    int n = 0;
    for (int i = 0; i < holeX.length; i++) {
      double dx = holeX[i] - middleX;
      double dy = holeY[i] - middleY;
      double far = boundingRadius + radius;
      if (dx * dx + dy * dy > far * far) {
        continue;
      }
      double reach = radius + metal.at(holeX[i], holeY[i]);
      if (reach > 0) {
        if (reach < SHALLOW_MM) {
          return Answer.UNSURE;
        }
        bites[n++] = i;
      }
    }
    if (n == 0) {
      return Answer.YES;
    }
    Answer width = width(holeX, holeY, radius, bites, n);
    if (width == Answer.NO) {
      return Answer.NO;
    }
    Answer fasteners = fasteners(holeX, holeY, radius, bites, n);
    return fasteners == Answer.YES ? width : fasteners;
  }

  private Answer fasteners(double[] holeX, double[] holeY, double radius, int[] bites, int n) {
    Answer answer = Answer.YES;
    for (int i = 0; i < fastenerX.length; i++) {
      double fx = fastenerX[i];
      double fy = fastenerY[i];
      for (int k = 0; k < n; k++) {
        double dx = holeX[bites[k]] - fx;
        double dy = holeY[bites[k]] - fy;
        double distance = Math.sqrt(dx * dx + dy * dy);
        double gap = distance - radius;
        if (gap < fastenerNeed[i] - UNSURE_MM) {
          // The nearest point of the circle goes if it is metal.
          double t = gap <= 0 ? 0 : gap / distance;
          if (metal.at(fx + t * dx, fy + t * dy) > UNSURE_MM) {
            return Answer.NO;
          }
        }
        boolean apart = gap > fastenerNeed[i] + 2 * TIP_MM + UNSURE_MM && fastenerApart[i];
        if (!apart) {
          answer = Answer.UNSURE;
        }
      }
    }
    return answer;
  }

  /** The sections of {@link NotchWidths}, each surely metal, surely not, or neither. */
  private Answer width(double[] holeX, double[] holeY, double radius, int[] bites, int n) {
    double limit = bracket.leastWidthMm();
    if (limit == 0.0) {
      return Answer.YES;
    }
    if (limit > widest) {
      return Answer.UNSURE;
    }
    Answer worst = Answer.YES;
    for (int k = 0; k < n; k++) {
      double cx = holeX[bites[k]];
      double cy = holeY[bites[k]];
      Vec2 centre = new Vec2(cx, cy);
      for (Edge edge : edges) {
        Vec2 foot = edge.nearest(centre);
        double toEnd = Math.min(foot.distanceTo(edge.start()), foot.distanceTo(edge.end()));
        // The way to an end of an edge is not square to it, so it is no section.
        if (toEnd > NO_END_MM) {
          Answer s = section(cx, cy, foot.x(), foot.y(), 0.0, holeX, holeY, radius, bites, n);
          worst = graver(worst, toEnd < UNSURE_MM && s == Answer.NO ? Answer.UNSURE : s);
        }
      }
      for (Vec2 corner : reentrant) {
        worst =
            graver(
                worst,
                section(cx, cy, corner.x(), corner.y(), 0.0, holeX, holeY, radius, bites, n));
      }
      for (int j = k + 1; j < n; j++) {
        double ox = holeX[bites[j]];
        double oy = holeY[bites[j]];
        worst = graver(worst, section(cx, cy, ox, oy, radius, holeX, holeY, radius, bites, n));
      }
      if (worst == Answer.NO) {
        return worst;
      }
    }
    // With nothing left of the bracket the width is nil: some metal must be seen to stay.
    return worst == Answer.YES && !staysSomewhere(holeX, holeY, radius, bites, n)
        ? Answer.UNSURE
        : worst;
  }

  private static Answer graver(Answer a, Answer b) {
    return a == Answer.NO || b == Answer.NO ? Answer.NO : a == Answer.UNSURE ? a : b;
  }

  /** Whether one section, if it is one, is wide enough. */
  private Answer section(
      double ax,
      double ay,
      double bx,
      double by,
      double radiusB,
      double[] holeX,
      double[] holeY,
      double radius,
      int[] bites,
      int n) {
    double limit = bracket.leastWidthMm();
    double width = Math.hypot(bx - ax, by - ay) - radius - radiusB;
    if (width > limit + UNSURE_MM || width < -UNSURE_MM) {
      return Answer.YES;
    }
    if (width < UNSURE_MM) {
      return Answer.UNSURE;
    }
    Answer through = metal(ax, ay, bx, by, radius, radiusB, holeX, holeY, radius, bites, n);
    if (through == Answer.NO) {
      return Answer.YES;
    }
    return through == Answer.YES && width < limit - UNSURE_MM ? Answer.NO : Answer.UNSURE;
  }

  private boolean staysSomewhere(
      double[] holeX, double[] holeY, double radius, int[] bites, int n) {
    for (int i = 0; i < polygonX.length; i++) {
      double x = (polygonX[i] + middleX) / 2;
      double y = (polygonY[i] + middleY) / 2;
      if (stays(x, y, holeX, holeY, radius, bites, n) == Answer.YES) {
        return true;
      }
    }
    return false;
  }

  private Answer metal(
      double ax,
      double ay,
      double bx,
      double by,
      double radiusA,
      double radiusB,
      double[] holeX,
      double[] holeY,
      double radius,
      int[] bites,
      int n) {
    double whole = Math.hypot(bx - ax, by - ay);
    double width = whole - radiusA - radiusB;
    Answer all = Answer.YES;
    for (int quarter = 1; quarter <= 3; quarter++) {
      double t = (radiusA + quarter * width / 4) / whole;
      double x = ax + t * (bx - ax);
      double y = ay + t * (by - ay);
      Answer here = stays(x, y, holeX, holeY, radius, bites, n);
      if (here == Answer.NO) {
        return Answer.NO;
      }
      if (here == Answer.UNSURE) {
        all = Answer.UNSURE;
      }
    }
    return all;
  }

  /** Whether metal at a point stays: surely where a tip's disc round it meets nothing. */
  private Answer stays(
      double x, double y, double[] holeX, double[] holeY, double radius, int[] bites, int n) {
    double depth = metal.at(x, y);
    for (int k = 0; k < n; k++) {
      double dx = holeX[bites[k]] - x;
      double dy = holeY[bites[k]] - y;
      depth = Math.min(depth, Math.sqrt(dx * dx + dy * dy) - radius);
    }
    if (depth > TIP_MM + UNSURE_MM) {
      return Answer.YES;
    }
    return depth < -UNSURE_MM ? Answer.NO : Answer.UNSURE;
  }

  /** Metal of the bracket in a socket's circle, its tips left out, mm2. */
  double overlap(double x, double y, double radius) {
    double dx = x - middleX;
    double dy = y - middleY;
    double far = boundingRadius + radius;
    if (dx * dx + dy * dy > far * far) {
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
