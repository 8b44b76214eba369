package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Names of a figure's points in a column beside it, each with its number in a disc and a fine line
 * to its point.
 *
 * @param pen the figure's pen
 * @param place where a point stands in the figure
 * @param keys whether the survey file's key stands under the name
 * @param raiseMm how far above their points the names had better stand, page mm
 */
record Callouts(MirrorPen pen, Function<Point, Vec2> place, boolean keys, double raiseMm) {
  private static final double BETWEEN = 2.4;
  private static final double OFF_TARGET = 1.5;

  private List<TextBlock.Row> rows(Point point, double wideMm) {
    List<TextBlock.Row> rows = new ArrayList<>();
    rows.addAll(FormPieces.rows(point.words(), FormPieces.NAME, wideMm));
    if (keys) {
      rows.add(new TextBlock.Row(point.key(), FormPieces.WORDS));
    }
    return rows;
  }

  private static double heightMm(List<TextBlock.Row> rows) {
    return Math.max(FormPieces.stackMm(rows), 2 * FormPieces.DISC);
  }

  /**
   * Draws a column.
   *
   * @param points from the top; their lines do not cross in that order
   * @param discX the discs' place, page mm
   * @param outward which way the names run from there: -1 to the page's left, 1 to its right
   * @param wideMm room for names
   * @param topMm upper end of the column, page mm
   * @param bottomMm its lower end
   */
  void column(
      List<Point> points, double discX, int outward, double wideMm, double topMm, double bottomMm) {
    List<List<TextBlock.Row>> names = points.stream().map(p -> rows(p, wideMm)).toList();
    double[] middles = spread(points, names, topMm, bottomMm);
    for (int i = 0; i < middles.length; i++) {
      Vec2 disc = new Vec2(discX, middles[i]);
      Vec2 target = pen.at(place.apply(points.get(i)));
      Vec2 way = target.minus(disc).unit();
      Vec2 from = disc.plus(way.times(FormPieces.DISC_CLEAR));
      pen.notes().line(from, target.minus(way.times(OFF_TARGET)), Pen.THIN);
      FormPieces.disc(points.get(i).sign(), disc, pen.out());
      double x = discX + outward * (FormPieces.DISC + 1.5);
      Align align = outward > 0 ? Align.START : Align.END;
      FormPieces.words(names.get(i), x, middles[i], align, pen.notes());
    }
  }

  /**
   * As near to the height of their points as neighbours let them: names that would overlap are
   * pooled, each pool about the mean of its points' heights.
   */
  private double[] spread(
      List<Point> points, List<List<TextBlock.Row>> names, double topMm, double bottomMm) {
    int n = points.size();
    double[] below = new double[n];
    for (int i = 1; i < n; i++) {
      double halves = (heightMm(names.get(i - 1)) + heightMm(names.get(i))) / 2;
      below[i] = below[i - 1] + halves + BETWEEN;
    }
    // Heights with the least distances taken out must not rise down the column.
    List<double[]> pools = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double[] pool = {pen.at(place.apply(points.get(i))).y() + raiseMm + below[i], 1};
      while (!pools.isEmpty() && pools.get(pools.size() - 1)[0] < pool[0]) {
        double[] last = pools.remove(pools.size() - 1);
        double count = last[1] + pool[1];
        pool = new double[] {(last[0] * last[1] + pool[0] * pool[1]) / count, count};
      }
      pools.add(pool);
    }
    double most = topMm - heightMm(names.get(0)) / 2;
    double least = bottomMm + heightMm(names.get(n - 1)) / 2 + below[n - 1];
    double[] middles = new double[n];
    int i = 0;
    for (double[] pool : pools) {
      for (int k = 0; k < pool[1]; k++) {
        middles[i] = Math.max(least, Math.min(most, pool[0])) - below[i];
        i++;
      }
    }
    return middles;
  }

  /** The rings and dots of all points, over everything else. */
  void targets() {
    for (Point point : Point.values()) {
      pen.target(place.apply(point));
    }
  }
}
