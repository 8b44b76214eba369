package dev.towerscribe.cli;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.Tries;
import dev.towerscribe.job.Templates;
import dev.towerscribe.store.FailingOps;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawing command: options, files, exit codes. What the files show is tested elsewhere. */
class DrawingCommandTest {
  /** Paper sizes in points have single precision; ISO 216 in mm, ANSI/ASME Y14.1 as 11 by 17 in. */
  private static final double PAPER_MM = 0.01;

  private static final String LOAD =
      """
      [load]
      spring = 25.0
      bump = 60.0
      static = 3500.0
      seat = "top"
      """;

  @TempDir Path folder;

  private CommandRuns runs;

  @BeforeEach
  void writeJobs() throws Exception {
    runs = new CommandRuns(folder);
    for (String name : List.of("wren", "siskin", "dunnock")) {
      runs.write(name + ".toml", withoutLoad(Templates.text(name + ".toml")));
    }
    Files.createDirectories(folder.resolve("plates"));
    runs.write("plates/four-bolt.toml", Templates.text("plates/four-bolt.toml"));
    // The wider room round a spot weld then takes in a bolt's washer.
    runs.write(
        "stop.toml",
        withoutLoad(Templates.text("wren.toml")).replaceFirst("margin = 3.0", "margin = 24.0"));
  }

  /** The demo says what its towers carry; most tests look at the drawings alone. */
  private static String withoutLoad(String job) {
    return job.replaceFirst("(?s)\\[load\\].*?(?=\n#|\n\\[)", "");
  }

  private static TreeSet<String> names(String words) {
    return new TreeSet<>(Arrays.asList(words.split(" ")));
  }

  /**
   * A mirrored pair shares one drawing. Files of each starter job: {@link DrawingTemplatesTest}.
   */
  @Test
  void aHandedPlateGivesItsFilesAndAJigAddsItsOwn() throws Exception {
    String parts =
        "plate.dxf plate.pdf plate.step plate.svg plate-right.dxf plate-right.step"
            + " slider.dxf slider.pdf slider.step slider.svg";
    TreeSet<String> expected = names(parts);
    expected.addAll(
        names("tower-left.dxf tower-left.pdf tower-right.dxf tower-right.pdf drawing.list"));
    runs.done("drawing", "wren.toml", "-o", "out");
    assertThat(runs.files("out").keySet()).isEqualTo(expected);
    expected.remove("drawing.list");
    assertThat(runs.out()).contains("wrote " + String.join(", ", expected) + " to ");
    runs.done("drawing", "wren.toml", "-o", "jigs", "--jig");
    for (String side : List.of("left", "right")) {
      for (String ending : List.of("dxf", "pdf", "step", "svg")) {
        expected.add("jig-" + side + "." + ending);
      }
    }
    expected.add("drawing.list");
    assertThat(runs.files("jigs").keySet()).isEqualTo(expected);
    // A jig more changes no other file, except for the list.
    runs.files("out")
        .forEach(
            (name, bytes) -> {
              if (!name.equals("drawing.list")) {
                assertThat(folder.resolve("jigs").resolve(name)).as(name).hasBinaryContent(bytes);
              }
            });
  }

  @Test
  void oneSideAloneHasItsOwnHand() throws Exception {
    runs.write(
        "right.toml",
        Templates.text("siskin.toml")
            .replace("sides  = [\"left\", \"right\"]", "sides = [\"right\"]"));
    runs.done("drawing", "right.toml", "-o", "out");
    assertThat(runs.files("out").keySet())
        .isEqualTo(
            names(
                "drawing.list plate.dxf plate.pdf plate.step plate.svg tower-right.dxf"
                    + " tower-right.pdf"));
    assertThat(WrittenShapes.pdfText(folder.resolve("out/plate.pdf"))).contains("RIGHT tower only");
  }

  @Test
  void aStrengthPageComesWithALoadOnly() throws Exception {
    runs.write("load.toml", withoutLoad(Templates.text("wren.toml")) + LOAD);
    runs.done("drawing", "load.toml", "-o", "out");
    assertThat(runs.files("out")).containsKey("strength.pdf");
    // It prints on the job's own paper, A4 upright.
    for (double[] size : WrittenShapes.pdfPages(folder.resolve("out/strength.pdf"))) {
      assertThat(size[0]).isCloseTo(210, within(PAPER_MM));
      assertThat(size[1]).isCloseTo(297, within(PAPER_MM));
    }
    runs.done("drawing", "wren.toml", "-o", "out");
    assertThat(runs.files("out")).doesNotContainKey("strength.pdf");
  }

  /** Published: ISO 216, and 8.5 by 11, 8.5 by 14, 11 by 17 inches of 25.4 mm. */
  private static final Map<String, double[]> SHEETS =
      Map.of(
          "A4", new double[] {210, 297},
          "A3", new double[] {420, 297},
          "Letter", new double[] {215.9, 279.4},
          "Legal", new double[] {215.9, 355.6},
          "Tabloid", new double[] {431.8, 279.4});

  /** Each starter job on small paper: {@link DrawingTemplatesTest}. */
  @ParameterizedTest
  @CsvSource({"A4, wren", "A3, siskin", "Letter, dunnock", "Legal, siskin", "Tabloid, wren"})
  void everyPageHasItsPaper(String paper, String job) throws Exception {
    runs.done("drawing", job + ".toml", "-o", job, "--jig", "--paper", paper);
    papers(job, paper);
  }

  /** Without the option: A3, or Tabloid where the job prints on inch paper. */
  @ParameterizedTest
  @CsvSource({"dunnock, A3", "siskin, Tabloid"})
  void paperFollowsTheJob(String job, String paper) throws Exception {
    runs.done("drawing", job + ".toml", "-o", job);
    papers(job, paper);
  }

  private void papers(String out, String paper) throws Exception {
    int pdfs = 0;
    for (String name : runs.files(out).keySet()) {
      if (name.endsWith(".pdf")) {
        pdfs++;
        Path file = folder.resolve(out).resolve(name);
        List<double[]> sizes = WrittenShapes.pdfPages(file);
        assertThat(sizes).isNotEmpty();
        for (double[] size : sizes) {
          assertThat(size[0]).as(name).isCloseTo(SHEETS.get(paper)[0], within(PAPER_MM));
          assertThat(size[1]).as(name).isCloseTo(SHEETS.get(paper)[1], within(PAPER_MM));
        }
        assertThat(WrittenShapes.pdfText(file)).contains(paper);
      }
    }
    assertThat(pdfs).isPositive();
  }

  /** Published: AC1009 is release 12, AC1015 release 2000 (DXF reference, $ACADVER). */
  @ParameterizedTest
  @CsvSource({
    "wren, '', AC1009",
    "siskin, --dxf r12, AC1009",
    "wren, --dxf R12, AC1009",
    "dunnock, --dxf 2000, AC1015"
  })
  void everyDxfBeginsWithItsRelease(String job, String option, String release) throws Exception {
    List<String> args = new ArrayList<>(List.of("drawing", job + ".toml", "-o", job, "--jig"));
    args.addAll(option.isEmpty() ? List.of() : Arrays.asList(option.split(" ")));
    runs.done(args.toArray(String[]::new));
    SortedMap<String, byte[]> files = runs.files(job);
    assertThat(files.keySet()).anyMatch(n -> n.endsWith(".dxf"));
    files.forEach(
        (name, bytes) -> {
          String text = new String(bytes, US_ASCII);
          if (name.endsWith(".dxf")) {
            assertThat(text)
                .as(name)
                .startsWith(
                    "  0\r\nSECTION\r\n  2\r\nHEADER\r\n  9\r\n$ACADVER\r\n  1\r\n"
                        + release
                        + "\r\n")
                .endsWith("  0\r\nEOF\r\n");
          } else if (name.endsWith(".step")) {
            assertThat(text).startsWith("ISO-10303-21;").endsWith("END-ISO-10303-21;\n");
          } else if (name.endsWith(".pdf")) {
            assertThat(text).startsWith("%PDF-1.");
          } else if (name.endsWith(".svg")) {
            assertThat(text).contains("<svg ");
          }
        });
  }

  @ParameterizedTest
  @CsvSource({
    "--paper, B7, 'A4, A3, Letter, Legal, Tabloid'",
    "--projection, second, 'first, third'",
    "--unit, cm, 'mm, in'",
    "--dxf, r14, 'r12, 2000'"
  })
  void aWrongWordIsToldTheRightOnes(String option, String word, String allowed) throws Exception {
    assertThat(runs.run("drawing", "wren.toml", "-o", "out", option, word))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains(option + " " + word + ": not one of " + allowed);
    assertThat(runs.files("out")).isEmpty();
    // Also where the job could not be drawn anyway.
    assertThat(runs.run("drawing", "stop.toml", "-o", "out", option, word))
        .isEqualTo(Exit.WRONG_USE);
    // Papers: everyPageHasItsPaper.
    for (String right : option.equals("--paper") ? new String[0] : allowed.split(", ")) {
      runs.done("drawing", "siskin.toml", "-o", "out", option, right);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "drawing",
        "drawing wren.toml",
        "drawing -o out",
        "drawing wren.toml siskin.toml -o out",
        "drawing wren.toml -o out --paper",
        "drawing wren.toml -o out --jigs",
        "drawing wren.toml -o out --both yes",
        "drawing wren.toml -o out --dxf r12 --dxf 2000",
        "drawing wren.toml -o out --accept left.nothing"
      })
  void wrongUseWritesNothing(String line) throws Exception {
    assertThat(runs.run(line.split(" "))).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).isNotEmpty();
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void anOpenStopWritesNothing() throws Exception {
    assertThat(runs.run("drawing", "stop.toml", "-o", "out", "--jig")).isEqualTo(Exit.STOPPED);
    assertThat(folder.resolve("out")).doesNotExist();
    assertThat(stops()).isNotEmpty().allSatisfy(id -> assertThat(runs.err()).contains(id + ": "));
    // Drawings that are there already stay as they are.
    runs.done("drawing", "wren.toml", "-o", "out");
    SortedMap<String, byte[]> before = runs.files("out");
    assertThat(runs.run("drawing", "stop.toml", "-o", "out")).isEqualTo(Exit.STOPPED);
    same(runs.files("out"), before);
  }

  private List<String> stops() {
    runs.run("drawing", "stop.toml", "-o", "nowhere");
    List<String> ids = new ArrayList<>();
    Matcher id = Pattern.compile("towerscribe: ((?:left|right)\\S+): ").matcher(runs.err());
    while (id.find()) {
      ids.add(id.group(1));
    }
    return ids;
  }

  @Test
  void anAcceptedStopIsToldOnEveryDrawing() throws Exception {
    List<String> ids = stops();
    List<String> args = new ArrayList<>(List.of("drawing", "stop.toml", "-o", "out", "--jig"));
    ids.forEach(id -> args.addAll(List.of("--accept", id)));
    runs.done(args.toArray(String[]::new));
    assertThat(ids).isNotEmpty();
    for (String id : ids) {
      assertThat(runs.out()).contains("accepted: " + id);
      for (String name : runs.files("out").keySet()) {
        Path file = folder.resolve("out").resolve(name);
        if (name.endsWith(".pdf")) {
          String joined = WrittenShapes.pdfText(file).replaceAll("\\s+", " ");
          assertThat(joined).as(name).contains("DRAWN WITH", "ACCEPTED STOP", id);
        } else if (name.endsWith(".dxf")) {
          String joined = String.join(" ", WrittenShapes.dxfTexts(file, "NOTES"));
          assertThat(joined).as(name).contains("DRAWN WITH", "ACCEPTED STOP", id);
        } else if (name.endsWith(".svg")) {
          String joined = String.join(" ", WrittenShapes.svgTexts(file, "notes"));
          assertThat(joined).as(name).contains("DRAWN WITH", "ACCEPTED STOP", id);
        }
      }
    }
    // All but one accepted is not enough.
    if (ids.size() > 1) {
      assertThat(runs.run("drawing", "stop.toml", "-o", "less", "--accept", ids.get(0)))
          .isEqualTo(Exit.STOPPED);
      assertThat(folder.resolve("less")).doesNotExist();
    }
  }

  @Test
  void whatCannotBeWrittenEndsWithThree() throws Exception {
    assertThat(runs.run("drawing", "none.toml", "-o", "out")).isEqualTo(Exit.FILES);
    runs.write("file", "not a folder");
    assertThat(runs.run("drawing", "siskin.toml", "-o", "file")).isEqualTo(Exit.FILES);
    assertThat(runs.run("drawing", "siskin.toml", "-o", "file/out")).isEqualTo(Exit.FILES);
    assertThat(folder.resolve("file")).hasContent("not a folder");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void earlierDrawingsAreReplacedAndOtherFilesLeftAlone() throws Exception {
    runs.done("drawing", "wren.toml", "-o", "out", "--jig");
    runs.write("out/notes.txt", "mine");
    runs.write("out/plate-left.dxf", "mine too");
    runs.done("drawing", "dunnock.toml", "-o", "out");
    runs.done("drawing", "dunnock.toml", "-o", "fresh");
    SortedMap<String, byte[]> expected = runs.files("fresh");
    expected.put("notes.txt", "mine".getBytes(UTF_8));
    expected.put("plate-left.dxf", "mine too".getBytes(UTF_8));
    same(runs.files("out"), expected);
    // A pack in the same folder and the drawings do not disturb each other.
    runs.done("pack", "dunnock.toml", "-o", "out");
    runs.done("drawing", "dunnock.toml", "-o", "out", "--unit", "in");
    assertThat(runs.files("out")).containsKeys("pack.pdf", "pack.list", "plate.pdf", "notes.txt");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plate.pdf", "tower-left.dxf", "drawing.list"})
  void aForeignFileOfTheSameNameBarsThemAll(String name) throws Exception {
    Files.createDirectories(folder.resolve("out"));
    runs.write("out/" + name, "mine");
    assertThat(runs.run("drawing", "siskin.toml", "-o", "out")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains(name);
    assertThat(runs.files("out").keySet()).containsExactly(name);
    assertThat(folder.resolve("out").resolve(name)).hasContent("mine");
  }

  @Test
  void theListHoldsEveryFileButItself() throws Exception {
    runs.done("drawing", "siskin.toml", "-o", "out");
    TreeSet<String> files = new TreeSet<>(runs.files("out").keySet());
    files.remove("drawing.list");
    try (Stream<String> lines = Files.lines(folder.resolve("out/drawing.list"))) {
      assertThat(lines.skip(1).map(l -> l.split(" {2}")[1])).containsExactlyElementsOf(files);
    }
  }

  static IntStream steps() {
    return IntStream.of(1, 16, 2, 4, 8, 24).limit(Tries.of(2, 6));
  }

  /** What the disk refuses at any of its first steps leaves the folder as it was. */
  @Tag("more-tries")
  @ParameterizedTest
  @MethodSource("steps")
  void aFaultOfTheDiskEndsWithThree(int step) throws Exception {
    runs.done("drawing", "siskin.toml", "-o", "out");
    SortedMap<String, byte[]> before = runs.files("out");
    FailingOps ops = new FailingOps(FailingOps.Way.ONCE, step);
    int exit = runs.run(ops, "drawing", "dunnock.toml", "-o", "out");
    assertThat(ops.hasFailed()).isTrue();
    if (exit == Exit.DONE) {
      assertThat(runs.files("out").keySet())
          .contains("drawing.list")
          .doesNotContain("plate-right.dxf");
    } else {
      assertThat(exit).isEqualTo(Exit.FILES);
      same(runs.files("out"), before);
    }
  }

  @Tag("more-tries")
  @Test
  void theSameJobGivesTheSameBytes() throws Exception {
    for (String job : List.of("wren", "siskin", "dunnock").subList(0, Tries.of(1, 3))) {
      runs.done("drawing", job + ".toml", "-o", job + "1", "--jig", "--both", "--dxf", "2000");
      runs.done("drawing", job + ".toml", "-o", job + "2", "--jig", "--both", "--dxf", "2000");
      same(runs.files(job + "2"), runs.files(job + "1"));
    }
  }

  @Test
  void figuresFollowTheUnit() throws Exception {
    // Independent: 76 / 25.4 = 2.99212..., four decimals.
    runs.done("drawing", "wren.toml", "-o", "in", "--unit", "in");
    assertThat(WrittenShapes.pdfText(folder.resolve("in/plate.pdf")))
        .contains("2.9921")
        .doesNotContain("[76]");
    runs.done("drawing", "wren.toml", "-o", "both", "--unit", "in", "--both");
    assertThat(WrittenShapes.pdfText(folder.resolve("both/plate.pdf"))).contains("2.9921", "[76]");
    runs.done("drawing", "wren.toml", "-o", "mm");
    assertThat(WrittenShapes.pdfText(folder.resolve("mm/plate.pdf")))
        .contains("76")
        .doesNotContain("2.9921");
    // Shapes are mm in every file for machines, whatever the figures are in.
    assertThat(WrittenShapes.stepCylinders(folder.resolve("in/plate.step")))
        .hasSameSizeAs(WrittenShapes.stepCylinders(folder.resolve("mm/plate.step")));
    assertThat(radii("in/plate.dxf")).isEqualTo(radii("mm/plate.dxf"));
  }

  private List<Double> radii(String file) throws Exception {
    return WrittenShapes.dxfCircles(folder.resolve(file), "HOLES").stream().map(c -> c[2]).toList();
  }

  private static void same(SortedMap<String, byte[]> found, SortedMap<String, byte[]> expected) {
    assertThat(found.keySet()).isEqualTo(expected.keySet());
    found.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(expected.get(name)));
  }
}
