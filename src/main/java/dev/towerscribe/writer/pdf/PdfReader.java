package dev.towerscribe.writer.pdf;

import static dev.towerscribe.drawing.Unreadable.must;

import dev.towerscribe.drawing.ReadBack;
import dev.towerscribe.drawing.TracedPath;
import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.drawing.VisibleRegion;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.awt.geom.AffineTransform;
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

  /** What {@code q} saves and {@code Q} brings back: the map to paper mm, and what shows. */
  private record State(AffineTransform toMm, VisibleRegion visible) {}

  private final ReadBack found = new ReadBack();
  private final Deque<State> saved = new ArrayDeque<>();
  private final List<Double> numbers = new ArrayList<>();
  private TracedPath path = new TracedPath();
  private State state;
  private boolean clipping;

  private PdfReader(PDPage page) {
    PDRectangle shown = page.getCropBox();
    state =
        new State(
            AffineTransform.getScaleInstance(MM_PER_UNIT, MM_PER_UNIT),
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
   * @throws IOException if the content stream cannot be taken apart
   * @throws Unreadable if it makes no sense
   */
  static ReadBack read(PDPage page) throws IOException, Unreadable {
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

  /** The operands as points, so many of them. */
  private List<Vec2> points(int count) throws Unreadable {
    if (numbers.size() != 2 * count) {
      throw new Unreadable("an operator with " + numbers.size() + " numbers, not " + 2 * count);
    }
    List<Vec2> points = new ArrayList<>(count);
    for (int i = 0; i < numbers.size(); i += 2) {
      double x = numbers.get(i);
      double y = numbers.get(i + 1);
      must(Math.abs(x) <= MOST && Math.abs(y) <= MOST, "a number past all sense");
      points.add(new Vec2(x, y));
    }
    return points;
  }

  private void perform(String operator) throws Unreadable {
    switch (operator) {
      case "q" -> saved.push(state);
      case "Q" -> {
        must(!saved.isEmpty(), "a state is brought back that was not saved");
        state = saved.pop();
      }
      case "cm" -> {
        List<Vec2> p = points(3);
        AffineTransform toMm = new AffineTransform(state.toMm);
        toMm.concatenate(
            new AffineTransform(
                p.get(0).x(),
                p.get(0).y(),
                p.get(1).x(),
                p.get(1).y(),
                p.get(2).x(),
                p.get(2).y()));
        state = new State(toMm, state.visible);
      }
      case "m" -> path.moveTo(points(1).get(0));
      case "l" -> path.lineTo(points(1).get(0));
      case "c" -> {
        List<Vec2> p = points(3);
        path.curveTo(p.get(0), p.get(1), p.get(2));
      }
      case "v" -> {
        List<Vec2> p = points(2);
        path.curveTo(path.at(), p.get(0), p.get(1));
      }
      case "y" -> {
        List<Vec2> p = points(2);
        path.curveTo(p.get(0), p.get(1), p.get(1));
      }
      case "h" -> path.close();
      case "re" -> {
        List<Vec2> p = points(2);
        Vec2 size = p.get(1);
        path.moveTo(p.get(0));
        path.lineTo(p.get(0).plus(new Vec2(size.x(), 0)));
        path.lineTo(p.get(0).plus(size));
        path.lineTo(p.get(0).plus(new Vec2(0, size.y())));
        path.close();
      }
      case "W", "W*" -> clipping = true;
      case "n" -> endPath(false, false);
      case "S" -> endPath(true, false);
      case "s" -> {
        path.close();
        endPath(true, false);
      }
      case "f", "F", "f*" -> endPath(false, true);
      case "B", "B*" -> endPath(true, true);
      case "b", "b*" -> {
        path.close();
        endPath(true, true);
      }
      default -> {
        // Text, colours, line widths and marks have no bearing on where lines run.
      }
    }
  }

  private void endPath(boolean stroked, boolean filled) throws Unreadable {
    path.paint(found, state.toMm, state.visible, stroked, filled);
    if (clipping) {
      AffineTransform toMm = state.toMm;
      List<Vec2> clip = path.polygon().stream().map(p -> TracedPath.mapped(toMm, p)).toList();
      state = new State(toMm, state.visible.within(clip));
    }
    clipping = false;
    path = new TracedPath();
  }
}
