package dev.towerscribe.job;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.BayUncertainty;
import dev.towerscribe.record.Visit;
import dev.towerscribe.record.WheelVisit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class VisitReaderTest {
  private static final VisitReader READER = new VisitReader(c -> c < 0x3000, note -> {});

  private static Job job(String name) throws Exception {
    return Jobs.read(Templates.text(name));
  }

  private static String demo() throws Exception {
    return Files.readString(Path.of("templates", "wren-visit.toml"));
  }

  private static Visit read(String text) throws Exception {
    return READER.parse(text.getBytes(UTF_8), job("wren.toml"));
  }

  private static List<Fault> faults(String text) throws Exception {
    try {
      read(text);
      return List.of();
    } catch (JobRejected e) {
      return e.faults();
    }
  }

  @Test
  void theDemoIsReadAsWritten() throws Exception {
    // Independent: as templates/wren-visit.toml has it.
    Visit visit = read(demo());
    assertThat(visit.date()).isEqualTo(LocalDate.of(2026, 12, 3));
    assertThat(visit.words()).isEqualTo("first alignment after fitting");
    assertThat(visit.bay()).contains("Invented Bay");
    assertThat(visit.uncertainty()).isEqualTo(BayUncertainty.USUAL);
    assertThat(visit.wheels()).containsOnlyKeys(Side.LEFT, Side.RIGHT);
    WheelVisit right = visit.wheels().get(Side.RIGHT);
    assertThat(right.after().of(BayFigure.CAMBER).orElseThrow().degrees())
        .isCloseTo(-0.85, within(1e-12));
    assertThat(right.settingMm()).isEqualTo(16);
    assertThat(right.knuckle().radians()).isZero();
    assertThat(right.before().rideMm()).contains(0.0);
  }

  @Test
  void leastOfAllIsADayAndOneFigure() throws Exception {
    Visit visit = read("format = 1\ndate = \"2026-12-03\"\n[left.after]\ncamber = -1.4\n");
    WheelVisit left = visit.wheels().get(Side.LEFT);
    assertThat(visit.wheels()).hasSize(1);
    assertThat(left.after().figures()).containsOnlyKeys(BayFigure.CAMBER);
    assertThat(left.before().figures()).isEmpty();
    assertThat(left.before().rideMm()).isEmpty();
    // The job's own setting stands in.
    assertThat(left.settingMm()).isEqualTo(16);
  }

  @Test
  void inchesAreInches() throws Exception {
    Visit visit =
        read(
            "format = 1\ndate = 2026-12-03\nunits = \"in\"\n[uncertainty]\nride = 0.1\n"
                + "[left.after]\ncaster = 5\nride = -0.5\nsetting = 0.25\n");
    // Independent: 25.4 mm to the inch, by hand.
    assertThat(visit.uncertainty().rideMm()).isCloseTo(2.54, within(1e-12));
    WheelVisit left = visit.wheels().get(Side.LEFT);
    assertThat(left.settingMm()).isCloseTo(6.35, within(1e-12));
    assertThat(left.after().rideMm().orElseThrow()).isCloseTo(-12.7, within(1e-12));
  }

  static Stream<Arguments> oneMistake() {
    return Stream.of(
        arguments("format = 1 ", "format = 2 ", "format", "reads format 1 only"),
        arguments("date = 2026-12-03 ", "# ", "date", "missing; allowed: a date"),
        arguments("date = 2026-12-03 ", "date = 2026-02-30 ", "date", "year first"),
        arguments("date = 2026-12-03 ", "date = 1066-10-14 ", "date", "Check the year"),
        arguments("date = 2026-12-03 ", "date = 5 ", "date", "in quotes"),
        arguments("visit = \"first", "visti = \"first", "visti", "Did you mean visit?"),
        arguments("visit = \"first", "visit = \"\\t", "visit", "Leave out or replace U+0009"),
        arguments("units = \"mm\"", "units = \"feet\"", "units", "\"mm\" or \"in\""),
        arguments("caster = 0.15", "caster = 0.0", "uncertainty.caster", "0.001 to 5 deg"),
        arguments("caster = 0.15", "caster = nan", "uncertainty.caster", "nan"),
        arguments("ride = 2.0 ", "ride = -2.0 ", "uncertainty.ride", "cannot be negative"),
        arguments("caster = 2.6", "caster = \"2.6\"", "left.before.caster", "without quotes"),
        arguments("caster = 2.6", "caster = inf", "left.before.caster", "inf"),
        arguments("camber = -1.5", "camber = -15", "left.after.camber", "-10 to 10 deg"),
        arguments("toe = 0.02", "toe = 2e9", "left.after.toe", "-10 to 10 deg"),
        arguments("inclination = 11.4", "inclination = 31", "left.after.inclination", "-5 to 30"),
        arguments("setting = 16.0  ", "setting = 17.0  ", "left.after.setting", "-8 to 16 mm"),
        arguments("knuckle = 0.0", "knuckle = 0.6", "left.after.knuckle", "-2 to 0.5 deg"),
        arguments("[left.after]", "[left.aftr]", "left.aftr", "Did you mean after?"),
        arguments("[right.before]", "[rear.before]", "rear", "unknown key"));
  }

  @ParameterizedTest
  @MethodSource("oneMistake")
  void oneMistakeIsOneFault(String what, String with, String key, String words) throws Exception {
    String text = demo();
    assertThat(text).contains(what);
    String once =
        text.substring(0, text.indexOf(what))
            + with
            + text.substring(text.indexOf(what) + what.length());
    List<Fault> faults = faults(once);
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).key()).isEqualTo(key);
    assertThat(faults.get(0).line()).contains(words);
  }

  @Test
  void everyFaultIsToldAtOnce() throws Exception {
    String text =
        demo()
            .replace("caster = 0.15", "caster = -1")
            .replace("caster = 2.6", "caster = true")
            .replace("setting = 16.0  ", "setting = 99.0  ");
    assertThat(faults(text))
        .extracting(Fault::key)
        .containsExactly("uncertainty.caster", "left.before.caster", "left.after.setting");
  }

  @Test
  void noFigureAtAllIsAFault() throws Exception {
    assertThat(faults("format = 1\ndate = 2026-12-03\n[left.after]\nsetting = 4.0\n"))
        .extracting(Fault::given)
        .containsExactly("no figure of any wheel");
  }

  @Test
  void theJobDecidesItsSidesAndItsBolt() throws Exception {
    Job dunnock = job("dunnock.toml");
    String text =
        "format = 1\n"
            + "date = 2026-12-03\n"
            + "[left.after]\n"
            + "caster = 5.0\n"
            + "setting = 0.0\n"
            + "knuckle = -1.0\n";
    try {
      READER.parse(text.getBytes(UTF_8), dunnock);
      throw new AssertionError("a bolt was turned that the job does not have");
    } catch (JobRejected e) {
      assertThat(e.faults()).extracting(Fault::key).contains("left.after.knuckle");
    }
    Job left =
        new Job(
            "left alone",
            dunnock.date(),
            dunnock.units(),
            java.util.Map.of(Side.LEFT, dunnock.sides().get(Side.LEFT)));
    try {
      READER.parse(text.replace("left", "right").getBytes(UTF_8), left);
      throw new AssertionError("a side was read that the job does not have");
    } catch (JobRejected e) {
      assertThat(e.faults().get(0).line()).contains("the job's sides: left");
    }
  }

  /** Tells jobs from what lies beside them. */
  @Test
  void otherFilesAreNoJobs() throws Exception {
    assertThat(JobReader.isOfAnotherKind(demo().getBytes(UTF_8))).isTrue();
    for (String name : Templates.names()) {
      assertThat(JobReader.isOfAnotherKind(Templates.text(name).getBytes(UTF_8)))
          .as(name)
          .isEqualTo(name.startsWith("plates/"));
    }
    for (String name : Templates.readings()) {
      assertThat(JobReader.isOfAnotherKind(Templates.text(name).getBytes(UTF_8))).as(name).isTrue();
    }
    // What a survey writes has a job's tables, but not those of the work.
    assertThat(JobReader.isOfAnotherKind("[tower]\nsheet = 1.4\n[strut]\n".getBytes(UTF_8)))
        .isTrue();
    assertThat(JobReader.isOfAnotherKind("= = =".getBytes(UTF_8))).isFalse();
  }
}
