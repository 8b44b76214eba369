package dev.towerscribe.writer.svg;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGHints;
import org.jfree.svg.SVGUnits;
import org.jfree.svg.ViewBox;

/**
 * Draws one page through JFreeSVG, and mends in its buffer what it cannot say: circles (it writes
 * ellipses), arcs (it writes curves of single-precision numbers), line widths (single precision
 * too, 0.13 becomes 0.12999999523162842) and a clip on a whole group.
 */
final class SvgPainter implements Item.Visitor {
  /** Decimals of a text's transform: letters 1e4 font units along stay within 1e-5 mm. */
  private static final int MATRIX_DECIMALS = 9;

  /** Decimals of line widths; all pens are whole hundredths. */
  private static final int WIDTH_DECIMALS = 3;

  /**
   * The font size written, in units of each text's own transform. JFreeSVG cuts sizes to whole
   * numbers, so the size proper is in the transform.
   */
  private static final int FONT_UNITS = 100;

  private static final String FAMILIES = "Liberation Sans, Arial, Helvetica, sans-serif";
  private static final String WINDOW = "window";

  private static final Pattern CONTROLS = Pattern.compile("[\\x00-\\x1F\\uFFFE\\uFFFF]");

  private static final Path2D EVEN_ODD = new Path2D.Double(Path2D.WIND_EVEN_ODD);

  /** A font whose name is known without asking the system, which may have no fonts at all. */
  private static final class SheetFont extends Font {
    private static final long serialVersionUID = 1L;

    SheetFont() {
      super("Liberation Sans", Font.PLAIN, FONT_UNITS);
    }

    @Override
    public String getFamily() {
      return name;
    }
  }

  private final Page page;
  private final SvgPaths paths;
  private final StringBuilder buffer = new StringBuilder(1 << 14);
  private final SVGGraphics2D graphics;

  private SvgPainter(Page page) {
    this.page = page;
    this.paths = new SvgPaths(page);
    graphics = new SVGGraphics2D(page.widthMm(), page.heightMm(), SVGUnits.MM, buffer);
    // The library would make this up from the clock.
    graphics.setDefsKeyPrefix("");
    graphics.setGeomDoubleConverter(SvgPaths::number);
    graphics.setTransformDoubleConverter(value -> Numbers.plain(value, MATRIX_DECIMALS));
    graphics.setCheckStrokeControlHint(false);
    graphics.setFontFunction(family -> FAMILIES);
    graphics.setFont(new SheetFont());
  }

  /**
   * The SVG element of a page.
   *
   * @param page the page
   * @return XML, ending in a line feed
   */
  static String paint(Page page) {
    SvgPainter painter = new SvgPainter(page);
    painter.page();
    ViewBox viewBox = new ViewBox(0, 0, page.widthMm(), page.heightMm());
    // Quotes within texts are entities by now: what is left stands round attributes.
    return painter.graphics.getSVGElement(null, true, viewBox, null, null).replace('\'', '"')
        + "\n";
  }

  private void page() {
    endLine();
    graphics.setRenderingHint(SVGHints.KEY_ELEMENT_TITLE, escaped(page.title()));
    endLine();
    page.window().ifPresent(window -> defineWindow(window.box()));
    for (Layer layer : Layer.values()) {
      List<Item> whole = page.items(layer);
      List<Item> clipped = page.windowItems(layer);
      if (whole.isEmpty() && clipped.isEmpty()) {
        continue;
      }
      beginLayer(layer);
      whole.forEach(item -> item.accept(this));
      if (!clipped.isEmpty()) {
        beginGroup(Map.of("clip-path", "url(#" + WINDOW + ")"));
        endLine();
        clipped.forEach(item -> item.accept(this));
        endGroup();
      }
      endGroup();
    }
  }

  private void beginLayer(Layer layer) {
    Map<String, String> attributes = new LinkedHashMap<>(Map.of("id", layer.id()));
    attributes.put("xml:space", "preserve");
    beginGroup(attributes);
    String words = layer.id().replace('-', ' ');
    graphics.setRenderingHint(
        SVGHints.KEY_ELEMENT_TITLE, Character.toUpperCase(words.charAt(0)) + words.substring(1));
    endLine();
  }

  private void beginGroup(Map<String, String> attributes) {
    graphics.setRenderingHint(SVGHints.KEY_BEGIN_GROUP, attributes);
  }

  private void endGroup() {
    graphics.setRenderingHint(SVGHints.KEY_END_GROUP, Boolean.TRUE);
    endLine();
  }

  private void endLine() {
    buffer.append('\n');
  }

  /** One clip for the whole window; the library would define one for each transform in use. */
  private void defineWindow(Box box) {
    buffer.append("<defs><clipPath id='").append(WINDOW).append("'>");
    if (page.scale().isSquare()) {
      rectangle(box);
    } else {
      buffer.append("<polygon points='");
      for (Vec2 corner : box.corners()) {
        paths.point(buffer, corner);
        buffer.append(' ');
      }
      buffer.setLength(buffer.length() - 1);
      buffer.append("'/>");
    }
    buffer.append("</clipPath></defs>\n");
  }

  private void rectangle(Box box) {
    Vec2 topLeft = paths.drawn(new Vec2(box.minX(), box.maxY()));
    Vec2 bottomRight = paths.drawn(new Vec2(box.maxX(), box.minY()));
    buffer.append(
        "<rect x='%s' y='%s' width='%s' height='%s'/>"
            .formatted(
                SvgPaths.number(topLeft.x()),
                SvgPaths.number(topLeft.y()),
                SvgPaths.number(bottomRight.x() - topLeft.x()),
                SvgPaths.number(bottomRight.y() - topLeft.y())));
  }

  @Override
  public void circle(Item.Circle circle) {
    paint(circle.pen(), circle.fill(), pen -> ellipse(circle.centre(), circle.radiusMm(), pen));
  }

  /** Fills a shape and then draws its line, each if it has one. */
  private void paint(Pen pen, Ink fill, Consumer<Pen> shape) {
    if (setFill(fill)) {
      shape.accept(Pen.NONE);
    }
    if (setPen(pen)) {
      shape.accept(pen);
    }
  }

  @Override
  public void arc(Item.ArcLine line) {
    paint(line.pen(), Ink.NONE, pen -> arc(line.arc(), pen));
  }

  private void arc(Arc arc, Pen pen) {
    if (arc.isFullCircle()) {
      ellipse(arc.centre(), arc.radius(), pen);
    } else {
      StringBuilder data = new StringBuilder();
      paths.moveTo(data, arc.start());
      paths.arcTo(data, arc);
      path(data, pen);
    }
  }

  @Override
  public void line(Item.Line line) {
    if (setPen(line.pen())) {
      Vec2 from = paths.drawn(line.from());
      Vec2 to = paths.drawn(line.to());
      draw(new Line2D.Double(from.x(), from.y(), to.x(), to.y()), line.pen());
      endLine();
    }
  }

  @Override
  public void polyline(Item.Polyline polyline) {
    StringBuilder data = new StringBuilder();
    paths.moveTo(data, polyline.points().get(0));
    List<Vec2> onward = polyline.points().subList(1, polyline.points().size());
    onward.forEach(p -> paths.lineTo(data, p));
    data.append(polyline.closed() ? "Z" : "");
    paint(polyline.pen(), polyline.fill(), pen -> path(data, pen));
  }

  @Override
  public void figure(Item.Figure figure) {
    if (!figure.contours().isEmpty() && setFill(figure.fill())) {
      // One path, so that inner contours are left out of the fill.
      StringBuilder all = new StringBuilder();
      figure.contours().forEach(contour -> paths.contour(all, contour));
      path(all, Pen.NONE);
    }
    if (setPen(figure.pen())) {
      for (Contour contour : figure.contours()) {
        if (contour.asCircle().isPresent()) {
          Arc circle = contour.asCircle().get();
          ellipse(circle.centre(), circle.radius(), figure.pen());
        } else {
          StringBuilder data = new StringBuilder();
          paths.contour(data, contour);
          path(data, figure.pen());
        }
      }
    }
  }

  @Override
  public void text(Item.Text text) {
    double width = Lettering.width(text.content(), text.capHeightMm());
    if (text.ink() == Ink.NONE || text.content().isEmpty()) {
      return;
    }
    // Placed by the widths of the sheet font; no font of the system is asked.
    double cos = text.turn().cos();
    double sin = text.turn().sin();
    Vec2 start = paths.drawn(Lettering.start(text));
    double unit = Lettering.emMm(text.capHeightMm()) / FONT_UNITS;
    Vec2 ahead = page.scale().undo(new Vec2(cos, sin).times(unit));
    Vec2 down = page.scale().undo(new Vec2(sin, -cos).times(unit));
    graphics.setTransform(
        new AffineTransform(ahead.x(), -ahead.y(), down.x(), -down.y(), start.x(), start.y()));
    setFill(text.ink());
    int begin = buffer.length();
    graphics.drawString(escaped(text.content()), 0f, 0f);
    graphics.setTransform(null);
    // Where the sheet font is missing, a viewer is to squeeze what it has into the same room.
    String element = "<text ";
    buffer.insert(
        buffer.indexOf(element, begin) + element.length(),
        "textLength='" + SvgPaths.number(width / unit) + "' lengthAdjust='spacingAndGlyphs' ");
    endLine();
  }

  /**
   * The library leaves an ampersand alone where an entity already seems to begin, so that "&lt;" in
   * a text would come out as "<"; given "&amp;" in its place it does the right thing. Controls have
   * no place in XML.
   */
  private static String escaped(String text) {
    return CONTROLS.matcher(text.replace("&", "&amp;")).replaceAll("\uFFFD");
  }

  private boolean setFill(Ink ink) {
    if (ink == Ink.NONE) {
      return false;
    }
    int level = (int) Math.round(ink.grey() * 255);
    graphics.setColor(new Color(level, level, level));
    return true;
  }

  private boolean setPen(Pen pen) {
    if (pen == Pen.NONE) {
      return false;
    }
    List<Double> lengths = pen.dashesMm();
    float[] dashes = lengths.isEmpty() ? null : new float[lengths.size()];
    for (int i = 0; i < lengths.size(); i++) {
      dashes[i] = lengths.get(i).floatValue();
    }
    // Round joins: a mitre would carry an outline's sharp corner past the true corner. The mitre
    // limit is SVG's own, so that it is not written.
    graphics.setStroke(
        new BasicStroke(
            (float) pen.widthMm(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 4f, dashes, 0f));
    graphics.setColor(Color.BLACK);
    return true;
  }

  private void ellipse(Vec2 centre, double radiusMm, Pen pen) {
    if (!page.scale().isSquare()) {
      Arc circle = new Arc(centre, radiusMm, 0, 2 * Math.PI);
      StringBuilder data = new StringBuilder();
      paths.moveTo(data, circle.start());
      paths.arcTo(data, circle);
      path(data.append('Z'), pen);
      return;
    }
    Vec2 middle = paths.drawn(centre);
    double across = radiusMm / page.scale().across();
    double along = radiusMm / page.scale().along();
    int start =
        draw(
            new Ellipse2D.Double(middle.x() - across, middle.y() - along, 2 * across, 2 * along),
            pen);
    String same = "rx='" + SvgPaths.number(across) + "' ry='" + SvgPaths.number(across) + "'";
    int radii = buffer.indexOf(same, start);
    if (radii >= 0) {
      buffer.replace(radii, radii + same.length(), "r='" + SvgPaths.number(across) + "'");
      buffer.replace(start, start + "<ellipse".length(), "<circle");
    }
    endLine();
  }

  private void path(StringBuilder data, Pen pen) {
    int start = draw(EVEN_ODD, pen);
    String empty = "d=''";
    int at = buffer.indexOf(empty, start);
    buffer.insert(at + empty.length() - 1, data);
    endLine();
  }

  /**
   * Draws a shape's line or, without a pen, its inside.
   *
   * @return where in the buffer its element begins
   */
  private int draw(Shape shape, Pen pen) {
    int start = buffer.length();
    if (pen == Pen.NONE) {
      graphics.fill(shape);
    } else {
      graphics.draw(shape);
      String key = "stroke-width:";
      int at = buffer.indexOf(key, start) + key.length();
      buffer.replace(at, buffer.indexOf(";", at), Numbers.plain(pen.widthMm(), WIDTH_DECIMALS));
    }
    return start;
  }
}
