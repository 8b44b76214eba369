package dev.towerscribe.writer.svg;

import dev.towerscribe.drawing.ReadBack;
import dev.towerscribe.drawing.VisibleRegion;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.io.ByteArrayInputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Walks through an SVG file and hands on the outlines and lines it paints, in millimetres of the
 * paper with y up. Transforms, inherited stroke and fill, and clips are honoured; what it cannot
 * follow it refuses.
 */
final class SvgReader {
  private static final String SVG = "http://www.w3.org/2000/svg";

  /** Points taken along a circle or ellipse. */
  private static final int SAMPLES = 32;

  /** What an element passes on to those inside it. */
  private record Context(
      SvgTransform toMm, VisibleRegion visible, boolean stroked, boolean filled, boolean hidden) {}

  private final ReadBack found = new ReadBack();
  private final Map<String, List<Vec2>> clips = new HashMap<>();
  private final Deque<Context> contexts = new ArrayDeque<>();
  private double widthMm;
  private double heightMm;
  private double[] viewBox;
  private String clipId;

  private SvgReader() {}

  /** Reads a file. */
  static SvgReader read(byte[] svg) throws SvgUnreadable {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    // A drawing has no business with other files.
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    SvgReader reader = new SvgReader();
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(svg));
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamConstants.START_ELEMENT) {
          reader.begin(xml);
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          reader.end(xml);
        }
      }
    } catch (XMLStreamException e) {
      throw new SvgUnreadable("not well-formed: " + e.getMessage());
    }
    return reader;
  }

  double widthMm() {
    return widthMm;
  }

  double heightMm() {
    return heightMm;
  }

  double[] viewBox() {
    return viewBox.clone();
  }

  ReadBack found() {
    return found;
  }

  private void begin(XMLStreamReader xml) throws SvgUnreadable {
    if (contexts.isEmpty()) {
      root(xml);
      return;
    }
    Context context = inside(xml, contexts.peek());
    contexts.push(context);
    String name = SVG.equals(xml.getNamespaceURI()) ? xml.getLocalName() : "foreign";
    switch (name) {
      case "g", "title", "desc", "text" -> {
        // Nothing of its own to prove.
      }
      case "defs" -> {
        // Not painted where it stands.
      }
      case "clipPath" -> clipId = xml.getAttributeValue(null, "id");
      case "rect" -> rect(xml, context);
      case "circle" -> {
        double radius = number(xml, "r");
        ellipse(xml, context, radius, radius);
      }
      case "ellipse" -> ellipse(xml, context, number(xml, "rx"), number(xml, "ry"));
      case "line" ->
          straight(
              context,
              new Vec2(number(xml, "x1"), number(xml, "y1")),
              new Vec2(number(xml, "x2"), number(xml, "y2")));
      case "polyline", "polygon" -> points(xml, context, name.equals("polygon"));
      case "path" -> path(xml, context);
      default -> throw new SvgUnreadable("the element " + xml.getLocalName());
    }
  }

  private void end(XMLStreamReader xml) {
    contexts.pop();
    if (xml.getLocalName().equals("clipPath")) {
      clipId = null;
    }
  }

  private void root(XMLStreamReader xml) throws SvgUnreadable {
    if (!SVG.equals(xml.getNamespaceURI()) || !xml.getLocalName().equals("svg")) {
      throw new SvgUnreadable("the root is not svg");
    }
    widthMm = millimetres(xml, "width");
    heightMm = millimetres(xml, "height");
    SvgScan scan = new SvgScan(attribute(xml, "viewBox"));
    viewBox = new double[] {scan.number(), scan.number(), scan.number(), scan.number()};
    if (!(viewBox[2] > 0 && viewBox[3] > 0) || xml.getAttributeValue(null, "transform") != null) {
      throw new SvgUnreadable("the view box or a transform of the root");
    }
    double x = widthMm / viewBox[2];
    double y = heightMm / viewBox[3];
    contexts.push(
        new Context(
            new SvgTransform(x, 0, 0, -y, -viewBox[0] * x, heightMm + viewBox[1] * y),
            VisibleRegion.of(new Box(0, 0, widthMm, heightMm)),
            false,
            true,
            false));
  }

  private Context inside(XMLStreamReader xml, Context outer) throws SvgUnreadable {
    SvgTransform toMm = outer.toMm;
    String transform = xml.getAttributeValue(null, "transform");
    if (transform != null) {
      toMm = toMm.after(SvgTransform.parse(transform));
    }
    VisibleRegion visible = outer.visible;
    String clip = property(xml, "clip-path");
    if (clip != null && !clip.equals("none")) {
      List<Vec2> own = clips.get(clip);
      if (own == null) {
        throw new SvgUnreadable("the clip " + clip);
      }
      visible = visible.within(own.stream().map(toMm::map).toList());
    }
    String stroke = property(xml, "stroke");
    String fill = property(xml, "fill");
    String local = xml.getLocalName();
    boolean hidden =
        outer.hidden
            || local.equals("defs")
            || local.equals("clipPath")
            || "none".equals(property(xml, "display"))
            || "hidden".equals(property(xml, "visibility"));
    return new Context(
        toMm,
        visible,
        stroke == null ? outer.stroked : !stroke.equals("none"),
        fill == null ? outer.filled : !fill.equals("none"),
        hidden);
  }

  private void rect(XMLStreamReader xml, Context context) throws SvgUnreadable {
    double x = number(xml, "x");
    double y = number(xml, "y");
    double width = number(xml, "width");
    double height = number(xml, "height");
    if (!(width >= 0 && height >= 0)) {
      throw new SvgUnreadable("a rectangle of negative size");
    }
    polygon(
        context,
        List.of(
            new Vec2(x, y),
            new Vec2(x + width, y),
            new Vec2(x + width, y + height),
            new Vec2(x, y + height)));
  }

  private void polygon(Context context, List<Vec2> corners) throws SvgUnreadable {
    if (clipId != null) {
      if (clips.put("url(#" + clipId + ")", corners) != null) {
        throw new SvgUnreadable("a clip of more than one shape");
      }
      return;
    }
    for (int i = 0; i < corners.size(); i++) {
      straight(context, corners.get(i), corners.get((i + 1) % corners.size()));
    }
  }

  private void ellipse(XMLStreamReader xml, Context context, double rx, double ry)
      throws SvgUnreadable {
    double cx = number(xml, "cx");
    double cy = number(xml, "cy");
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < SAMPLES; i++) {
      double angle = 2 * Math.PI * i / SAMPLES;
      points.add(new Vec2(cx + rx * Math.cos(angle), cy + ry * Math.sin(angle)));
    }
    outline(context, points);
  }

  private void points(XMLStreamReader xml, Context context, boolean closed) throws SvgUnreadable {
    SvgScan scan = new SvgScan(attribute(xml, "points"));
    List<Vec2> points = new ArrayList<>();
    while (scan.hasMore()) {
      double x = scan.number();
      points.add(new Vec2(x, scan.number()));
    }
    if (closed) {
      polygon(context, points);
      return;
    }
    for (int i = 1; i < points.size(); i++) {
      straight(context, points.get(i - 1), points.get(i));
    }
  }

  private void path(XMLStreamReader xml, Context context) throws SvgUnreadable {
    if (clipId != null) {
      throw new SvgUnreadable("a clip other than a polygon");
    }
    for (SvgPathRun run : SvgPathRun.parse(attribute(xml, "d"))) {
      outline(context, run.roundOutline());
      for (int i = 0; i < run.straights.size(); i += 2) {
        straight(context, run.straights.get(i), run.straights.get(i + 1));
      }
    }
  }

  private void outline(Context context, List<Vec2> points) {
    if (!context.hidden && (context.stroked || context.filled)) {
      found.outline(points.stream().map(context.toMm::map).toList(), context.visible);
    }
  }

  private void straight(Context context, Vec2 from, Vec2 to) {
    if (!context.hidden && context.stroked) {
      found.line(context.toMm.map(from), context.toMm.map(to), context.visible);
    }
  }

  /** A property from the style attribute or, failing that, the attribute of its name. */
  private static String property(XMLStreamReader xml, String name) {
    String style = xml.getAttributeValue(null, "style");
    if (style != null) {
      int from = 0;
      while (from < style.length()) {
        int to = style.indexOf(';', from);
        if (to < 0) {
          to = style.length();
        }
        int colon = style.indexOf(':', from);
        if (colon > 0 && colon < to && style.substring(from, colon).strip().equals(name)) {
          return style.substring(colon + 1, to).strip();
        }
        from = to + 1;
      }
    }
    return xml.getAttributeValue(null, name);
  }

  private static String attribute(XMLStreamReader xml, String name) throws SvgUnreadable {
    String value = xml.getAttributeValue(null, name);
    if (value == null) {
      throw new SvgUnreadable(xml.getLocalName() + " without " + name);
    }
    return value;
  }

  private static double number(XMLStreamReader xml, String name) throws SvgUnreadable {
    return SvgScan.parse(attribute(xml, name));
  }

  private static double millimetres(XMLStreamReader xml, String name) throws SvgUnreadable {
    String value = attribute(xml, name);
    if (!value.endsWith("mm")) {
      throw new SvgUnreadable("the " + name + " is not in mm");
    }
    return SvgScan.parse(value.substring(0, value.length() - 2));
  }
}
