package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.job.Templates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every gate through the command: a job that trips it, the same with all its stops accepted, and
 * one just inside. The jobs are the wren's left tower with one thing changed; its hole B lies at
 * (60.87, 29.10), 67.47 mm from the strut rod centre, hole C at in -78.70, holes 9 mm wide.
 */
class GatesTest {
  private static final String PLATE_MAKE = "(?s)\\[plate\\.make\\].*?(?=\\[mount\\])";

  @TempDir Path directory;

  private String text = oneTower();

  private static String oneTower() {
    String both = Templates.text("wren.toml");
    return both.substring(0, both.indexOf("[right.tower]"))
        .replace("sides  = [\"left\", \"right\"]", "sides  = [\"left\"]");
  }

  private GatesTest with(String pattern, String replacement) {
    String changed =
        Pattern.compile(pattern, Pattern.MULTILINE).matcher(text).replaceFirst(replacement);
    assertThat(changed).as(pattern).isNotEqualTo(text);
    text = changed;
    return this;
  }

  private void key(String key, String value) {
    with("^" + key + " *= [^\\n]*", key + " = " + value);
  }

  /** Makes one change to the job. */
  private void change(String what, String value) {
    switch (what) {
      case "mark" -> key("mark", "{ diameter = " + value + " }");
      case "face" ->
          key(
              "bolting_face",
              "{ points = [[100.0, %1$s], [100.0, 100.0], [-105.0, 100.0], [-105.0, %1$s]] }"
                  .formatted(value));
      case "landmark" -> key("at", "[60.87, " + value + "]");
      case "plate" ->
          with(PLATE_MAKE, "")
              .with("outline = \\{ diameter = 186.0", "outline = { diameter = " + value);
      case "fourth bolt" ->
          with(PLATE_MAKE, "")
              .with(
                  "flats = 13.0 \\},\\n\\]\\n",
                  """
                  flats = 13.0 },
                    { name = "D", at = [76.0, %s], thread = "M8", flats = 13.0 },
                  ]
                  """
                      .formatted(value));
      case "bearing" -> key("bearing", "{ x = " + value + ", height = 18.0 }");
      case "dented plate" ->
          with(PLATE_MAKE, "")
              .with(
                  "outline = \\{ diameter = 186.0 \\}",
                  ("outline = { points = [[90.0, -30.0], [90.0, 30.0], [-30.0, 85.0],"
                          + " [-55.0, 75.0], [%s, 0.0], [-55.0, -75.0], [-30.0, -85.0]] }")
                      .formatted(value));
      case "wall" ->
          with(
              "\\[\\[tower.landmark",
              "wall = { points = [[120.0, -120.0], [120.0, 120.0], [%1$s, 120.0], [%1$s, -120.0]] }\n\n[[tower.landmark"
                  .formatted(value));
      case "bracket" ->
          with(
                  "outline = \\[\\[-95.0, 36.0\\][^\\n]*",
                  "outline = [[%1$s, 36.0], [-40.0, 36.0], [-40.0, 92.0], [%1$s, 92.0]]"
                      .formatted(value))
              .with("^fasteners = [^\\n]*", "")
              .with("least_width = 12.0", "least_width = 0.0");
      case "fastener" -> with("at = \\[-86.0, 82.0\\]", "at = [" + value + ", 44.0]");
      case "keep", "static", "droop", "rotation" -> key(what, value);
      case "two bolts" -> with(PLATE_MAKE, "").with("  \\{ name = \"C\"[^\\n]*\\n", "");
      case "bolts forward" ->
          with(PLATE_MAKE, "")
              .with("at = \\[-38.0, 65.8\\]", "at = [%s, 65.8]".formatted(value))
              .with("at = \\[-38.0, -65.8\\]", "at = [%s, -65.8]".formatted(value))
              .with("from = -8.0, to", "from = 16.0, to")
              .with("index = \\[[^\\]]*\\]", "index = [16.0]");
      case "no seat" -> with("^seat +=[^\\n]*", "");
      default -> throw new IllegalArgumentException(what);
    }
  }

  private CommandRuns runs() throws Exception {
    CommandRuns runs = new CommandRuns(directory);
    runs.write("job.toml", text);
    return runs;
  }

  private static List<JsonNode> stops(CommandRuns runs) throws Exception {
    runs.run("check", "job.toml", "--json");
    return runs.data().path("sides").findValues("findings").stream()
        .flatMap(f -> StreamSupport.stream(f.spliterator(), false))
        .filter(f -> f.path("severity").asText().equals("stop"))
        .toList();
  }

  private static List<String> ids(List<JsonNode> stops) {
    return stops.stream().map(f -> f.path("id").asText()).distinct().toList();
  }

  private static int packAccepting(CommandRuns runs, List<String> ids) {
    List<String> args = new ArrayList<>(List.of("pack", "job.toml", "-o", "pack"));
    ids.forEach(id -> args.addAll(List.of("--accept", id)));
    return runs.run(args.toArray(String[]::new));
  }

  @ParameterizedTest(name = "{0}, {1} {2}")
  @CsvSource({
    // Independent, by hand: centre to edge less the hole's radius is 0 at the value between.
    "edge-cut.B, mark, 132.0, 131.8",
    "edge-land.C, face, -83.1, -83.3",
    "edge-landmark.B.drain-hole, landmark, 38.0, 38.2",
    "edge-plate.A, plate, 160.9, 161.1",
    "spacing.A-D, fourth bolt, 8.9, 9.1",
    "sweep, bearing, 18.0, 16.0",
    "plate-cover, dented plate, -50.0, -60.0",
    "plate-wall, wall, -100.9, -101.1",
    "notch-fastener.bonnet-hinge-bracket.1, fastener, -86.0, -87.0",
    "cut-shape, keep, 45.0, 5.0",
    "bearing-hull, bolts forward, 24.2, 23.8",
  })
  void noSwitchLiftsTheImpossible(String check, String what, String past, String inside)
      throws Exception {
    change(what, past);
    CommandRuns runs = runs();
    String id = "left." + check;
    List<JsonNode> stops = stops(runs);
    assertThat(ids(stops)).contains(id);
    assertThat(stops)
        .filteredOn(f -> f.path("id").asText().equals(id))
        .allMatch(f -> f.path("say").asText().contains("cannot be accepted"));
    assertThat(packAccepting(runs, ids(stops))).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("--accept " + id + " lifts nothing", id);
    assertThat(runs.names("pack")).containsExactly("report.txt");

    text = oneTower();
    change(what, inside);
    List<String> left = ids(stops(runs()));
    assertThat(packAccepting(runs, left)).as("accepting %s", left).isEqualTo(Exit.DONE);
    assertThat(runs.names("pack")).contains("pack.pdf");
  }

  @ParameterizedTest(name = "{0}, {1} {2}")
  @CsvSource({
    // The bracket's edge against the socket's circle, 11.6 mm round (-70.26, 40.59): 5 mm.
    "notch-width.bonnet-hinge-bracket, bracket, -86.8, -86.9",
    "seat, no seat, ,",
    "bolt-use.A, static, 32000.0, 20000.0",
    "damper-droop, droop, 8.9, 9.2",
    "caster-change, rotation, -40.0, 30.0",
  })
  void aPersonMayAnswerForTheRestByName(String check, String what, String past, String inside)
      throws Exception {
    change(what, past);
    CommandRuns runs = runs();
    List<String> stops = ids(stops(runs));
    assertThat(stops).contains("left." + check);
    assertThat(packAccepting(runs, List.of())).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("left." + check);
    assertThat(runs.names("pack")).containsExactly("report.txt");
    assertThat(packAccepting(runs, stops)).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("accepted: left." + check);
    assertThat(Files.exists(directory.resolve("pack/pack.pdf"))).isTrue();

    text = oneTower();
    if (inside != null) {
      change(what, inside);
    }
    assertThat(ids(stops(runs()))).doesNotContain("left." + check);
  }

  @Test
  void twoBoltsAreNoPlate() throws Exception {
    change("two bolts", "");
    CommandRuns runs = runs();
    List<String> stops = ids(stops(runs));
    assertThat(stops).containsExactly("left.bolt-count");
    assertThat(packAccepting(runs, stops)).isEqualTo(Exit.STOPPED);
    assertThat(runs.names("pack")).containsExactly("report.txt");
  }
}
