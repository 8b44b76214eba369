package dev.towerscribe.drilled;

import dev.towerscribe.quantity.Tolerances;

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

  // The support found, and later that of the proof.
  private final int[] support = new int[3];
  private int count;
  private final int[] set = new int[4];
  private double bestX;
  private double bestY;
  private double bestDepth;
  private final int[] bestSupport = new int[3];
  private int bestCount;
  private final int[] tight;
  private final double[] triple = new double[3];

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

  DeepestPoint(double[] radii) {
    r = radii;
    n = radii.length;
    cx = new double[n];
    cy = new double[n];
    weight = new double[n];
    tight = new int[n];
    ux = new double[n];
    uy = new double[n];
  }

  void centre(int i, double atX, double atY) {
    cx[i] = atX;
    cy[i] = atY;
  }

  /** How deep the point found lies in a disc. */
  double margin(int i) {
    return r[i] - Math.hypot(cx[i] - x, cy[i] - y);
  }

  /** Finds the point and the proof. */
  void solve() {
    int least = 0;
    for (int i = 1; i < n; i++) {
      if (r[i] < r[least]) {
        least = i;
      }
    }
    support[0] = least;
    count = 1;
    x = cx[least];
    y = cy[least];
    double level = r[least];
    for (int round = 0; round < ROUNDS; round++) {
      int worst = shallowest();
      if (margin(worst) >= level || inSupport(worst)) {
        break;
      }
      exchange(worst);
      if (bestDepth >= level) {
        // Only rounding is left to be gained.
        break;
      }
      level = bestDepth;
      x = bestX;
      y = bestY;
      count = bestCount;
      System.arraycopy(bestSupport, 0, support, 0, count);
    }
    depth = margin(shallowest());
    prove();
  }

  private boolean inSupport(int i) {
    for (int k = 0; k < count; k++) {
      if (support[k] == i) {
        return true;
      }
    }
    return false;
  }

  private int shallowest() {
    int worst = 0;
    double least = margin(0);
    for (int i = 1; i < n; i++) {
      double m = margin(i);
      if (m < least) {
        least = m;
        worst = i;
      }
    }
    return worst;
  }

  /** The deepest point of the support and one more disc, which must be in the new support. */
  private void exchange(int j) {
    System.arraycopy(support, 0, set, 0, count);
    set[count] = j;
    int size = count + 1;
    bestDepth = Double.NEGATIVE_INFINITY;
    offer(size, cx[j], cy[j], 1, j, 0, 0);
    for (int a = 0; a < count; a++) {
      pair(size, j, set[a]);
      for (int b = a + 1; b < count; b++) {
        triple(size, j, set[a], set[b]);
      }
    }
  }

  private void offer(int size, double px, double py, int many, int i, int k, int l) {
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < size; s++) {
      int d = set[s];
      least = Math.min(least, r[d] - Math.hypot(cx[d] - px, cy[d] - py));
    }
    if (least > bestDepth) {
      bestDepth = least;
      bestX = px;
      bestY = py;
      bestCount = many;
      bestSupport[0] = i;
      bestSupport[1] = k;
      bestSupport[2] = l;
    }
  }

  /** Between two discs: equally deep in both, on the line of their centres. */
  private void pair(int size, int i, int k) {
    double dx = cx[k] - cx[i];
    double dy = cy[k] - cy[i];
    double d = Math.hypot(dx, dy);
    if (d == 0) {
      return;
    }
    double part = (1 + (r[i] - r[k]) / d) / 2;
    if (part >= 0 && part <= 1) {
      offer(size, cx[i] + part * dx, cy[i] + part * dy, 2, i, k, 0);
    }
  }

  /**
   * Equally deep in three discs. With the first centre as origin and s the distance to it, the
   * distances to the others are s + (r' - r); squared and subtracted they are linear in the point
   * and s, and the first one makes a quadratic of it.
   */
  private void triple(int size, int i, int k, int l) {
    double ax = cx[k] - cx[i];
    double ay = cy[k] - cy[i];
    double bx = cx[l] - cx[i];
    double by = cy[l] - cy[i];
    double det = ax * by - ay * bx;
    if (det == 0) {
      return;
    }
    double ga = r[k] - r[i];
    double gb = r[l] - r[i];
    double a0 = (ax * ax + ay * ay - ga * ga) / 2;
    double b0 = (bx * bx + by * by - gb * gb) / 2;
    double p0x = (a0 * by - b0 * ay) / det;
    double p0y = (ax * b0 - bx * a0) / det;
    double p1x = (-ga * by + gb * ay) / det;
    double p1y = (-ax * gb + bx * ga) / det;
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
        polished(size, i, k, l, p0x + s * p1x, p0y + s * p1y, s);
      }
    }
  }

  /** Two of Newton's steps on the three distances restore what the quadratic lost to rounding. */
  private void polished(int size, int i, int k, int l, double atX, double atY, double distance) {
    double px = cx[i] + atX;
    double py = cy[i] + atY;
    double level = r[i] - distance;
    for (int step = 0; step < 2; step++) {
      double ix = px - cx[i];
      double iy = py - cy[i];
      double kx = px - cx[k];
      double ky = py - cy[k];
      double lx = px - cx[l];
      double ly = py - cy[l];
      double di = Math.hypot(ix, iy);
      double dk = Math.hypot(kx, ky);
      double dl = Math.hypot(lx, ly);
      // Unknowns: the move and the change of level; rows u . move + change = r - level - distance.
      double ei = r[i] - level - di;
      double ek = r[k] - level - dk;
      double el = r[l] - level - dl;
      double m11 = kx / dk - ix / di;
      double m12 = ky / dk - iy / di;
      double m21 = lx / dl - ix / di;
      double m22 = ly / dl - iy / di;
      double det = m11 * m22 - m12 * m21;
      double moveX = ((ek - ei) * m22 - (el - ei) * m12) / det;
      double moveY = (m11 * (el - ei) - m21 * (ek - ei)) / det;
      double change = ei - ix / di * moveX - iy / di * moveY;
      if (!Double.isFinite(moveX) || !Double.isFinite(moveY) || !Double.isFinite(change)) {
        break;
      }
      px += moveX;
      py += moveY;
      level += change;
    }
    offer(size, cx[i] + atX, cy[i] + atY, 3, i, k, l);
    offer(size, px, py, 3, i, k, l);
  }

  /**
   * The point common to all discs that lies farthest one way: the outermost point of a disc or a
   * crossing of two rims. Asked after {@link #solve}; where no such point is found in all discs,
   * the deepest point stands in, as there is hardly room for another.
   *
   * @return x and y
   */
  double[] farthest(double toX, double toY, double allowance) {
    double[] best = {x, y};
    double size = Math.hypot(toX, toY);
    if (size == 0) {
      return best;
    }
    for (int i = 0; i < n; i++) {
      double out = Math.max(0, r[i]) / size;
      farther(best, cx[i] + out * toX, cy[i] + out * toY, toX, toY, allowance);
      for (int k = i + 1; k < n; k++) {
        double dx = cx[k] - cx[i];
        double dy = cy[k] - cy[i];
        double d2 = dx * dx + dy * dy;
        double along = (1 + (r[i] * r[i] - r[k] * r[k]) / d2) / 2;
        double off = Math.sqrt(r[i] * r[i] / d2 - along * along);
        if (Double.isFinite(off)) {
          double mx = cx[i] + along * dx;
          double my = cy[i] + along * dy;
          farther(best, mx - off * dy, my + off * dx, toX, toY, allowance);
          farther(best, mx + off * dy, my - off * dx, toX, toY, allowance);
        }
      }
    }
    return best;
  }

  private void farther(
      double[] best, double px, double py, double toX, double toY, double allowance) {
    if (toX * px + toY * py <= toX * best[0] + toY * best[1]) {
      return;
    }
    for (int i = 0; i < n; i++) {
      if (r[i] - Math.hypot(cx[i] - px, cy[i] - py) < -allowance) {
        return;
      }
    }
    best[0] = px;
    best[1] = py;
  }

  /**
   * Of all proofs that the tight discs give, the one that allows least. All tight discs, as where
   * more than three are tight the support found may not be one that proves.
   */
  private void prove() {
    int many = 0;
    int least = 0;
    for (int i = 0; i < n; i++) {
      clear(i);
      if (margin(i) <= depth + Tolerances.SAME_POINT_MM) {
        tight[many++] = i;
      }
      least = r[i] < r[least] ? i : least;
    }
    proof = r[least];
    proofOf(1, least, 0, 0);
    for (int a = 0; a < many; a++) {
      for (int b = a + 1; b < many; b++) {
        int i = tight[a];
        int k = tight[b];
        double bound = (r[i] + r[k] - Math.hypot(cx[k] - cx[i], cy[k] - cy[i])) / 2;
        if (bound < proof) {
          proof = bound;
          proofOf(2, i, k, 0);
        }
        for (int c = b + 1; c < many; c++) {
          proofByThree(i, k, tight[c]);
        }
      }
    }
    write();
  }

  private void proofOf(int many, int i, int k, int l) {
    count = many;
    support[0] = i;
    support[1] = k;
    support[2] = l;
  }

  private void proofByThree(int i, int k, int l) {
    double ix = x - cx[i];
    double iy = y - cy[i];
    double kx = x - cx[k];
    double ky = y - cy[k];
    double lx = x - cx[l];
    double ly = y - cy[l];
    double di = Math.hypot(ix, iy);
    double dk = Math.hypot(kx, ky);
    double dl = Math.hypot(lx, ly);
    // Weights that balance the unit vectors, all multiplied by the product of the distances.
    double wi = (kx * ly - ky * lx) * di;
    double wk = (lx * iy - ly * ix) * dk;
    double wl = (ix * ky - iy * kx) * dl;
    double sum = wi + wk + wl;
    boolean balanced = wi / sum >= 0 && wk / sum >= 0 && wl / sum >= 0;
    double bound = (wi * (r[i] - di) + wk * (r[k] - dk) + wl * (r[l] - dl)) / sum;
    if (balanced && di > 0 && dk > 0 && dl > 0 && bound < proof) {
      proof = bound;
      proofOf(3, i, k, l);
      triple[0] = wi / sum;
      triple[1] = wk / sum;
      triple[2] = wl / sum;
    }
  }

  private void write() {
    if (count == 1) {
      weight[support[0]] = 1;
      return;
    }
    if (count == 2) {
      int i = support[0];
      int k = support[1];
      double d = Math.hypot(cx[k] - cx[i], cy[k] - cy[i]);
      weight[i] = 0.5;
      weight[k] = 0.5;
      ux[i] = (cx[k] - cx[i]) / d;
      uy[i] = (cy[k] - cy[i]) / d;
      ux[k] = -ux[i];
      uy[k] = -uy[i];
      return;
    }
    for (int a = 0; a < 3; a++) {
      int i = support[a];
      double d = Math.hypot(x - cx[i], y - cy[i]);
      weight[i] = triple[a];
      ux[i] = (x - cx[i]) / d;
      uy[i] = (y - cy[i]) / d;
    }
  }

  private void clear(int i) {
    weight[i] = 0;
    ux[i] = 0;
    uy[i] = 0;
  }
}
