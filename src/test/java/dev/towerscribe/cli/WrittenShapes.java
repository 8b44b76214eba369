package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * What stands in written files, taken out by the plainest means and by no code of the program: mm,
 * y upward. Circles are x, y, radius; those of a PDF have a radius across and one along.
 */
final class WrittenShapes {
  private static final double PT = 72 / 25.4;

  private WrittenShapes() {}

  // SVG

  static Element svg(Path file) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(file.toFile())
        .getDocumentElement();
  }

  /** Height of the sheet; its width and unit must agree with the box that it shows. */
  static double svgHeight(Element svg) {
    double[] box =
        Arrays.stream(svg.getAttribute("viewBox").split("[ ,]+"))
            .mapToDouble(Double::parseDouble)
            .toArray();
    assertThat(box[0]).isZero();
    assertThat(box[1]).isZero();
    assertThat(svg.getAttribute("width")).endsWith("mm");
    assertThat(mm(svg.getAttribute("width"))).isEqualTo(box[2]);
    assertThat(mm(svg.getAttribute("height"))).isEqualTo(box[3]);
    return box[3];
  }

  private static double mm(String length) {
    return Double.parseDouble(length.replace("mm", ""));
  }

  static List<double[]> svgCircles(Path file, String group) throws Exception {
    Element svg = svg(file);
    double high = svgHeight(svg);
    List<double[]> circles = new ArrayList<>();
    for (Element c : svgElements(svg, "circle", group)) {
      circles.add(new double[] {number(c, "cx"), high - number(c, "cy"), number(c, "r")});
    }
    return circles;
  }

  /** Lines: x, y of one end, x, y of the other. */
  static List<double[]> svgLines(Path file, String group) throws Exception {
    Element svg = svg(file);
    double high = svgHeight(svg);
    List<double[]> lines = new ArrayList<>();
    for (Element l : svgElements(svg, "line", group)) {
      lines.add(
          new double[] {
            number(l, "x1"), high - number(l, "y1"), number(l, "x2"), high - number(l, "y2")
          });
    }
    return lines;
  }

  /** Corners of paths, arcs' ends among them. */
  static List<double[]> svgPathPoints(Path file, String group) throws Exception {
    Element svg = svg(file);
    double high = svgHeight(svg);
    List<double[]> points = new ArrayList<>();
    for (Element p : svgElements(svg, "path", group)) {
      Matcher step = Pattern.compile("([MLA])([^MLAZ]*)").matcher(p.getAttribute("d"));
      while (step.find()) {
        String[] numbers = step.group(2).trim().split("[ ,]+");
        points.add(
            new double[] {
              Double.parseDouble(numbers[numbers.length - 2]),
              high - Double.parseDouble(numbers[numbers.length - 1])
            });
      }
    }
    return points;
  }

  /** Words of a group, line by line. */
  static List<String> svgTexts(Path file, String group) throws Exception {
    List<String> texts = new ArrayList<>();
    NodeList all = svg(file).getElementsByTagName("text");
    for (int i = 0; i < all.getLength(); i++) {
      for (org.w3c.dom.Node n = all.item(i); n instanceof Element up; n = n.getParentNode()) {
        if (up.getAttribute("id").equals(group)) {
          texts.add(all.item(i).getTextContent());
        }
      }
    }
    return texts;
  }

  private static double number(Element e, String attribute) {
    return Double.parseDouble(e.getAttribute(attribute));
  }

  private static List<Element> svgElements(Element svg, String tag, String group) {
    List<Element> found = new ArrayList<>();
    NodeList all = svg.getElementsByTagName(tag);
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      for (org.w3c.dom.Node n = e; n instanceof Element up; n = n.getParentNode()) {
        assertThat(up.getAttribute("transform")).isEmpty();
        if (up.getAttribute("id").equals(group)) {
          found.add(e);
        }
      }
    }
    return found;
  }

  // DXF

  /** Entities of a type on a layer: values by group code, the first of each. */
  static List<Map<Integer, String>> dxfEntities(Path file, String type, String layer)
      throws IOException {
    String[] lines = Files.readString(file, StandardCharsets.US_ASCII).split("\r\n");
    List<Map<Integer, String>> found = new ArrayList<>();
    boolean inside = false;
    Map<Integer, String> current = new HashMap<>();
    for (int i = 0; i + 1 < lines.length; i += 2) {
      int code = Integer.parseInt(lines[i].trim());
      String value = lines[i + 1];
      if (code == 0) {
        if (type.equals(current.get(0)) && layer.equals(current.get(8))) {
          found.add(current);
        }
        current = new HashMap<>();
        if (value.equals("ENDSEC")) {
          inside = false;
        }
      }
      if (code == 2 && value.equals("ENTITIES")) {
        inside = true;
      }
      if (inside) {
        current.putIfAbsent(code, value);
      }
    }
    return found;
  }

  static List<double[]> dxfCircles(Path file, String layer) throws IOException {
    return dxfReals(file, "CIRCLE", layer, 10, 20, 40);
  }

  /** Lines: x, y of one end, x, y of the other. */
  static List<double[]> dxfLines(Path file, String layer) throws IOException {
    return dxfReals(file, "LINE", layer, 10, 20, 11, 21);
  }

  /** Arcs: x, y, radius, from, to in degrees. */
  static List<double[]> dxfArcs(Path file, String layer) throws IOException {
    return dxfReals(file, "ARC", layer, 10, 20, 40, 50, 51);
  }

  static List<String> dxfTexts(Path file, String layer) throws IOException {
    return dxfEntities(file, "TEXT", layer).stream().map(e -> e.get(1)).toList();
  }

  private static List<double[]> dxfReals(Path file, String type, String layer, int... codes)
      throws IOException {
    List<double[]> all = new ArrayList<>();
    for (Map<Integer, String> e : dxfEntities(file, type, layer)) {
      all.add(Arrays.stream(codes).mapToDouble(c -> Double.parseDouble(e.get(c))).toArray());
    }
    return all;
  }

  // STEP

  /**
   * Cylinders: x, y of the axis, radius, height of the placement; every axis must stand upright.
   */
  static List<double[]> stepCylinders(Path file) throws IOException {
    return stepRound(file, "CYLINDRICAL_SURFACE");
  }

  /** Cones: x, y of the axis, radius and height at their placement. */
  static List<double[]> stepCones(Path file) throws IOException {
    return stepRound(file, "CONICAL_SURFACE");
  }

  /** Level circles: x, y, radius and height of each. */
  static List<double[]> stepCircles(Path file) throws IOException {
    return stepRound(file, "CIRCLE");
  }

  private static List<double[]> stepRound(Path file, String surface) throws IOException {
    Map<String, String> entities = new HashMap<>();
    Matcher line =
        Pattern.compile("(?m)^(#\\d+)=(.*);$")
            .matcher(Files.readString(file, StandardCharsets.US_ASCII));
    while (line.find()) {
      entities.put(line.group(1), line.group(2));
    }
    List<double[]> found = new ArrayList<>();
    for (String entity : entities.values()) {
      if (!entity.startsWith(surface + "(")) {
        continue;
      }
      String[] words = arguments(entity);
      String[] placement = arguments(entities.get(words[1]));
      double[] at = triple(entities.get(placement[1]));
      double[] axis = triple(entities.get(placement[2]));
      assertThat(Math.abs(axis[2])).as(entity).isEqualTo(1.0);
      found.add(new double[] {at[0], at[1], Double.parseDouble(words[2]), at[2]});
    }
    return found;
  }

  private static String[] arguments(String entity) {
    return entity.substring(entity.indexOf('(') + 1, entity.lastIndexOf(')')).split(",");
  }

  private static double[] triple(String entity) {
    String numbers = entity.substring(entity.lastIndexOf('(') + 1, entity.indexOf(')'));
    return Arrays.stream(numbers.split(",")).mapToDouble(Double::parseDouble).toArray();
  }

  // PDF

  /** Width and height of each page, mm. */
  static List<double[]> pdfPages(Path file) throws IOException {
    List<double[]> sizes = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      for (PDPage page : document.getPages()) {
        assertThat(page.getRotation()).isZero();
        sizes.add(
            new double[] {page.getMediaBox().getWidth() / PT, page.getMediaBox().getHeight() / PT});
      }
    }
    return sizes;
  }

  static String pdfText(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  /** What stands on each page. */
  static List<Found> pdf(Path file) throws IOException {
    List<Found> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      for (PDPage page : document.getPages()) {
        Rounds rounds = new Rounds(page);
        rounds.processPage(page);
        pages.add(new Found(rounds.circles, rounds.lines, rounds.mixed));
      }
    }
    return pages;
  }

  /**
   * What stands on a PDF's page.
   *
   * @param circles closed curves: middle and both half widths
   * @param lines single straight lines: both ends
   * @param mixed paths of curves and straight lines: their corners and the ends of their curves
   */
  record Found(List<double[]> circles, List<double[]> lines, List<List<double[]>> mixed) {}

  /** Closed curves by page title: middle and both half widths. */
  static Map<String, List<double[]>> circlesByPage(Path file) throws IOException {
    Map<String, List<double[]>> pages = new LinkedHashMap<>();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      var item = document.getDocumentCatalog().getDocumentOutline().getFirstChild();
      while (item != null) {
        PDPage page = item.findDestinationPage(document);
        String stem = item.getTitle().toLowerCase(java.util.Locale.ROOT).replace(" tower", "");
        Rounds rounds = new Rounds(page);
        rounds.processPage(page);
        pages.put(stem.replace(", ", "-").replace(' ', '-'), rounds.circles);
        item = item.getNextSibling();
      }
    }
    return pages;
  }

  private static final class Rounds extends PDFGraphicsStreamEngine {
    private final List<double[]> circles = new ArrayList<>();
    private final List<double[]> lines = new ArrayList<>();
    private final List<List<double[]>> mixed = new ArrayList<>();
    private final List<Point2D> ends = new ArrayList<>();
    private boolean curved;
    private boolean straight;

    Rounds(PDPage page) {
      super(page);
    }

    private void end() {
      if (curved && straight) {
        mixed.add(ends.stream().map(p -> new double[] {p.getX() / PT, p.getY() / PT}).toList());
      } else if (straight && ends.size() == 2) {
        Point2D a = ends.get(0);
        Point2D b = ends.get(1);
        lines.add(new double[] {a.getX() / PT, a.getY() / PT, b.getX() / PT, b.getY() / PT});
      } else if (curved && ends.size() > 8) {
        // The curve's joints lie evenly round it, the last on the first: their mean is the centre,
        // and twice their mean square the square of each half width.
        List<Point2D> joints = ends.subList(1, ends.size());
        double x = joints.stream().mapToDouble(Point2D::getX).average().orElseThrow();
        double y = joints.stream().mapToDouble(Point2D::getY).average().orElseThrow();
        double xx =
            joints.stream().mapToDouble(p -> Math.pow(p.getX() - x, 2)).average().orElseThrow();
        double yy =
            joints.stream().mapToDouble(p -> Math.pow(p.getY() - y, 2)).average().orElseThrow();
        circles.add(new double[] {x / PT, y / PT, Math.sqrt(2 * xx) / PT, Math.sqrt(2 * yy) / PT});
      }
      clear();
    }

    private void clear() {
      ends.clear();
      curved = false;
      straight = false;
    }

    @Override
    public void moveTo(float x, float y) {
      end();
      ends.add(new Point2D.Double(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
      straight = true;
      ends.add(new Point2D.Double(x, y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      curved = true;
      ends.add(new Point2D.Double(x3, y3));
    }

    @Override
    public Point2D getCurrentPoint() {
      return ends.isEmpty() ? new Point2D.Double() : ends.get(ends.size() - 1);
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {
      clear();
    }

    @Override
    public void strokePath() {
      end();
    }

    @Override
    public void fillPath(int windingRule) {
      end();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
      end();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

    @Override
    public void drawImage(PDImage pdImage) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void shadingFill(COSName shadingName) {}
  }
}
