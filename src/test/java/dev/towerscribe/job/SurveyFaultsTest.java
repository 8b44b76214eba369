package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.survey.Survey;
import dev.towerscribe.survey.SurveySide;
import dev.towerscribe.survey.SurveyTower;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One mistake in a survey file, one fault under its key, in words that help. */
class SurveyFaultsTest {
  private static final SurveyReader READER = new SurveyReader(c -> c < 0x2600, note -> {});

  private static final String GOOD =
      """
      format = 1
      title = "Good"
      date = 2026-11-20
      units = "mm"
      sides = ["left", "right"]
      [uncertainty]
      tape = 1.5
      angle = 0.2
      [[station]]
      name = "C"
      at = [-600.0, 0.0, 0.0]
      [[station]]
      name = "K"
      at = [-150.0, 0.0, 860.0]
      uncertainty = 3.0
      [left]
      floor = [ { point = "ball_joint", at = [[8.0, 655.0], [8.5, 654.0]], uncertainty = 2.5 } ]
      height = [ { point = "top", up = 790.0 } ]
      tape = [
        { from = "top", to = "ball_joint", length = [612.5, 611.0] },
        { from = "C", to = "my mark", length = 912.0 },
        { from = "ball_joint", to = "right.ball_joint", length = 1310.0 },
      ]
      tyre_radius = [290.0, 291.0]
      camber = { readings = [-0.5, -0.6], uncertainty = 0.1 }
      toe = 0.0
      [left.tower]
      sheet = [1.42, 1.38]
      opening = [62.1, 61.9]
      mark = [104.0, 104.5]
      lean = { inboard = [5.1, 4.9], rearward = [2.0, 2.1] }
      crown = { across = 140.0, rise = [2.9, 3.1] }
      pivot_height = [12.0, 12.5]
      shaft = 14.0
      landmark = [
        { name = "drain hole", at = [38.0, -52.0], diameter = [9.0, 9.1] },
        { name = "wiring clip hole", diameter = 7.0 },
      ]
      span = [
        { from = "shaft", to = "drain hole", centres = 64.5 },
        { from = "shaft", to = "wiring clip hole", inside = 81.5 },
      ]
      straightedge = [ { name = "seam", from = [90.0, -80.0], to = [90.0, 80.0] } ]
      [right]
      """;

  static Stream<Arguments> oneMistake() {
    return Stream.of(
        // Keys.
        arguments("tape = 1.5", "tapes = 1.5", "uncertainty.tapes", "Did you mean tape?"),
        arguments("[uncertainty]", "[uncertanty]", "uncertanty", "Did you mean uncertainty?"),
        arguments(", up = 790.0", "", "left.height[0].up", "missing; allowed: -500 to 3000 mm"),
        arguments("up = 790.0", "height = 790.0", "left.height[0]", "missing"),
        arguments("point = \"top\", ", "", "left.height[0].point", "missing; allowed: 1 to 40"),
        arguments("title = \"Good\"", "", "title", "missing"),
        arguments("format = 1", "format = 2", "format", "reads format 1 only"),
        arguments("[right]", "", "right", "missing; allowed: a table. Add [right]"),
        arguments("shaft = 14.0", "shafts = 14.0", "left.tower.shafts", "Did you mean shaft?"),
        // Types.
        arguments("up = 790.0", "up = \"790\"", "left.height[0].up", "without quotes"),
        arguments("up = 790.0", "up = true", "left.height[0].up", "true; allowed: -500 to 3000"),
        arguments("up = 790.0", "up = []", "left.height[0].up", "take the whole entry out"),
        arguments(
            "up = 790.0", "up = [790.0, \"x\"]", "left.height[0].up[1]", "\"x\"; allowed: -500"),
        arguments("up = 790.0", "up = nan", "left.height[0].up", "nan; allowed: -500 to 3000 mm"),
        arguments("up = 790.0", "up = [inf]", "left.height[0].up[0]", "inf; allowed: -500"),
        arguments("up = 790.0", "up = 1e999", "left.height[0].up", "Too large"),
        arguments(
            "up = 790.0",
            "up = [" + "790, ".repeat(21) + "]",
            "left.height[0].up",
            "1 to 20 readings",
            "Take some out"),
        arguments("height = [ {", "height = [ 3, {", "left.height[0]", "a table"),
        arguments("toe = 0.0", "toe = [[0.0]]", "left.toe[0]", "-10 to 10 deg"),
        arguments("toe = 0.0", "toe = {}", "left.toe.readings", "missing; allowed: -10 to 10 deg"),
        arguments(
            "toe = 0.0",
            "toe = { readings = 0.0, uncertain = 1 }",
            "left.toe.uncertain",
            "uncertainty?"),
        arguments("toe = 0.0", "toe = 20.0", "left.toe", "20; allowed: -10 to 10 deg"),
        arguments("length = 912.0", "length = 0", "left.tape[1].length", "It cannot be zero"),
        arguments("length = 912.0", "length = -912.0", "left.tape[1].length", "negative"),
        arguments("length = 912.0", "length = 91200.0", "left.tape[1].length", "5 to 8000 mm"),
        arguments(
            "[[8.0, 655.0], [8.5, 654.0]]", "[8.0]", "left.floor[0].at", "two numbers", "6000"),
        arguments(
            "[[8.0, 655.0], [8.5, 654.0]]",
            "[[8.0, 655.0], [8.5]]",
            "left.floor[0].at[1]",
            "two numbers"),
        arguments(
            "[[8.0, 655.0], [8.5, 654.0]]",
            "[8.0, -655.0]",
            "left.floor[0].at[1]",
            "-500 to 2000 mm"),
        arguments("[[8.0, 655.0], [8.5, 654.0]]", "7.0", "left.floor[0].at", "square brackets"),
        // Uncertainties.
        arguments("tape = 1.5", "tape = 0", "uncertainty.tape", "0.005 to 50 mm", "zero"),
        arguments("tape = 1.5", "tape = 60.0", "uncertainty.tape", "0.005 to 50 mm"),
        arguments("angle = 0.2", "angle = 9.0", "uncertainty.angle", "0.005 to 5 deg"),
        arguments(
            "uncertainty = 2.5", "uncertainty = -2.5", "left.floor[0].uncertainty", "negative"),
        arguments(
            "uncertainty = 2.5",
            "uncertainty = \"2\"",
            "left.floor[0].uncertainty",
            "without quotes"),
        arguments(
            "uncertainty = 0.1", "uncertainty = 0.0", "left.camber.uncertainty", "0.005 to 5 deg"),
        arguments("at = [-150.0, 0.0, 860.0]", "", "station[1].uncertainty", "Give at as well"),
        // Names.
        arguments("to = \"ball_joint\",", "to = \"top\",", "left.tape[0].to", "two ends"),
        arguments("to = \"ball_joint\",", "to = \"ball-joint\",", "left.tape[0].to", "ball_joint"),
        arguments("to = \"ball_joint\",", "to = \"bal_joint\",", "left.tape[0].to", "ball_joint"),
        arguments("from = \"C\"", "from = \"c\"", "left.tape[1].from", "Did you mean \"C\"?"),
        arguments("from = \"C\"", "from = \"a.b\"", "left.tape[1].from", "without a point"),
        arguments("from = \"C\"", "from = \"right.\"", "left.tape[1].from", "Name the point"),
        arguments("from = \"C\"", "from = \"\"", "left.tape[1].from", "Give it a name"),
        arguments("from = \"C\"", "from = 7", "left.tape[1].from", "in quotes"),
        arguments("name = \"K\"", "name = \"C\"", "station[1].name", "a name of its own"),
        arguments("name = \"K\"", "name = \"top\"", "station[1].name", "no strut point's name"),
        arguments("name = \"K\"", "name = \"K.1\"", "station[1].name", "without a point"),
        arguments(
            "to = \"drain hole\", c",
            "to = \"drian hole\", c",
            "left.tower.span[0].to",
            "Did you mean \"drain hole\"?"),
        arguments(
            "name = \"drain hole\"", "name = \"shaft\"", "left.tower.landmark[0].name", "rename"),
        arguments(", centres = 64.5", "", "left.tower.span[0].centres", "one of centres, inside"),
        arguments(
            "centres = 64.5",
            "centres = 64.5, inside = 50.0",
            "left.tower.span[0].inside",
            "a second span"),
        arguments("shaft = 14.0", "", "left.tower.shaft", "thread's diameter", "span[1].inside"),
        arguments("opening = [62.1", "opening = [262.1", "left.tower.opening[0]", "20 to 250 mm"),
        arguments("mark = [104.0, 104.5]", "mark = 50.0", "left.tower.mark", "at least the open"),
        arguments("rise = [2.9, 3.1]", "rise = 80.0", "left.tower.crown.rise", "half of across"),
        arguments("across = 140.0, ", "", "left.tower.crown.across", "missing; allowed: 20 to 600"),
        arguments("inboard = [5.1", "inboard = [51.0", "left.tower.lean.inboard[0]", "-30 to 30"),
        arguments("sides = [\"left\", \"right\"]", "sides = []", "sides", "a list"),
        arguments("to = [90.0, 80.0]", "to = [90.0]", "left.tower.straightedge[0].to", "two"),
        arguments("date = 2026-11-20", "date = 2026-13-20", "date", "YYYY-MM-DD"));
  }

  private static List<Fault> faults(String text) {
    try {
      READER.parse(text);
      return List.of();
    } catch (JobRejected e) {
      return e.faults();
    }
  }

  @ParameterizedTest
  @MethodSource("oneMistakeInFull")
  void everyMistakeIsNamed(String old, String changed, String key, List<String> words) {
    List<Fault> faults = faults(Jobs.with(GOOD, old, changed));
    assertThat(faults)
        .as("%s", faults)
        .anySatisfy(
            f -> {
              assertThat(f.key()).startsWith(key);
              assertThat(f.line()).contains(words);
            });
  }

  static Stream<Arguments> oneMistakeInFull() {
    return oneMistake()
        .map(
            a -> {
              Object[] all = a.get();
              return arguments(
                  all[0], all[1], all[2], Stream.of(all).skip(3).map(String::valueOf).toList());
            });
  }

  @Test
  void allMistakesAreToldAtOnceInTheirOrder() {
    String bad =
        GOOD.replace("up = 790.0", "up = nan")
            .replace("tape = 1.5", "tape = -1")
            .replace("centres = 64.5", "centres = true");
    assertThat(faults(bad).stream().map(Fault::key))
        .containsExactly("uncertainty.tape", "left.height[0].up", "left.tower.span[0].centres");
  }

  @Test
  void readingsArriveWithTheirUncertainties() throws JobRejected {
    // Independent: as the text has it; what it leaves out has its default (frozen).
    Survey s = READER.parse(GOOD);
    SurveySide left = s.sides().get(Side.LEFT);
    assertThat(left.plots().get(0).out().values()).containsExactly(655.0, 654.0);
    assertThat(left.plots().get(0).out().sd()).isEqualTo(2.5);
    assertThat(left.heights().get(0).up().sd()).isEqualTo(1.5);
    assertThat(left.tapes().get(0).length().mean()).isEqualTo(611.75);
    assertThat(left.tapes().get(1).from().side()).isEmpty();
    assertThat(left.tapes().get(2).to().side()).contains(Side.RIGHT);
    assertThat(left.camber().orElseThrow().sd()).isEqualTo(Math.toRadians(.1));
    assertThat(left.toe().orElseThrow().sd()).isEqualTo(Math.toRadians(.2));
    SurveyTower tower = left.tower().orElseThrow();
    // A rule finds centres, calipers find edges.
    assertThat(tower.spans().get(0).length().sd()).isEqualTo(.5);
    assertThat(tower.spans().get(1).length().sd()).isEqualTo(.1);
    assertThat(tower.landmarks().get(1).at()).isEmpty();
    assertThat(s.stations().get(1).uncertaintyMm()).contains(3.0);
    assertThat(s.sides().get(Side.RIGHT).tapes()).isEmpty();
  }

  @Test
  void inchesAreInches() throws JobRejected {
    // Independent: 25.4 mm are an inch; -500 and 3000 mm are -19.685 and 118.1102 in.
    String inches =
        """
        format = 1
        title = "inch"
        units = "in"
        sides = ["right"]
        [right]
        height = [ { point = "top", up = [31.0, 31.1] } ]
        [left]
        height = 3
        """;
    Survey s = READER.parse(inches);
    assertThat(s.units()).isEqualTo(LengthUnit.INCH);
    // Defaults stay what they are in millimetres; a side that is not surveyed is not read.
    assertThat(s.sides().get(Side.RIGHT).heights().get(0).up().sd()).isEqualTo(1.5);
    assertThat(s.sides().get(Side.RIGHT).heights().get(0).up().values().get(0))
        .isEqualTo(31 * 25.4);
    assertThat(faults(inches.replace("31.0", "310.0")).get(0).limit())
        .isEqualTo("-19.685 to 118.1102 in");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "=",
        "[[left]]",
        "left = 3",
        "station = 7",
        "format = 1\nstation = [[1]]",
        "format = 1\ntitle = \"x\"\nleft = []\nright = {}",
        "format = 1\ntitle = \"x\"\nunits = \"mile\"\n[left]\nheight = [1, 2]\n[right]\ntape = {}"
      })
  void nothingIsTooBrokenToBeToldOf(String text) {
    assertThatCode(() -> assertThat(faults(text)).isNotEmpty()).doesNotThrowAnyException();
  }
}
