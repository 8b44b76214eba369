package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A drawing too large for its paper, shared out over rows and columns that overlap.
 *
 * @param rows from the top
 * @param columns from the left
 * @param widthMm of one tile's window
 * @param heightMm of one tile's window
 * @param whole what they cover together, from the drawing's origin
 */
record Tiles(int rows, int columns, double widthMm, double heightMm, Box whole) {
  /** Least overlap of neighbours: room for a cross and its name. */
  static final double LEAST_OVERLAP_MM = 15;

  /** Where along a seam its crosses stand, as a part of the window. */
  private static final double NEAR_END = 0.12;

  /**
   * Shares out.
   *
   * @param essentials what must be covered, from the drawing's origin
   * @param window a tile's window
   * @param largestMm largest thing that some tile must show whole
   * @param leastTiles 1, or 2 to force a split along the longer side
   */
  static Tiles of(Box essentials, Box window, double largestMm, int leastTiles) {
    double overlap = Math.max(LEAST_OVERLAP_MM, largestMm + 2);
    int columns = count(essentials.width(), window.width(), overlap);
    int rows = count(essentials.height(), window.height(), overlap);
    if (rows * columns < leastTiles) {
      rows = leastTiles;
    }
    return new Tiles(rows, columns, window.width(), window.height(), essentials);
  }

  private static int count(double whole, double one, double overlap) {
    if (overlap >= one) {
      throw new IllegalArgumentException("paper too small for tiles that overlap by " + overlap);
    }
    return whole <= one ? 1 : (int) Math.ceil((whole - overlap) / (one - overlap) - 1e-9);
  }

  /** This way to share out and finer ones, for when names do not fit; the fewest tiles first. */
  List<Tiles> andFiner() {
    return List.of(this, finer(1, 0), finer(0, 1), finer(1, 1));
  }

  private Tiles finer(int moreRows, int moreColumns) {
    return new Tiles(rows + moreRows, columns + moreColumns, widthMm, heightMm, whole);
  }

  int number() {
    return rows * columns;
  }

  /** Left edge of a column's window, from the drawing's origin. */
  private double left(int column) {
    return start(whole.minX(), whole.maxX(), widthMm, columns, column);
  }

  /** Bottom edge of a row's window, from the drawing's origin. */
  private double bottom(int row) {
    return start(whole.minY(), whole.maxY(), heightMm, rows, rows - 1 - row);
  }

  private static double start(double from, double to, double one, int n, int i) {
    double spare = to - from - one;
    if (n == 1) {
      return from + spare / 2;
    }
    // Where the whole is smaller than a window, as in a forced split, tiles still share a half.
    double step = Math.max(spare / (n - 1), one / 2);
    double first = (from + to) / 2 - (step * (n - 1) + one) / 2;
    return first + i * step;
  }

  /** A tile's window, from the drawing's origin. */
  Box window(int row, int column) {
    double x = left(column);
    double y = bottom(row);
    return new Box(x, y, x + widthMm, y + heightMm);
  }

  static String name(int row, int column) {
    return (char) ('A' + row) + Integer.toString(column + 1);
  }

  static String suffix(int row, int column) {
    return "-" + name(row, column).toLowerCase(Locale.ROOT);
  }

  /**
   * Crosses in the overlap of every pair of neighbours, none close to another.
   *
   * @param others places to stay away from
   */
  List<FullScaleSheet.Join> joins(List<Vec2> others) {
    List<FullScaleSheet.Join> joins = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        Box here = window(r, c);
        if (c + 1 < columns) {
          double x = (here.maxX() + window(r, c + 1).minX()) / 2;
          seam(joins, others, new Vec2(x, here.minY()), new Vec2(x, here.maxY()));
        }
        if (r + 1 < rows) {
          double y = (here.minY() + window(r + 1, c).maxY()) / 2;
          seam(joins, others, new Vec2(here.minX(), y), new Vec2(here.maxX(), y));
        }
      }
    }
    return joins;
  }

  /** Two crosses on a seam, as near to its ends as the other things allow. */
  private static void seam(List<FullScaleSheet.Join> joins, List<Vec2> others, Vec2 from, Vec2 to) {
    for (boolean far : new boolean[] {false, true}) {
      for (double clear : new double[] {LEAST_OVERLAP_MM, 0}) {
        if (joined(joins, others, far ? to : from, far ? from : to, clear)) {
          break;
        }
      }
    }
  }

  private static boolean joined(
      List<FullScaleSheet.Join> joins, List<Vec2> others, Vec2 from, Vec2 to, double clear) {
    for (double part = NEAR_END; part < 0.5; part += 0.04) {
      Vec2 at = from.toward(to, part);
      if (joins.stream().anyMatch(j -> j.at().distanceTo(at) <= LEAST_OVERLAP_MM)) {
        return true;
      }
      if (others.stream().allMatch(p -> p.distanceTo(at) > clear)) {
        joins.add(new FullScaleSheet.Join("J" + (joins.size() + 1), at));
        return true;
      }
    }
    return false;
  }

  /** A small picture of the tiles with one of them black, and its name. */
  void drawKey(Box room, int row, int column, LayerPen notes) {
    double cell = Math.min(4.5, (room.height() - 1) / rows);
    double left = room.minX() + 0.5;
    double top = room.centre().y() + rows * cell / 2;
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        Box box =
            new Box(left + c * cell, top - (r + 1) * cell, left + (c + 1) * cell, top - r * cell);
        if (r == row && c == column) {
          notes.area(box, Ink.BLACK);
        } else {
          notes.frame(box, Pen.THIN);
        }
      }
    }
    double x = room.minX() + columns * cell + 2;
    notes.text(x, room.centre().y() + 0.4, 3.5, Align.START, "tile " + name(row, column));
    notes.text(x, room.centre().y() - 4.6, 3.0, Align.START, "of " + number());
  }
}
