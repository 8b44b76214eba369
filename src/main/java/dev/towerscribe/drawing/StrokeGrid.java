package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/** Strokes of a page by where they run, so that only near ones are asked about. */
final class StrokeGrid {
  /** Side of a cell, mm: about the height of two lines of words. */
  private static final double CELL_MM = 10;

  private final Box area;
  private final int columns;
  private final int rows;
  private final List<Sketch.Stroke> strokes = new ArrayList<>();
  private final int[][] cells;
  private final int[] used;
  private int[] asked = new int[256];
  private int question;

  StrokeGrid(Box area) {
    this.area = area;
    columns = 1 + (int) (area.width() / CELL_MM);
    rows = 1 + (int) (area.height() / CELL_MM);
    cells = new int[columns * rows][4];
    used = new int[columns * rows];
  }

  /** A copy, which can be added to on its own. */
  StrokeGrid(StrokeGrid other) {
    area = other.area;
    columns = other.columns;
    rows = other.rows;
    strokes.addAll(other.strokes);
    cells = Arrays.stream(other.cells).map(int[]::clone).toArray(int[][]::new);
    used = other.used.clone();
    asked = new int[other.asked.length];
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) Math.floor((x - area.minX()) / CELL_MM)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) Math.floor((y - area.minY()) / CELL_MM)));
  }

  void add(Sketch.Stroke stroke) {
    int index = strokes.size();
    strokes.add(stroke);
    if (index >= asked.length) {
      asked = Arrays.copyOf(asked, 2 * asked.length);
    }
    // Long strokes go in piece by piece, so that slanting ones do not fill the box around them.
    double length = stroke.from().distanceTo(stroke.to());
    int pieces = Math.max(1, (int) Math.ceil(length / CELL_MM));
    for (int i = 0; i < pieces; i++) {
      Vec2 a = stroke.from().toward(stroke.to(), (double) i / pieces);
      Vec2 b = stroke.from().toward(stroke.to(), (double) (i + 1) / pieces);
      for (int r = row(Math.min(a.y(), b.y())); r <= row(Math.max(a.y(), b.y())); r++) {
        for (int c = column(Math.min(a.x(), b.x())); c <= column(Math.max(a.x(), b.x())); c++) {
          put(r * columns + c, index);
        }
      }
    }
  }

  private void put(int cell, int index) {
    if (used[cell] > 0 && cells[cell][used[cell] - 1] == index) {
      return;
    }
    if (used[cell] == cells[cell].length) {
      cells[cell] = Arrays.copyOf(cells[cell], 2 * used[cell]);
    }
    cells[cell][used[cell]++] = index;
  }

  /**
   * Asks about the strokes that may come into a box, each once.
   *
   * @param box where
   * @param found returns true to end the search
   * @return whether the search was ended
   */
  boolean near(Box box, Predicate<Sketch.Stroke> found) {
    question++;
    int top = row(box.maxY());
    int right = column(box.maxX());
    for (int r = row(box.minY()); r <= top; r++) {
      for (int c = column(box.minX()); c <= right; c++) {
        int cell = r * columns + c;
        for (int i = 0; i < used[cell]; i++) {
          int index = cells[cell][i];
          if (asked[index] != question) {
            asked[index] = question;
            if (found.test(strokes.get(index))) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }
}
