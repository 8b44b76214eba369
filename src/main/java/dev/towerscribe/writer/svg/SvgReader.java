package dev.towerscribe.writer.svg;

import static dev.towerscribe.drawing.Unreadable.must;

import dev.towerscribe.drawing.ReadBack;
import dev.towerscribe.drawing.TracedPath;
import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.drawing.VisibleRegion;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.awt.geom.AffineTransform;
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

  /** What was found in a file: its size, its view box as four numbers, its outlines and lines. */
  record Written(double widthMm, double heightMm, double[] viewBox, ReadBack found) {}

  /** What an element passes on to those inside it. */
  private record Context(
      AffineTransform toMm,
      VisibleRegion visible,
      boolean stroked,
      boolean filled,
      boolean hidden) {}

  private final ReadBack found = new ReadBack();
  private final Map<String, List<Vec2>> clips = new HashMap<>();
  private final Deque<Context> contexts = new ArrayDeque<>();
  private double widthMm;
  private double heightMm;
  private double[] viewBox;
  private String clipId;

  private SvgReader() {}

  /** Reads a file. */
  static Written read(byte[] svg) throws Unreadable {
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
      throw new Unreadable("not well-formed: " + e.getMessage());
    }
    return new Written(reader.widthMm, reader.heightMm, reader.viewBox, reader.found);
  }

  private void begin(XMLStreamReader xml) throws Unreadable {
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
      case "rect" -> paint(context, rect(xml));
      case "circle" -> paint(context, ellipse(xml, "r", "r"));
      case "ellipse" -> paint(context, ellipse(xml, "rx", "ry"));
      case "line" ->
          paint(
              context,
              chain(
                  false,
                  new Vec2(number(xml, "x1"), number(xml, "y1")),
                  new Vec2(number(xml, "x2"), number(xml, "y2"))));
      case "polyline", "polygon" -> paint(context, points(xml, name.equals("polygon")));
      case "path" -> paint(context, SvgPathData.parse(attribute(xml, "d")));
      default -> throw new Unreadable("the element " + xml.getLocalName());
    }
  }

  private void end(XMLStreamReader xml) {
    contexts.pop();
    if (xml.getLocalName().equals("clipPath")) {
      clipId = null;
    }
  }

  private void root(XMLStreamReader xml) throws Unreadable {
    boolean svg = SVG.equals(xml.getNamespaceURI()) && xml.getLocalName().equals("svg");
    must(svg, "the root is not svg");
    widthMm = millimetres(xml, "width");
    heightMm = millimetres(xml, "height");
    viewBox = SvgScan.numbers(attribute(xml, "viewBox"));
    boolean plain = xml.getAttributeValue(null, "transform") == null;
    boolean box = viewBox.length == 4 && viewBox[2] > 0 && viewBox[3] > 0;
    must(box && plain, "the view box or a transform of the root");
    double x = widthMm / viewBox[2];
    double y = heightMm / viewBox[3];
    contexts.push(
        new Context(
            new AffineTransform(x, 0, 0, -y, -viewBox[0] * x, heightMm + viewBox[1] * y),
            VisibleRegion.of(new Box(0, 0, widthMm, heightMm)),
            false,
            true,
            false));
  }

  private Context inside(XMLStreamReader xml, Context outer) throws Unreadable {
    AffineTransform toMm = outer.toMm;
    String transform = xml.getAttributeValue(null, "transform");
    if (transform != null) {
      toMm = new AffineTransform(outer.toMm);
      toMm.concatenate(SvgScan.transform(transform));
    }
    VisibleRegion visible = outer.visible;
    String clip = property(xml, "clip-path");
    if (clip != null && !clip.equals("none")) {
      List<Vec2> own = clips.get(clip);
      must(own != null, "the clip " + clip);
      AffineTransform map = toMm;
      visible = visible.within(own.stream().map(p -> TracedPath.mapped(map, p)).toList());
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

  private static TracedPath rect(XMLStreamReader xml) throws Unreadable {
    double x = number(xml, "x");
    double y = number(xml, "y");
    double width = number(xml, "width");
    double height = number(xml, "height");
    must(width >= 0 && height >= 0, "a rectangle of negative size");
    return chain(
        true,
        new Vec2(x, y),
        new Vec2(x + width, y),
        new Vec2(x + width, y + height),
        new Vec2(x, y + height));
  }

  private static TracedPath ellipse(XMLStreamReader xml, String firstRadius, String secondRadius)
      throws Unreadable {
    double rx = number(xml, firstRadius);
    double ry = number(xml, secondRadius);
    Vec2 centre = new Vec2(number(xml, "cx"), number(xml, "cy"));
    Vec2 start = centre.plus(new Vec2(rx, 0));
    List<Vec2> points = new ArrayList<>();
    for (int i = 1; i < SAMPLES; i++) {
      double angle = 2 * Math.PI * i / SAMPLES;
      points.add(centre.plus(new Vec2(rx * Math.cos(angle), ry * Math.sin(angle))));
    }
    points.add(start);
    TracedPath path = new TracedPath();
    path.moveTo(start);
    path.curveThrough(points);
    return path;
  }

  private static TracedPath points(XMLStreamReader xml, boolean closed) throws Unreadable {
    double[] numbers = SvgScan.numbers(attribute(xml, "points"));
    must(numbers.length >= 2 && numbers.length % 2 == 0, "points that are no pairs of numbers");
    Vec2[] points = new Vec2[numbers.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Vec2(numbers[2 * i], numbers[2 * i + 1]);
    }
    return chain(closed, points);
  }

  private static TracedPath chain(boolean closed, Vec2... points) throws Unreadable {
    TracedPath path = new TracedPath();
    path.moveTo(points[0]);
    for (Vec2 p : List.of(points).subList(1, points.length)) {
      path.lineTo(p);
    }
    if (closed) {
      path.close();
    }
    return path;
  }

  /** Paints a shape, or notes it where it is a clip. */
  private void paint(Context context, TracedPath path) throws Unreadable {
    if (clipId != null) {
      boolean first = clips.put("url(#" + clipId + ")", path.polygon()) == null;
      must(first, "a clip of more than one shape");
    } else if (!context.hidden) {
      path.paint(found, context.toMm, context.visible, context.stroked, context.filled);
    }
  }

  /** A property from the style attribute or, failing that, the attribute of its name. */
  private static String property(XMLStreamReader xml, String name) {
    String style = xml.getAttributeValue(null, "style");
    for (String entry : style == null ? new String[0] : style.split(";")) {
      int colon = entry.indexOf(':');
      if (colon > 0 && entry.substring(0, colon).strip().equals(name)) {
        return entry.substring(colon + 1).strip();
      }
    }
    return xml.getAttributeValue(null, name);
  }

  private static String attribute(XMLStreamReader xml, String name) throws Unreadable {
    String value = xml.getAttributeValue(null, name);
    must(value != null, xml.getLocalName() + " without " + name);
    return value;
  }

  private static double number(XMLStreamReader xml, String name) throws Unreadable {
    return SvgScan.parse(attribute(xml, name));
  }

  private static double millimetres(XMLStreamReader xml, String name) throws Unreadable {
    String value = attribute(xml, name);
    must(value.endsWith("mm"), "the " + name + " is not in mm");
    return SvgScan.parse(value.substring(0, value.length() - 2));
  }
}
