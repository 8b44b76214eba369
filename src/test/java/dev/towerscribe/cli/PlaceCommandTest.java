package dev.towerscribe.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.Tries;
import dev.towerscribe.job.Templates;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code place} from the words typed to the files written. */
class PlaceCommandTest {
  private static final String INPUT = "job.toml";

  /** Whole seconds of a run, spread so that kills fall before, at and after its writing. */
  private static final int[] KILLS_MS = {300, 900, 1500, 2500, 4000};

  private static final long LONGEST_RUN_S = 120;

  /** One rounding of an angle given in degrees. */
  private static final double DEG = 1e-12;

  @TempDir Path directory;

  private CommandRuns runs;

  @BeforeEach
  void writeJob() throws Exception {
    runs = new CommandRuns(directory);
    runs.write(INPUT, Templates.text("wren.toml"));
  }

  @Test
  void theWrittenJobPassesCheckAndAlignTellsTheOfferedFigures() throws Exception {
    JsonNode offers = runs.json("place", INPUT, "--json", "--write", "b.toml", "--offer", "b");
    assertThat(offers.get("offers").size()).isBetween(3, 5);
    JsonNode second = offers.get("offers").get(1);
    assertThat(second.fieldNames())
        .toIterable()
        .containsExactly(
            "name",
            "rotation",
            "rearward",
            "inboard",
            "setting",
            "caster",
            "camber",
            "bump_steer",
            "metal_removed",
            "edge_slack",
            "held_back_by");
    assertThat(runs.run("check", "b.toml")).isEqualTo(Exit.DONE);
    JsonNode aligned = runs.json("align", "b.toml", "--json").get("sides");
    double caster = Double.POSITIVE_INFINITY;
    double camber = Double.POSITIVE_INFINITY;
    for (JsonNode side : aligned) {
      caster = Math.min(caster, side.get("at").get("caster").doubleValue());
      camber = Math.min(camber, side.get("at").get("camber").doubleValue());
    }
    assertThat(second.get("caster").doubleValue()).isCloseTo(caster, within(DEG));
    assertThat(second.get("camber").doubleValue()).isCloseTo(camber, within(DEG));
    // Only the values of [mount] changed.
    List<String> before = Files.readAllLines(directory.resolve(INPUT));
    List<String> after = Files.readAllLines(directory.resolve("b.toml"));
    assertThat(after).hasSameSizeAs(before);
    List<String> changed = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      if (!before.get(i).equals(after.get(i))) {
        changed.add(after.get(i).split(" ")[0]);
        assertThat(comment(after.get(i))).isEqualTo(comment(before.get(i)));
      }
    }
    assertThat(changed).isSubsetOf("rotation", "rearward", "inboard", "setting").isNotEmpty();
    assertThat(runs.read(INPUT)).isEqualTo(Templates.text("wren.toml"));
  }

  private static String comment(String line) {
    return line.contains("#") ? line.substring(line.indexOf('#')) : "";
  }

  @Test
  void theMapIsWrittenWholeAndTheSameTwice() throws Exception {
    assertThat(runs.run("place", INPUT, "-o", "one")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .contains("WHAT HOLDS EACH BACK FROM MORE CASTER")
        .contains("best for the aims");
    assertThat(runs.err()).isEmpty();
    String said = runs.out();
    assertThat(runs.run("place", INPUT, "-o", "two")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).isEqualTo(said);
    assertThat(Files.readAllBytes(directory.resolve("one/place.pdf")))
        .isEqualTo(Files.readAllBytes(directory.resolve("two/place.pdf")));
  }

  @Test
  void neverWritesOverTheInputOrAnotherFileUnlessForced() throws Exception {
    assertThat(runs.run("place", INPUT, "--write", INPUT, "--force")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("never replaced");
    runs.write("there.toml", "mine");
    assertThat(runs.run("place", INPUT, "--write", "there.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.read("there.toml")).isEqualTo("mine");
    assertThat(runs.run("place", INPUT, "--write", "there.toml", "--force")).isEqualTo(Exit.DONE);
    assertThat(runs.run("check", "there.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.names(".")).containsExactly(INPUT, "there.toml");
  }

  @Test
  void refusesWithPlainSentences() throws Exception {
    runs.write("side.toml", Templates.text("wren.toml") + "\n[left.mount]\nsetting = 4.0\n");
    assertThat(runs.run("place", "side.toml", "--write", "b.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("one placement for both");
    runs.write(
        "bare.toml",
        Templates.text("wren.toml").replaceAll("(?s)\\n\\[strut\\].*?(?=\\n\\[aims\\])", "\n"));
    assertThat(runs.run("place", "bare.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("[strut] or [axis]");
    assertThat(runs.run("place", INPUT, "--write", "b.toml", "--offer", "Q"))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(runs.run("place", INPUT, "--offer", "A")).isEqualTo(Exit.WRONG_USE);
    runs.write(
        "none.toml", Templates.text("wren.toml").replaceAll("(?m)^keep = .*$", "keep = 45.0"));
    assertThat(runs.run("place", "none.toml")).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("cut-shape");
    assertThat(runs.names(".")).containsExactly("bare.toml", INPUT, "none.toml", "side.toml");
  }

  @Test
  void whatBarsTheWritingIsSaidBeforeTheSearch() throws Exception {
    // A search of this job ends with 1: that it does not says that none was made.
    String none = Templates.text("wren.toml").replaceAll("(?m)^keep = .*$", "keep = 45.0");
    runs.write("none.toml", none);
    assertThat(runs.run("place", "none.toml", "--write", "b.toml")).isEqualTo(Exit.STOPPED);
    for (String side : List.of("left", "right")) {
      runs.write("side.toml", none + "\n[" + side + ".mount]\nsetting = 4.0\n");
      assertThat(runs.run("place", "side.toml", "--write", "b.toml")).isEqualTo(Exit.WRONG_USE);
      assertThat(runs.err()).contains("one placement for both");
    }
    runs.write("quoted.toml", none.replaceAll("(?m)^rearward =", "\"rearward\" ="));
    assertThat(runs.run("place", "quoted.toml", "--write", "b.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("one key to a line");
    assertThat(runs.run("place", "none.toml", "--write", "nodir/x.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.names(".")).containsExactly(INPUT, "none.toml", "quoted.toml", "side.toml");
  }

  @Test
  void aFolderThatIsMissingIsNamedAsGiven() throws Exception {
    assertThat(runs.run("place", INPUT, "--write", "nodir/x.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.err())
        .contains("nodir/x.toml: the folder nodir does not exist")
        .doesNotContain("part")
        .doesNotContain(directory.toString());
    assertThat(runs.run("place", INPUT, "--write", INPUT + "/x.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains(INPUT + " is not a folder");
    assertThat(runs.run("ruler", "-o", "nodir/x.pdf")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("nodir/x.pdf: the folder nodir does not exist");
    assertThat(runs.names(".")).containsExactly(INPUT);
  }

  @Test
  void pointsThatMakeNoLinkageAreAStopAsTheyAreToAlign() throws Exception {
    runs.write(
        "line.toml",
        Templates.text("wren.toml")
            .replaceAll("(?m)^ball_joint = .*$", "ball_joint = [-135.0, 347.5, 208.5]"));
    assertThat(runs.run("align", "line.toml", "--json")).isEqualTo(Exit.STOPPED);
    JsonNode finding = runs.data().get("sides").get("left").get("findings").get(0);
    assertThat(runs.run("place", "line.toml", "--write", "b.toml")).isEqualTo(Exit.STOPPED);
    assertThat(runs.out()).isEmpty();
    assertThat(runs.err())
        .contains(finding.get("id").textValue() + ": " + finding.get("say").textValue());
    assertThat(runs.run("place", "line.toml", "--json")).isEqualTo(Exit.STOPPED);
    assertThat(runs.data().get("offers")).isEmpty();
    assertThat(runs.names(".")).containsExactly(INPUT, "line.toml");
  }

  @Test
  void anInchJobIsWrittenInInchesAndReadsBack() throws Exception {
    runs.write("inch.toml", Templates.text("siskin.toml"));
    JsonNode offers = runs.json("place", "inch.toml", "--json", "--write", "placed.toml");
    assertThat(offers.get("figures").textValue()).isEqualTo("estimate");
    assertThat(offers.get("offers").get(0).has("bump_steer")).isFalse();
    JsonNode aligned =
        runs.json("align", "placed.toml", "--json").get("sides").get("left").get("at");
    assertThat(offers.get("offers").get(0).get("caster").doubleValue())
        .isCloseTo(aligned.get("caster").doubleValue(), within(DEG));
  }

  @Tag("more-tries")
  @Test
  void aKilledRunLeavesNoHalfOfAFile() throws Exception {
    assertThat(runs.run("place", INPUT, "--write", "whole.toml")).isEqualTo(Exit.DONE);
    byte[] whole = Files.readAllBytes(directory.resolve("whole.toml"));
    int killed = 0;
    for (int i = 0; i < Tries.of(2, KILLS_MS.length); i++) {
      int delay = KILLS_MS[i];
      Path target = directory.resolve("killed.toml");
      Files.deleteIfExists(target);
      Process child = runs.start("child.log", "place", INPUT, "--write", "killed.toml");
      child.waitFor(delay, TimeUnit.MILLISECONDS);
      child.destroyForcibly();
      assertThat(child.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS)).isTrue();
      killed += child.exitValue() == Exit.DONE ? 0 : 1;
      if (Files.exists(target)) {
        assertThat(Files.readAllBytes(target)).isEqualTo(whole);
      }
      assertThat(runs.read(INPUT)).isEqualTo(Templates.text("wren.toml"));
    }
    // Guards the test itself: a kill that always came too late would prove nothing.
    assertThat(killed).isPositive();
  }

  @Test
  void theBarIsDrawnInPlaceAndErasedAtTheEnd() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(bytes, false, UTF_8);
    try (ProgressBar bar = ProgressBar.always(new Console(stream, stream))) {
      bar.at(0.5);
      // Threads may report out of order; the bar does not go back.
      bar.at(0.25);
      bar.at(1.0);
    }
    String said = bytes.toString(UTF_8);
    assertThat(said.split("\r")).hasSize(4);
    assertThat(said).contains("[" + "#".repeat(20) + ".".repeat(20) + "]").endsWith("\r\u001b[K");
  }
}
