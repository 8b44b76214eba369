package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Closed curves and straight lines of written sheets, point by point, and what a printer makes of
 * them: mm about the page's middle, y upward. By no code of the program.
 *
 * @param curves points lying evenly round each closed curve
 * @param lines both ends of each straight line
 */
record PrintedShapes(List<List<double[]>> curves, List<List<double[]>> lines) {
  private static final double PT = 72 / 25.4;
  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+");

  /**
   * A printer, as worked out with pencil and paper: x stretched, y stretched and leaning toward x,
   * then all of it turned and shifted, as paper is fed.
   */
  record Printer(double across, double along, double skewDeg, double turnDeg) {
    double[] print(double[] p) {
      double lean = Math.toRadians(skewDeg);
      double x = across * p[0] + along * p[1] * Math.sin(lean);
      double y = along * p[1] * Math.cos(lean);
      double turn = Math.toRadians(turnDeg);
      return new double[] {
        x * Math.cos(turn) - y * Math.sin(turn) + 1.7, x * Math.sin(turn) + y * Math.cos(turn) - 0.9
      };
    }
  }

  /** A curve that must have come out round. */
  record Round(double x, double y, double radius) {}

  PrintedShapes printed(Printer printer) {
    return new PrintedShapes(
        curves.stream().map(c -> c.stream().map(printer::print).toList()).toList(),
        lines.stream().map(l -> l.stream().map(printer::print).toList()).toList());
  }

  /** Curves whose mean radius is near one that is looked for: middle and mean radius. */
  List<Round> rounds(double radius, double roundWithin) {
    List<Round> found = new ArrayList<>();
    for (List<double[]> curve : curves) {
      double x = curve.stream().mapToDouble(p -> p[0]).average().orElseThrow();
      double y = curve.stream().mapToDouble(p -> p[1]).average().orElseThrow();
      double mean =
          curve.stream().mapToDouble(p -> Math.hypot(p[0] - x, p[1] - y)).average().orElseThrow();
      if (Math.abs(mean - radius) < 0.05) {
        for (double[] p : curve) {
          assertThat(Math.hypot(p[0] - x, p[1] - y)).isCloseTo(mean, within(roundWithin));
        }
        found.add(new Round(x, y, mean));
      }
    }
    return found;
  }

  /** Lengths of the level and the upright check bar, and the way between their far ends. */
  double[] bars(double nominal) {
    List<double[]> level = bar(nominal, 0);
    List<double[]> upright = bar(nominal, 1);
    double[] corner = level.get(0);
    assertThat(distance(corner, upright.get(0))).isLessThan(1e-3);
    return new double[] {
      distance(corner, level.get(1)),
      distance(corner, upright.get(1)),
      distance(level.get(1), upright.get(1))
    };
  }

  private List<double[]> bar(double nominal, int axis) {
    List<List<double[]>> found =
        lines.stream()
            .filter(
                l ->
                    Math.abs(Math.abs(l.get(1)[axis] - l.get(0)[axis]) / nominal - 1) < 0.05
                        && Math.abs(l.get(1)[1 - axis] - l.get(0)[1 - axis]) < 0.1 * nominal)
            .toList();
    assertThat(found).hasSize(1);
    List<double[]> bar = found.get(0);
    return bar.get(0)[axis] < bar.get(1)[axis] ? bar : List.of(bar.get(1), bar.get(0));
  }

  static double distance(double[] a, double[] b) {
    return Math.hypot(b[0] - a[0], b[1] - a[1]);
  }

  // SVG

  static PrintedShapes svg(Path file) throws Exception {
    Element svg = WrittenShapes.svg(file);
    double high = WrittenShapes.svgHeight(svg);
    double wide = Double.parseDouble(svg.getAttribute("width").replace("mm", ""));
    List<List<double[]>> curves = new ArrayList<>();
    List<List<double[]>> lines = new ArrayList<>();
    NodeList all = svg.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      switch (e.getTagName()) {
        case "circle" -> curves.add(round(e, "cx", "cy", real(e, "r"), real(e, "r"), 0));
        case "ellipse" -> curves.add(round(e, "cx", "cy", real(e, "rx"), real(e, "ry"), 0));
        case "path" -> arcs(e.getAttribute("d")).ifPresentAdd(curves);
        case "line" -> {
          List<double[]> ends = new ArrayList<>();
          ends.add(new double[] {real(e, "x1"), real(e, "y1")});
          ends.add(new double[] {real(e, "x2"), real(e, "y2")});
          lines.add(ends);
        }
        default -> {
          // Words, groups and clips have no part in it.
        }
      }
    }
    for (List<List<double[]>> shapes : List.of(curves, lines)) {
      shapes.forEach(
          s ->
              s.forEach(
                  p -> {
                    p[0] -= wide / 2;
                    p[1] = high / 2 - p[1];
                  }));
    }
    return new PrintedShapes(curves, lines);
  }

  private static double real(Element e, String attribute) {
    return Double.parseDouble(e.getAttribute(attribute));
  }

  private static List<double[]> round(
      Element e, String x, String y, double rx, double ry, double turnDeg) {
    return ellipse(real(e, x), real(e, y), rx, ry, turnDeg);
  }

  private static List<double[]> ellipse(
      double cx, double cy, double rx, double ry, double turnDeg) {
    double c = Math.cos(Math.toRadians(turnDeg));
    double s = Math.sin(Math.toRadians(turnDeg));
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      double x = rx * Math.cos(Math.PI * i / 8);
      double y = ry * Math.sin(Math.PI * i / 8);
      points.add(new double[] {cx + c * x - s * y, cy + s * x + c * y});
    }
    return points;
  }

  /** What a path of arcs alone goes round, if it is one. */
  private record Arcs(List<double[]> points) {
    void ifPresentAdd(List<List<double[]>> curves) {
      if (!points.isEmpty()) {
        curves.add(points);
      }
    }
  }

  /** Four quarters with the same radii and turn: their joints' mean is the middle. */
  private static Arcs arcs(String data) {
    if (!data.matches("M[^MLACZ]*(A[^MLACZ]*){4}Z")) {
      return new Arcs(List.of());
    }
    List<double[]> joints = new ArrayList<>();
    double[] shape = null;
    for (String piece : data.substring(data.indexOf('A') + 1, data.length() - 1).split("A")) {
      Matcher number = NUMBER.matcher(piece);
      double[] n = new double[7];
      for (int i = 0; i < n.length; i++) {
        assertThat(number.find()).isTrue();
        n[i] = Double.parseDouble(number.group());
      }
      if (shape != null) {
        assertThat(new double[] {n[0], n[1], n[2]}).isEqualTo(shape);
      }
      shape = new double[] {n[0], n[1], n[2]};
      joints.add(new double[] {n[5], n[6]});
    }
    double x = joints.stream().mapToDouble(p -> p[0]).average().orElseThrow();
    double y = joints.stream().mapToDouble(p -> p[1]).average().orElseThrow();
    return new Arcs(ellipse(x, y, shape[0], shape[1], shape[2]));
  }

  // PDF

  /** Pages by what their files of their own would be called. */
  static Map<String, PrintedShapes> pdf(Path file) throws IOException {
    Map<String, PrintedShapes> pages = new LinkedHashMap<>();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      var item = document.getDocumentCatalog().getDocumentOutline().getFirstChild();
      while (item != null) {
        PDPage page = item.findDestinationPage(document);
        String stem = item.getTitle().toLowerCase(Locale.ROOT).replace(" tower", "");
        pages.put(stem.replace(", ", "-").replace(' ', '-'), page(page));
        item = item.getNextSibling();
      }
    }
    return pages;
  }

  private static PrintedShapes page(PDPage page) throws IOException {
    double midX = page.getMediaBox().getWidth() / PT / 2;
    double midY = page.getMediaBox().getHeight() / PT / 2;
    String content = new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
    assertThat(content).doesNotContainPattern("\\bcm\\b");
    PrintedShapes shapes = new PrintedShapes(new ArrayList<>(), new ArrayList<>());
    List<double[]> ends = new ArrayList<>();
    List<Double> numbers = new ArrayList<>();
    boolean curved = false;
    boolean straight = false;
    for (String token : content.split("\\s+")) {
      if (NUMBER.matcher(token).matches()) {
        numbers.add(Double.parseDouble(token));
        continue;
      }
      int n = numbers.size();
      switch (token) {
        case "m", "l", "c" -> {
          if (token.equals("m")) {
            shapes.add(ends, curved, straight);
            ends = new ArrayList<>();
            curved = false;
            straight = false;
          }
          curved |= token.equals("c");
          straight |= token.equals("l");
          ends.add(new double[] {numbers.get(n - 2) / PT - midX, numbers.get(n - 1) / PT - midY});
        }
        case "S", "f*", "B*" -> {
          shapes.add(ends, curved, straight);
          ends = new ArrayList<>();
          curved = false;
          straight = false;
        }
        case "n" -> ends = new ArrayList<>();
        default -> {
          // Pens, inks and words have no part in it.
        }
      }
      numbers.clear();
    }
    return shapes;
  }

  private void add(List<double[]> ends, boolean curved, boolean straight) {
    if (curved && !straight && ends.size() > 8) {
      // The last joint lies on the first.
      curves.add(ends.subList(1, ends.size()));
    } else if (straight && !curved && ends.size() == 2) {
      lines.add(ends);
    }
  }
}
