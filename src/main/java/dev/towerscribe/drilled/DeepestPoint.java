package dev.towerscribe.drilled;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The point that lies deepest in a set of discs: it makes the least of (radius - distance to the
 * centre) as great as it can be. Seen the other way round, this is the smallest circle about points
 * with additive weights, a problem of LP type (Welzl 1991; Helly's theorem is why three discs at
 * most decide): found by exchange of supports of one, two and three discs, each in closed form.
 *
 * <p>A scratch object for one thread. Radii may be negative.
 */
final class DeepestPoint {
  /** Exchanges at most; each lowers the depth, so that a few per disc are made. */
  private static final int ROUNDS = 1000;

  private final double[] cx;
  private final double[] cy;
  private final double[] r;
  private final int n;

  // Of an exchange: the discs it is among, and the best point offered so far.
  private int[] among = {};
  private Held best = new Held(0, 0, 0);

  // Of the proof: the discs that may take part, and the one found that allows least.
  private Proof least = new Proof(0, new int[0], new double[0]);

  /** The deepest point. */
  double x;

  /** The deepest point. */
  double y;

  /** Its depth, calculated from the point itself: no disc is shallower there. */
  double depth;

  /** Proved: no point whatever is deeper. The depth itself, but for rounding. */
  double proof;

  /**
   * Of the proof: no point whatever is deeper than sum of w (r + u . c), because |c - t| is not
   * less than u . (t - c) and the weighted u add up to nothing.
   */
  final double[] weight;

  /** Unit vectors of the proof, or zero. */
  final double[] ux;

  /** Unit vectors of the proof, or zero. */
  final double[] uy;

  /** A point, its depth, and the discs that hold it there. */
  private record Held(double x, double y, double depth, int... by) {}

  /** What no point is deeper than, with the weight and the way of each disc that proves it. */
  private record Proof(double bound, int[] discs, double[] weights, Way... ways) {}

  /** From a disc's centre to somewhere. */
  private record Way(double x, double y, double far) {
    double ux() {
      return x / far;
    }

    double uy() {
      return y / far;
    }
  }

  DeepestPoint(double[] radii) {
    r = radii;
    n = radii.length;
    cx = new double[n];
    cy = new double[n];
    weight = new double[n];
    ux = new double[n];
    uy = new double[n];
  }

  void centre(int i, double atX, double atY) {
    cx[i] = atX;
    cy[i] = atY;
  }

  private Way way(int disc, double toX, double toY) {
    double wayX = toX - cx[disc];
    double wayY = toY - cy[disc];
    return new Way(wayX, wayY, Math.hypot(wayX, wayY));
  }

  private Way between(int disc, int other) {
    return way(disc, cx[other], cy[other]);
  }

  private double margin(int disc, double atX, double atY) {
    return r[disc] - Math.hypot(cx[disc] - atX, cy[disc] - atY);
  }

  /** How deep the point found lies in a disc. */
  double margin(int i) {
    return margin(i, x, y);
  }

  /** The first disc of smallest radius. */
  private int smallest() {
    return IntStream.range(0, n).reduce(0, (a, b) -> r[b] < r[a] ? b : a);
  }

  /** The first disc that the point found is least deep in. */
  private int shallowest() {
    return IntStream.range(0, n).reduce(0, (a, b) -> margin(b) < margin(a) ? b : a);
  }

  /** Finds the point and the proof. */
  void solve() {
    int first = smallest();
    Held held = new Held(cx[first], cy[first], r[first], first);
    for (int round = 0; round < ROUNDS; round++) {
      x = held.x;
      y = held.y;
      int worst = shallowest();
      boolean holds = Arrays.stream(held.by).anyMatch(d -> d == worst);
      if (holds || margin(worst) >= held.depth) {
        break;
      }
      exchange(held.by, worst);
      if (best.depth >= held.depth) {
        // Only rounding is left to be gained.
        break;
      }
      held = best;
    }
    depth = margin(shallowest());
    prove();
  }

  /** The deepest point of the support and one more disc, which must be in the new support. */
  private void exchange(int[] support, int j) {
    among = Arrays.copyOf(support, support.length + 1);
    among[support.length] = j;
    best = new Held(cx[j], cy[j], Double.NEGATIVE_INFINITY);
    offer(cx[j], cy[j], j);
    for (int a = 0; a < support.length; a++) {
      pair(j, support[a]);
      for (int b = a + 1; b < support.length; b++) {
        triple(j, support[a], support[b]);
      }
    }
  }

  private void offer(double px, double py, int... by) {
    double shallow = Double.POSITIVE_INFINITY;
    for (int d : among) {
      shallow = Math.min(shallow, margin(d, px, py));
    }
    if (shallow > best.depth) {
      best = new Held(px, py, shallow, by);
    }
  }

  /** Between two discs: equally deep in both, on the line of their centres. */
  private void pair(int i, int k) {
    Way d = between(i, k);
    double part = (1 + (r[i] - r[k]) / d.far) / 2;
    if (d.far > 0 && part >= 0 && part <= 1) {
      offer(cx[i] + part * d.x, cy[i] + part * d.y, i, k);
    }
  }

  /**
   * Equally deep in three discs. With the first centre as origin and s the distance to it, the
   * distances to the others are s + (r' - r); squared and subtracted they are linear in the point
   * and s, and the first one makes a quadratic of it.
   */
  private void triple(int i, int k, int l) {
    Way a = between(i, k);
    Way b = between(i, l);
    double det = a.x * b.y - a.y * b.x;
    if (det == 0) {
      return;
    }
    double ga = r[k] - r[i];
    double gb = r[l] - r[i];
    double a0 = (a.x * a.x + a.y * a.y - ga * ga) / 2;
    double b0 = (b.x * b.x + b.y * b.y - gb * gb) / 2;
    double p0x = (a0 * b.y - b0 * a.y) / det;
    double p0y = (a.x * b0 - b.x * a0) / det;
    double p1x = (-ga * b.y + gb * a.y) / det;
    double p1y = (-a.x * gb + b.x * ga) / det;
    double qa = p1x * p1x + p1y * p1y - 1;
    double qb = p0x * p1x + p0y * p1y;
    double qc = p0x * p0x + p0y * p0y;
    double root = qb * qb - qa * qc;
    if (!(root >= 0)) {
      return;
    }
    double q = -(qb + Math.copySign(Math.sqrt(root), qb));
    for (double s : new double[] {q / qa, qc / q}) {
      if (s >= 0 && Double.isFinite(s)) {
        polished(i, k, l, cx[i] + (p0x + s * p1x), cy[i] + (p0y + s * p1y), r[i] - s);
      }
    }
  }

  /** Two of Newton's steps on the three distances restore what the quadratic lost to rounding. */
  private void polished(int i, int k, int l, double atX, double atY, double atLevel) {
    double px = atX;
    double py = atY;
    double level = atLevel;
    for (int step = 0; step < 2; step++) {
      Way wi = way(i, px, py);
      Way wk = way(k, px, py);
      Way wl = way(l, px, py);
      // Unknowns: the move and the change of level; rows u . move + change = r - level - distance.
      double ei = r[i] - level - wi.far;
      double ek = r[k] - level - wk.far;
      double el = r[l] - level - wl.far;
      double m11 = wk.ux() - wi.ux();
      double m12 = wk.uy() - wi.uy();
      double m21 = wl.ux() - wi.ux();
      double m22 = wl.uy() - wi.uy();
      double det = m11 * m22 - m12 * m21;
      double moveX = ((ek - ei) * m22 - (el - ei) * m12) / det;
      double moveY = (m11 * (el - ei) - m21 * (ek - ei)) / det;
      double change = ei - wi.ux() * moveX - wi.uy() * moveY;
      if (!Double.isFinite(moveX) || !Double.isFinite(moveY) || !Double.isFinite(change)) {
        break;
      }
      px += moveX;
      py += moveY;
      level += change;
    }
    offer(atX, atY, i, k, l);
    offer(px, py, i, k, l);
  }

  /**
   * The point common to all discs that lies farthest one way: the outermost point of a disc or a
   * crossing of two rims. Asked after {@link #solve}; where no such point is found in all discs,
   * the deepest point stands in, as there is hardly room for another.
   */
  Vec2 farthest(Vec2 to, double allowance) {
    Vec2 far = new Vec2(x, y);
    double size = to.norm();
    for (int i = 0; size > 0 && i < n; i++) {
      double out = Math.max(0, r[i]) / size;
      far = farther(far, cx[i] + out * to.x(), cy[i] + out * to.y(), to, allowance);
      for (int k = i + 1; k < n; k++) {
        Way d = between(i, k);
        double d2 = d.x * d.x + d.y * d.y;
        double along = (1 + (r[i] * r[i] - r[k] * r[k]) / d2) / 2;
        double off = Math.sqrt(r[i] * r[i] / d2 - along * along);
        if (Double.isFinite(off)) {
          double mx = cx[i] + along * d.x;
          double my = cy[i] + along * d.y;
          far = farther(far, mx - off * d.y, my + off * d.x, to, allowance);
          far = farther(far, mx + off * d.y, my - off * d.x, to, allowance);
        }
      }
    }
    return far;
  }

  private Vec2 farther(Vec2 far, double px, double py, Vec2 to, double allowance) {
    Vec2 p = new Vec2(px, py);
    return to.dot(p) > to.dot(far)
            && IntStream.range(0, n).noneMatch(i -> margin(i, px, py) < -allowance)
        ? p
        : far;
  }

  /**
   * Of all proofs that the tight discs give, the one that allows least. All tight discs, as where
   * more than three are tight the support found may not be one that proves.
   */
  private void prove() {
    int[] tight =
        IntStream.range(0, n).filter(i -> margin(i) <= depth + Tolerances.SAME_POINT_MM).toArray();
    int alone = smallest();
    least = new Proof(r[alone], new int[] {alone}, new double[] {1}, new Way(0, 0, 1));
    for (int a = 0; a < tight.length; a++) {
      for (int b = a + 1; b < tight.length; b++) {
        int i = tight[a];
        int k = tight[b];
        Way d = between(i, k);
        double bound = (r[i] + r[k] - d.far) / 2;
        if (bound < least.bound) {
          least = new Proof(bound, new int[] {i, k}, new double[] {0.5, 0.5}, d, between(k, i));
        }
        for (int c = b + 1; c < tight.length; c++) {
          proofByThree(i, k, tight[c]);
        }
      }
    }
    proof = least.bound;
    for (double[] all : new double[][] {weight, ux, uy}) {
      Arrays.fill(all, 0);
    }
    for (int a = 0; a < least.discs.length; a++) {
      int i = least.discs[a];
      weight[i] = least.weights[a];
      ux[i] = least.ways[a].ux();
      uy[i] = least.ways[a].uy();
    }
  }

  private void proofByThree(int i, int k, int l) {
    Way wi = way(i, x, y);
    Way wk = way(k, x, y);
    Way wl = way(l, x, y);
    // Weights that balance the unit vectors, all multiplied by the product of the distances.
    double vi = (wk.x * wl.y - wk.y * wl.x) * wi.far;
    double vk = (wl.x * wi.y - wl.y * wi.x) * wk.far;
    double vl = (wi.x * wk.y - wi.y * wk.x) * wl.far;
    double sum = vi + vk + vl;
    boolean balanced = vi / sum >= 0 && vk / sum >= 0 && vl / sum >= 0;
    double bound = (vi * (r[i] - wi.far) + vk * (r[k] - wk.far) + vl * (r[l] - wl.far)) / sum;
    boolean apart = wi.far > 0 && wk.far > 0 && wl.far > 0;
    if (balanced && apart && bound < least.bound) {
      double[] weights = {vi / sum, vk / sum, vl / sum};
      least = new Proof(bound, new int[] {i, k, l}, weights, wi, wk, wl);
    }
  }
}
