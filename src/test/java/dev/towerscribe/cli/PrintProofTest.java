package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.towerscribe.Tries;
import dev.towerscribe.cli.PrintedShapes.Printer;
import dev.towerscribe.cli.PrintedShapes.Round;
import dev.towerscribe.job.Templates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Print, measure, print again, from end to end, on printers made up here: what comes out of them
 * against the tower's own figures. Independent: of the program only its command line is used, and
 * the holes' places in plan, which PackGeometryTest proves.
 */
class PrintProofTest {
  /** Rounding of the figures in a job file, over the width of a sheet. */
  private static final double EXACT_MM = 0.01;

  /** What the work can bear between any two marks: a tenth of a bolt's clearance. */
  private static final double GOOD_MM = 0.1;

  /** What is left of the program itself once the caliper's error is taken off. */
  private static final double OWN_MM = 0.02;

  /** One standard deviation of a reading, of good calipers on a sharp line. */
  private static final double NOISE_MM = 0.02;

  private static final Printer GIVEN = new Printer(1.013, 0.994, 0.4, 0.7);

  /** Dome of the starter job: across 140, rise 3. */
  private static final double DOME = (140.0 * 140.0 / 4 + 3.0 * 3.0) / (2 * 3.0);

  @TempDir Path work;

  private CommandRuns runs;

  @BeforeEach
  void inTheFolder() {
    runs = new CommandRuns(work);
  }

  private void job(String paper, String print) throws Exception {
    String text = Templates.text("wren.toml");
    String changed =
        text.replace("paper = \"A4\"", "paper = \"" + paper + "\"")
            .replace("scale = { across = 1.0, along = 1.0 }", print);
    assertThat(changed).contains(paper, print);
    runs.write("job.toml", changed);
  }

  private Path pack() throws Exception {
    runs.done("pack", "job.toml", "-o", "out");
    return work.resolve("out");
  }

  /** Bars of a sheet of the job as it stands, out of a printer, without error. */
  private static double[] barsOf(PrintedShapes sheet, Printer printer) {
    return sheet.printed(printer).bars(100);
  }

  private static PrintedShapes sheet(Path pack) throws Exception {
    return PrintedShapes.svg(pack.resolve("left-underside.svg"));
  }

  private String readings(double[] bars, int decimals) {
    List<String> words = new ArrayList<>();
    for (double bar : bars) {
      words.add(String.format(Locale.ROOT, "%." + decimals + "f", bar));
    }
    return String.join(",", words);
  }

  /** Every hole and landmark of a side: fore, in and diameter, as they lie on paper. */
  private static List<double[]> model(Path pack, String side) throws Exception {
    JsonNode holes =
        new ObjectMapper()
            .readTree(Files.readString(pack.resolve("report.json")))
            .get("sides")
            .get(side)
            .get("holes");
    List<double[]> marks = new ArrayList<>();
    for (JsonNode hole : holes) {
      marks.add(
          new double[] {
            hole.get("fore").asDouble(), hole.get("in").asDouble(), hole.get("diameter").asDouble()
          });
    }
    assertThat(marks).hasSize(3);
    // The starter job's own, the right tower's overridden there.
    marks.add(
        side.equals("left") ? new double[] {38.0, -52.0, 9.0} : new double[] {38.5, -51.0, 9.0});
    marks.add(new double[] {-70.0, -60.0, 7.0});
    for (double[] mark : marks) {
      double r = Math.hypot(mark[0], mark[1]);
      double onPaper = DOME * Math.asin(r / DOME) / r;
      mark[0] *= onPaper;
      mark[1] *= onPaper;
    }
    return marks;
  }

  /** How far any mark of any sheet lies from its place, seen from any other; the worst, mm. */
  private double worst(Path pack, Printer printer, double roundWithin) throws Exception {
    Map<String, PrintedShapes> pdf = PrintedShapes.pdf(pack.resolve("pack.pdf"));
    double worst = 0;
    for (String side : List.of("left", "right")) {
      List<double[]> model = model(pack, side);
      for (String face : List.of("underside", "topside")) {
        String name = side + "-" + face;
        double inboard = side.equals("left") == face.equals("topside") ? 1 : -1;
        for (PrintedShapes file :
            List.of(PrintedShapes.svg(pack.resolve(name + ".svg")), pdf.get(name))) {
          worst = Math.max(worst, worst(file.printed(printer), model, inboard, roundWithin));
        }
      }
    }
    return worst;
  }

  private static double worst(
      PrintedShapes sheet, List<double[]> model, double inboard, double roundWithin) {
    List<double[]> wanted = model.stream().map(m -> new double[] {inboard * m[1], m[0]}).toList();
    List<double[]> found = found(sheet, model, wanted, roundWithin);
    // The paper may lie turned: the turn that brings all of it nearest means nothing.
    double[] a = middle(wanted);
    double[] b = middle(found);
    double dot = 0;
    double cross = 0;
    for (int i = 0; i < wanted.size(); i++) {
      double[] p = {wanted.get(i)[0] - a[0], wanted.get(i)[1] - a[1]};
      double[] q = {found.get(i)[0] - b[0], found.get(i)[1] - b[1]};
      dot += p[0] * q[0] + p[1] * q[1];
      cross += p[0] * q[1] - p[1] * q[0];
    }
    double c = dot / Math.hypot(dot, cross);
    double s = cross / Math.hypot(dot, cross);
    double worst = 0;
    for (int i = 0; i < wanted.size(); i++) {
      for (int j = 0; j < i; j++) {
        double x = wanted.get(i)[0] - wanted.get(j)[0];
        double y = wanted.get(i)[1] - wanted.get(j)[1];
        double dx = found.get(i)[0] - found.get(j)[0] - (c * x - s * y);
        double dy = found.get(i)[1] - found.get(j)[1] - (s * x + c * y);
        worst = Math.max(worst, Math.hypot(dx, dy));
      }
    }
    return worst;
  }

  private static double[] middle(List<double[]> points) {
    return new double[] {
      points.stream().mapToDouble(p -> p[0]).average().orElseThrow(),
      points.stream().mapToDouble(p -> p[1]).average().orElseThrow()
    };
  }

  /** The printed circle of each mark: the way they lie to each other tells which is which. */
  private static List<double[]> found(
      PrintedShapes sheet, List<double[]> model, List<double[]> wanted, double roundWithin) {
    List<List<Round>> rounds =
        model.stream().map(m -> sheet.rounds(m[2] / 2, roundWithin)).toList();
    for (Round first : rounds.get(0)) {
      List<double[]> all = new ArrayList<>();
      for (int i = 0; i < model.size(); i++) {
        double x = first.x() + wanted.get(i)[0] - wanted.get(0)[0];
        double y = first.y() + wanted.get(i)[1] - wanted.get(0)[1];
        rounds.get(i).stream()
            .filter(r -> Math.hypot(r.x() - x, r.y() - y) < 5)
            .findFirst()
            .ifPresent(r -> all.add(new double[] {r.x(), r.y()}));
      }
      if (all.size() == model.size()) {
        return all;
      }
    }
    throw new AssertionError("the marks are not all there");
  }

  @Tag("more-tries")
  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter"})
  void exactReadingsMakeAnyPrinterTrue(String paper) throws Exception {
    Random random = new Random(20261);
    List<Printer> printers = new ArrayList<>(List.of(GIVEN));
    for (int i = 0; i < Tries.of(1, 2); i++) {
      printers.add(
          new Printer(
              0.98 + 0.04 * random.nextDouble(),
              0.98 + 0.04 * random.nextDouble(),
              5 * random.nextDouble() - 2.5,
              2 * random.nextDouble() - 1));
    }
    job(paper, "scale = { across = 1.0, along = 1.0 } # as found");
    Path first = pack();
    assertThat(worst(first, new Printer(1, 1, 0, 0.3), EXACT_MM)).isLessThan(EXACT_MM);
    assertThat(worst(first, GIVEN, 1)).isGreaterThan(0.5);
    PrintedShapes asFound = sheet(first);
    for (Printer printer : printers) {
      job(paper, "scale = { across = 1.0, along = 1.0 } # as found");
      String exact = readings(barsOf(asFound, printer), 6);
      runs.done(
          "ruler", "--measured", exact, "--uncertainty", "0.001", "--job", "job.toml", "--write");
      assertThat(runs.read("job.toml")).contains(" } # as found\nskew = ");
      Path second = pack();
      assertThat(worst(second, printer, EXACT_MM)).as(printer.toString()).isLessThan(EXACT_MM);
      // Measured again, it is true, and nothing is written.
      byte[] before = Files.readAllBytes(work.resolve("job.toml"));
      String again = readings(barsOf(sheet(second), printer), 6);
      runs.done("ruler", "--measured", again, "--doubt", "0.01", "--job", "job.toml", "--write");
      assertThat(runs.out()).contains("True: tape it").doesNotContain("wrote");
      assertThat(work.resolve("job.toml")).hasBinaryContent(before);
    }
  }

  @Test
  void aJobThatUndoesAnotherPrinterIsCorrectedFromThere() throws Exception {
    job("A4", "scale = { across = 1.02, along = 0.991 }\nskew = -0.7");
    String exact = readings(barsOf(sheet(pack()), GIVEN), 6);
    runs.done(
        "ruler", "--measured", exact, "--uncertainty", "0.001", "--job", "job.toml", "--write");
    // The printer itself, whatever the first page was drawn for.
    assertThat(runs.read("job.toml"))
        .contains("scale = { across = 1.013, along = 0.994 }\nskew = 0.4\n");
    assertThat(worst(pack(), GIVEN, EXACT_MM)).isLessThan(EXACT_MM);
  }

  @Tag("more-tries")
  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter"})
  void readingsOfCalipersMakeAPrinterTrueWithinTheirError(String paper) throws Exception {
    Random random = new Random(20262);
    List<Double> left = new ArrayList<>();
    job(paper, "scale = { across = 1.0, along = 1.0 }");
    PrintedShapes asFound = sheet(pack());
    for (int i = 1; i < Tries.of(3, 6); i++) {
      Printer printer =
          i < 2
              ? GIVEN
              : new Printer(
                  1 + 0.02 * random.nextGaussian() / 2,
                  1 + 0.02 * random.nextGaussian() / 2,
                  0.3 + random.nextDouble(),
                  random.nextGaussian());
      job(paper, "scale = { across = 1.0, along = 1.0 }");
      double[] bars = barsOf(asFound, printer);
      for (int k = 0; k < bars.length; k++) {
        bars[k] += NOISE_MM * random.nextGaussian();
      }
      runs.done(
          "ruler",
          "--measured",
          readings(bars, 2),
          "--doubt",
          String.valueOf(NOISE_MM),
          "--job",
          "job.toml",
          "--write");
      // Scales are known to NOISE / 100, half the lean to as much; three standard deviations of
      // what these make together over the longest way between two marks, 160 mm.
      double explained = 3 * 2 * NOISE_MM / 100 * 160;
      double worst = worst(pack(), printer, EXACT_MM);
      assertThat(worst).as(printer.toString()).isLessThan(OWN_MM + explained);
      left.add(worst);
    }
    // With these seeds; readings of plain calipers, 0.05 mm, would not warrant it.
    assertThat(left).allSatisfy(w -> assertThat(w).isLessThan(GOOD_MM));
  }
}
