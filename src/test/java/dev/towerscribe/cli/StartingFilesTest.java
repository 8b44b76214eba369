package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.job.Templates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files to fill in, by the hands of somebody who fills them in badly, then halfway, then well. */
class StartingFilesTest {
  private static final Pattern BLANK = Pattern.compile("\"___\"");

  @TempDir Path directory;

  private CommandRuns runs;

  @BeforeEach
  void inTheFolder() {
    runs = new CommandRuns(directory);
  }

  private int run(String words) {
    return runs.run(words.split(" "));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  /** The lines that count, without their hashes. */
  private static String counted(String text) {
    return text.replaceAll("#[^\n]*", "");
  }

  // The job.

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check job.toml",
        "check job.toml --json",
        "pack job.toml -o pack",
        "align job.toml",
        "place job.toml",
        "drawing job.toml -o drawings",
        "ruler --job job.toml",
        "drilled job.toml job.toml",
        "drilled --start job.toml -o readings.toml",
        "record --start job.toml -o visit.toml",
        "record job.toml job.toml"
      })
  void aBlankJobMakesNothing(String words) throws Exception {
    assertThat(run("start")).isEqualTo(Exit.DONE);
    assertThat(run(words)).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.out()).isEmpty();
    assertThat(names()).containsExactly("job.toml");
    // One block, a line for each table, and nothing but blanks in it.
    assertThat(runs.err().lines().skip(1))
        .hasSize(5)
        .allSatisfy(l -> assertThat(l).contains("still blank"));
    assertThat(runs.err())
        .contains("title: still blank")
        .contains("tower: still blank: sheet, opening.diameter, mark.diameter, lean.inboard,")
        .contains("landmark[0, 1].name")
        .contains("plate: still blank: name, thickness,", "bolts[0 to 2].at")
        .contains("mount: still blank: rotation, rearward, inboard, setting, seat")
        .contains("strut: still blank: top,", "for each ___");
  }

  /**
   * Blank after blank, in the file's order: refused to the last, and every one that is left named.
   */
  @Test
  void aHalfFilledJobNamesWhatIsLeft() throws Exception {
    assertThat(run("start")).isEqualTo(Exit.DONE);
    String text = runs.read("job.toml");
    List<String> figures = wrens();
    int filled = 0;
    while (BLANK.matcher(counted(text)).find()) {
      if (filled % 12 == 0) {
        runs.write("job.toml", text);
        assertThat(run("check job.toml")).as("after %s", filled).isEqualTo(Exit.WRONG_USE);
        assertThat(runs.err().lines().skip(1))
            .as("after %s", filled)
            .isNotEmpty()
            .allSatisfy(l -> assertThat(l).contains("still blank"));
      }
      text = fill(text, figures.get(filled++));
    }
    assertThat(filled).isEqualTo(figures.size());
    runs.write("job.toml", text);
    assertThat(run("check job.toml")).as(runs.err()).isIn(Exit.DONE, Exit.STOPPED);
    assertThat(runs.err()).doesNotContain("cannot be used");
    assertThat(runs.out()).contains("My car", "left");
  }

  /** The first blank of a line that counts, filled. */
  private static String fill(String text, String figure) {
    int from = 0;
    for (String line : text.split("(?<=\n)")) {
      int hash = line.indexOf('#');
      int at = line.indexOf("\"___\"");
      if (at >= 0 && (hash < 0 || at < hash)) {
        return text.substring(0, from + at) + figure + text.substring(from + at + 5);
      }
      from += line.length();
    }
    throw new IllegalArgumentException("no blank left");
  }

  /** What somebody with the demo's car writes, in the order of the blanks. */
  private static List<String> wrens() {
    return List.of(
            ("\"My car\" 1.4 62.0 104.0 5.0 2.0 12.0"
                    + " 100.0 -100.0 100.0 100.0 -105.0 100.0 -105.0 -100.0"
                    + " \"drain\" 38.0 -52.0 9.0 \"clip\" -70.0 -60.0 7.0"
                    + " \"plate\" 6.0 186.0 true -8.0 16.0 8.0 18.0 22.0"
                    + " 76.0 0.0 \"M8\" 13.0 -38.0 65.8 \"M8\" 13.0 -38.0 -65.8 \"M8\" 13.0"
                    + " 55.0 8.0 -3.0 16.0 \"top\""
                    + " -20.0 545.0 790.0 8.0 655.0 190.0 20.0 345.0 205.0 -290.0 350.0 212.0"
                    + " -4.0 590.0 420.0 -120.0 330.0 262.0 -118.0 640.0 258.0 0.0 722.0 290.0"
                    + " 290.0 -0.5 0.0")
                .replace("My car", "My_car")
                .split(" "))
        .stream()
        .map(f -> f.replace('_', ' '))
        .toList();
  }

  @Test
  void aTypingSlipInABlankFileIsNamedBesideTheBlanks() throws Exception {
    assertThat(run("start")).isEqualTo(Exit.DONE);
    String text = runs.read("job.toml");
    runs.write(
        "job.toml",
        text.replaceFirst("sheet = \"___\"", "sheet = 14.0").replaceFirst("lean = ", "laen = "));
    assertThat(run("check job.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err().lines().filter(l -> !l.contains("still blank")).skip(1))
        .hasSize(2)
        .anySatisfy(l -> assertThat(l).contains("tower.sheet: 14; allowed: 0.3 to 10 mm"))
        .anySatisfy(l -> assertThat(l).contains("tower.laen: unknown key. Did you mean lean?"));
  }

  /** The side that is not worked on may stay blank. */
  @Test
  void blanksOfTheOtherSideDoNotCount() throws Exception {
    String demo = Templates.text("wren.toml");
    String left = demo.replace("sides  = [\"left\", \"right\"]", "sides = [\"left\"]");
    runs.write("one.toml", left.replace("opening = { diameter = 63.0 }", "opening = \"___\""));
    assertThat(run("check one.toml")).isEqualTo(Exit.DONE);
    runs.write("two.toml", demo.replace("opening = { diameter = 63.0 }", "opening = \"___\""));
    assertThat(run("check two.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("right: still blank: tower.opening");
  }

  /** A blank that each side fills for itself is none. */
  @Test
  void aSharedBlankThatBothSidesFillIsNone() throws Exception {
    runs.write(
        "job.toml",
        Templates.text("wren.toml").replaceFirst("sheet = 1.4", "sheet = \"___\"")
            + "sheet = 1.4\n[left.tower]\nsheet = 1.4\n");
    assertThat(run("check job.toml")).as(runs.err()).isEqualTo(Exit.DONE);
  }

  /** None of a demo's figures stands in a file to fill in. */
  @Test
  void aStartingFileHoldsNoFigureOfACar() throws Exception {
    assertThat(run("start")).isEqualTo(Exit.DONE);
    Matcher figures = Pattern.compile("-?[0-9]+\\.[0-9]+").matcher(counted(runs.read("job.toml")));
    assertThat(figures.find()).isFalse();
    assertThat(run("start --units in -o inch.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.read("inch.toml")).contains("units  = \"in\"", "paper = \"Letter\"");
    assertThat(run("start --units in --paper Tabloid -o big.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.read("big.toml")).contains("paper = \"Tabloid\"");
  }

  /** What stands behind a hash is no broken TOML: hashes off, it is blank like the rest. */
  @Test
  void everyHashedKeyIsOneThatIsKnown() throws Exception {
    assertThat(run("start")).isEqualTo(Exit.DONE);
    String open =
        runs.read("job.toml").replaceAll("(?m)^ *# (\\[{1,2}[a-z.]+\\]{1,2}|[a-z_]+ = )", "$1");
    runs.write("job.toml", open);
    assertThat(run("check job.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err().lines().skip(1))
        .hasSizeGreaterThan(5)
        .allSatisfy(l -> assertThat(l).contains("still blank"));
    assertThat(runs.err()).contains("axis: still blank", "load: still blank", "right: still blank");
  }

  @Test
  void aBlankPlateFileIsNamedByItsFile() throws Exception {
    runs.write("job.toml", Templates.text("dunnock.toml"));
    String plate = Templates.text("plates/four-bolt.toml");
    runs.write(
        "plates/four-bolt.toml", plate.replaceFirst("thickness = [0-9.]+", "thickness = \"___\""));
    assertThat(run("check job.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err().lines().skip(1))
        .singleElement()
        .asString()
        .contains("plates/four-bolt.toml: still blank: thickness");
  }

  // Readings and a visit.

  /** A landmark's name as TOML has it, with a quote and a backslash. */
  private static final String ODD = "plug \\\"12\\\\";

  /** The holes as planned, read with faultless calipers: by the report that lists them. */
  @Test
  void readingsAreFilledInAndUsed() throws Exception {
    runs.write("job.toml", Templates.text("wren.toml").replace("drain hole", ODD));
    assertThat(run("drilled --start job.toml -o r.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .isEqualTo("wrote r.toml\nfill in every ___, then: towerscribe drilled job.toml r.toml\n");
    String text = runs.read("r.toml");
    // Three holes: three pairs, near and far edges; each to two landmarks.
    assertThat(text.split("from = ", -1)).hasSize(1 + 2 * (6 + 6));
    assertThat(text).contains("title = \"Wren hatch, road and track days\"", ODD);
    assertThat(run("drilled job.toml r.toml -o r.pdf")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err().lines().skip(1))
        .hasSize(2)
        .allSatisfy(
            l ->
                assertThat(l)
                    .contains("still blank: hole[0 to 2].diameter, span[0, 2, 4, 6 to 11].inside"));
    assertThat(names()).containsExactly("job.toml", "r.toml");

    JsonNode sides = runs.json("check", "job.toml", "--json").path("sides");
    String filled = text;
    for (String side : List.of("left", "right")) {
      JsonNode s = sides.path(side);
      String head = filled.substring(0, filled.indexOf("[" + side + "]"));
      filled = head + filledSide(filled.substring(head.length()), s);
    }
    runs.write("r.toml", filled);
    int exit = run("drilled job.toml r.toml -o r.pdf");
    assertThat(exit).as(runs.err()).isEqualTo(Exit.DONE);
    assertThat(names()).containsExactly("job.toml", "r.pdf", "r.toml");
  }

  /** Each blank of the first side in a text, from the places of holes and landmarks. */
  private static String filledSide(String text, JsonNode side) {
    Map<String, double[]> places = new HashMap<>();
    side.path("holes")
        .forEach(
            h ->
                places.put(
                    h.path("name").asText(),
                    new double[] {
                      h.path("fore").asDouble(),
                      h.path("in").asDouble(),
                      h.path("diameter").asDouble()
                    }));
    boolean left = text.startsWith("[left]");
    places.put(ODD, new double[] {left ? 38.0 : 38.5, left ? -52.0 : -51.0, 9.0});
    places.put("wiring clip hole", new double[] {-70.0, -60.0, 7.0});
    StringBuilder out = new StringBuilder();
    boolean done = false;
    for (String line : text.split("(?<=\n)")) {
      done |= left && line.startsWith("[right]");
      Matcher hole = Pattern.compile("name = \"(.)\", diameter").matcher(line);
      Matcher span =
          Pattern.compile("from = \"(.)\", to = \"(.+)\", (inside|outside)").matcher(line);
      double figure = 0;
      if (hole.find()) {
        figure = places.get(hole.group(1))[2];
      } else if (span.find()) {
        double[] a = places.get(span.group(1));
        double[] b = places.get(span.group(2));
        double edges = (a[2] + b[2]) / 2;
        figure =
            Math.hypot(a[0] - b[0], a[1] - b[1])
                + (span.group(3).equals("inside") ? -edges : edges);
      }
      boolean counts = !done && !line.strip().startsWith("#");
      out.append(
          counts
              ? line.replace("\"___\"", "%s".formatted(Math.round(figure * 100) / 100.0))
              : line);
    }
    return out.toString();
  }

  @Test
  void aStartIsOfTheJobsOwnSidesAndUnit() throws Exception {
    runs.write(
        "j.toml", Templates.text("siskin.toml").replace("[\"left\", \"right\"]", "[\"right\"]"));
    assertThat(run("drilled --start j.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.read("drilled.toml"))
        .contains("units = \"in\"", "\n[right]\n")
        .doesNotContain("[left]");
    assertThat(run("record --start j.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.read("visit.toml"))
        .contains("units = \"in\"", "[right.before]", "[right.after]", "planned: 0.30")
        .doesNotContain("[left", "knuckle");
  }

  @Test
  void aVisitIsFilledInAndUsed() throws Exception {
    runs.write("job.toml", Templates.text("wren.toml"));
    assertThat(run("record --start job.toml -o v.toml")).isEqualTo(Exit.DONE);
    assertThat(run("record job.toml v.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err().lines().skip(1))
        .hasSize(4)
        .allSatisfy(l -> assertThat(l).contains("still blank"));
    assertThat(runs.err())
        .contains("date: still blank", "left: still blank: before.caster, before.camber,")
        .contains("after.setting, after.knuckle");
    assertThat(names()).containsExactly("job.toml", "v.toml");
    String text =
        runs.read("v.toml")
            .replaceFirst("date = \"___\"", "date = 2026-12-03")
            .replaceFirst("visit = \"___\"", "visit = \"first\"")
            .replace("\ncaster = \"___\"", "\ncaster = 2.6")
            .replace("\nsetting = \"___\"", "\nsetting = \"16 mm\"")
            .replaceAll("(\n[a-z]+) = \"___\"", "$1 = 0.0");
    runs.write("v.toml", text);
    assertThat(run("record job.toml v.toml")).as(runs.err()).isEqualTo(Exit.DONE);
    assertThat(runs.out()).endsWith("added visit 1 to job.record.txt\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "drilled job.toml",
        "drilled --start job.toml r.toml",
        "drilled --start job.toml --json",
        "drilled --start job.toml --paper A4",
        "drilled --start job.toml --accept x",
        "drilled --start job.toml -o job.toml --force",
        "drilled --start",
        "record --start",
        "record --start job.toml v.toml",
        "record --start job.toml --json",
        "record --start job.toml --strike 1",
        "record --start --list .",
        "record --start job.toml -o job.toml --force"
      })
  void wrongUseOfAStartWritesNothing(String words) throws Exception {
    runs.write("job.toml", Templates.text("wren.toml"));
    assertThat(run(words)).isEqualTo(Exit.WRONG_USE);
    assertThat(names()).containsExactly("job.toml");
    assertThat(runs.read("job.toml")).isEqualTo(Templates.text("wren.toml"));
  }
}
