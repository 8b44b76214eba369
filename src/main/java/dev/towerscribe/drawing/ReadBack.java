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

  /** The ellipse of all c + q with q' S^-1 q = 1, S being (xx, xy; xy, yy) in mm2. */
  private record Round(Vec2 centre, double xx, double xy, double yy) {
    double longestMm() {
      return Math.sqrt((xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy));
    }

    double shortestMm() {
      // By the product of both, as a difference would lose digits where one is far the smaller.
      return Math.sqrt(xx * yy - xy * xy) / longestMm();
    }

    /** How many times as far from the centre a point is as the ellipse in its direction. */
    double times(Vec2 p) {
      double x = p.x() - centre.x();
      double y = p.y() - centre.y();
      return Math.sqrt((yy * x * x - 2 * xy * x * y + xx * y * y) / (xx * yy - xy * xy));
    }
  }

  private record Straight(Vec2 from, Vec2 to) {}

  private final List<Round> rounds = new ArrayList<>();
  private final List<Straight> straights = new ArrayList<>();

  /**
   * Takes in a closed curved outline. Counts as a circle or an ellipse if all its points lie on one
   * and go round it once; else it is passed over.
   *
   * @param points points along the outline, at least eight; the first need not be repeated
   * @param visible what shows of the page there; an outline wholly outside is passed over
   */
  public void outline(List<Vec2> points, VisibleRegion visible) {
    Round round = fit(points);
    if (round != null && isOn(points, round) && goesRoundOnce(points, round.centre)) {
      double across = Math.sqrt(round.xx);
      double along = Math.sqrt(round.yy);
      Box around =
          new Box(
              round.centre.x() - across,
              round.centre.y() - along,
              round.centre.x() + across,
              round.centre.y() + along);
      if (visible.meets(around)) {
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
  public void line(Vec2 from, Vec2 to, VisibleRegion visible) {
    Box around =
        new Box(
            Math.min(from.x(), to.x()),
            Math.min(from.y(), to.y()),
            Math.max(from.x(), to.x()),
            Math.max(from.y(), to.y()));
    if (visible.meets(around)) {
      straights.add(new Straight(from, to));
    }
  }

  /**
   * Compares with what a page must show. What was found is printed first, by the printer that the
   * page is drawn for, and must come out as the proofs say: there an ellipse must become round.
   *
   * @param page the page and its proofs
   * @return one line for each thing missing or out of place by more than {@link
   *     Tolerances#READ_BACK_MM}; empty if all is there
   */
  public List<String> compare(Page page) {
    List<Round> circles = rounds.stream().map(r -> printed(page, r)).toList();
    List<Straight> lines =
        straights.stream()
            .map(s -> new Straight(printed(page, s.from), printed(page, s.to)))
            .toList();
    List<String> mismatches = new ArrayList<>();
    for (Proof proof : page.proofs()) {
      if (proof instanceof Proof.RoundHole hole) {
        compareHole(page, hole, circles, mismatches);
      } else if (proof instanceof Proof.Bar bar) {
        compareBar(page, bar, lines, mismatches);
      } else {
        throw new IllegalStateException("no way to prove " + proof);
      }
    }
    return mismatches;
  }

  /**
   * Where a point of the file comes out: the printer stretches both ways about the paper's middle,
   * and a way along the paper leans over toward +x by the skew. The writers go the other way, so
   * this shares nothing with them.
   */
  private static Vec2 printed(Page page, Vec2 drawn) {
    Vec2 middle = new Vec2(page.widthMm() / 2, page.heightMm() / 2);
    return middle.plus(printedWay(page, drawn.minus(middle)));
  }

  private static Vec2 printedWay(Page page, Vec2 way) {
    double along = way.y() * page.scale().along();
    double lean = page.scale().skew().radians();
    return new Vec2(
        way.x() * page.scale().across() + along * Math.sin(lean), along * Math.cos(lean));
  }

  /** An ellipse S printed by the map A is A S A'. */
  private static Round printed(Page page, Round drawn) {
    Vec2 a = printedWay(page, new Vec2(1, 0));
    Vec2 b = printedWay(page, new Vec2(0, 1));
    return new Round(
        printed(page, drawn.centre),
        quadratic(drawn, a.x(), b.x(), a.x(), b.x()),
        quadratic(drawn, a.x(), b.x(), a.y(), b.y()),
        quadratic(drawn, a.y(), b.y(), a.y(), b.y()));
  }

  private static double quadratic(Round s, double x1, double y1, double x2, double y2) {
    return s.xx * x1 * x2 + s.xy * (x1 * y2 + y1 * x2) + s.yy * y1 * y2;
  }

  private static void compareHole(
      Page page, Proof.RoundHole hole, List<Round> circles, List<String> mismatches) {
    Round best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Round round : circles) {
      double off =
          Math.max(
              round.centre.distanceTo(hole.centre()),
              Math.max(
                  Math.abs(round.longestMm() - hole.radiusMm()),
                  Math.abs(round.shortestMm() - hole.radiusMm())));
      if (off < least) {
        least = off;
        best = round;
      }
    }
    // Written so that a value that is no number counts as a mismatch.
    if (!(least <= Tolerances.READ_BACK_MM)) {
      mismatches.add(
          "%scircle of radius %s about %s would not come out; %s"
              .formatted(
                  where(page, hole.name()),
                  radii(hole.radiusMm(), hole.radiusMm()),
                  text(hole.centre()),
                  best == null
                      ? "there is no circle"
                      : "the likest has radius %s about %s"
                          .formatted(
                              radii(best.longestMm(), best.shortestMm()), text(best.centre))));
    }
  }

  private static void compareBar(
      Page page, Proof.Bar bar, List<Straight> lines, List<String> mismatches) {
    Vec2 from = bar.from();
    Vec2 to = bar.to();
    Straight best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Straight line : lines) {
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
          "%sline from %s to %s would not come out; %s"
              .formatted(
                  where(page, bar.name()),
                  text(from),
                  text(to),
                  best == null
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

  private static String radii(double longest, double shortest) {
    String most = Numbers.fixed(longest, DECIMALS);
    String least = Numbers.fixed(shortest, DECIMALS);
    return most.equals(least) ? most + " mm" : most + " mm one way and " + least + " mm the other";
  }

  /**
   * The ellipse through points, by least squares on a x^2 + b x y + c y^2 + d x + e y = 1 about
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
    double[][] normal = new double[5][6];
    for (Vec2 p : points) {
      double x = (p.x() - mean.x()) / size;
      double y = (p.y() - mean.y()) / size;
      double[] row = {x * x, x * y, y * y, x, y, 1};
      for (int i = 0; i < 5; i++) {
        for (int j = 0; j < 6; j++) {
          normal[i][j] += row[i] * row[j];
        }
      }
    }
    double[] s = solve(normal);
    double det = s == null ? 0 : s[0] * s[2] - s[1] * s[1] / 4;
    if (s == null || !(s[0] > 0 && det > 0)) {
      return null;
    }
    // The centre is where both derivatives are nothing.
    double x = (s[1] * s[4] / 2 - s[2] * s[3]) / (2 * det);
    double y = (s[1] * s[3] / 2 - s[0] * s[4]) / (2 * det);
    double k = 1 + s[0] * x * x + s[1] * x * y + s[2] * y * y;
    double scale = k * size * size / det;
    return new Round(
        new Vec2(mean.x() + x * size, mean.y() + y * size),
        s[2] * scale,
        -s[1] / 2 * scale,
        s[0] * scale);
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
    double smaller = round.shortestMm();
    for (Vec2 p : points) {
      if (!(Math.abs(round.times(p) - 1) * smaller <= ROUND_MM)) {
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
