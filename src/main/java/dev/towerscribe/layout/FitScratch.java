package dev.towerscribe.layout;

import java.util.Arrays;

/** Somewhere for {@link TowerFit} to reckon in, one for each thread. */
final class FitScratch {
  /** Room for figures reckoned in two ways, mm; wide of any rounding. */
  static final double UNSURE_MM = 1e-6;

  /** Pieces of a boundary are halved down to this length before they are left undecided, mm. */
  static final double LEAST_PIECE_MM = 1e-5;

  double[] x = new double[0];
  double[] y = new double[0];
  int[] bites = new int[0];
  boolean unsure;
  boolean unsureShaft;
  boolean unsureNotch;
  MountCheck.Barrier barrier = MountCheck.Barrier.SHAFT;
  double slack;

  double[] rayX = new double[0];
  double[] rayY = new double[0];
  final double[] terms = new double[10];
  int[] hull = new int[0];
  Integer[] order = new Integer[0];

  void rays(int n) {
    if (rayX.length != n) {
      rayX = new double[n];
      rayY = new double[n];
      hull = new int[2 * n];
      order = new Integer[n];
    }
  }

  /** Corners of the rays' convex hull, counter-clockwise; how many there are. */
  int hull(int n) {
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    Arrays.sort(
        order,
        (a, b) ->
            rayX[a] != rayX[b]
                ? Double.compare(rayX[a], rayX[b])
                : Double.compare(rayY[a], rayY[b]));
    int size = 0;
    for (int i = 0; i < n; i++) {
      size = push(order[i], size, 0);
    }
    int lower = size - 1;
    for (int i = n - 2; i >= 0; i--) {
      size = push(order[i], size, lower);
    }
    return Math.max(1, size - 1);
  }

  int push(int p, int size, int from) {
    int count = size;
    while (count >= from + 2) {
      int a = hull[count - 2];
      int b = hull[count - 1];
      double cross =
          (rayX[b] - rayX[a]) * (rayY[p] - rayY[b]) - (rayY[b] - rayY[a]) * (rayX[p] - rayX[b]);
      if (cross > 0) {
        break;
      }
      count--;
    }
    hull[count] = p;
    return count + 1;
  }

  MountCheck.Barrier barrier() {
    return barrier;
  }

  void room(int n) {
    if (x.length != n) {
      x = new double[n];
      y = new double[n];
      bites = new int[n];
    }
  }

  /** Notes a figure against its limit; false if it surely fails. */
  boolean notes(double figure, double limit) {
    double over = figure - limit;
    if (over < UNSURE_MM) {
      if (over < -UNSURE_MM) {
        return false;
      }
      unsure = true;
    }
    return true;
  }

  /** Notes that the checks must be asked. */
  boolean doubt() {
    unsure = true;
    return true;
  }
}
