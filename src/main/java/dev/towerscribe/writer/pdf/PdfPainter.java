package dev.towerscribe.writer.pdf;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import java.util.List;
import java.util.Objects;

/**
 * Writes the drawing operators of one page. They are put together here rather than with the
 * library's content stream, whose numbers are single precision with four decimals.
 */
final class PdfPainter implements Item.Visitor {
  /** The one scale: a PDF unit is 1/72 inch (ISO 32000, default user space). */
  static final double UNITS_PER_MM = 72 / 25.4;

  /** Decimals of coordinates: half of 1e-5 unit is 2e-6 mm. */
  private static final int DECIMALS = 5;

  /** Decimals of a text matrix: a line 500 mm long stays within 5e-5 mm. */
  private static final int MATRIX_DECIMALS = 7;

  /** Largest distance of a written curve from its arc, mm: a hundredth of what is proved. */
  private static final double CURVE_MM = 1e-4;

  /**
   * Distance of a cubic from the quarter circle it stands for, as a part of the radius. From
   * independent calculation: the largest radius of the cubic with handles 4/3 tan(angle/4). It
   * falls with the sixth power of the angle.
   */
  private static final double QUARTER_ERROR = 2.726e-4;

  /**
   * A circle is eight curves or more. The usual four would be off by 2.7e-4 of the radius, 0.014 mm
   * on a 104 mm opening, more than the proof allows.
   */
  private static final int LEAST_CURVES_IN_TURN = 8;

  private final Page page;
  private final PdfFont font;
  private final StringBuilder out = new StringBuilder(1 << 14);
  private final Vec2 pageCentre;

  private Pen pen = Pen.NONE;
  private Ink ink = Ink.BLACK;
  private String fontSize = "";

  private PdfPainter(Page page, PdfFont font) {
    this.page = page;
    this.font = font;
    this.pageCentre = page.centre();
  }

  /**
   * The operators that draw a page.
   *
   * @param page the page
   * @param font takes note of the characters used
   * @return content stream, ASCII
   */
  static String paint(Page page, PdfFont font) {
    PdfPainter painter = new PdfPainter(page, font);
    painter.page();
    return painter.out.toString();
  }

  private void page() {
    // Round joins: a mitre would carry an outline's sharp corner past the true corner.
    out.append("1 j\n");
    for (Layer layer : Layer.values()) {
      List<Item> whole = page.items(layer);
      List<Item> windowed = page.windowItems(layer);
      if (whole.isEmpty() && windowed.isEmpty()) {
        continue;
      }
      out.append('/').append(layer.id()).append(" BMC\n");
      whole.forEach(item -> item.accept(this));
      if (!windowed.isEmpty()) {
        Pen penBefore = pen;
        Ink inkBefore = ink;
        String fontSizeBefore = fontSize;
        beginWindow(page.window().orElseThrow().box());
        windowed.forEach(item -> item.accept(this));
        out.append("Q\n");
        pen = penBefore;
        ink = inkBefore;
        fontSize = fontSizeBefore;
      }
      out.append("EMC\n");
    }
  }

  private void beginWindow(Box box) {
    out.append("q ");
    chain(box.corners());
    out.append("h W n\n");
  }

  @Override
  public void circle(Item.Circle circle) {
    Arc whole = new Arc(circle.centre(), circle.radiusMm(), 0, 2 * Math.PI);
    paint(circle.pen(), circle.fill(), () -> fullCircle(whole));
  }

  @Override
  public void arc(Item.ArcLine line) {
    paint(
        line.pen(),
        Ink.NONE,
        () -> {
          if (line.arc().isFullCircle()) {
            fullCircle(line.arc());
          } else {
            moveTo(line.arc().start());
            curves(line.arc());
          }
        });
  }

  @Override
  public void line(Item.Line line) {
    paint(line.pen(), Ink.NONE, () -> chain(List.of(line.from(), line.to())));
  }

  @Override
  public void polyline(Item.Polyline polyline) {
    paint(
        polyline.pen(),
        polyline.fill(),
        () -> {
          chain(polyline.points());
          out.append(polyline.closed() ? "h " : "");
        });
  }

  @Override
  public void figure(Item.Figure figure) {
    if (!figure.contours().isEmpty()) {
      paint(figure.pen(), figure.fill(), () -> figure.contours().forEach(this::contour));
    }
  }

  /** Paints a path, unless it has neither line nor fill; what differs must be set before it. */
  private void paint(Pen line, Ink fill, Runnable path) {
    if (line != Pen.NONE || fill != Ink.NONE) {
      use(line, fill);
      path.run();
      out.append(line == Pen.NONE ? "f*\n" : fill == Ink.NONE ? "S\n" : "B*\n");
    }
  }

  private void contour(Contour contour) {
    if (contour.asCircle().isPresent()) {
      fullCircle(contour.asCircle().get());
      return;
    }
    moveTo(contour.edges().get(0).start());
    for (Edge edge : contour.edges()) {
      if (edge instanceof Arc arc) {
        curves(arc);
      } else {
        lineTo(edge.end());
      }
    }
    out.append("h ");
  }

  @Override
  public void text(Item.Text text) {
    Vec2 start = Lettering.start(text);
    if (text.ink() == Ink.NONE || text.content().isEmpty()) {
      return;
    }
    setInk(text.ink());
    out.append("BT ");
    String size = Numbers.plain(Lettering.emMm(text.capHeightMm()) * UNITS_PER_MM, DECIMALS);
    if (!size.equals(fontSize)) {
      out.append('/').append(PdfFont.NAME).append(' ').append(size).append(" Tf ");
      fontSize = size;
    }
    // Letters are compensated for the printer like everything else, so that columns stay columns.
    Vec2 reading = Vec2.polar(1.0, text.turn());
    for (Vec2 way : List.of(reading, reading.quarterTurn())) {
      Vec2 drawn = page.scale().undo(way);
      matrixEntry(drawn.x());
      matrixEntry(drawn.y());
    }
    point(start);
    out.append("Tm <").append(font.encode(text.content())).append("> Tj ET\n");
  }

  private void matrixEntry(double value) {
    out.append(Numbers.plain(value, MATRIX_DECIMALS)).append(' ');
  }

  /** Sets what differs from what is set. */
  private void use(Pen wanted, Ink fill) {
    if (fill != Ink.NONE) {
      setInk(fill);
    }
    if (wanted == Pen.NONE || wanted == pen) {
      return;
    }
    length(wanted.widthMm());
    out.append("w ");
    if (!Objects.equals(wanted.dashesMm(), pen.dashesMm())) {
      out.append('[');
      for (double dash : wanted.dashesMm()) {
        length(dash);
      }
      out.append("] 0 d ");
    }
    pen = wanted;
  }

  private void setInk(Ink wanted) {
    if (wanted != ink) {
      out.append(Numbers.plain(wanted.grey(), DECIMALS)).append(" g ");
      ink = wanted;
    }
  }

  private void fullCircle(Arc arc) {
    moveTo(arc.start());
    curves(arc);
    out.append("h ");
  }

  /** An arc from the current point on, in curves so short that {@link #CURVE_MM} holds. */
  private void curves(Arc arc) {
    double shrink = Math.pow(CURVE_MM / (QUARTER_ERROR * arc.radius()), 1.0 / 6);
    double widest = Math.min(2 * Math.PI / LEAST_CURVES_IN_TURN, Math.PI / 2 * shrink);
    int pieces = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / widest - 1e-9));
    double step = arc.sweep() / pieces;
    double handle = 4.0 / 3 * Math.tan(step / 4) * arc.radius();
    Vec2 from = arc.start();
    double angle = arc.startAngle();
    for (int i = 1; i <= pieces; i++) {
      double next = arc.startAngle() + i * step;
      Vec2 to = i == pieces ? arc.end() : arc.at((double) i / pieces);
      point(new Vec2(from.x() - handle * Math.sin(angle), from.y() + handle * Math.cos(angle)));
      point(new Vec2(to.x() + handle * Math.sin(next), to.y() - handle * Math.cos(next)));
      point(to);
      out.append("c ");
      from = to;
      angle = next;
    }
  }

  private void moveTo(Vec2 p) {
    point(p);
    out.append("m ");
  }

  private void chain(List<Vec2> points) {
    moveTo(points.get(0));
    points.subList(1, points.size()).forEach(this::lineTo);
  }

  private void lineTo(Vec2 p) {
    point(p);
    out.append("l ");
  }

  /** The one place where a page point becomes a file point: same axes, y up in both. */
  private void point(Vec2 p) {
    Vec2 drawn = page.scale().compensate(p, pageCentre);
    length(drawn.x());
    length(drawn.y());
  }

  private void length(double mm) {
    out.append(Numbers.plain(mm * UNITS_PER_MM, DECIMALS)).append(' ');
  }
}
