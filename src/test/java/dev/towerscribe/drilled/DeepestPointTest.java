package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The deepest point of a set of discs. */
class DeepestPointTest {
  private static DeepestPoint solved(double[] x, double[] y, double[] r) {
    DeepestPoint deepest = new DeepestPoint(r);
    for (int i = 0; i < r.length; i++) {
      deepest.centre(i, x[i], y[i]);
    }
    deepest.solve();
    return deepest;
  }

  @Test
  void alwaysProved() {
    SplittableRandom random = new SplittableRandom(91);
    for (int i = 0; i < 20_000; i++) {
      int n = 1 + random.nextInt(9);
      double spread = Math.pow(10, random.nextDouble(-4, 2));
      double[] x = new double[n];
      double[] y = new double[n];
      double[] r = new double[n];
      for (int k = 0; k < n; k++) {
        // Some on a lattice, so that ties, lines and repeated discs are common.
        boolean lattice = i % 2 == 0;
        x[k] = lattice ? random.nextInt(4) : spread * random.nextDouble();
        y[k] = lattice ? random.nextInt(4) : spread * random.nextDouble();
        r[k] = lattice ? 0.5 * random.nextInt(-2, 3) : random.nextDouble(-1, 2);
      }
      DeepestPoint d = solved(x, y, r);
      double bound = 0;
      double balanceX = 0;
      double balanceY = 0;
      double weights = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < n; k++) {
        bound += d.weight[k] * (r[k] + d.ux[k] * (x[k] - d.x) + d.uy[k] * (y[k] - d.y));
        balanceX += d.weight[k] * d.ux[k];
        balanceY += d.weight[k] * d.uy[k];
        weights += d.weight[k];
        assertThat(d.weight[k] >= 0).isTrue();
        assertThat(Math.hypot(d.ux[k], d.uy[k])).isLessThan(1 + 1e-12);
        least = Math.min(least, r[k] - Math.hypot(x[k] - d.x, y[k] - d.y));
      }
      // A point and a proof that meet: nothing is deeper.
      assertThat(least).as("case %d", i).isCloseTo(d.depth, within(0.0));
      assertThat(bound).as("case %d", i).isCloseTo(d.depth, within(1e-11 * (1 + spread)));
      assertThat(balanceX).isCloseTo(0, within(1e-12));
      assertThat(balanceY).isCloseTo(0, within(1e-12));
      assertThat(weights).isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void itsSignAgainstHelly() {
    SplittableRandom random = new SplittableRandom(92);
    int some = 0;
    for (int i = 0; i < 4000; i++) {
      int n = 3 + random.nextInt(5);
      double[] x = new double[n];
      double[] y = new double[n];
      double[] r = new double[n];
      for (int k = 0; k < n; k++) {
        x[k] = random.nextDouble(-1, 1);
        y[k] = random.nextDouble(-1, 1);
        r[k] = random.nextDouble(0.4, 1.6);
      }
      boolean all = true;
      for (int a = 0; a < n; a++) {
        for (int b = a + 1; b < n; b++) {
          for (int c = b + 1; c < n; c++) {
            all &= share(x, y, r, new int[] {a, b, c});
          }
        }
      }
      double depth = solved(x, y, r).depth;
      // Nearer to zero than this, rounding decides.
      if (Math.abs(depth) > 1e-9) {
        assertThat(depth > 0).as("case %d", i).isEqualTo(all);
      }
      some += all ? 1 : 0;
    }
    assertThat(some).isBetween(500, 3500);
  }

  /** Whether three discs share a point: then a centre or a crossing of rims is in all of them. */
  private static boolean share(double[] x, double[] y, double[] r, int[] three) {
    for (int i : three) {
      if (inAll(x, y, r, three, x[i], y[i])) {
        return true;
      }
      for (int k : three) {
        double d = Math.hypot(x[k] - x[i], y[k] - y[i]);
        double reach = (d * d + r[i] * r[i] - r[k] * r[k]) / (2 * d);
        if (i == k || Math.abs(reach) > r[i]) {
          continue;
        }
        double base = Math.atan2(y[k] - y[i], x[k] - x[i]);
        for (double sign : new double[] {-1, 1}) {
          double angle = base + sign * Math.acos(reach / r[i]);
          if (inAll(x, y, r, three, x[i] + r[i] * Math.cos(angle), y[i] + r[i] * Math.sin(angle))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean inAll(
      double[] x, double[] y, double[] r, int[] three, double px, double py) {
    for (int i : three) {
      if (Math.hypot(px - x[i], py - y[i]) > r[i] + 1e-12) {
        return false;
      }
    }
    return true;
  }
}
