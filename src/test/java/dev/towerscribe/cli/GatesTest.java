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
      case "strip" ->
          with(
                  "outline = \\[\\[-95.0, 36.0\\][^\\n]*",
                  "outline = [[-95.0, 36.0], [-40.0, 36.0], [-40.0, %1$s], [-95.0, %1$s]]"
                      .formatted(value))
              .with("^fasteners = [^\\n]*", "");
      case "fastener" -> with("at = \\[-86.0, 82.0\\]", "at = [" + value + ", 44.0]");
      case "keep", "static", "droop", "rotation" -> key(what, value);
      case "two bolts" -> with(PLATE_MAKE, "").with("  \\{ name = \"C\"[^\\n]*\\n", "");
      case "bolts forward" ->
          with(PLATE_MAKE, "")
              .with("at = \\[-38.0, 65.8\\]", "at = [%s, 65.8]".formatted(value))
              .with("at = \\[-38.0, -65.8\\]", "at = [%s, -65.8]".formatted(value))
              .with("from = -8.0, to", "from = 16.0, to")
              .with("index = \\[[^\\]]*\\]", "index = [16.0]");
      case "no packing" -> {
        with("^packing +=[^\\n]*", "");
        key("crown", "{ across = 140.0, rise = " + value + " }");
      }
      case "lip" ->
          with(
              "^pivot_height",
              ("lip = { turned = \"down\", height = 3.0, radius = 2.0, flat = { diameter = %s } }\n"
                      + "pivot_height")
                  .formatted(value));
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
    // A strip 14 mm wide under a socket's circle 23.2 mm wide is cut in two; one 22 mm is not.
    "notch-width.bonnet-hinge-bracket, strip, 50.0, 58.0",
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
    assertThat(runs.names("pack")).containsExactly("overview.list", "overview.pdf", "report.txt");

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
    "damper-droop, droop, 7.2, 7.8",
    "caster-change, rotation, -40.0, 30.0",
    // Independent: bolt A lies 81.1 mm out, the rim of the cut 49 mm: 0.852 mm of gap for each mm
    // that the dome rises in 140.
    "stand-off, no packing, 1.18, 1.16",
    // Hole B lies 67.47 mm out and its washer reaches 8 mm: 59.47.
    "seat-lip.B, lip, 118.98, 118.90",
  })
  void aPersonMayAnswerForTheRestByName(String check, String what, String past, String inside)
      throws Exception {
    change(what, past);
    CommandRuns runs = runs();
    List<String> stops = ids(stops(runs));
    assertThat(stops).contains("left." + check);
    assertThat(packAccepting(runs, List.of())).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("left." + check);
    assertThat(runs.names("pack")).containsExactly("overview.list", "overview.pdf", "report.txt");
    assertThat(packAccepting(runs, stops)).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("accepted: left." + check);
    assertThat(Files.exists(directory.resolve("pack/pack.pdf"))).isTrue();

    text = oneTower();
    if (inside != null) {
      change(what, inside);
    }
    assertThat(ids(stops(runs()))).doesNotContain("left." + check);
  }

  private String both(String rightTable) {
    String wren = Templates.text("wren.toml");
    return wren.substring(0, wren.indexOf("[right.tower]")) + rightTable;
  }

  /** The person who writes outward as minus on one tower only. */
  @Test
  void aTowerMeasuredWithASlippedSignStops() throws Exception {
    String twin =
        """
        [right.tower]
        landmark = [
          { name = "drain hole", at = [37.0, %s], diameter = 9.0 },
          { name = "wiring clip hole", at = [-70.5, %s], diameter = 7.0 },
        ]
        """;
    text = both(twin.formatted("53.0", "58.5"));
    CommandRuns runs = runs();
    List<String> stops = ids(stops(runs));
    assertThat(stops).contains("both.towers-mirrored");
    assertThat(runs.out()).contains("in or out, a sign slip?");
    assertThat(packAccepting(runs, List.of())).isEqualTo(Exit.STOPPED);
    assertThat(packAccepting(runs, stops)).isEqualTo(Exit.DONE);
    // One landmark on the other side proves nothing: the other one says that the signs are right.
    text = both(twin.formatted("-53.0", "58.5"));
    assertThat(ids(stops(runs()))).doesNotContain("both.towers-mirrored");
    text = both(twin.formatted("-53.0", "-58.5"));
    assertThat(ids(stops(runs()))).doesNotContain("both.towers-mirrored");
    // Landmarks on the middle line are their own mirror image and no evidence.
    text =
        both(twin.formatted("2.0", "-1.0"))
            .replace("at = [38.0, -52.0]", "at = [38.0, -2.0]")
            .replace("at = [-70.0, -60.0]", "at = [-70.0, 1.0]");
    assertThat(ids(stops(runs()))).doesNotContain("both.towers-mirrored");
    text =
        both(twin.formatted("-52.0", "-60.0"))
            .replace("[37.0, ", "[-38.0, ")
            .replace("[-70.5, ", "[70.0, ");
    assertThat(ids(stops(runs()))).contains("both.towers-mirrored");
    assertThat(runs().run("check", "job.toml")).isEqualTo(Exit.STOPPED);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    // The right wheel's camber alone: 1.6, 1.4 and 0.4 deg apart.
    "camber, -2.1, stop",
    "camber, -1.9, caution",
    "camber, -0.9, note"
  })
  void sidesThatReadTooFarApartStop(String what, String value, String severity) throws Exception {
    text = both("[right.strut]\n" + what + " = " + value + "\n");
    CommandRuns runs = runs();
    List<String> stops = ids(stops(runs));
    JsonNode cross =
        runs.data().path("sides").findValues("findings").stream()
            .flatMap(f -> StreamSupport.stream(f.spliterator(), false))
            .filter(f -> f.path("id").asText().equals("both.cross-camber"))
            .findFirst()
            .orElseThrow();
    assertThat(cross.path("severity").asText()).isEqualTo(severity);
    if (!stops.isEmpty()) {
      assertThat(packAccepting(runs, List.of())).isEqualTo(Exit.STOPPED);
      assertThat(packAccepting(runs, stops)).isEqualTo(Exit.DONE);
    }
  }

  @Test
  void crossCasterStopsAsWell() throws Exception {
    text = both("[right.strut]\ntop = [-2.0, 545.0, 790.0]\n");
    assertThat(ids(stops(runs()))).contains("both.cross-caster");
  }

  /** A search goes on beside what a person may answer for, and tells it; not beside the rest. */
  @Test
  void aSearchTellsWhatStandsWhereverThePlatesGo() throws Exception {
    text = Templates.text("wren.toml").replaceFirst("(?m)^static = .*$", "static = 32000.0");
    with("^seat +=[^\\n]*", "");
    CommandRuns runs = runs();
    assertThat(runs.run("place", "job.toml", "--write", "placed.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("left.seat: ", "right.seat: ", "left.bolt-use.");
    text = runs.read("placed.toml");
    assertThat(ids(stops(runs())))
        .contains("left.seat", "right.seat")
        .allMatch(id -> id.endsWith(".seat") || id.contains(".bolt-use."));
    text = Templates.text("wren.toml");
    change("two bolts", "");
    assertThat(runs().run("place", "job.toml")).isEqualTo(Exit.STOPPED);
  }

  @Test
  void twoBoltsAreNoPlate() throws Exception {
    change("two bolts", "");
    CommandRuns runs = runs();
    List<String> stops = ids(stops(runs));
    assertThat(stops).containsExactly("left.bolt-count");
    assertThat(packAccepting(runs, stops)).isEqualTo(Exit.STOPPED);
    assertThat(runs.names("pack")).containsExactly("overview.list", "overview.pdf", "report.txt");
  }
}
