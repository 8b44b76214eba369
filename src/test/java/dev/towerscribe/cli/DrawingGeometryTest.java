package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drawings from end to end, on an asymmetric job in millimetres and in inches, of a mirrored pair
 * and of one part for both sides: what stands in every file against the formulas, worked here a
 * second time from the job's own figures. Independent: nothing of the program is used but its
 * command line.
 */
class DrawingGeometryTest {
  /** DXF has ten decimals of a mm, STEP whole doubles. */
  private static final double DXF_MM = 1e-6;

  /** SVG has six decimals: two rounded figures, of a circle and of the origin, differ by one. */
  private static final double SVG_MM = 1e-6 + 1e-9;

  private static final double PDF_MM = Tolerances.READ_BACK_MM;

  private static final double[][] BOLTS = {{76.0, 3.0}, {-38.0, 65.8}, {-36.0, -64.0}};

  @TempDir Path folder;

  /**
   * A kind of job. Inch jobs have the millimetre figures over 25, so that they are short decimals;
   * in millimetres they come out 1.016 times as large.
   */
  private record Kind(boolean handed, boolean inch, boolean square) {
    double mm(double figure) {
      return inch ? figure / 25 * 25.4 : figure;
    }

    /** As the job has it. */
    String n(double figure) {
      return Numbers.plain(inch ? figure / 25 : figure, 6);
    }

    /** Published: 9 mm for M8, medium, ISO 273; 0.344 in for 5/16, normal, ASME B18.2.8. */
    double clearance() {
      return inch ? 0.344 * 25.4 : 9.0;
    }

    String job() {
      String text =
          """
          format = 1
          title = "Wren hatch, drawing test"
          units = "%s"
          [tower]
          sheet = <1.5>
          opening = { diameter = <62> }
          mark = { diameter = <104> }
          lean = { inboard = 5.0, rearward = 2.0 }
          crown = { across = <140>, rise = <3> }
          pivot_height = <12>
          land = { points = [[<110>, <-110>], [<110>, <110>], [<-110>, <110>], [<-110>, <-110>]] }
          [[tower.landmark]]
          name = "drain hole"
          at = [<38>, <-52>]
          diameter = <9>
          [[tower.landmark]]
          name = "clip hole"
          at = [<-60>, <66>]
          diameter = <7>
          [plate]
          name = "bench plate"
          thickness = <8>
          outline = { diameter = <186> }
          handed = %s
          slot = { from = <-8>, to = <16>, index = [<-8>, <4>, <16>] }
          bearing = { x = <8>, height = <18> }
          moving = { diameter = <22>, clearance = <2> }
          bolts = [
            { name = "A", at = [<76>, <3>], thread = "%s", flats = <13>, hole = <9.5>,\
            counterbore = { diameter = <18>, depth = <4>, face = "top" } },
            { name = "B", at = [<-38>, <65.8>], thread = "%s", flats = <13>,\
            countersink = { diameter = <17>, angle = 90.0, face = "under" } },
            { name = "C", at = [<-36>, <-64>], thread = "%s", flats = <13> },
          ]
          [plate.make]
          slot_width = <30>
          slot_ends = "%s"
          slot_corner = <4>
          index_holes = { diameter = <6>, offset = <24> }
          bearing_bore = { diameter = <30> }
          [mount]
          rotation = 55.0
          rearward = <8>
          inboard = <-3>
          setting = <16>
          seat = "top"
          packing = "shims"
          [print]
          paper = "%s"
          [jig]
          bushing = { bore = <3>, outside = <7> }
          [right.mount]
          rotation = 52.5
          rearward = <9>
          inboard = <-2>
          [right.tower]
          mark = { diameter = <101> }
          """
              .formatted(
                  inch ? "in" : "mm",
                  handed,
                  thread(),
                  thread(),
                  thread(),
                  square ? "square" : "round",
                  inch ? "Letter" : "A4");
      return Pattern.compile("<([-0-9.]+)>")
          .matcher(text)
          .replaceAll(m -> n(Double.parseDouble(m.group(1))));
    }

    private String thread() {
      return inch ? "5/16" : "M8";
    }

    double[] circle(double x, double y, double radius) {
      return new double[] {mm(x), mm(y), mm(radius)};
    }

    /** The plate's round holes in the plate frame. */
    List<double[]> holes() {
      List<double[]> all = new ArrayList<>();
      all.add(circle(BOLTS[0][0], BOLTS[0][1], 9.5 / 2));
      for (int i = 1; i < 3; i++) {
        all.add(new double[] {mm(BOLTS[i][0]), mm(BOLTS[i][1]), clearance() / 2});
      }
      for (double setting : new double[] {-8, 4, 16}) {
        all.add(circle(8 + setting, 24, 3));
        all.add(circle(8 + setting, -24, 3));
      }
      return all;
    }

    List<double[]> recesses() {
      return List.of(circle(BOLTS[0][0], BOLTS[0][1], 9), circle(BOLTS[1][0], BOLTS[1][1], 8.5));
    }

    /** Rounds of the slot: its ends, or its corners. */
    List<double[]> slotArcs() {
      return square
          ? List.of(circle(-11, -11, 4), circle(35, -11, 4), circle(35, 11, 4), circle(-11, 11, 4))
          : List.of(circle(0, 0, 15), circle(24, 0, 15));
    }

    /** Where straight sides of the slot begin and end. */
    List<double[]> slotCorners() {
      double[][] all =
          square
              ? new double[][] {
                {-11, -15},
                {35, -15},
                {39, -11},
                {39, 11},
                {35, 15},
                {-11, 15},
                {-15, 11},
                {-15, -11}
              }
              : new double[][] {{0, -15}, {24, -15}, {24, 15}, {0, 15}};
      List<double[]> points = new ArrayList<>();
      for (double[] p : all) {
        points.add(new double[] {mm(p[0]), mm(p[1])});
      }
      return points;
    }

    /** A place of the plate in plan, (fore, in). */
    double[] plan(double[] p, boolean right) {
      double q = Math.toRadians(right ? 52.5 : 55.0);
      double y = right && !handed ? -p[1] : p[1];
      double fore = (right ? -9.0 : -8.0) - p[0] * Math.sin(q) + y * Math.cos(q);
      double in = (right ? -2.0 : -3.0) + p[0] * Math.cos(q) + y * Math.sin(q);
      return new double[] {mm(fore), mm(in)};
    }

    /** Seen from above with forward up: the left tower's inboard is to the right. */
    List<double[]> towerHoles(boolean right, double radius) {
      List<double[]> all = new ArrayList<>();
      for (double[] bolt : BOLTS) {
        double[] at = plan(bolt, right);
        all.add(new double[] {right ? -at[1] : at[1], at[0], radius});
      }
      return all;
    }

    List<double[]> landmarks(boolean right) {
      double in = right ? -1 : 1;
      return List.of(circle(in * -52, 38, 4.5), circle(in * 66, -60, 3.5));
    }

    double finalCut(boolean right) {
      // Half the mark less the 3 mm that are kept by default, in an inch job too.
      return mm(right ? 50.5 : 52.0) - 3.0;
    }
  }

  private Path draw(Kind kind) throws Exception {
    CommandRuns runs = new CommandRuns(folder);
    runs.write("job.toml", kind.job());
    runs.done("drawing", "job.toml", "-o", "out", "--jig");
    return folder.resolve("out");
  }

  private static List<double[]> mirrored(List<double[]> circles) {
    List<double[]> all = new ArrayList<>();
    for (double[] c : circles) {
      double[] m = c.clone();
      m[1] = -m[1];
      all.add(m);
    }
    return all;
  }

  private static List<double[]> from(double[] origin, List<double[]> circles) {
    List<double[]> all = new ArrayList<>();
    for (double[] c : circles) {
      double[] moved = c.clone();
      moved[0] -= origin[0];
      moved[1] -= origin[1];
      all.add(moved);
    }
    return all;
  }

  private static List<double[]> join(List<double[]> a, List<double[]> b) {
    List<double[]> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }

  private static boolean same(double[] a, double[] b, double tolerance) {
    for (int i = 0; i < b.length; i++) {
      if (!(Math.abs(a[i] - b[i]) <= tolerance)) {
        return false;
      }
    }
    return true;
  }

  /** Each expected one is there, and nothing else. */
  private static void exactly(
      String what, List<double[]> found, List<double[]> expected, double tolerance) {
    present(what, found, expected, tolerance);
    for (double[] f : found) {
      assertThat(expected)
          .as("%s: %s is not expected", what, Arrays.toString(f))
          .anyMatch(e -> same(f, e, tolerance));
    }
  }

  private static void present(
      String what, List<double[]> found, List<double[]> expected, double tolerance) {
    for (double[] e : expected) {
      assertThat(found).as("%s: %s", what, Arrays.toString(e)).anyMatch(f -> same(f, e, tolerance));
    }
  }

  /** The one circle of a radius. */
  private static double[] only(List<double[]> circles, double radius, double tolerance) {
    List<double[]> fit =
        circles.stream().filter(c -> Math.abs(c[2] - radius) <= tolerance).toList();
    assertThat(fit).as("circles of radius %s", radius).hasSize(1);
    return fit.get(0);
  }

  private static void bar(List<double[]> lines, double tolerance) {
    assertThat(lines)
        .as("bar of 100 mm")
        .anyMatch(
            l ->
                Math.abs(Math.abs(l[2] - l[0]) - 100) <= tolerance
                    && Math.abs(l[3] - l[1]) <= tolerance);
  }

  @ParameterizedTest
  @CsvSource({
    "true, false, true",
    "true, false, false",
    "false, false, true",
    "true, true, false",
    "false, true, true"
  })
  void plateFilesHoldTheJob(boolean handed, boolean inch, boolean square) throws Exception {
    Kind kind = new Kind(handed, inch, square);
    Path out = draw(kind);
    dxfPlate(kind, out.resolve("plate.dxf"), false);
    stepPlate(kind, out.resolve("plate.step"), false);
    svgPlate(kind, out.resolve("plate.svg"));
    pdfPlate(kind, out.resolve("plate.pdf"));
    if (handed) {
      dxfPlate(kind, out.resolve("plate-right.dxf"), true);
      stepPlate(kind, out.resolve("plate-right.step"), true);
    } else {
      assertThat(out.resolve("plate-right.dxf")).doesNotExist();
      assertThat(out.resolve("plate-right.step")).doesNotExist();
    }
    List<double[]> slider =
        List.of(kind.circle(0, 0, 15), kind.circle(0, 24, 3), kind.circle(0, -24, 3));
    List<double[]> drawn = WrittenShapes.dxfCircles(out.resolve("slider.dxf"), "HOLES");
    double[] origin = only(drawn, kind.mm(15), DXF_MM);
    exactly("slider", from(origin, drawn), slider, DXF_MM);
    present("slider", WrittenShapes.stepCylinders(out.resolve("slider.step")), slider, DXF_MM);
  }

  private static void dxfPlate(Kind kind, Path file, boolean mirror) throws Exception {
    double[] outline = only(WrittenShapes.dxfCircles(file, "PLATE"), kind.mm(93), DXF_MM);
    List<double[]> holes = from(outline, WrittenShapes.dxfCircles(file, "HOLES"));
    exactly(file + " holes", holes, mirror ? mirrored(kind.holes()) : kind.holes(), DXF_MM);
    exactly(
        file + " recesses",
        from(outline, WrittenShapes.dxfCircles(file, "RECESSES")),
        mirror ? mirrored(kind.recesses()) : kind.recesses(),
        DXF_MM);
    // The slot is its own mirror image.
    exactly(
        file + " slot's rounds",
        from(outline, WrittenShapes.dxfArcs(file, "CUTOUTS")),
        kind.slotArcs(),
        DXF_MM);
    List<double[]> ends = new ArrayList<>();
    for (double[] l : WrittenShapes.dxfLines(file, "CUTOUTS")) {
      ends.add(new double[] {l[0], l[1]});
      ends.add(new double[] {l[2], l[3]});
    }
    exactly(file + " slot's sides", from(outline, ends), kind.slotCorners(), DXF_MM);
    bar(WrittenShapes.dxfLines(file, "CHECK-BARS"), DXF_MM);
    // The axes cross at the plate's centre.
    assertThat(WrittenShapes.dxfLines(file, "CENTRE-LINES"))
        .anyMatch(l -> l[1] == outline[1] && l[3] == outline[1] && Math.abs(l[2] - l[0]) > 180)
        .anyMatch(l -> l[0] == outline[0] && l[2] == outline[0] && Math.abs(l[3] - l[1]) > 180);
  }

  private static void svgPlate(Kind kind, Path file) throws Exception {
    double[] outline = only(WrittenShapes.svgCircles(file, "plate"), kind.mm(93), SVG_MM);
    exactly(
        "svg holes", from(outline, WrittenShapes.svgCircles(file, "holes")), kind.holes(), SVG_MM);
    exactly(
        "svg recesses",
        from(outline, WrittenShapes.svgCircles(file, "recesses")),
        kind.recesses(),
        SVG_MM);
    List<double[]> points = from(outline, WrittenShapes.svgPathPoints(file, "cutouts"));
    present("svg slot", points, kind.slotCorners(), SVG_MM);
    double reach = kind.mm(39);
    assertThat(points)
        .allMatch(p -> p[0] <= reach + SVG_MM && Math.abs(p[1]) <= kind.mm(15) + SVG_MM);
    assertThat(points).anyMatch(p -> Math.abs(p[0] - reach) <= SVG_MM);
    bar(WrittenShapes.svgLines(file, "check-bars"), SVG_MM);
  }

  /** Round faces, and on which face of the plate each recess opens. */
  private static void stepPlate(Kind kind, Path file, boolean mirror) throws Exception {
    List<double[]> bored = new ArrayList<>(kind.holes());
    bored.addAll(kind.slotArcs());
    bored.add(kind.recesses().get(0));
    bored.add(kind.circle(0, 0, 93));
    List<double[]> cones = new ArrayList<>();
    cones.add(new double[] {kind.mm(BOLTS[1][0]), kind.mm(BOLTS[1][1])});
    List<double[]> rims = new ArrayList<>();
    double a = kind.mm(BOLTS[0][0]);
    double b = kind.mm(BOLTS[0][1]);
    rims.add(new double[] {a, b, kind.mm(9), kind.mm(8)});
    rims.add(new double[] {a, b, kind.mm(9), kind.mm(4)});
    rims.add(new double[] {a, b, kind.mm(9.5 / 2), kind.mm(4)});
    rims.add(new double[] {a, b, kind.mm(9.5 / 2), 0});
    double c = kind.mm(BOLTS[1][0]);
    double d = kind.mm(BOLTS[1][1]);
    double hole = kind.clearance() / 2;
    rims.add(new double[] {c, d, kind.mm(8.5), 0});
    // 90 degrees between its sides: as deep as the radius shrinks.
    rims.add(new double[] {c, d, hole, kind.mm(8.5) - hole});
    rims.add(new double[] {c, d, hole, kind.mm(8)});
    exactly(
        file + " cylinders",
        WrittenShapes.stepCylinders(file),
        mirror ? mirrored(bored) : bored,
        DXF_MM);
    exactly(
        file + " cones", WrittenShapes.stepCones(file), mirror ? mirrored(cones) : cones, DXF_MM);
    present(
        file + " rims", WrittenShapes.stepCircles(file), mirror ? mirrored(rims) : rims, DXF_MM);
  }

  /** The scale that a sheet names, as a number. */
  private static double scale(Path file) throws Exception {
    Matcher m = Pattern.compile("(?m)\\b(\\d+):(\\d+)\\b").matcher(WrittenShapes.pdfText(file));
    assertThat(m.find()).isTrue();
    return Double.parseDouble(m.group(1)) / Double.parseDouble(m.group(2));
  }

  private static List<double[]> scaled(List<double[]> shapes, double factor) {
    List<double[]> all = new ArrayList<>();
    for (double[] s : shapes) {
      all.add(Arrays.stream(s).map(v -> v * factor).toArray());
    }
    return all;
  }

  private static void pdfPlate(Kind kind, Path file) throws Exception {
    WrittenShapes.Found page = WrittenShapes.pdf(file).get(0);
    double factor = scale(file);
    // A plate of 186 or 189 mm, with dimensions, on A3 or Tabloid: the whole sheet is 267 or 249
    // high inside its frame.
    assertThat(factor).isEqualTo(0.5);
    double[] outline = only(page.circles(), kind.mm(93) * factor, PDF_MM);
    assertThat(outline[3]).isCloseTo(outline[2], within(PDF_MM));
    List<double[]> circles = from(outline, page.circles());
    present("pdf holes", circles, scaled(kind.holes(), factor), PDF_MM);
    present("pdf recesses", circles, scaled(kind.recesses(), factor), PDF_MM);
    double[] slot = {kind.mm(-15), kind.mm(-15), kind.mm(39), kind.mm(15)};
    assertThat(page.mixed())
        .anyMatch(
            path -> {
              double[] box = {1e9, 1e9, -1e9, -1e9};
              for (double[] p : from(outline, path)) {
                box[0] = Math.min(box[0], p[0]);
                box[1] = Math.min(box[1], p[1]);
                box[2] = Math.max(box[2], p[0]);
                box[3] = Math.max(box[3], p[1]);
              }
              return same(box, scaled(List.of(slot), factor).get(0), PDF_MM);
            });
    bar(page.lines(), PDF_MM);
    if (kind.handed()) {
      otherHand(kind, file);
    }
  }

  /** The small picture of the right-hand part, on whichever page, is the mirror image. */
  private static void otherHand(Kind kind, Path file) throws Exception {
    boolean seen = false;
    for (WrittenShapes.Found page : WrittenShapes.pdf(file)) {
      for (double[] outline : page.circles()) {
        double factor = outline[2] / kind.mm(93);
        boolean small = outline[2] > 15 && factor < 0.4;
        if (small) {
          seen = true;
          List<double[]> circles = from(outline, page.circles());
          present("other hand", circles, scaled(mirrored(kind.holes()), factor), PDF_MM);
        }
      }
    }
    assertThat(seen).as("picture of the other hand").isTrue();
  }

  @ParameterizedTest
  @CsvSource({"true, false", "false, false", "true, true", "false, true"})
  void towerAndJigFilesHoldThePlan(boolean handed, boolean inch) throws Exception {
    Kind kind = new Kind(handed, inch, true);
    Path out = draw(kind);
    for (boolean right : new boolean[] {false, true}) {
      String side = right ? "right" : "left";
      tower(
          kind,
          right,
          out.resolve("tower-" + side + ".dxf"),
          out.resolve("tower-" + side + ".pdf"));
      jig(kind, right, out.resolve("jig-" + side));
    }
  }

  private static void tower(Kind kind, boolean right, Path dxf, Path pdf) throws Exception {
    double cut = kind.finalCut(right);
    double[] origin = only(WrittenShapes.dxfCircles(dxf, "FINAL-CUT"), cut, DXF_MM);
    List<double[]> holes = kind.towerHoles(right, kind.clearance() / 2);
    exactly(dxf + " holes", from(origin, WrittenShapes.dxfCircles(dxf, "HOLES")), holes, DXF_MM);
    exactly(
        dxf + " landmarks",
        from(origin, WrittenShapes.dxfCircles(dxf, "LANDMARKS")),
        kind.landmarks(right),
        DXF_MM);
    exactly(
        dxf + " opening",
        from(origin, WrittenShapes.dxfCircles(dxf, "OPENING")),
        List.of(kind.circle(0, 0, 31)),
        DXF_MM);
    double[] centre = kind.plan(new double[] {0, 0}, right);
    exactly(
        dxf + " plate",
        from(origin, WrittenShapes.dxfCircles(dxf, "PLATE")),
        List.of(new double[] {right ? -centre[1] : centre[1], centre[0], kind.mm(93)}),
        DXF_MM);
    bar(WrittenShapes.dxfLines(dxf, "CHECK-BARS"), DXF_MM);

    WrittenShapes.Found page = WrittenShapes.pdf(pdf).get(0);
    double factor = scale(pdf);
    double[] middle = only(page.circles(), cut * factor, PDF_MM);
    List<double[]> circles = from(middle, page.circles());
    present(pdf + " holes", circles, scaled(holes, factor), PDF_MM);
    present(pdf + " landmarks", circles, scaled(kind.landmarks(right), factor), PDF_MM);
    bar(page.lines(), PDF_MM);
    assertThat(WrittenShapes.pdfText(pdf).toUpperCase(Locale.ROOT))
        .contains("INBOARD IS " + (right ? "LEFT" : "RIGHT"));
  }

  private static void jig(Kind kind, boolean right, Path stem) throws Exception {
    // The window is the final cut where that leaves metal, as it does here: the nearest hole, the
    // drain's, is 64 mm away and 9 wide, and a rim of 6 is asked for.
    List<double[]> expected =
        join(
            join(kind.towerHoles(right, kind.mm(3.5)), kind.landmarks(right)),
            List.of(new double[] {0, 0, kind.finalCut(right)}));
    Path dxf = stem.resolveSibling(stem.getFileName() + ".dxf");
    List<double[]> drawn = WrittenShapes.dxfCircles(dxf, "HOLES");
    double[] origin = only(drawn, kind.finalCut(right), DXF_MM);
    exactly(dxf.toString(), from(origin, drawn), expected, DXF_MM);
    Path svg = stem.resolveSibling(stem.getFileName() + ".svg");
    List<double[]> shown = WrittenShapes.svgCircles(svg, "holes");
    exactly(
        svg.toString(), from(only(shown, kind.finalCut(right), SVG_MM), shown), expected, SVG_MM);
    Path step = stem.resolveSibling(stem.getFileName() + ".step");
    present(step.toString(), WrittenShapes.stepCylinders(step), expected, DXF_MM);
    Path pdf = stem.resolveSibling(stem.getFileName() + ".pdf");
    double factor = scale(pdf);
    List<double[]> printed = WrittenShapes.pdf(pdf).get(0).circles();
    double[] window = only(printed, kind.finalCut(right) * factor, PDF_MM);
    present(pdf.toString(), from(window, printed), scaled(expected, factor), PDF_MM);
  }
}
