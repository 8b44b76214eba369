package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.towerscribe.quantity.Tolerances;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/**
 * The main job from end to end, on an asymmetric job with lean, dome, offset and a right-hand
 * override: the numbers in the written JSON, SVG and PDF against the formulas, worked here a second
 * time. Independent: nothing of the program is used but its command line.
 */
class PackGeometryTest {
  private static final double[][] BOLTS = {{76.0, 3.0}, {-38.0, 65.8}, {-36.0, -64.0}};
  private static final double DOME = (140.0 * 140.0 / 4 + 3.0 * 3.0) / (2 * 3.0);
  private static final double PT = 72 / 25.4;

  @TempDir Path work;

  private static String job(boolean handed, String scale) {
    return """
    format = 1
    title = "Wren hatch, bench test"
    [tower]
    sheet = 1.4
    opening = { diameter = 62.0 }
    mark = { diameter = 104.0 }
    lean = { inboard = 5.0, rearward = 2.0 }
    crown = { across = 140.0, rise = 3.0 }
    pivot_height = 12.0
    land = { points = [[110, -110], [110, 110], [-110, 110], [-110, -110]] }
    [[tower.landmark]]
    name = "drain hole"
    at = [38.0, -52.0]
    diameter = 9.0
    [[tower.landmark]]
    name = "clip hole"
    at = [-60.0, 66.0]
    diameter = 7.0
    [plate]
    name = "bench plate"
    thickness = 6.0
    outline = { diameter = 186.0 }
    handed = %s
    slot = { from = -8.0, to = 16.0, index = [-8.0, 4.0, 16.0] }
    bearing = { x = 8.0, height = 18.0 }
    moving = { diameter = 22.0, clearance = 2.0 }
    bolts = [
      { name = "A", at = [76.0, 3.0], thread = "M8", flats = 13.0 },
      { name = "B", at = [-38.0, 65.8], thread = "M8", flats = 13.0 },
      { name = "C", at = [-36.0, -64.0], thread = "M8", flats = 13.0 },
    ]
    [mount]
    rotation = 55.0
    rearward = 8.0
    inboard = -3.0
    setting = 16.0
    seat = "top"
    packing = "shims"
    [print]
    paper = "A3"
    scale = { %s }
    [right.mount]
    rotation = 52.5
    rearward = 9.0
    inboard = -2.0
    [right.tower]
    mark = { diameter = 101.0 }
    """
        .formatted(handed, scale);
  }

  /** A hole in plan: offset + x (-sin q, cos q) + y (cos q, sin q), y flipped for an odd part. */
  private static double[] plan(double[] p, String side, boolean handed) {
    boolean right = side.equals("right");
    double q = Math.toRadians(right ? 52.5 : 55.0);
    double y = right && !handed ? -p[1] : p[1];
    double fore = (right ? -9.0 : -8.0) - p[0] * Math.sin(q) + y * Math.cos(q);
    double in = (right ? -2.0 : -3.0) + p[0] * Math.cos(q) + y * Math.sin(q);
    return new double[] {fore, in};
  }

  private Path pack(boolean handed, String scale) throws IOException {
    CommandRuns runs = new CommandRuns(work);
    runs.write("job.toml", job(handed, scale));
    runs.done("pack", "job.toml", "-o", "out-" + handed);
    return work.resolve("out-" + handed);
  }

  @Test
  void dataAgreeWithTheFormulas() throws IOException {
    for (boolean handed : new boolean[] {true, false}) {
      JsonNode json =
          new ObjectMapper()
              .readTree(
                  Files.readString(
                      pack(handed, "across = 1.0, along = 1.0").resolve("report.json")));
      for (String side : List.of("left", "right")) {
        JsonNode s = json.get("sides").get(side);
        for (int i = 0; i < 3; i++) {
          double[] at = plan(BOLTS[i], side, handed);
          JsonNode hole = s.get("holes").get(i);
          assertThat(hole.get("fore").asDouble()).isCloseTo(at[0], within(1e-9));
          assertThat(hole.get("in").asDouble()).isCloseTo(at[1], within(1e-9));
          assertThat(hole.get("diameter").asDouble()).isEqualTo(9.0);
        }
        double[] bearing = plan(new double[] {24.0, 0.0}, side, true);
        assertThat(s.get("bearing").get("fore").asDouble()).isCloseTo(bearing[0], within(1e-9));
        assertThat(s.get("bearing").get("in").asDouble()).isCloseTo(bearing[1], within(1e-9));
        double radius = side.equals("left") ? 49.0 : 47.5;
        JsonNode cut = s.get("cuts").get("final");
        assertThat(cut.get("diameter").asDouble()).isCloseTo(2 * radius, within(1e-9));
        assertThat(cut.get("area").asDouble())
            .isCloseTo(Math.PI * radius * radius, within(1e-9 * radius * radius));
        assertThat(s.get("cuts").get("rough").get("diameter").asDouble())
            .isCloseTo(2 * radius - 5, within(1e-9));
        JsonNode span = s.get("spans").get(0);
        double centres = Math.hypot(BOLTS[0][0] - BOLTS[1][0], BOLTS[0][1] - BOLTS[1][1]);
        assertThat(span.get("centres").asDouble()).isCloseTo(centres, within(1e-9));
        assertThat(span.get("inside").asDouble()).isCloseTo(centres - 9, within(1e-9));
        assertThat(span.get("outside").asDouble()).isCloseTo(centres + 9, within(1e-9));
      }
    }
  }

  @Test
  void sheetsAgreeWithTheFormulas() throws Exception {
    for (boolean handed : new boolean[] {true, false}) {
      Path out = pack(handed, "across = 1.0, along = 1.0");
      Map<String, List<double[]>> pdf = WrittenShapes.circlesByPage(out.resolve("pack.pdf"));
      for (String side : List.of("left", "right")) {
        for (String face : List.of("underside", "topside")) {
          String name = side + "-" + face;
          sheet(
              svgCircles(out.resolve(name + ".svg"), "final-cut").get(0),
              name,
              handed,
              svgCircles(out.resolve(name + ".svg"), "holes"),
              1,
              1);
          List<double[]> found = pdf.get(name);
          double radius = onPaper(side.equals("left") ? 49.0 : 47.5);
          double[] cut =
              found.stream()
                  .filter(c -> Math.abs(c[2] - radius) < Tolerances.READ_BACK_MM)
                  .findFirst()
                  .orElseThrow();
          sheet(cut, name, handed, found, 1, 1);
        }
      }
    }
  }

  @Test
  void aPrinterThatIsOffComesOutTrue() throws Exception {
    Path out = pack(true, "across = 1.013, along = 0.994");
    Map<String, List<double[]>> pdf = WrittenShapes.circlesByPage(out.resolve("pack.pdf"));
    for (String name : List.of("left-underside", "right-topside")) {
      // What the file says times what the printer does, about the page's centre.
      List<double[]> printed = new ArrayList<>();
      for (double[] c : pdf.get(name)) {
        printed.add(
            new double[] {
              148.5 + (c[0] - 148.5) * 1.013, 210 + (c[1] - 210) * 0.994, c[2] * 1.013, c[3] * 0.994
            });
      }
      double radius = onPaper(name.startsWith("left") ? 49.0 : 47.5);
      double[] cut =
          printed.stream()
              .filter(c -> Math.abs(c[2] - radius) < Tolerances.READ_BACK_MM)
              .findFirst()
              .orElseThrow();
      sheet(cut, name, true, printed, 1.013, 0.994);
    }
  }

  /** Azimuthal equidistant: R asin(r / R). */
  private static double onPaper(double r) {
    return DOME * Math.asin(r / DOME);
  }

  private static void sheet(
      double[] cut,
      String name,
      boolean handed,
      List<double[]> circles,
      double across,
      double along) {
    boolean left = name.startsWith("left");
    // Seen from above the left tower's inboard side is on the right; from below it is the reverse.
    double inboard = left == name.endsWith("topside") ? 1 : -1;
    assertThat(cut[2])
        .as(name + " final cut")
        .isCloseTo(onPaper(left ? 49.0 : 47.5), within(Tolerances.READ_BACK_MM));
    assertThat(cut[3]).isCloseTo(cut[2], within(Tolerances.READ_BACK_MM));
    for (double[] bolt : BOLTS) {
      double[] at = plan(bolt, left ? "left" : "right", handed);
      double r = Math.hypot(at[0], at[1]);
      double x = cut[0] + inboard * at[1] * onPaper(r) / r;
      double y = cut[1] + at[0] * onPaper(r) / r;
      assertThat(circles)
          .as("%s hole at %s, %s (printer %s, %s)", name, x, y, across, along)
          .anySatisfy(
              c -> {
                assertThat(c[0]).isCloseTo(x, within(Tolerances.READ_BACK_MM));
                assertThat(c[1]).isCloseTo(y, within(Tolerances.READ_BACK_MM));
                assertThat(c[2]).isCloseTo(4.5, within(Tolerances.READ_BACK_MM));
                assertThat(c[3]).isCloseTo(4.5, within(Tolerances.READ_BACK_MM));
              });
    }
  }

  /** Circles of a named group: x, y (up), radius twice. */
  private static List<double[]> svgCircles(Path file, String group) throws Exception {
    Element svg = WrittenShapes.svg(file);
    assertThat(svg.getAttribute("width")).isEqualTo("297mm");
    assertThat(WrittenShapes.svgHeight(svg)).isEqualTo(420.0);
    return WrittenShapes.svgCircles(file, group).stream()
        .map(c -> new double[] {c[0], c[1], c[2], c[2]})
        .toList();
  }
}
