package dev.towerscribe.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.towerscribe.job.Templates;
import dev.towerscribe.store.FileOps;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code place} from the words typed to the files written. */
class PlaceCommandTest {
  private static final String INPUT = "job.toml";

  /** Whole seconds of a run, spread so that kills fall before, at and after its writing. */
  private static final int[] KILLS_MS = {300, 900, 1500, 2500, 4000};

  private static final long LONGEST_RUN_S = 120;

  /** One rounding of an angle told in degrees. */
  private static final double DEG = 1e-12;

  @TempDir Path directory;

  private String out;
  private String err;

  @BeforeEach
  void writeJob() throws Exception {
    Files.writeString(directory.resolve(INPUT), Templates.text("wren.toml"));
  }

  private int run(String... args) {
    ByteArrayOutputStream outBytes = new ByteArrayOutputStream();
    ByteArrayOutputStream errBytes = new ByteArrayOutputStream();
    int exit =
        Main.run(
            args,
            new Context(
                new Console(
                    new PrintStream(outBytes, false, UTF_8),
                    new PrintStream(errBytes, false, UTF_8)),
                directory,
                FileOps.REAL));
    out = outBytes.toString(UTF_8);
    err = errBytes.toString(UTF_8);
    assertThat(out + err).doesNotContain("\tat ").doesNotContain("\r");
    return exit;
  }

  private JsonNode json(String... args) throws Exception {
    assertThat(run(args)).as(err).isEqualTo(Exit.DONE);
    return new ObjectMapper().readTree(out);
  }

  private List<String> files() throws Exception {
    try (Stream<Path> paths = Files.list(directory)) {
      return paths.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theWrittenJobPassesCheckAndAlignTellsTheOfferedFigures() throws Exception {
    JsonNode offers = json("place", INPUT, "--json", "--write", "b.toml", "--offer", "b");
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
    assertThat(run("check", "b.toml")).isEqualTo(Exit.DONE);
    JsonNode aligned = json("align", "b.toml", "--json").get("sides");
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
    assertThat(Files.readString(directory.resolve(INPUT))).isEqualTo(Templates.text("wren.toml"));
  }

  private static String comment(String line) {
    return line.contains("#") ? line.substring(line.indexOf('#')) : "";
  }

  @Test
  void theMapIsWrittenWholeAndTheSameTwice() throws Exception {
    assertThat(run("place", INPUT, "-o", "one")).isEqualTo(Exit.DONE);
    assertThat(out).contains("What holds each back").contains("best for the aims");
    assertThat(err).isEmpty();
    String said = out;
    assertThat(run("place", INPUT, "-o", "two")).isEqualTo(Exit.DONE);
    assertThat(out).isEqualTo(said);
    assertThat(Files.readAllBytes(directory.resolve("one/place.pdf")))
        .isEqualTo(Files.readAllBytes(directory.resolve("two/place.pdf")));
  }

  @Test
  void neverWritesOverTheInputOrAnotherFileUnlessForced() throws Exception {
    assertThat(run("place", INPUT, "--write", INPUT, "--force")).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("never replaced");
    Files.writeString(directory.resolve("there.toml"), "mine");
    assertThat(run("place", INPUT, "--write", "there.toml")).isEqualTo(Exit.FILES);
    assertThat(Files.readString(directory.resolve("there.toml"))).isEqualTo("mine");
    assertThat(run("place", INPUT, "--write", "there.toml", "--force")).isEqualTo(Exit.DONE);
    assertThat(run("check", "there.toml")).isEqualTo(Exit.DONE);
    assertThat(files()).containsExactly(INPUT, "there.toml");
  }

  @Test
  void refusesWithPlainSentences() throws Exception {
    Files.writeString(
        directory.resolve("side.toml"),
        Templates.text("wren.toml") + "\n[left.mount]\nsetting = 4.0\n");
    assertThat(run("place", "side.toml", "--write", "b.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("one placement for both");
    Files.writeString(
        directory.resolve("bare.toml"),
        Templates.text("wren.toml").replaceAll("(?s)\\n\\[strut\\].*?(?=\\n\\[aims\\])", "\n"));
    assertThat(run("place", "bare.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("[strut] or [axis]");
    assertThat(run("place", INPUT, "--write", "b.toml", "--offer", "Q")).isEqualTo(Exit.WRONG_USE);
    assertThat(run("place", INPUT, "--offer", "A")).isEqualTo(Exit.WRONG_USE);
    Files.writeString(
        directory.resolve("none.toml"),
        Templates.text("wren.toml").replaceAll("(?m)^keep = .*$", "keep = 45.0"));
    assertThat(run("place", "none.toml")).isEqualTo(Exit.STOPPED);
    assertThat(err).contains("cut-shape");
    assertThat(files()).containsExactly("bare.toml", INPUT, "none.toml", "side.toml");
  }

  @Test
  void whatBarsTheWritingIsSaidBeforeTheSearch() throws Exception {
    // A search of this job ends with 1: that it does not says that none was made.
    String none = Templates.text("wren.toml").replaceAll("(?m)^keep = .*$", "keep = 45.0");
    Files.writeString(directory.resolve("none.toml"), none);
    assertThat(run("place", "none.toml", "--write", "b.toml")).isEqualTo(Exit.STOPPED);
    for (String side : List.of("left", "right")) {
      Files.writeString(
          directory.resolve("side.toml"), none + "\n[" + side + ".mount]\nsetting = 4.0\n");
      assertThat(run("place", "side.toml", "--write", "b.toml")).isEqualTo(Exit.WRONG_USE);
      assertThat(err).contains("one placement for both");
    }
    Files.writeString(
        directory.resolve("quoted.toml"), none.replaceAll("(?m)^rearward =", "\"rearward\" ="));
    assertThat(run("place", "quoted.toml", "--write", "b.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("one key to a line");
    assertThat(run("place", "none.toml", "--write", "nodir/x.toml")).isEqualTo(Exit.FILES);
    assertThat(files()).containsExactly(INPUT, "none.toml", "quoted.toml", "side.toml");
  }

  @Test
  void aFolderThatIsMissingIsNamedAsGiven() throws Exception {
    assertThat(run("place", INPUT, "--write", "nodir/x.toml")).isEqualTo(Exit.FILES);
    assertThat(err)
        .contains("nodir/x.toml: the folder nodir does not exist")
        .doesNotContain("part")
        .doesNotContain(directory.toString());
    assertThat(run("place", INPUT, "--write", INPUT + "/x.toml")).isEqualTo(Exit.FILES);
    assertThat(err).contains(INPUT + " is not a folder");
    assertThat(run("ruler", "-o", "nodir/x.pdf")).isEqualTo(Exit.FILES);
    assertThat(err).contains("nodir/x.pdf: the folder nodir does not exist");
    assertThat(files()).containsExactly(INPUT);
  }

  @Test
  void pointsThatMakeNoLinkageAreAStopAsTheyAreToAlign() throws Exception {
    Files.writeString(
        directory.resolve("line.toml"),
        Templates.text("wren.toml")
            .replaceAll("(?m)^ball_joint = .*$", "ball_joint = [-135.0, 347.5, 208.5]"));
    assertThat(run("align", "line.toml", "--json")).isEqualTo(Exit.STOPPED);
    JsonNode finding =
        new ObjectMapper().readTree(out).get("sides").get("left").get("findings").get(0);
    assertThat(run("place", "line.toml", "--write", "b.toml")).isEqualTo(Exit.STOPPED);
    assertThat(out).isEmpty();
    assertThat(err).contains(finding.get("id").textValue() + ": " + finding.get("say").textValue());
    assertThat(run("place", "line.toml", "--json")).isEqualTo(Exit.STOPPED);
    assertThat(new ObjectMapper().readTree(out).get("offers")).isEmpty();
    assertThat(files()).containsExactly(INPUT, "line.toml");
  }

  @Test
  void anInchJobIsWrittenInInchesAndReadsBack() throws Exception {
    Files.writeString(directory.resolve("inch.toml"), Templates.text("siskin.toml"));
    JsonNode offers = json("place", "inch.toml", "--json", "--write", "placed.toml");
    assertThat(offers.get("figures").textValue()).isEqualTo("estimate");
    assertThat(offers.get("offers").get(0).has("bump_steer")).isFalse();
    JsonNode aligned = json("align", "placed.toml", "--json").get("sides").get("left").get("at");
    assertThat(offers.get("offers").get(0).get("caster").doubleValue())
        .isCloseTo(aligned.get("caster").doubleValue(), within(DEG));
  }

  @Test
  void aKilledRunLeavesNoHalfOfAFile() throws Exception {
    assertThat(run("place", INPUT, "--write", "whole.toml")).isEqualTo(Exit.DONE);
    byte[] whole = Files.readAllBytes(directory.resolve("whole.toml"));
    int killed = 0;
    for (int delay : KILLS_MS) {
      Path target = directory.resolve("killed.toml");
      Files.deleteIfExists(target);
      Process child =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-Djava.awt.headless=true",
                  "-XX:+UseSerialGC",
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty("java.class.path"),
                  Main.class.getName(),
                  "place",
                  INPUT,
                  "--write",
                  "killed.toml")
              .directory(directory.toFile())
              .redirectErrorStream(true)
              .redirectOutput(new File(directory.toFile(), "child.log"))
              .start();
      child.waitFor(delay, TimeUnit.MILLISECONDS);
      child.destroyForcibly();
      assertThat(child.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS)).isTrue();
      killed += child.exitValue() == Exit.DONE ? 0 : 1;
      if (Files.exists(target)) {
        assertThat(Files.readAllBytes(target)).isEqualTo(whole);
      }
      assertThat(Files.readString(directory.resolve(INPUT))).isEqualTo(Templates.text("wren.toml"));
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
