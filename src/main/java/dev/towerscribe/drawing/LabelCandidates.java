package dev.towerscribe.drawing;

import dev.towerscribe.drawing.LabelPlacer.Candidate;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Usual places for a label: round a thing, along a line, or anywhere with a leader. */
public final class LabelCandidates {
  /** No place {@link #anywhere} costs less. */
  public static final double ANYWHERE_COST = 12;

  /** No place {@link #along} a boundary costs less: those at straight edges are liked better. */
  public static final double LEAST_ALONG_COST = -0.5;

  private static final double GAP_MM = 1.5;
  private static final int DIRECTIONS = 32;
  private static final double[] RINGS_MM = {0, 1.5, 3, 5, 8, 11, 15, 20, 26, 34};

  /** Past this gap a leader is needed to say what the label belongs to. */
  private static final double BESIDE_MM = 3.0;

  private static final double LEAST_STRAIGHT_MM = 8.0;
  private static final double LEAST_LEADER_MM = 2.0;
  private static final double GRID_MM = 5.0;
  private static final double FREE_GRID_MM = 2.5;
  private static final double FREE_RISE_MM = 1.0;

  /** The highest place {@link #freely} is this much less liked than the lowest. */
  private static final double FREE_MOST_COST = 4.0;

  /** Steep lines read upward, from the page's right-hand edge, a little past the upright too. */
  private static final double MOST_TURN = Math.toRadians(100);

  private LabelCandidates() {}

  /**
   * Upright places round a disc, nearest first.
   *
   * @param block the lettering
   * @param centre the disc's centre
   * @param radiusMm its radius
   * @param liked direction best liked, any length; zero for none
   * @return candidates, in no order of cost
   */
  public static List<Candidate> around(TextBlock block, Vec2 centre, double radiusMm, Vec2 liked) {
    List<Candidate> result = new ArrayList<>();
    TurnedBox box = block.at(Vec2.ZERO, Angle.ZERO);
    for (double ring : RINGS_MM) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double a = 2 * Math.PI * i / DIRECTIONS;
        Vec2 unit = new Vec2(Math.cos(a), Math.sin(a));
        Vec2 at = centre.plus(unit.times(touching(box, unit, radiusMm + GAP_MM + ring)));
        double away = liked.norm() == 0.0 ? 0 : 1 - unit.dot(liked.unit());
        Optional<Vec2> pointer =
            ring <= BESIDE_MM ? Optional.empty() : Optional.of(centre.plus(unit.times(radiusMm)));
        result.add(new Candidate(block, at, Angle.ZERO, pointer, ring + 2 * away));
      }
    }
    return result;
  }

  /** How far along a direction an upright box must be moved to leave a disc about zero. */
  private static double touching(TurnedBox box, Vec2 unit, double radiusMm) {
    double low = 0;
    double high = radiusMm + box.halfWidthMm() + box.halfHeightMm();
    double across = Math.abs(unit.x());
    double up = Math.abs(unit.y());
    // Halving to a hundredth of a millimetre: 300 mm / 2^16.
    for (int i = 0; i < 16; i++) {
      double middle = (low + high) / 2;
      double x = Math.max(0, across * middle - box.halfWidthMm());
      double y = Math.max(0, up * middle - box.halfHeightMm());
      if (x * x + y * y < radiusMm * radiusMm) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /**
   * Places along a boundary, turned with it so as to read as nearly upright as can be.
   *
   * @param block the lettering
   * @param boundary page mm
   * @param outside true to stand outside the boundary, false inside
   * @param gapsMm distances from the boundary to the lettering's nearest edge, best liked first
   * @return candidates, in no order of cost
   */
  public static List<Candidate> along(
      TextBlock block, Contour boundary, boolean outside, double... gapsMm) {
    List<Vec2> points = even(boundary.flattened(0.05), true, 3.0);
    boolean anticlockwise = boundary.signedArea() > 0;
    List<Candidate> result = new ArrayList<>();
    int n = points.size();
    int reach = Math.max(1, (int) Math.round(block.widthMm() / 2 / 3.0));
    for (int i = 0; i < n; i++) {
      Vec2 p = points.get(i);
      Vec2 tangent = points.get((i + reach) % n).minus(points.get(Math.floorMod(i - reach, n)));
      if (tangent.norm() < 1e-6) {
        continue;
      }
      Vec2 normal = tangent.unit().quarterTurn().times(anticlockwise == outside ? -1 : 1);
      // How far the boundary bends toward the lettering within the lettering's width.
      double bend = 0;
      for (int k = -reach; k <= reach; k++) {
        Vec2 q = points.get(Math.floorMod(i + k, n));
        bend = Math.max(bend, (q.x() - p.x()) * normal.x() + (q.y() - p.y()) * normal.y());
      }
      Angle turn = readable(tangent);
      for (int g = 0; g < gapsMm.length; g++) {
        double off = bend + gapsMm[g] + block.heightMm() / 2;
        Vec2 at = p.plus(normal.times(off));
        Optional<Vec2> pointer = gapsMm[g] > 1.0 ? Optional.of(p) : Optional.empty();
        result.add(
            new Candidate(block, at, turn, pointer, g * 1.5 + 3 * Math.abs(turn.sin()) + 2 * bend));
      }
    }
    straightParts(block, boundary, anticlockwise == outside ? -1 : 1, gapsMm, result);
    return result;
  }

  /** Along straight edges the lettering is exactly parallel, right up to the corners. */
  private static void straightParts(
      TextBlock block, Contour boundary, int turn, double[] gapsMm, List<Candidate> into) {
    for (Edge edge : boundary.edges()) {
      if (!(edge instanceof Segment) || edge.length() < LEAST_STRAIGHT_MM) {
        continue;
      }
      Vec2 tangent = edge.end().minus(edge.start()).unit();
      Vec2 normal = tangent.quarterTurn().times(turn);
      Angle reading = readable(tangent);
      int steps = (int) Math.ceil(edge.length() / 3.0);
      for (int i = 1; i < steps; i++) {
        Vec2 p = edge.at((double) i / steps);
        for (int g = 0; g < gapsMm.length; g++) {
          Vec2 at = p.plus(normal.times(gapsMm[g] + 0.2 + block.heightMm() / 2));
          Optional<Vec2> pointer = gapsMm[g] > 1.0 ? Optional.of(p) : Optional.empty();
          double past = Math.max(0, block.widthMm() / 2 - p.distanceTo(edge.start()));
          past += Math.max(0, block.widthMm() / 2 - p.distanceTo(edge.end()));
          into.add(
              new Candidate(
                  block,
                  at,
                  reading,
                  pointer,
                  g * 1.5 + 3 * Math.abs(reading.sin()) + 0.1 * past + LEAST_ALONG_COST));
        }
      }
    }
  }

  /**
   * Places along an open line.
   *
   * @param block the lettering
   * @param path the line's points, page mm
   * @param upon true to stand upon it, false on either side of it
   * @return candidates, all of cost 0
   */
  public static List<Candidate> alongLine(TextBlock block, List<Vec2> path, boolean upon) {
    List<Vec2> points = even(path, false, 3.0);
    List<Candidate> result = new ArrayList<>();
    for (int i = 1; i + 1 < points.size(); i++) {
      Vec2 p = points.get(i);
      Vec2 tangent = points.get(i + 1).minus(points.get(i - 1)).unit();
      Vec2 normal = tangent.quarterTurn();
      Angle turn = readable(tangent);
      double off = block.heightMm() / 2 + 1.2;
      for (int side : upon ? new int[] {0} : new int[] {1, -1}) {
        result.add(
            new Candidate(block, p.plus(normal.times(side * off)), turn, Optional.empty(), 0));
      }
    }
    return result;
  }

  /**
   * Upright places all over a room, with a leader to a point; nearer is better.
   *
   * @param block the lettering
   * @param room where it may stand, page mm
   * @param pointer what the leader runs to
   * @param dearest places that cost as much or more are left out
   * @return candidates, in no order of cost
   */
  public static List<Candidate> anywhere(TextBlock block, Box room, Vec2 pointer, double dearest) {
    List<Candidate> result = new ArrayList<>();
    Optional<Vec2> end = Optional.of(pointer);
    for (double x = room.minX() + GRID_MM / 2; x < room.maxX(); x += GRID_MM) {
      double beside = Math.max(0, Math.abs(pointer.x() - x) - block.widthMm() / 2);
      if (leaderCost(beside) >= dearest) {
        continue;
      }
      for (double y = room.minY() + GRID_MM / 2; y < room.maxY(); y += GRID_MM) {
        double above = Math.max(0, Math.abs(pointer.y() - y) - block.heightMm() / 2);
        double far = Math.hypot(beside, above);
        double cost = leaderCost(far);
        if (far > LEAST_LEADER_MM && cost < dearest) {
          result.add(new Candidate(block, new Vec2(x, y), Angle.ZERO, end, cost));
        }
      }
    }
    return result;
  }

  private static double leaderCost(double lengthMm) {
    return ANYWHERE_COST + 0.5 * lengthMm + lengthMm * lengthMm / 100;
  }

  /**
   * Upright places all over the room, the lowest liked best, none with a leader.
   *
   * @param block the lettering
   * @param room where it may stand
   * @return candidates, in no order of cost
   */
  public static List<Candidate> freely(TextBlock block, Box room) {
    List<Candidate> result = new ArrayList<>();
    Box middles = room.grown(-2 * TextBlock.CLEARED_MM);
    double left = middles.minX() + block.widthMm() / 2;
    double right = middles.maxX() - block.widthMm() / 2;
    double low = middles.minY() + block.heightMm() / 2;
    double high = middles.maxY() - block.heightMm() / 2;
    for (double y = low; y <= high; y += FREE_RISE_MM) {
      for (double x = left; x <= right; x += FREE_GRID_MM) {
        double cost = FREE_MOST_COST * (y - low) / Math.max(1.0, high - low);
        result.add(new Candidate(block, new Vec2(x, y), Angle.ZERO, Optional.empty(), cost));
      }
    }
    return result;
  }

  /** The direction along a line that reads from the left or from the page's right-hand edge. */
  static Angle readable(Vec2 tangent) {
    double a = Math.atan2(tangent.y(), tangent.x());
    if (a > MOST_TURN) {
      a -= Math.PI;
    } else if (a <= MOST_TURN - Math.PI) {
      a += Math.PI;
    }
    return new Angle(a);
  }

  /**
   * Points at even steps along a path.
   *
   * @param path its points, at least one
   * @param closed whether the last joins the first
   * @param stepMm from one to the next along the path, positive
   * @return points of the path, its first among them
   */
  public static List<Vec2> even(List<Vec2> path, boolean closed, double stepMm) {
    List<Vec2> result = new ArrayList<>();
    double carry = 0;
    int pieces = closed ? path.size() : path.size() - 1;
    for (int i = 0; i < pieces; i++) {
      Vec2 a = path.get(i);
      Vec2 b = path.get((i + 1) % path.size());
      double length = a.distanceTo(b);
      while (carry < length) {
        result.add(a.toward(b, carry / length));
        carry += stepMm;
      }
      carry -= length;
    }
    return result;
  }
}
