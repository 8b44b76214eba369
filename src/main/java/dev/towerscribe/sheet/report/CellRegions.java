package dev.towerscribe.sheet.report;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Outlines of the cells of a grid that have something in common, as regions of straight lines. */
final class CellRegions {
  private CellRegions() {}

  /** Which cells. */
  interface Cells {
    boolean holds(int column, int row);
  }

  /** A corner of a cell, in cells. */
  private record Corner(int x, int y) {}

  /**
   * The region of some cells.
   *
   * @param cells which
   * @param columns count across
   * @param rows count upward
   * @param origin lower left corner of the grid
   * @param width of a cell
   * @param height of a cell
   * @return outer boundaries counter-clockwise, holes clockwise
   */
  static Region of(Cells cells, int columns, int rows, Vec2 origin, double width, double height) {
    // Every side of a cell that has no fellow beyond it, with the cell to its left.
    Map<Corner, List<Corner>> sides = new LinkedHashMap<>();
    for (int x = 0; x < columns; x++) {
      for (int y = 0; y < rows; y++) {
        if (!cells.holds(x, y)) {
          continue;
        }
        if (y == 0 || !cells.holds(x, y - 1)) {
          add(sides, x, y, x + 1, y);
        }
        if (x == columns - 1 || !cells.holds(x + 1, y)) {
          add(sides, x + 1, y, x + 1, y + 1);
        }
        if (y == rows - 1 || !cells.holds(x, y + 1)) {
          add(sides, x + 1, y + 1, x, y + 1);
        }
        if (x == 0 || !cells.holds(x - 1, y)) {
          add(sides, x, y + 1, x, y);
        }
      }
    }
    List<Contour> contours = new ArrayList<>();
    while (!sides.isEmpty()) {
      contours.add(loop(sides, origin, width, height));
    }
    return new Region(contours);
  }

  private static void add(Map<Corner, List<Corner>> sides, int x0, int y0, int x1, int y1) {
    sides.computeIfAbsent(new Corner(x0, y0), c -> new ArrayList<>()).add(new Corner(x1, y1));
  }

  private static Contour loop(
      Map<Corner, List<Corner>> sides, Vec2 origin, double width, double height) {
    Corner first = sides.keySet().iterator().next();
    List<Corner> corners = new ArrayList<>();
    Corner before = null;
    Corner at = first;
    do {
      Corner next = take(sides, before, at);
      if (before == null || turn(before, at, next) != 0) {
        corners.add(at);
      }
      before = at;
      at = next;
    } while (!at.equals(first));
    if (turn(before, first, corners.size() > 1 ? corners.get(1) : first) == 0) {
      corners.remove(0);
    }
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      edges.add(
          new Segment(
              place(corners.get(i), origin, width, height),
              place(corners.get((i + 1) % corners.size()), origin, width, height)));
    }
    return Contour.of(edges);
  }

  /** Where two cells touch at a corner only, the way on is that of the cell come along. */
  private static Corner take(Map<Corner, List<Corner>> sides, Corner before, Corner at) {
    List<Corner> ways = sides.get(at);
    int best = 0;
    for (int i = 1; before != null && i < ways.size(); i++) {
      if (turn(before, at, ways.get(i)) > turn(before, at, ways.get(best))) {
        best = i;
      }
    }
    Corner next = ways.remove(best);
    if (ways.isEmpty()) {
      sides.remove(at);
    }
    return next;
  }

  /** Positive to the left. */
  private static int turn(Corner a, Corner b, Corner c) {
    return Integer.signum((b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x()));
  }

  private static Vec2 place(Corner c, Vec2 origin, double width, double height) {
    return new Vec2(origin.x() + c.x() * width, origin.y() + c.y() * height);
  }
}
