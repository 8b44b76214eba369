package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.Tries;
import dev.towerscribe.job.Templates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code drawing} over every starter job: what a newcomer tries first. */
class DrawingTemplatesTest {
  private static final List<String> TOWERS =
      List.of("tower-left.dxf", "tower-left.pdf", "tower-right.dxf", "tower-right.pdf");
  private static final List<String> JIGS =
      List.of(
          "jig-left.dxf",
          "jig-left.pdf",
          "jig-left.step",
          "jig-left.svg",
          "jig-right.dxf",
          "jig-right.pdf",
          "jig-right.step",
          "jig-right.svg");
  private static final List<String> PLATE =
      List.of("plate.dxf", "plate.pdf", "plate.step", "plate.svg");
  private static final List<String> OTHER_HAND = List.of("plate-right.dxf", "plate-right.step");
  private static final List<String> SLIDER =
      List.of("slider.dxf", "slider.pdf", "slider.step", "slider.svg");

  /**
   * What each job says, read by hand: wren has a handed plate with a bearing's seat, and loads;
   * siskin a handed plate whose bearing's seat is not given; dunnock one plate for both sides, with
   * a seat.
   */
  private static final Map<String, List<List<String>>> FILES =
      Map.of(
          "wren.toml", List.of(PLATE, OTHER_HAND, SLIDER, List.of("strength.pdf")),
          "siskin.toml", List.of(PLATE, OTHER_HAND),
          "dunnock.toml", List.of(PLATE, SLIDER));

  @TempDir Path directory;

  private CommandRuns runs;

  @BeforeEach
  void writeTemplates() throws Exception {
    runs = new CommandRuns(directory);
    for (String name : Templates.names()) {
      runs.write(name, Templates.text(name));
    }
  }

  static Stream<String> starterJobs() {
    return Templates.names().stream().filter(name -> !name.startsWith("plates/"));
  }

  /** A new starter job must say here what it draws. */
  @Test
  void everyStarterJobIsListed() {
    assertThat(starterJobs()).containsExactlyInAnyOrderElementsOf(FILES.keySet());
  }

  @ParameterizedTest
  @MethodSource("starterJobs")
  void everyStarterJobIsDrawn(String job) throws Exception {
    runs.done("drawing", job, "-o", "plain");
    assertThat(runs.names("plain")).isEqualTo(names(job, List.of()));
    runs.done("drawing", job, "-o", "jigs", "--jig");
    assertThat(runs.names("jigs")).isEqualTo(names(job, JIGS));
  }

  /** Every paper, projection and unit must leave room for the words of every starter job. */
  @Tag("more-tries")
  @ParameterizedTest
  @MethodSource("starterJobs")
  void everyStarterJobIsDrawnOnSmallPaperInTheOtherUnitToo(String job) throws Exception {
    // A4 is the narrower, inches with both units the longer figures.
    for (String unit : List.of("in", "mm").subList(0, Tries.of(1, 2))) {
      for (String paper : List.of("A4", "Letter").subList(0, Tries.of(1, 2))) {
        runs.done(
            "drawing",
            job,
            "-o",
            "small",
            "--jig",
            "--both",
            "--paper",
            paper,
            "--unit",
            unit,
            "--projection",
            "first",
            "--dxf",
            "2000");
        assertThat(runs.names("small")).isEqualTo(names(job, JIGS));
      }
    }
  }

  /**
   * A jig's window is 62 mm +/-0.8 (ISO 2768-1 c, over 30 to 120 mm; from memory). Independent: 0.8
   * / 25.4 = 0.0315. Behind a size in inches, 0.8 would allow 25 times as much. The place of hole A
   * is frozen; it must not be broken over two lines, where it would read as two figures.
   */
  @Test
  void inchDrawingsHaveInchTolerancesAndWholeFigures() throws Exception {
    runs.done("drawing", "siskin.toml", "-o", "inches", "--jig");
    String jig = runs.read("inches/jig-right.svg");
    assertThat(jig).contains("+/-0.0315<", ">-2.1981<", ">-2.1784<").doesNotContain("+/-0.8");
    runs.done("drawing", "siskin.toml", "-o", "mm", "--jig", "--unit", "mm");
    assertThat(runs.read("mm/jig-right.svg")).contains("+/-0.8<");
  }

  /** With any stop finding nothing is written, and the finding is named. */
  @Test
  void aStopLeavesNothingWritten() throws Exception {
    Path job = directory.resolve("wren.toml");
    // A bushing wider than the finished 9 mm hole: its drill would make the hole too large.
    String wide =
        Files.readString(job)
            .replace("bushing = { bore = 3.0, outside = 6.0 }", "bushing = { bore = 12.0 }");
    Files.writeString(job, wide);
    assertThat(runs.run("drawing", "wren.toml", "-o", "stopped", "--jig")).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("left.jig-drill.A", "right.jig-drill.C");
    assertThat(directory.resolve("stopped")).doesNotExist();
    // The plate itself is not at fault.
    runs.done("drawing", "wren.toml", "-o", "drawn");
  }

  private static List<String> names(String job, List<String> more) {
    TreeSet<String> names = new TreeSet<>(TOWERS);
    FILES.get(job).forEach(names::addAll);
    names.addAll(more);
    names.add("drawing.list");
    return List.copyOf(names);
  }
}
