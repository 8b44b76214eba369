package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.alignment.AxisEstimate;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.store.FailingOps;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code align} from the words typed to the files written. */
class AlignCommandTest {
  @TempDir Path directory;

  private CommandRuns runs;

  @BeforeEach
  void writeJobs() throws Exception {
    runs = new CommandRuns(directory);
    String wren = Templates.text("wren.toml");
    runs.write("wren.toml", wren);
    runs.write("siskin.toml", Templates.text("siskin.toml"));
    runs.write("bare.toml", wren.replaceAll("(?s)\\[strut\\].*?\\[aims\\]", "[aims]"));
    runs.write(
        "line.toml",
        wren.replaceAll("(?m)^ball_joint = .*$", "ball_joint = [-135.0, 347.5, 208.5]"));
  }

  @Test
  void jsonHasEveryKeyOnBothSides() throws Exception {
    // Independent: settings and ends of travel as wren.toml states them.
    JsonNode all = runs.json("align", "wren.toml", "--json");
    assertThat(all.path("format").asInt()).isEqualTo(1);
    assertThat(all.path("sides").fieldNames()).toIterable().containsExactly("left", "right");
    for (JsonNode side : all.path("sides")) {
      List<JsonNode> readings = new ArrayList<>(List.of(side.path("before"), side.path("at")));
      side.path("settings").forEach(readings::add);
      assertThat(readings).hasSize(5);
      for (JsonNode reading : readings) {
        for (String key :
            List.of("caster", "camber", "inclination", "toe", "scrub", "trail", "damper")) {
          assertThat(reading.path(key).isNumber()).as(key).isTrue();
        }
      }
      assertThat(side.path("settings").findValues("setting"))
          .extracting(JsonNode::asDouble)
          .containsExactly(-8.0, 4.0, 16.0);
      JsonNode travel = side.path("curves").path("travel");
      assertThat(travel).hasSize(17);
      assertThat(travel.get(8).path("travel").asDouble()).isZero();
      // At no travel the curve is what the bay reads.
      for (String key : List.of("toe", "camber", "caster")) {
        assertThat(travel.get(8).path(key).asDouble())
            .isCloseTo(side.path("at").path(key).asDouble(), within(1e-9));
      }
      JsonNode steer = side.path("curves").path("steer");
      assertThat(steer).hasSize(15);
      assertThat(steer.get(0).path("steer").asDouble()).isEqualTo(-35);
      assertThat(side.path("plus_minus").path("caster").asDouble()).isBetween(0.05, 1.0);
      assertThat(side.path("per").path("setting").path("caster").asDouble()).isPositive();
      assertThat(side.path("reachable").path("at").path("from").asDouble())
          .isLessThan(side.path("at").path("camber").asDouble());
      assertThat(side.path("bump_steer").path("at").path("slope").isNumber()).isTrue();
      assertThat(side.path("estimate").asBoolean()).isFalse();
    }
    // The right's opening is 1 mm wider, so that its plate rests 0.03 mm lower on the dome.
    assertThat(all.path("cross").path("at").path("caster").asDouble()).isCloseTo(0, within(1e-3));
  }

  @Test
  void eachChoicesEffectIsWhatTheNextJobSays() throws Exception {
    // Independent: the same command on a job changed by a tenth of a unit either way.
    JsonNode per = runs.json("align", "wren.toml", "--json").path("sides").path("left").path("per");
    for (String[] key :
        new String[][] {
          {"rotation", "rotation = 55.0", "rotation = "},
          {"rearward", "rearward = 8.0", "rearward = "},
          {"inboard", "inboard  = -3.0", "inboard = "},
        }) {
      double value = Double.parseDouble(key[1].replaceAll(".*= ", ""));
      double[] caster = new double[2];
      for (int i = 0; i < 2; i++) {
        runs.write(
            "next.toml",
            Templates.text("wren.toml").replace(key[1], key[2] + (value - 0.1 + 0.2 * i)));
        caster[i] =
            runs.json("align", "next.toml", "--json")
                .path("sides")
                .path("left")
                .path("at")
                .path("caster")
                .asDouble();
      }
      // A central difference over 0.2: its error is 0.01 times a sixth of the third derivative.
      assertThat(per.path(key[0]).path("caster").asDouble())
          .as(key[0])
          .isCloseTo((caster[1] - caster[0]) / 0.2, within(1e-5));
    }
  }

  @Test
  void onlyAnAxisIsMarkedAnEstimate() throws Exception {
    JsonNode left = runs.json("align", "siskin.toml", "--json").path("sides").path("left");
    assertThat(left.path("estimate").asBoolean()).isTrue();
    assertThat(left.path("at").has("toe")).isFalse();
    assertThat(left.has("curves")).isFalse();
    assertThat(left.has("plus_minus")).isFalse();
    Job job = new JobReader(Lettering::canWrite).read(directory.resolve("siskin.toml"));
    SideJob side = job.sides().get(Side.LEFT);
    AxisEstimate wanted =
        AxisEstimate.at(side.axis().orElseThrow(), side, side.bearing(side.mount().settingMm()));
    assertThat(left.path("at").path("caster").asDouble())
        .isCloseTo(Math.toDegrees(wanted.caster()), within(1e-9));
    assertThat(runs.run("align", "siskin.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("AN ESTIMATE", "Degrees and inches");
  }

  @Test
  void reportSaysBeforeChosenAndEverySetting() {
    assertThat(runs.run("align", "wren.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.err()).isEmpty();
    assertThat(runs.out())
        .contains(
            "LEFT WHEEL",
            "RIGHT WHEEL",
            "before the work",
            "at the chosen setting",
            "setting -8 mm",
            "Knuckle bolt: camber -3.07 to -1.06 (before the work -2.10 to -0.10) deg",
            "Bump steer, deg toe-in for 10 mm of bump",
            "LEFT AGAINST RIGHT",
            "caution left.aim-caster");
  }

  @Test
  void neitherPointsNorAxisIsWrongUseInAPlainSentence() {
    assertThat(runs.run("align", "bare.toml", "-o", "out")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.out()).isEmpty();
    assertThat(runs.err()).contains("bare.toml gives no [strut] points and no measured [axis]");
    assertThat(directory.resolve("out")).doesNotExist();
    // Such a job is still good for sheets.
    assertThat(runs.run("check", "bare.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.run("pack", "bare.toml", "-o", "out")).isEqualTo(Exit.DONE);
  }

  @Test
  void pointsInALineAreAStopWithoutFigures() throws Exception {
    assertThat(runs.run("align", "line.toml", "--json", "-o", "out")).isEqualTo(Exit.STOPPED);
    JsonNode left = runs.data().path("sides").path("left");
    assertThat(left.has("at")).isFalse();
    assertThat(left.path("findings").get(0).path("where").asText()).contains("ball_joint");
    assertThat(runs.run("align", "line.toml")).isEqualTo(Exit.STOPPED);
    assertThat(runs.run("check", "line.toml")).isEqualTo(Exit.STOPPED);
    assertThat(runs.out()).contains("left.strut-points.");
  }

  @Test
  void checkCarriesTheAlignmentsFindings() throws Exception {
    JsonNode findings =
        runs.json("check", "wren.toml", "--json").path("sides").path("left").path("findings");
    assertThat(findings.findValues("id"))
        .extracting(JsonNode::asText)
        .contains("left.aim-caster", "left.aim-camber", "left.camber-limit.setting-3")
        .contains("left.reach-travel", "both.cross-caster", "both.cross-camber");
  }

  @Test
  void csvParsesAndHoldsTheCurves() throws Exception {
    JsonNode left =
        runs.json("align", "wren.toml", "--json", "-o", "a/b").path("sides").path("left");
    assertThat(runs.names("a/b"))
        .containsExactly("alignment.csv", "alignment.list", "alignment.pdf");
    String text = runs.read("a/b/alignment.csv");
    // RFC 4180: every line ends in CR LF, and as many fields on each as in the heading.
    assertThat(text).endsWith("\r\n").doesNotContain("\"");
    String[] lines = text.split("\r\n");
    String[] head = lines[0].split(",");
    assertThat(head).contains("side", "state", "curve", "travel_mm", "steer_deg", "camber_deg");
    // Two sides, before and after, 17 places of travel and 15 of steer.
    assertThat(lines).hasSize(1 + 2 * 2 * (17 + 15));
    int row = 0;
    for (String line : lines) {
      String[] fields = line.split(",", -1);
      assertThat(fields).hasSameSizeAs(head);
      if (line.startsWith("left,at,travel,")) {
        JsonNode point = left.path("curves").path("travel").get(row++);
        assertThat(Double.parseDouble(fields[3])).isEqualTo(point.path("travel").asDouble());
        assertThat(Double.parseDouble(fields[6]))
            .isCloseTo(point.path("camber").asDouble(), within(5.1e-7));
      }
    }
    assertThat(row).isEqualTo(17);
  }

  @Test
  void filesAreTheSameInEveryLocaleAndReplaceOnlyTheirOwn() throws Exception {
    runs.run("align", "wren.toml", "-o", "out");
    byte[] csv = Files.readAllBytes(directory.resolve("out/alignment.csv"));
    byte[] pdf = Files.readAllBytes(directory.resolve("out/alignment.pdf"));
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(runs.run("align", "wren.toml", "-o", "out")).isEqualTo(Exit.DONE);
    } finally {
      Locale.setDefault(locale);
    }
    assertThat(directory.resolve("out/alignment.csv")).hasBinaryContent(csv);
    assertThat(directory.resolve("out/alignment.pdf")).hasBinaryContent(pdf);
    // Beside a pack, which it leaves alone, and which leaves it alone.
    assertThat(runs.run("pack", "wren.toml", "-o", "out")).isEqualTo(Exit.DONE);
    assertThat(runs.run("align", "siskin.toml", "-o", "out")).isEqualTo(Exit.DONE);
    assertThat(runs.run("pack", "siskin.toml", "-o", "out")).isEqualTo(Exit.DONE);
    assertThat(runs.names("out")).contains("alignment.csv", "alignment.pdf", "pack.pdf");
    // A file that is not ours bars both, and both stay away.
    Files.createDirectories(directory.resolve("theirs"));
    runs.write("theirs/alignment.csv", "mine");
    assertThat(runs.run("align", "wren.toml", "-o", "theirs")).isEqualTo(Exit.FILES);
    assertThat(runs.names("theirs")).containsExactly("alignment.csv");
    assertThat(directory.resolve("theirs/alignment.csv")).hasContent("mine");
  }

  @Test
  void aFullDiskLeavesNothingOrAllOfTheOld() throws Exception {
    // Failing at each step in turn.
    for (int i = 1; i < 24; i++) {
      Path place = directory.resolve("full" + i);
      int exit =
          runs.run(
              new FailingOps(FailingOps.Way.ONCE, i),
              "align",
              "wren.toml",
              "-o",
              place.getFileName().toString());
      if (exit == Exit.DONE) {
        // What was left to clean up may fail; the next run does it.
        assertThat(runs.names(place.getFileName().toString()))
            .contains("alignment.csv", "alignment.list", "alignment.pdf");
        continue;
      }
      assertThat(exit).isEqualTo(Exit.FILES);
      if (Files.exists(place)) {
        assertThat(runs.names(place.getFileName().toString()))
            .noneMatch(n -> n.startsWith("alignment"));
      }
    }
  }
}
