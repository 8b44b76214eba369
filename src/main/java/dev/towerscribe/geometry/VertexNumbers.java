package dev.towerscribe.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Points with numbers: points closer than a snap distance get the number of the first one. */
final class VertexNumbers {
  /** Much larger than any snap distance, so that nearly every look-up meets one cell. */
  private static final double CELL_MM = 0.5;

  private final double snapMm;
  private final List<Vec2> points = new ArrayList<>();
  private final Map<Long, List<Integer>> cells = new HashMap<>();

  VertexNumbers(double snapMm) {
    this.snapMm = snapMm;
  }

  Vec2 at(int number) {
    return points.get(number);
  }

  int count() {
    return points.size();
  }

  /** The number of a point, new if none is near. The nearest one wins. */
  int number(Vec2 p) {
    long x0 = cell(p.x() - snapMm);
    long x1 = cell(p.x() + snapMm);
    long y0 = cell(p.y() - snapMm);
    long y1 = cell(p.y() + snapMm);
    int best = -1;
    double least = snapMm;
    for (long x = x0; x <= x1; x++) {
      for (long y = y0; y <= y1; y++) {
        for (int i : cells.getOrDefault(key(x, y), List.of())) {
          double d = points.get(i).distanceTo(p);
          if (d <= least) {
            least = d;
            best = i;
          }
        }
      }
    }
    if (best < 0) {
      best = points.size();
      points.add(p);
      cells.computeIfAbsent(key(cell(p.x()), cell(p.y())), c -> new ArrayList<>()).add(best);
    }
    return best;
  }

  /** One number for a cell. Cells 2^32 apart share one, which costs time and changes nothing. */
  private static long key(long x, long y) {
    return x << Integer.SIZE ^ y & 0xffff_ffffL;
  }

  private static long cell(double coordinate) {
    return (long) Math.floor(coordinate / CELL_MM);
  }
}
