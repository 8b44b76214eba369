package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.job.Templates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code drilled} from the words typed to the file written. */
class DrilledCommandTest {
  @TempDir Path directory;

  private CommandRuns runs;

  @BeforeEach
  void writeFiles() throws Exception {
    runs = new CommandRuns(directory);
    runs.write("wren.toml", Templates.text("wren.toml"));
    String readings = Templates.text("wren-drilled.toml");
    runs.write("good.toml", readings);
    runs.write(
        "off.toml",
        readings.replaceFirst("inside = \\[121.90, 121.85\\]", "inside = [123.90, 123.85]"));
    runs.write("shape.toml", readings.replaceAll("(?m)^.*to = \"(drain|wiring).*\n", ""));
  }

  @Test
  void theDemoSaysThatBothPlatesGoOn() throws Exception {
    JsonNode all = runs.json(Exit.DONE, "drilled", "wren.toml", "good.toml", "--json");
    assertThat(all.path("format").asInt()).isEqualTo(1);
    assertThat(all.path("sides").fieldNames()).toIterable().containsExactly("left", "right");
    for (JsonNode side : all.path("sides")) {
      assertThat(side.path("tied").asBoolean()).isTrue();
      assertThat(side.path("complete").asBoolean()).isTrue();
      assertThat(side.path("fit").path("verdict").asText()).isEqualTo("goes-on");
      // Independent: the demo's holes are off by some tenths of the 1 mm of play.
      assertThat(side.path("fit").path("slack").asDouble()).isBetween(0.4, 0.9);
      assertThat(side.path("holes")).hasSize(3);
      for (JsonNode hole : side.path("holes")) {
        JsonNode error = hole.path("error");
        assertThat(error.path("fore").asDouble())
            .isCloseTo(
                hole.path("found").path("fore").asDouble()
                    - hole.path("planned").path("fore").asDouble(),
                within(1e-9));
        assertThat(Math.hypot(error.path("fore").asDouble(), error.path("in").asDouble()))
            .isLessThan(1.0);
      }
      assertThat(side.path("mount").path("planned").path("rotation").asDouble())
          .isCloseTo(55, within(1e-9));
      assertThat(side.path("mount").path("as_drilled").path("rotation").asDouble())
          .isBetween(54.0, 56.0);
      assertThat(side.path("alignment").path("caster").path("as_drilled").isNumber()).isTrue();
      assertThat(side.path("alignment").path("nearest_mark").path("setting").asDouble())
          .isEqualTo(16.0);
      assertThat(side.path("findings").findValuesAsText("severity")).doesNotContain("stop");
    }
  }

  @Test
  void theReportNamesEveryTable() {
    assertThat(runs.run("drilled", "wren.toml", "good.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.err()).isEmpty();
    assertThat(runs.out())
        .contains(
            "LEFT TOWER",
            "RIGHT TOWER",
            "THE PLATE GOES ON",
            "off the pattern",
            "metal beside hole",
            "middle of the plate's play",
            "at setting 16 mm, deg",
            "toe, not reset",
            "not a certificate");
  }

  @Test
  void aStopEndsWithOneUntilItIsAccepted() throws Exception {
    // Independent: off.toml has one reading 2 mm too long.
    assertThat(runs.run("drilled", "wren.toml", "off.toml", "-o", "record.pdf"))
        .isEqualTo(Exit.STOPPED);
    assertThat(runs.out()).contains("stop left.drilled-off.A-to-B-inside");
    assertThat(runs.err()).contains("record.pdf was not written", "left.drilled-off.A-to-B-inside");
    assertThat(directory.resolve("record.pdf")).doesNotExist();
    String id = "left.drilled-off.A-to-B-inside";
    assertThat(runs.run("drilled", "wren.toml", "off.toml", "-o", "record.pdf", "--accept", id))
        .isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("stop (accepted) " + id, "wrote record.pdf");
    assertThat(directory.resolve("record.pdf")).isNotEmptyFile();
    JsonNode all =
        runs.json(Exit.DONE, "drilled", "wren.toml", "off.toml", "--json", "--accept", id);
    assertThat(all.path("accepted").get(0).asText()).isEqualTo(id);
    JsonNode off = all.path("sides").path("left").path("contradictions").get(0);
    assertThat(off.path("off").asDouble()).isCloseTo(2.0, within(0.15));
    assertThat(off.path("left_out").asBoolean()).isTrue();
  }

  @Test
  void onlyStopsOfTheseReadingsCanBeAccepted() {
    assertThat(runs.run("drilled", "wren.toml", "good.toml", "--accept", "left.drilled-fit"))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("not a stop finding of these readings", "no stop finding");
    assertThat(runs.run("drilled", "wren.toml", "off.toml", "--accept", "left.edge-cut.B"))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("their stop findings are: left.drilled-off.A-to-B-inside");
  }

  @Test
  void distancesBetweenHolesAloneGiveNoPlace() throws Exception {
    JsonNode all = runs.json(Exit.DONE, "drilled", "wren.toml", "shape.toml", "--json");
    for (JsonNode side : all.path("sides")) {
      assertThat(side.path("tied").asBoolean()).isFalse();
      assertThat(side.has("mount")).isFalse();
      assertThat(side.has("alignment")).isFalse();
      assertThat(side.path("holes").get(0).has("found")).isFalse();
      assertThat(side.path("fit").path("verdict").asText()).isEqualTo("goes-on");
    }
  }

  @Test
  void faultsAreAllToldAndNothingIsWritten() throws Exception {
    runs.write(
        "bad.toml",
        Templates.text("wren-drilled.toml")
            .replace("caliper  = 0.05", "caliper  = -1")
            .replace("to = \"drain hole\", inside = 132.95", "to = \"drain\", inside = 132.95"));
    assertThat(runs.run("drilled", "wren.toml", "bad.toml", "-o", "record.pdf"))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err())
        .contains(
            "the readings file bad.toml cannot be used",
            "uncertainty.caliper: -1; allowed: 0.001 to 2 mm",
            "left.span[6].to: \"drain\"",
            "A, B, C, drain hole, wiring clip hole");
    assertThat(runs.out()).isEmpty();
    assertThat(directory.resolve("record.pdf")).doesNotExist();
  }

  @Test
  void filesThatAreNotThereOrInTheWay() throws Exception {
    assertThat(runs.run("drilled", "wren.toml", "none.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("none.toml");
    assertThat(runs.run("drilled", "wren.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.run("drilled", "wren.toml", "good.toml", "-o", "no/record.pdf"))
        .isEqualTo(Exit.FILES);
    assertThat(runs.run("drilled", "wren.toml", "good.toml", "-o", "r.pdf", "--paper", "B5"))
        .isEqualTo(Exit.WRONG_USE);
    runs.write("r.pdf", "mine");
    assertThat(runs.run("drilled", "wren.toml", "good.toml", "-o", "r.pdf")).isEqualTo(Exit.FILES);
    assertThat(directory.resolve("r.pdf")).hasContent("mine");
    // What is no PDF is nobody's old page: force does not make it one.
    for (String mine : List.of("r.pdf", "good.toml", "wren.toml", "wren.record.txt")) {
      Path file = directory.resolve(mine);
      if (!Files.exists(file)) {
        Files.writeString(file, "%PDF- or not, a record only grows");
      }
      byte[] there = Files.readAllBytes(file);
      assertThat(runs.run("drilled", "wren.toml", "good.toml", "-o", mine, "--force"))
          .as(mine)
          .isEqualTo(Exit.WRONG_USE);
      assertThat(runs.err()).contains("left alone");
      assertThat(file).hasBinaryContent(there);
    }
    runs.write("r.pdf", "%PDF-1.4 an old page");
    assertThat(
            runs.run(
                "drilled", "wren.toml", "good.toml", "-o", "r.pdf", "--force", "--paper", "Letter"))
        .isEqualTo(Exit.DONE);
    byte[] first = Files.readAllBytes(directory.resolve("r.pdf"));
    assertThat(first.length).isGreaterThan(1000);
    // The same command again finds the same bytes and is content.
    assertThat(runs.run("drilled", "wren.toml", "good.toml", "-o", "r.pdf", "--paper", "Letter"))
        .isEqualTo(Exit.DONE);
    assertThat(Files.readAllBytes(directory.resolve("r.pdf"))).isEqualTo(first);
  }

  @Test
  void startWritesTheDemoReadings() throws Exception {
    assertThat(runs.run("start", "--list")).isEqualTo(Exit.DONE);
    assertThat(runs.out().lines()).contains("wren", "wren-drilled");
    assertThat(runs.run("start", "--template", "wren-drilled", "-o", "readings.toml"))
        .isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("towerscribe drilled JOB readings.toml");
    assertThat(directory.resolve("readings.toml")).hasContent(Templates.text("wren-drilled.toml"));
    assertThat(runs.run("drilled", "wren.toml", "readings.toml")).isEqualTo(Exit.DONE);
  }

  /** Holes that are drilled cannot be moved by moving the plate: nobody is told to. */
  @Test
  void nothingToldAfterDrillingAdvisesToMoveThePlate() throws Exception {
    String tight =
        Templates.text("wren.toml")
            .replace("mark = { diameter = 104.0 }", "mark = { diameter = 140.0 }")
            .replace("mark = { diameter = 105.0 }", "mark = { diameter = 141.0 }")
            .replace("least_width = 12.0", "least_width = 40.0")
            .replace("margin = 3.0", "margin = 50.0")
            .replace("caster = [5.5, 6.0]", "caster = [9.5, 10.0]");
    runs.write("tight.toml", tight);
    JsonNode all = runs.json(Exit.STOPPED, "drilled", "tight.toml", "good.toml", "--json");
    List<String> told = all.findValuesAsText("say");
    assertThat(all.findValuesAsText("severity").stream().filter("stop"::equals))
        .hasSizeGreaterThan(8);
    assertThat(told)
        .anyMatch(say -> say.contains("weld the hole up"))
        .noneMatch(
            say ->
                say.matches(
                    "(?is).*(((turn|shift|move) (or (turn|shift|move) )?the plate)"
                        + "|more rotation|rearward offset|inboard offset|smaller cut).*"));
    // Before drilling the same towers are told so.
    runs.run("check", "tight.toml");
    assertThat(runs.out()).contains("Turn or shift the plate");
  }
}
