package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
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

  private CommandRuns runs;

  @BeforeEach
  void writeSurveys() throws Exception {
    runs = new CommandRuns(directory);
    String demo = Files.readString(Path.of("templates", "wren-survey.toml"));
    runs.write(GOOD, demo);
    String line =
        demo.lines()
            .filter(l -> l.contains("from = \"C\", to = \"ball_joint\""))
            .findFirst()
            .orElseThrow();
    // 20 mm more than the 913.2 of wren.toml's figures.
    String slipped = line.replaceAll("length = .*?\\]", "length = [933.0, 933.5]");
    int at = demo.indexOf(line);
    runs.write(SLIPPED, demo.substring(0, at) + slipped + demo.substring(at + line.length()));
  }

  @Test
  void theDemoIsWorkedOutAndItsTablesWritten() throws Exception {
    assertThat(runs.run("survey", GOOD, "-o", "tables.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .contains("no stop finding", "ball_joint", "wiring clip hole", "s0 ", "slip found")
        .contains("wrote tables.toml");
    assertThat(runs.err()).isEmpty();
    String tables = runs.read("tables.toml");
    assertThat(tables)
        .contains("[tower]", "[strut]", "[strut.plus_minus]", "[right.tower]", "[right.strut]");
    String first = runs.out();
    assertThat(runs.run("survey", GOOD, "-o", "tables.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).isEqualTo(first);
    assertThat(runs.read("tables.toml")).isEqualTo(tables);
  }

  @Test
  void aSlipBarsTheTablesUntilItIsAccepted() throws Exception {
    assertThat(runs.run("survey", SLIPPED, "-o", "tables.toml")).isEqualTo(Exit.STOPPED);
    assertThat(runs.out())
        .contains(SLIP, "the tape from C to ball_joint is ", "longer than the rest");
    assertThat(runs.err()).contains("tables.toml was not written");
    assertThat(directory.resolve("tables.toml")).doesNotExist();
    assertThat(runs.run("survey", SLIPPED, "-o", "tables.toml", "--accept", SLIP))
        .isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains(SLIP + "  ACCEPTED");
    assertThat(runs.read("tables.toml"))
        .contains("# ACCEPTED " + SLIP + ": the tape from C to ball_joint is ");
  }

  @Test
  void theDataSayTheSame() throws Exception {
    assertThat(runs.run("survey", SLIPPED, "--json")).isEqualTo(Exit.STOPPED);
    JsonNode json = runs.data();
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
    assertThat(runs.run("survey", "--start", "-o", "empty.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.run("survey", "empty.toml", "-o", "none.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("no reading at all");
    assertThat(directory.resolve("none.toml")).doesNotExist();
    assertThat(runs.run("survey")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.run("survey", GOOD, "--worksheet")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.run("survey", GOOD, "--paper", "A3")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.run("survey", "--start", "--json")).isEqualTo(Exit.WRONG_USE);
    runs.write("bad.toml", "format = 1\nunits = \"mile\"\n");
    assertThat(runs.run("survey", "bad.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("the survey file cannot be used:", "units", "title: missing");
    assertThat(runs.run("survey", "none.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.run("survey")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.run("survey", GOOD, "--accept", SLIP)).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("not a stop finding of this survey", "has no stop finding");
    assertThat(runs.run("survey", SLIPPED, "--accept", "left.x")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("its stop findings are: " + SLIP);
    assertThat(runs.run("survey", GOOD, "-o", GOOD, "--force")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("never replaced");
    assertThat(runs.run("survey", GOOD, "-o", "no/such/tables.toml")).isEqualTo(Exit.FILES);
    runs.write("other.toml", "mine");
    assertThat(runs.run("survey", GOOD, "-o", "other.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.read("other.toml")).isEqualTo("mine");
    assertThat(runs.run("survey", GOOD, "-o", "other.toml", "--force")).isEqualTo(Exit.DONE);
    assertThat(runs.read("other.toml")).contains("[strut]");
  }

  @Test
  void theCommandExplainsItselfWithAnExample() {
    assertThat(runs.run("survey", "--help")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("Usage: towerscribe survey", "Example: towerscribe survey");
  }

  /** Independent: the demo in inches comes to the demo in millimetres. */
  @Test
  void anInchSurveyIsToldInInches() throws Exception {
    runs.write(
        "inch.toml",
        """
        format = 1
        title = "inch"
        units = "in"
        sides = ["left"]
        [left]
        floor = [ { point = "top", at = [-0.8, 21.5] } ]
        height = [ { point = "top", up = [31.0, 31.2] } ]
        """);
    assertThat(runs.run("survey", "inch.toml", "-o", "t.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("Lengths in inches", "31.10");
    assertThat(runs.read("t.toml"))
        .contains("top = [-0.800, 21.500, 31.100]", "# arm_front: not surveyed");
  }
}
