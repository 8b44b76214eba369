package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.job.Templates;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Plates that cannot be made: no file is written, and the message says which key to change. */
class DrawingFaultsTest {
  @TempDir Path folder;

  private int draw(String job, String from, String to, String... more) throws Exception {
    String text = Templates.text(job);
    assertThat(text).contains(from);
    runs = new CommandRuns(folder);
    runs.write("job.toml", text.replace(from, to));
    String[] args = {"drawing", "job.toml", "-o", "out"};
    return runs.run(Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new));
  }

  private CommandRuns runs;

  /** The job says how its plate is made: the fault is the file's. Independent: figures by hand. */
  static Stream<Arguments> faults() {
    String a = "at = [76.0, 0.0], thread = \"M8\", flats = 13.0";
    String b = "at = [-38.0, 65.8]";
    return Stream.of(
        // The slot's end at 8 - 90 - 13 = -95 lies past the edge at -93: it is open there.
        Arguments.of("from = -8.0,", "from = -90.0,", "plate.slot"),
        Arguments.of(a, a.replace("76.0", "120.0"), "plate.bolts[0].at"),
        // 90 + 4.5 is past 93: a notch in the edge, not a hole.
        Arguments.of(a, a.replace("76.0", "90.0"), "plate.bolts[0].at"),
        Arguments.of(
            a,
            a + ", counterbore = { diameter = 16.0, depth = 6.5, face = \"top\" }",
            "plate.bolts[0].counterbore.depth"),
        Arguments.of(
            a,
            a + ", counterbore = { diameter = 16.0, depth = 6.0, face = \"under\" }",
            "plate.bolts[0].counterbore.depth"),
        // (20 - 9) / 2 / tan 30 = 9.5 mm deep.
        Arguments.of(
            a,
            a + ", countersink = { diameter = 20.0, angle = 60.0, face = \"top\" }",
            "plate.bolts[0].countersink.diameter"),
        Arguments.of(b, "at = [70.0, 5.0]", "plate.bolts[1].at"),
        // Recesses of 20 mm, 17 apart.
        Arguments.of(
            a + " },\n  { name = \"B\", at = [-38.0, 65.8], thread = \"M8\", flats = 13.0",
            a
                + ", counterbore = { diameter = 20.0, depth = 2.0, face = \"top\" } },\n"
                + "  { name = \"B\", at = [76.0, 17.0], thread = \"M8\", flats = 13.0,"
                + " counterbore = { diameter = 20.0, depth = 2.0, face = \"top\" }",
            "plate.bolts[1].at"),
        // 14 - 3 = 11 is less than the slot's half width of 13.
        Arguments.of("offset = 25.0", "offset = 14.0", "plate.make.index_holes"));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void aPlateThatCannotBeMadeIsAFaultOfItsKey(String from, String to, String key) throws Exception {
    assertThat(draw("wren.toml", from, to)).as(runs.err()).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("towerscribe: " + key);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  /** The job says nothing of the making: the same is a stop, and the command ends with 1. */
  static Stream<Arguments> stops() {
    return Stream.of(
        // -3.5 + 0.3 - 0.5175 = -3.7175 is past the edge at -3.65.
        Arguments.of(
            "slot = { from = -0.3,", "slot = { from = -3.5,", "part-clash.slot.outer-edge"),
        Arguments.of("at = [3.0, 0.0]", "at = [3.55, 0.0]", "part-clash.bolt-A.outer-edge"),
        Arguments.of("at = [-1.5, 2.6]", "at = [2.67, 0.0]", "part-clash.bolt-A.bolt-B"),
        Arguments.of("at = [-1.5, 2.6]", "at = [0.5, 0.4]", "part-clash.slot.bolt-B"));
  }

  @ParameterizedTest
  @MethodSource("stops")
  void aPlateThatMayBeMadeAlreadyIsStopped(String from, String to, String id) throws Exception {
    assertThat(draw("siskin.toml", from, to)).as(runs.err()).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("left." + id + ": ", "right." + id + ": ");
    assertThat(folder.resolve("out")).doesNotExist();
    // It is no finding of the job's own, and cannot be accepted: no such part can be made.
    assertThat(runs.run("drawing", "job.toml", "-o", "out", "--accept", "left." + id))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void aJigThatCannotBeMadeStopsOnlyWhoAsksForIt() throws Exception {
    String from = "[aims]";
    String to = "[jig]\nbushing = { bore = 0.4 }\n[aims]";
    // 0.4 in is more than the hole of 0.344 in.
    assertThat(draw("siskin.toml", from, to, "--jig")).as(runs.err()).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("left.jig-drill.A: ", "right.jig-drill.C: ");
    assertThat(folder.resolve("out")).doesNotExist();
    assertThat(draw("siskin.toml", from, to)).as(runs.err()).isEqualTo(Exit.DONE);
  }
}
