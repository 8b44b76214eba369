package dev.towerscribe.drilled;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.hipparchus.util.MathArrays;

/**
 * The turn at which a plate sits deepest in all its holes' discs, searched over the full circle
 * with a proof. Each angle looked at gives the depth there and a {@link DepthBound} that bounds the
 * depth everywhere. Between two angles looked at, the lower of both certificates is the bound; the
 * range with the highest bound is split where it is highest, until no range can hold more than
 * {@link #PROVED_MM} beyond the best depth found. Branch and bound: nothing is taken for granted of
 * the depth's shape, which has several peaks in general.
 *
 * <p>A scratch object for one thread.
 */
final class AngleSearch {
  /**
   * No pose is deeper than the one found by more than this, mm: the tolerance that geometry
   * calculated in two ways must keep, far below what calipers resolve.
   */
  static final double PROVED_MM = Tolerances.COMPUTED_MM;

  /** Ranges at the start: an eighth of a turn each. */
  private static final int RANGES = 8;

  /** Splits at most. Some tens are usual; should this be reached, the proved bound says so. */
  private static final int SPLITS = 100_000;

  /** A split takes at least this part of a range, so that each one shrinks. */
  private static final double LEAST_PART = 1e-3;

  /** Steps of bisection to where two certificates cross; any split point is safe. */
  private static final int CROSSING_STEPS = 60;

  private final int n;
  private final double[] hx;
  private final double[] hy;
  private final double[] px;
  private final double[] py;
  private final double[] radius;
  private final Vec2 pivot;
  private final Vec2 middle;
  private final DeepestPoint deepest;

  private double bestTurn;
  private double best = Double.NEGATIVE_INFINITY;
  private double bound = Double.POSITIVE_INFINITY;
  private int looks;

  private record Range(
      double from, DepthBound left, double to, DepthBound right, double upper, double split) {}

  /** Of bolts, with radii of their own: one for each. */
  AngleSearch(List<BoltPlay> pegs, double[] radii) {
    n = pegs.size();
    hx = new double[n];
    hy = new double[n];
    px = new double[n];
    py = new double[n];
    radius = radii.clone();
    // Both patterns from their middles: small figures round less.
    pivot = Vec2.mean(pegs.stream().map(BoltPlay::place).toList());
    middle = Vec2.mean(pegs.stream().map(BoltPlay::hole).toList());
    for (int i = 0; i < n; i++) {
      hx[i] = pegs.get(i).hole().x() - middle.x();
      hy[i] = pegs.get(i).hole().y() - middle.y();
      px[i] = pegs.get(i).place().x() - pivot.x();
      py[i] = pegs.get(i).place().y() - pivot.y();
    }
    deepest = new DeepestPoint(radius);
  }

  static double[] plays(List<BoltPlay> pegs) {
    return pegs.stream().mapToDouble(BoltPlay::playMm).toArray();
  }

  /** The turn that brings the patterns together best in the mean; none where there is none. */
  double meanTurn() {
    double dot = 0;
    double cross = 0;
    for (int i = 0; i < n; i++) {
      dot += px[i] * hx[i] + py[i] * hy[i];
      cross += px[i] * hy[i] - py[i] * hx[i];
    }
    return Math.atan2(cross, dot);
  }

  /** Works out the depth at a turn; the rest is read from {@link #deepest}. */
  DeepestPoint look(double turn) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    for (int i = 0; i < n; i++) {
      deepest.centre(i, hx[i] - (c * px[i] - s * py[i]), hy[i] - (s * px[i] + c * py[i]));
    }
    deepest.solve();
    looks++;
    return deepest;
  }

  private DepthBound certified(double turn) {
    DeepestPoint d = look(turn);
    if (d.depth > best) {
      best = d.depth;
      bestTurn = turn;
    }
    double k = 0;
    double a = 0;
    double b = 0;
    for (int i = 0; i < n; i++) {
      double w = d.weight[i];
      k += w * (radius[i] + d.ux[i] * hx[i] + d.uy[i] * hy[i]);
      a += w * (d.ux[i] * px[i] + d.uy[i] * py[i]);
      b += w * (px[i] * d.uy[i] - py[i] * d.ux[i]);
    }
    return new DepthBound(k, a, b);
  }

  /**
   * Searches the full circle.
   *
   * @param signOnly stop as soon as it is proved that the depth is, or is not, negative
   * @return this, searched
   */
  AngleSearch run(boolean signOnly) {
    PriorityQueue<Range> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Range::upper).reversed().thenComparingDouble(Range::from));
    double start = meanTurn() - Math.PI;
    // From the mean turn outward, so that of equal depths the one next to it is kept.
    certified(meanTurn());
    DepthBound left = certified(start);
    for (int i = 0; i < RANGES; i++) {
      double to = start + 2 * Math.PI * (i + 1) / RANGES;
      DepthBound right = certified(to);
      open.add(range(start + 2 * Math.PI * i / RANGES, left, to, right));
      left = right;
    }
    for (int splits = 0; ; splits++) {
      Range widest = open.remove();
      bound = Math.max(best, widest.upper());
      boolean signKnown = best >= 0 || bound < -PROVED_MM;
      if (bound <= best + PROVED_MM || splits == SPLITS || signOnly && signKnown) {
        return this;
      }
      DepthBound middle = certified(widest.split());
      open.add(range(widest.from(), widest.left(), widest.split(), middle));
      open.add(range(widest.split(), middle, widest.to(), widest.right()));
    }
  }

  /** A range with its bound: the left certificate up to where both cross, the right one after. */
  private static Range range(double from, DepthBound left, double to, DepthBound right) {
    double low = from;
    double high = to;
    for (int step = 0; step < CROSSING_STEPS && low < high; step++) {
      double mid = low + (high - low) / 2;
      if (mid <= low || mid >= high) {
        break;
      }
      if (left.at(mid) <= right.at(mid)) {
        low = mid;
      } else {
        high = mid;
      }
    }
    double onLeft = left.highest(from, low);
    double onRight = right.highest(low, to);
    boolean first = left.at(onLeft) >= right.at(onRight);
    double upper = first ? left.at(onLeft) : right.at(onRight);
    double room = LEAST_PART * (to - from);
    double split = Math.min(Math.max(first ? onLeft : onRight, from + room), to - room);
    return new Range(from, left, to, right, upper, split);
  }

  /**
   * How far the plate can certainly turn, either way, from the pose last looked at without any bolt
   * binding: about the pattern's middle or any of its holes no bolt moves farther relative to its
   * hole than the turn times its distance.
   *
   * @return radians; infinite where nothing binds
   */
  double freeTurn() {
    double free = freeTurn(0, 0);
    for (int i = 0; i < n; i++) {
      free = Math.max(free, freeTurn(px[i], py[i]));
    }
    return free;
  }

  private double freeTurn(double aboutX, double aboutY) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      double arm = Math.hypot(px[i] - aboutX, py[i] - aboutY);
      if (arm > 0) {
        least = Math.min(least, Math.max(0, deepest.margin(i)) / arm);
      }
    }
    return least;
  }

  /** The depth found, mm: some pose has it. */
  double best() {
    return best;
  }

  /** No pose whatever is deeper, mm. */
  double bound() {
    return bound;
  }

  /** Angles looked at. */
  int looks() {
    return looks;
  }

  /** The turn found, radians, more than -pi and not more than pi. */
  double bestTurn() {
    double turn = Math.IEEEremainder(bestTurn, 2 * Math.PI);
    return turn <= -Math.PI ? turn + 2 * Math.PI : turn;
  }

  /** The move that has the depth last looked at. */
  RigidMove move(double turn) {
    return move(turn, new Vec2(deepest.x, deepest.y));
  }

  /** The move of a turn that brings the pattern's shift to a point of the discs. */
  RigidMove move(double turn, Vec2 at) {
    Angle angle = new Angle(turn);
    // The pattern's middle goes to the holes' middle and the point found.
    return new RigidMove(angle, middle.plus(at).minus(pivot.rotated(angle)));
  }

  /**
   * How the best depth changes with each hole's place: its gradient, and with each play. Where the
   * best turn is a ridge, one certificate rises to it and another falls: their mean with no slope
   * is the gradient there.
   */
  Sway sway() {
    // A ridge's two sides are told apart at this distance, radians: a micrometre at a metre.
    double aside = 1e-6;
    DepthBound here = certified(bestTurn);
    Sway one = read();
    double slope = here.slope(bestTurn);
    if (slope == 0) {
      return one;
    }
    double there = bestTurn + Math.copySign(aside, slope);
    double kept = bestTurn;
    DepthBound other = certified(there);
    Sway two = read();
    bestTurn = kept;
    double back = other.slope(there);
    if (back * slope >= 0) {
      return one;
    }
    return one.mixed(two, slope / (slope - back));
  }

  /** What the certificate last made says of each hole. */
  record Sway(double[] x, double[] y, double[] play) {
    private Sway mixed(Sway other, double part) {
      return new Sway(
          mixed(x, other.x, part), mixed(y, other.y, part), mixed(play, other.play, part));
    }

    private static double[] mixed(double[] one, double[] two, double part) {
      return MathArrays.ebeAdd(MathArrays.scale(1 - part, one), MathArrays.scale(part, two));
    }
  }

  private Sway read() {
    return new Sway(
        MathArrays.ebeMultiply(deepest.weight, deepest.ux),
        MathArrays.ebeMultiply(deepest.weight, deepest.uy),
        deepest.weight.clone());
  }
}
