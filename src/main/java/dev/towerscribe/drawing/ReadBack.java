package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;

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

  /** Points so nearly on one line or in one place that no ellipse is told by them; no unit. */
  private static final double DEPENDENT = 1e-6;

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

  private final List<Round> rounds = new ArrayList<>();
  private final List<Proof.Bar> straights = new ArrayList<>();

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
    if (visible.meets(new Segment(from, to).bounds())) {
      straights.add(new Proof.Bar("line", from, to));
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
    List<Proof.Bar> lines =
        straights.stream()
            .map(s -> new Proof.Bar(s.name(), printed(page, s.from()), printed(page, s.to())))
            .toList();
    List<String> mismatches = new ArrayList<>();
    for (Proof proof : page.proofs()) {
      Optional<String> amiss =
          proof instanceof Proof.RoundHole hole
              ? compare(hole, circles)
              : compare((Proof.Bar) proof, lines);
      amiss.ifPresent(
          a -> mismatches.add("page %s, %s: %s".formatted(page.label(), proof.name(), a)));
    }
    return mismatches;
  }

  /**
   * Where a point of the file comes out: the printer stretches both ways about the paper's middle,
   * and a way along the paper leans over toward +x by the skew. The writers go the other way, so
   * this shares nothing with them.
   */
  private static Vec2 printed(Page page, Vec2 drawn) {
    Vec2 middle = page.centre();
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

  private static Optional<String> compare(Proof.RoundHole hole, List<Round> circles) {
    return compare(
        circles,
        round ->
            Math.max(
                round.centre.distanceTo(hole.centre()),
                Math.max(
                    Math.abs(round.longestMm() - hole.radiusMm()),
                    Math.abs(round.shortestMm() - hole.radiusMm()))),
        "circle of radius %s about %s"
            .formatted(radii(hole.radiusMm(), hole.radiusMm()), text(hole.centre())),
        round ->
            "the nearest has radius %s about %s"
                .formatted(radii(round.longestMm(), round.shortestMm()), text(round.centre)),
        "there is no circle");
  }

  private static Optional<String> compare(Proof.Bar bar, List<Proof.Bar> lines) {
    return compare(
        lines,
        bar::offMm,
        "line from %s to %s".formatted(text(bar.from()), text(bar.to())),
        line -> "the nearest runs from %s to %s".formatted(text(line.from()), text(line.to())),
        "there is no line");
  }

  /** What is amiss, if no thing found is what was wanted. */
  private static <T> Optional<String> compare(
      List<T> found,
      ToDoubleFunction<T> offMm,
      String wanted,
      Function<T, String> nearest,
      String none) {
    Optional<T> best = found.stream().min(Comparator.comparingDouble(offMm));
    // Written so that a value that is no number counts as a mismatch.
    return best.isPresent() && offMm.applyAsDouble(best.get()) <= Tolerances.READ_BACK_MM
        ? Optional.empty()
        : Optional.of(wanted + " would not come out; " + best.map(nearest).orElse(none));
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
    Vec2 mean = points.stream().reduce(Vec2.ZERO, Vec2::plus).times(1.0 / points.size());
    double size = points.stream().mapToDouble(mean::distanceTo).max().orElse(0);
    if (size == 0) {
      return null;
    }
    double[][] rows = new double[points.size()][];
    double[] ones = new double[points.size()];
    Arrays.fill(ones, 1);
    for (int i = 0; i < rows.length; i++) {
      double x = (points.get(i).x() - mean.x()) / size;
      double y = (points.get(i).y() - mean.y()) / size;
      rows[i] = new double[] {x * x, x * y, y * y, x, y};
    }
    DecompositionSolver least =
        new QRDecomposition(MatrixUtils.createRealMatrix(rows), DEPENDENT).getSolver();
    if (!least.isNonSingular()) {
      return null;
    }
    double[] s = least.solve(MatrixUtils.createRealVector(ones)).toArray();
    double det = s[0] * s[2] - s[1] * s[1] / 4;
    if (!(s[0] > 0 && det > 0)) {
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

  private static boolean isOn(List<Vec2> points, Round round) {
    double smaller = round.shortestMm();
    return points.stream().allMatch(p -> Math.abs(round.times(p) - 1) * smaller <= ROUND_MM);
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
