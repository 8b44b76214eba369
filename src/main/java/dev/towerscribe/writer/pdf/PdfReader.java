package dev.towerscribe.writer.pdf;

import dev.towerscribe.drawing.ReadBack;
import dev.towerscribe.drawing.VisibleRegion;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Follows the path operators of a page's content stream (ISO 32000, path construction and painting)
 * and hands on what is really painted. Text and images are passed over.
 */
final class PdfReader {
  private static final double MM_PER_UNIT = 25.4 / 72.0;

  /** No number of a page is larger; keeps products of such numbers finite. */
  private static final double MOST = 1e9;

  /** Points taken along each curve. */
  private static final int SAMPLES = 8;

  /** What {@code q} saves and {@code Q} brings back: the map to paper mm, and what shows. */
  private record State(
      double a, double b, double c, double d, double e, double f, VisibleRegion visible) {
    Vec2 map(double x, double y) {
      return new Vec2(a * x + c * y + e, b * x + d * y + f);
    }

    State after(double[] m) {
      return new State(
          m[0] * a + m[1] * c,
          m[0] * b + m[1] * d,
          m[2] * a + m[3] * c,
          m[2] * b + m[3] * d,
          m[4] * a + m[5] * c + e,
          m[4] * b + m[5] * d + f,
          visible);
    }

    State showing(VisibleRegion seen) {
      return new State(a, b, c, d, e, f, seen);
    }
  }

  /** One run of a path: its points on paper, and which stretches of it are straight. */
  private static final class Run {
    final List<Vec2> points = new ArrayList<>();
    final List<Vec2> straightFrom = new ArrayList<>();
    final List<Vec2> straightTo = new ArrayList<>();
    boolean curved;
    boolean closed;

    Vec2 last() {
      return points.get(points.size() - 1);
    }

    void lineTo(Vec2 p) {
      straightFrom.add(last());
      straightTo.add(p);
      points.add(p);
    }
  }

  private final ReadBack found = new ReadBack();
  private final Deque<State> saved = new ArrayDeque<>();
  private final List<Double> numbers = new ArrayList<>();
  private final List<Run> path = new ArrayList<>();
  private State state;
  private boolean clipping;
  private double currentX;
  private double currentY;
  private double startX;
  private double startY;

  private PdfReader(PDPage page) {
    PDRectangle shown = page.getCropBox();
    state =
        new State(
            MM_PER_UNIT,
            0,
            0,
            MM_PER_UNIT,
            0,
            0,
            VisibleRegion.of(
                new Box(
                    shown.getLowerLeftX() * MM_PER_UNIT,
                    shown.getLowerLeftY() * MM_PER_UNIT,
                    shown.getUpperRightX() * MM_PER_UNIT,
                    shown.getUpperRightY() * MM_PER_UNIT)));
  }

  /**
   * Reads a page.
   *
   * @param page the page as found in the file
   * @return its painted outlines and lines, mm from the lower left corner
   * @throws IOException if the content stream makes no sense
   */
  static ReadBack read(PDPage page) throws IOException {
    PdfReader reader = new PdfReader(page);
    PDFStreamParser parser = new PDFStreamParser(page);
    try {
      for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
        if (token instanceof COSNumber number) {
          reader.numbers.add((double) number.floatValue());
        } else if (token instanceof Operator operator) {
          reader.perform(operator.getName());
          reader.numbers.clear();
        }
      }
    } finally {
      parser.close();
    }
    return reader.found;
  }

  private double[] operands(int count) throws IOException {
    if (numbers.size() != count) {
      throw new IOException("an operator with " + numbers.size() + " numbers, not " + count);
    }
    double[] taken = new double[count];
    for (int i = 0; i < count; i++) {
      taken[i] = numbers.get(i);
      if (!(Math.abs(taken[i]) <= MOST)) {
        throw new IOException("a number past all sense");
      }
    }
    return taken;
  }

  private void perform(String operator) throws IOException {
    switch (operator) {
      case "q" -> saved.push(state);
      case "Q" -> {
        if (saved.isEmpty()) {
          throw new IOException("a state is brought back that was not saved");
        }
        state = saved.pop();
      }
      case "cm" -> state = state.after(operands(6));
      case "m" -> {
        double[] p = operands(2);
        begin(p[0], p[1]);
      }
      case "l" -> {
        double[] p = operands(2);
        lineTo(p[0], p[1]);
      }
      case "c" -> {
        double[] p = operands(6);
        curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
      }
      case "v" -> {
        double[] p = operands(4);
        curveTo(currentX, currentY, p[0], p[1], p[2], p[3]);
      }
      case "y" -> {
        double[] p = operands(4);
        curveTo(p[0], p[1], p[2], p[3], p[2], p[3]);
      }
      case "h" -> close();
      case "re" -> {
        double[] p = operands(4);
        begin(p[0], p[1]);
        lineTo(p[0] + p[2], p[1]);
        lineTo(p[0] + p[2], p[1] + p[3]);
        lineTo(p[0], p[1] + p[3]);
        close();
      }
      case "W", "W*" -> clipping = true;
      case "n" -> endPath(false, false);
      case "S" -> endPath(true, false);
      case "s" -> {
        close();
        endPath(true, false);
      }
      case "f", "F", "f*" -> endPath(false, true);
      case "B", "B*" -> endPath(true, true);
      case "b", "b*" -> {
        close();
        endPath(true, true);
      }
      default -> {
        // Text, colours, line widths and marks have no bearing on where lines run.
      }
    }
  }

  private Run run() throws IOException {
    if (path.isEmpty()) {
      throw new IOException("a path goes on that was not begun");
    }
    return path.get(path.size() - 1);
  }

  private void begin(double x, double y) {
    Run run = new Run();
    run.points.add(state.map(x, y));
    path.add(run);
    startX = currentX = x;
    startY = currentY = y;
  }

  /** The run to add to; after a close the path goes on from where that run began. */
  private Run openRun() throws IOException {
    if (run().closed) {
      begin(startX, startY);
    }
    return run();
  }

  private void lineTo(double x, double y) throws IOException {
    openRun().lineTo(state.map(x, y));
    currentX = x;
    currentY = y;
  }

  private void curveTo(double x1, double y1, double x2, double y2, double x3, double y3)
      throws IOException {
    Run run = openRun();
    run.curved = true;
    for (int i = 1; i <= SAMPLES; i++) {
      double t = (double) i / SAMPLES;
      double s = 1 - t;
      double b0 = s * s * s;
      double b1 = 3 * s * s * t;
      double b2 = 3 * s * t * t;
      double b3 = t * t * t;
      run.points.add(
          state.map(
              b0 * currentX + b1 * x1 + b2 * x2 + b3 * x3,
              b0 * currentY + b1 * y1 + b2 * y2 + b3 * y3));
    }
    currentX = x3;
    currentY = y3;
  }

  private void close() throws IOException {
    Run run = run();
    if (!run.closed) {
      if (currentX != startX || currentY != startY) {
        run.lineTo(run.points.get(0));
      }
      run.closed = true;
    }
    currentX = startX;
    currentY = startY;
  }

  private void endPath(boolean stroked, boolean filled) throws IOException {
    for (Run run : path) {
      boolean ends = run.closed || run.last().equals(run.points.get(0));
      if ((stroked || filled) && run.curved && run.straightFrom.isEmpty() && ends) {
        List<Vec2> round = run.points.subList(0, run.points.size() - 1);
        found.outline(round, state.visible);
      }
      if (stroked) {
        for (int i = 0; i < run.straightFrom.size(); i++) {
          found.line(run.straightFrom.get(i), run.straightTo.get(i), state.visible);
        }
      }
    }
    if (clipping) {
      if (path.size() != 1 || path.get(0).curved) {
        throw new IOException("a clip that is not one polygon");
      }
      state = state.showing(state.visible.within(path.get(0).points));
    }
    clipping = false;
    path.clear();
  }
}
