package dev.towerscribe.drilled;

import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The slack of a plate by trying poses on grids and sections that close in, sharing no code with
 * the program. What it finds is the slack of a real pose, so never more than the truth.
 */
final class Brute {
  /** Angles at first: every two degrees. */
  private static final int ANGLES = 180;

  private static final int COARSE_SECTIONS = 18;

  /** Golden sections in each coordinate of the shift: to a 1e-9th of where they began. */
  private static final int SECTIONS = 43;

  /** Halvings of the grid of turns. */
  private static final int LEVELS = 18;

  private static final int PEAKS = 4;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private Brute() {}

  /**
   * How far the last grids may leave the answer below the truth, for patterns of this radius whose
   * holes and places are apart by so much.
   */
  static double tolerance(double radiusMm, double spreadMm) {
    double turnStep = 2 * Math.PI / ANGLES / Math.pow(2, LEVELS);
    double shiftStep = 2 * spreadMm * Math.pow(GOLDEN, SECTIONS);
    // A step of the turn moves a hole by the radius times it, and the slack by no more; a section
    // of the shift likewise. Twice each, for an answer between two of them.
    return 2 * (radiusMm * turnStep + 2 * shiftStep);
  }

  static double slack(List<BoltPlay> pegs) {
    record Peak(double turn, double depth) {}
    double step = 2 * Math.PI / ANGLES;
    double[] coarse = new double[ANGLES];
    for (int i = 0; i < ANGLES; i++) {
      coarse[i] = depth(pegs, i * step, COARSE_SECTIONS);
    }
    List<Peak> peaks = new ArrayList<>();
    for (int i = 0; i < ANGLES; i++) {
      double before = coarse[(i + ANGLES - 1) % ANGLES];
      double after = coarse[(i + 1) % ANGLES];
      if (coarse[i] >= before && coarse[i] >= after) {
        peaks.add(new Peak(i * step, coarse[i]));
      }
    }
    peaks.sort(Comparator.comparingDouble(Peak::depth).reversed());
    double best = Double.NEGATIVE_INFINITY;
    for (Peak peak : peaks.subList(0, Math.min(PEAKS, peaks.size()))) {
      best = Math.max(best, climbed(pegs, peak.turn(), step));
    }
    return best;
  }

  private static double climbed(List<BoltPlay> pegs, double from, double reach) {
    double turn = from;
    double half = reach;
    double best = depth(pegs, turn, SECTIONS);
    for (int level = 0; level < LEVELS; level++) {
      double centre = turn;
      for (int i = -4; i <= 4; i++) {
        double d = depth(pegs, centre + i * half / 4, SECTIONS);
        if (d > best) {
          best = d;
          turn = centre + i * half / 4;
        }
      }
      half /= 2;
    }
    return best;
  }

  /** The best least margin over all shifts at a turn. */
  static double depth(List<BoltPlay> pegs, double turn, int levels) {
    int n = pegs.size();
    double[] x = new double[n];
    double[] y = new double[n];
    double[] r = new double[n];
    double mx = 0;
    double my = 0;
    for (int i = 0; i < n; i++) {
      Vec2 p = pegs.get(i).place();
      x[i] = pegs.get(i).hole().x() - (p.x() * Math.cos(turn) - p.y() * Math.sin(turn));
      y[i] = pegs.get(i).hole().y() - (p.x() * Math.sin(turn) + p.y() * Math.cos(turn));
      r[i] = (pegs.get(i).towerHoleMm() + pegs.get(i).plateHoleMm()) / 2 - pegs.get(i).boltMm();
      mx += x[i] / n;
      my += y[i] / n;
    }
    double half = 0;
    for (int i = 0; i < n; i++) {
      half = Math.max(half, Math.hypot(x[i] - mx, y[i] - my));
    }
    // The least margin is a concave function of the shift, and so is its greatest over one
    // coordinate: golden section in one within golden section in the other.
    double lowX = mx - half;
    double highX = mx + half;
    double best = Double.NEGATIVE_INFINITY;
    double one = alongY(x, y, r, highX - GOLDEN * (highX - lowX), my, half, levels);
    double two = alongY(x, y, r, lowX + GOLDEN * (highX - lowX), my, half, levels);
    for (int level = 0; level < levels; level++) {
      best = Math.max(best, Math.max(one, two));
      if (one > two) {
        highX = lowX + GOLDEN * (highX - lowX);
        two = one;
        one = alongY(x, y, r, highX - GOLDEN * (highX - lowX), my, half, levels);
      } else {
        lowX = highX - GOLDEN * (highX - lowX);
        one = two;
        two = alongY(x, y, r, lowX + GOLDEN * (highX - lowX), my, half, levels);
      }
    }
    return Math.max(best, Math.max(one, two));
  }

  private static double alongY(
      double[] x, double[] y, double[] r, double tx, double my, double half, int levels) {
    double low = my - half;
    double high = my + half;
    double one = margin(x, y, r, tx, high - GOLDEN * (high - low));
    double two = margin(x, y, r, tx, low + GOLDEN * (high - low));
    double best = Double.NEGATIVE_INFINITY;
    for (int level = 0; level < levels; level++) {
      best = Math.max(best, Math.max(one, two));
      if (one > two) {
        high = low + GOLDEN * (high - low);
        two = one;
        one = margin(x, y, r, tx, high - GOLDEN * (high - low));
      } else {
        low = high - GOLDEN * (high - low);
        one = two;
        two = margin(x, y, r, tx, low + GOLDEN * (high - low));
      }
    }
    return Math.max(best, Math.max(one, two));
  }

  private static double margin(double[] x, double[] y, double[] r, double tx, double ty) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      double dx = x[i] - tx;
      double dy = y[i] - ty;
      least = Math.min(least, r[i] - Math.sqrt(dx * dx + dy * dy));
    }
    return least;
  }

  /** The least margin of a pose. */
  static double margin(List<BoltPlay> pegs, RigidMove move) {
    double least = Double.POSITIVE_INFINITY;
    for (BoltPlay peg : pegs) {
      double c = Math.cos(move.turn().radians());
      double s = Math.sin(move.turn().radians());
      double x = c * peg.place().x() - s * peg.place().y() + move.shift().x();
      double y = s * peg.place().x() + c * peg.place().y() + move.shift().y();
      double play = (peg.towerHoleMm() + peg.plateHoleMm()) / 2 - peg.boltMm();
      least = Math.min(least, play - Math.hypot(peg.hole().x() - x, peg.hole().y() - y));
    }
    return least;
  }
}
