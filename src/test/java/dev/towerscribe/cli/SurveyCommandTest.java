package dev.towerscribe.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.towerscribe.store.FileOps;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code survey} from the words typed to the tables written. */
class SurveyCommandTest {
  private static final String GOOD = "survey.toml";
  private static final String SLIPPED = "slipped.toml";
  private static final String SLIP = "left.outlier.tape-C-ball-joint";

  @TempDir Path directory;

  private String out;
  private String err;

  @BeforeEach
  void writeSurveys() throws Exception {
    String demo = Files.readString(Path.of("templates", "wren-survey.toml"));
    Files.writeString(directory.resolve(GOOD), demo);
    String line =
        demo.lines()
            .filter(l -> l.contains("from = \"C\", to = \"ball_joint\""))
            .findFirst()
            .orElseThrow();
    // 20 mm more than the 913.2 of wren.toml's figures.
    String slipped = line.replaceAll("length = .*?\\]", "length = [933.0, 933.5]");
    int at = demo.indexOf(line);
    Files.writeString(
        directory.resolve(SLIPPED),
        demo.substring(0, at) + slipped + demo.substring(at + line.length()));
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

  @Test
  void theDemoIsWorkedOutAndItsTablesWritten() throws Exception {
    assertThat(run("survey", GOOD, "-o", "tables.toml")).isEqualTo(Exit.DONE);
    assertThat(out)
        .contains("no stop finding", "ball_joint", "wiring clip hole", "s0 ", "slip found")
        .contains("wrote tables.toml");
    assertThat(err).isEmpty();
    String tables = Files.readString(directory.resolve("tables.toml"));
    assertThat(tables)
        .contains("[tower]", "[strut]", "[strut.plus_minus]", "[right.tower]", "[right.strut]");
    String first = out;
    assertThat(run("survey", GOOD, "-o", "tables.toml")).isEqualTo(Exit.DONE);
    assertThat(out).isEqualTo(first);
    assertThat(Files.readString(directory.resolve("tables.toml"))).isEqualTo(tables);
  }

  @Test
  void aSlipBarsTheTablesUntilItIsAccepted() throws Exception {
    assertThat(run("survey", SLIPPED, "-o", "tables.toml")).isEqualTo(Exit.STOPPED);
    assertThat(out).contains(SLIP, "the tape from C to ball_joint is ", "longer than the rest");
    assertThat(err).contains("tables.toml was not written");
    assertThat(directory.resolve("tables.toml")).doesNotExist();
    assertThat(run("survey", SLIPPED, "-o", "tables.toml", "--accept", SLIP)).isEqualTo(Exit.DONE);
    assertThat(out).contains(SLIP + "  ACCEPTED");
    assertThat(Files.readString(directory.resolve("tables.toml")))
        .contains("# ACCEPTED " + SLIP + ": the tape from C to ball_joint is ");
  }

  @Test
  void theDataSayTheSame() throws Exception {
    assertThat(run("survey", SLIPPED, "--json")).isEqualTo(Exit.STOPPED);
    JsonNode json = new ObjectMapper().readTree(out);
    assertThat(json.path("findings").get(0).path("id").asText()).isEqualTo(SLIP);
    JsonNode points = json.path("sides").path("right").path("points");
    assertThat(points.get(1).path("name").asText()).isEqualTo("ball_joint");
    // As if on the left; the truth of wren.toml within four of its standard deviations.
    double y = points.get(1).path("at").get(1).asDouble();
    double sd = points.get(1).path("plus_minus").get(1).asDouble();
    assertThat(y).isCloseTo(655, within(4 * sd));
    assertThat(points.get(1).path("covariance").get(1).asDouble()).isCloseTo(sd * sd, within(1e-9));
    assertThat(json.path("readings").size()).isGreaterThan(150);
    assertThat(json.path("sides").path("left").path("tower").path("landmarks").size()).isEqualTo(2);
  }

  @Test
  void wrongUseIsRefusedInWords() throws Exception {
    assertThat(run("survey", "--start", "-o", "empty.toml")).isEqualTo(Exit.DONE);
    assertThat(run("survey", "empty.toml", "-o", "none.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("no reading at all");
    assertThat(directory.resolve("none.toml")).doesNotExist();
    assertThat(run("survey")).isEqualTo(Exit.WRONG_USE);
    assertThat(run("survey", GOOD, "--worksheet")).isEqualTo(Exit.WRONG_USE);
    assertThat(run("survey", GOOD, "--paper", "A3")).isEqualTo(Exit.WRONG_USE);
    assertThat(run("survey", "--start", "--json")).isEqualTo(Exit.WRONG_USE);
    Files.writeString(directory.resolve("bad.toml"), "format = 1\nunits = \"mile\"\n");
    assertThat(run("survey", "bad.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("the survey file cannot be worked from:", "units", "title: missing");
    assertThat(run("survey", "none.toml")).isEqualTo(Exit.FILES);
    assertThat(run("survey")).isEqualTo(Exit.WRONG_USE);
    assertThat(run("survey", GOOD, "--accept", SLIP)).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("not a stop finding of this survey", "has no stop finding");
    assertThat(run("survey", SLIPPED, "--accept", "left.x")).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("its stop findings are: " + SLIP);
    assertThat(run("survey", GOOD, "-o", GOOD, "--force")).isEqualTo(Exit.WRONG_USE);
    assertThat(err).contains("never replaced");
    assertThat(run("survey", GOOD, "-o", "no/such/tables.toml")).isEqualTo(Exit.FILES);
    Files.writeString(directory.resolve("other.toml"), "mine");
    assertThat(run("survey", GOOD, "-o", "other.toml")).isEqualTo(Exit.FILES);
    assertThat(Files.readString(directory.resolve("other.toml"))).isEqualTo("mine");
    assertThat(run("survey", GOOD, "-o", "other.toml", "--force")).isEqualTo(Exit.DONE);
    assertThat(Files.readString(directory.resolve("other.toml"))).contains("[strut]");
  }

  @Test
  void theCommandExplainsItselfWithAnExample() {
    assertThat(run("survey", "--help")).isEqualTo(Exit.DONE);
    assertThat(out).contains("Usage: towerscribe survey", "Example: towerscribe survey");
  }

  /** Independent: the demo in inches comes to the demo in millimetres. */
  @Test
  void anInchSurveyIsToldInInches() throws Exception {
    Files.writeString(
        directory.resolve("inch.toml"),
        """
        format = 1
        title = "inch"
        units = "in"
        sides = ["left"]
        [left]
        floor = [ { point = "top", at = [-0.8, 21.5] } ]
        height = [ { point = "top", up = [31.0, 31.2] } ]
        """);
    assertThat(run("survey", "inch.toml", "-o", "t.toml")).isEqualTo(Exit.DONE);
    assertThat(out).contains("Lengths in inches", "31.10");
    assertThat(Files.readString(directory.resolve("t.toml")))
        .contains("top = [-0.800, 21.500, 31.100]", "# arm_front: not surveyed");
  }
}
