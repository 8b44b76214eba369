package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * What was found in a written file, and whether it is what the page had to show. Readers of each
 * format fill it with outlines and lines in millimetres of the paper, y up, as they lie in the
 * file; it knows nothing of how they were written.
 */
public final class ReadBack {
  /**
   * How far a point of an outline may lie from the ellipse it is taken for, mm: a tenth of what its
   * centre and radii may be off.
   */
  private static final double ROUND_MM = Tolerances.READ_BACK_MM / 10;

  /** Decimals of lengths in messages: a tenth of the tolerance shows. */
  private static final int DECIMALS = 3;

  private record Round(Vec2 centre, double acrossMm, double alongMm) {}

  private record Straight(Vec2 from, Vec2 to) {}

  private final List<Round> rounds = new ArrayList<>();
  private final List<Straight> straights = new ArrayList<>();

  /**
   * Takes in a closed curved outline. Counts as a circle, or as an ellipse upright on the page, if
   * all its points lie on one and go round it once; else it is passed over.
   *
   * @param points points along the outline, at least eight; the first need not be repeated
   * @param visible what shows of the page there; an outline wholly outside is passed over
   */
  public void outline(List<Vec2> points, Box visible) {
    Round round = fit(points);
    if (round != null && isOn(points, round) && goesRoundOnce(points, round.centre)) {
      Box around =
          new Box(
              round.centre.x() - round.acrossMm,
              round.centre.y() - round.alongMm,
              round.centre.x() + round.acrossMm,
              round.centre.y() + round.alongMm);
      if (around.meets(visible)) {
        rounds.add(round);
      }
    }
  }

  /**
   * Takes in a straight line.
   *
   * @param from one end
   * @param to other end
   * @param visible what shows of the page there; a line wholly outside is passed over
   */
  public void line(Vec2 from, Vec2 to, Box visible) {
    Box around =
        new Box(
            Math.min(from.x(), to.x()),
            Math.min(from.y(), to.y()),
            Math.max(from.x(), to.x()),
            Math.max(from.y(), to.y()));
    if (around.meets(visible)) {
      straights.add(new Straight(from, to));
    }
  }

  /**
   * Compares with what a page must show. Where a print scale is undone, a circle must have been
   * written as the ellipse that the printer will make round.
   *
   * @param page the page and its proofs
   * @return one line for each thing missing or out of place by more than {@link
   *     Tolerances#READ_BACK_MM}; empty if all is there
   */
  public List<String> compare(Page page) {
    List<String> mismatches = new ArrayList<>();
    for (Proof proof : page.proofs()) {
      if (proof instanceof Proof.RoundHole hole) {
        compareHole(page, hole, mismatches);
      } else if (proof instanceof Proof.Bar bar) {
        compareBar(page, bar, mismatches);
      } else {
        throw new IllegalStateException("no way to prove " + proof);
      }
    }
    return mismatches;
  }

  /** Where a printed point lies in the file: the printer stretches about the paper's middle. */
  private static Vec2 beforePrinting(Page page, Vec2 printed) {
    double middleX = page.widthMm() / 2;
    double middleY = page.heightMm() / 2;
    return new Vec2(
        middleX + (printed.x() - middleX) / page.scale().across(),
        middleY + (printed.y() - middleY) / page.scale().along());
  }

  private void compareHole(Page page, Proof.RoundHole hole, List<String> mismatches) {
    Vec2 centre = beforePrinting(page, hole.centre());
    double across = hole.radiusMm() / page.scale().across();
    double along = hole.radiusMm() / page.scale().along();
    Round best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Round round : rounds) {
      double off =
          Math.max(
              round.centre.distanceTo(centre),
              Math.max(Math.abs(round.acrossMm - across), Math.abs(round.alongMm - along)));
      if (off < least) {
        least = off;
        best = round;
      }
    }
    // Written so that a value that is no number counts as a mismatch.
    if (!(least <= Tolerances.READ_BACK_MM)) {
      mismatches.add(
          where(page, hole.name())
              + "circle of radius "
              + radii(across, along)
              + " about "
              + text(centre)
              + " not found; "
              + (best == null
                  ? "there is no circle"
                  : "the likest has radius "
                      + radii(best.acrossMm, best.alongMm)
                      + " about "
                      + text(best.centre)));
    }
  }

  private void compareBar(Page page, Proof.Bar bar, List<String> mismatches) {
    Vec2 from = beforePrinting(page, bar.from());
    Vec2 to = beforePrinting(page, bar.to());
    Straight best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Straight line : straights) {
      double forward = Math.max(line.from.distanceTo(from), line.to.distanceTo(to));
      double backward = Math.max(line.to.distanceTo(from), line.from.distanceTo(to));
      double off = Math.min(forward, backward);
      if (off < least) {
        least = off;
        best = line;
      }
    }
    if (!(least <= Tolerances.READ_BACK_MM)) {
      mismatches.add(
          where(page, bar.name())
              + "line from "
              + text(from)
              + " to "
              + text(to)
              + " not found; "
              + (best == null
                  ? "there is no line"
                  : "the likest runs from " + text(best.from) + " to " + text(best.to)));
    }
  }

  private static String where(Page page, String name) {
    return "page " + page.label() + ", " + name + ": ";
  }

  private static String text(Vec2 p) {
    return "(" + Numbers.fixed(p.x(), DECIMALS) + ", " + Numbers.fixed(p.y(), DECIMALS) + ") mm";
  }

  private static String radii(double across, double along) {
    String x = Numbers.fixed(across, DECIMALS);
    String y = Numbers.fixed(along, DECIMALS);
    return x.equals(y) ? x + " mm" : x + " mm across and " + y + " mm along";
  }

  /**
   * The upright ellipse through points, by least squares on a x^2 + b y^2 + c x + d y = 1 about
   * their mean: linear, and exact for points that are on one.
   */
  private static Round fit(List<Vec2> points) {
    if (points.size() < 8) {
      return null;
    }
    Vec2 mean = Vec2.ZERO;
    for (Vec2 p : points) {
      mean = mean.plus(p);
    }
    mean = mean.times(1.0 / points.size());
    double size = 0;
    for (Vec2 p : points) {
      size = Math.max(size, p.distanceTo(mean));
    }
    if (size == 0) {
      return null;
    }
    double[][] normal = new double[4][5];
    for (Vec2 p : points) {
      double x = (p.x() - mean.x()) / size;
      double y = (p.y() - mean.y()) / size;
      double[] row = {x * x, y * y, x, y, 1};
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 5; j++) {
          normal[i][j] += row[i] * row[j];
        }
      }
    }
    double[] s = solve(normal);
    if (s == null || !(s[0] > 0 && s[1] > 0)) {
      return null;
    }
    double x = -s[2] / (2 * s[0]);
    double y = -s[3] / (2 * s[1]);
    double k = 1 + s[0] * x * x + s[1] * y * y;
    return new Round(
        new Vec2(mean.x() + x * size, mean.y() + y * size),
        Math.sqrt(k / s[0]) * size,
        Math.sqrt(k / s[1]) * size);
  }

  /** Gaussian elimination with row exchange; null if the rows depend on each other. */
  private static double[] solve(double[][] m) {
    int n = m.length;
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int row = column + 1; row < n; row++) {
        if (Math.abs(m[row][column]) > Math.abs(m[pivot][column])) {
          pivot = row;
        }
      }
      double[] exchanged = m[column];
      m[column] = m[pivot];
      m[pivot] = exchanged;
      if (Math.abs(m[column][column]) < 1e-12) {
        return null;
      }
      for (int row = 0; row < n; row++) {
        if (row != column) {
          double factor = m[row][column] / m[column][column];
          for (int j = column; j <= n; j++) {
            m[row][j] -= factor * m[column][j];
          }
        }
      }
    }
    double[] solution = new double[n];
    for (int i = 0; i < n; i++) {
      solution[i] = m[i][n] / m[i][i];
    }
    return solution;
  }

  private static boolean isOn(List<Vec2> points, Round round) {
    double smaller = Math.min(round.acrossMm, round.alongMm);
    for (Vec2 p : points) {
      double x = (p.x() - round.centre.x()) / round.acrossMm;
      double y = (p.y() - round.centre.y()) / round.alongMm;
      if (!(Math.abs(Math.hypot(x, y) - 1) * smaller <= ROUND_MM)) {
        return false;
      }
    }
    return true;
  }

  private static boolean goesRoundOnce(List<Vec2> points, Vec2 centre) {
    double turned = 0;
    for (int i = 0; i < points.size(); i++) {
      Vec2 a = points.get(i).minus(centre);
      Vec2 b = points.get((i + 1) % points.size()).minus(centre);
      double step = Math.atan2(a.cross(b), a.dot(b));
      if (Math.abs(step) > Math.PI / 2) {
        return false;
      }
      turned += step;
    }
    return Math.abs(Math.abs(turned) - 2 * Math.PI) < 1e-6;
  }
}
