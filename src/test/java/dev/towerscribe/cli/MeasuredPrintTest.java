package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.job.Templates;
import dev.towerscribe.store.FailingOps;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code ruler --measured} from the words typed to the exit code and the file. */
class MeasuredPrintTest {
  private static final String OLD = "scale = { across = 1.0, along = 1.0 }";

  @TempDir Path directory;

  private CommandRuns runs;

  private String job;

  @BeforeEach
  void writeJobs() throws Exception {
    runs = new CommandRuns(directory);
    job = Templates.text("wren.toml");
    assertThat(job).contains(OLD);
    runs.write("job.toml", job);
  }

  private int measured(String readings, String... more) {
    List<String> words = new ArrayList<>(List.of("ruler", "--measured=" + readings));
    words.addAll(Arrays.asList(more));
    return runs.run(words.toArray(String[]::new));
  }

  private void expectOnlyTheJob(String text) throws Exception {
    assertThat(runs.read("job.toml")).isEqualTo(text);
    try (Stream<Path> files = Files.list(directory)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void withoutAJobTheLinesAreSaid() throws Exception {
    // Independent: 101.3^2 + 99.4^2 - 141.40^2 = 147.95 - ..., by pocket calculator sin = 0.007342.
    assertThat(measured("101.3,99.4,141.40")).isZero();
    assertThat(runs.out())
        .contains("[print]\nscale = { across = 1.013, along = 0.994 }\nskew = 0.421\n")
        .contains("level bar", "If the two are swapped", "Print again and measure again");
    assertThat(runs.err()).isEmpty();
    expectOnlyTheJob(job);
  }

  /** Inch calipers on the print of a millimetre job: the same print as in {@code mm}. */
  @Test
  void aReadingCarriesItsOwnUnit() throws Exception {
    assertThat(measured("101.6,99.4,142.0", "--job", "job.toml")).isZero();
    String inMm = runs.out();
    // Published: 25.4 mm to the inch, so 4 in are 101.6 mm.
    assertThat(measured("4in,99.4,142.0mm", "--job", "job.toml")).isZero();
    assertThat(runs.out()).isEqualTo(inMm);
    assertThat(measured("4 in,99.4,142.0", "--job", "job.toml")).isZero();
    assertThat(runs.out()).isEqualTo(inMm);
    assertThat(measured("101.6,99.4", "--bars", "4in,100mm", "--uncertainty", "0.002in")).isZero();
    assertThat(runs.out()).contains("across = 1.0");
    assertThat(measured("4,3.91", "--job", "job.toml")).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("Read in inches? Write in right behind each reading");
    expectOnlyTheJob(job);
  }

  @Test
  void withoutTheThirdReadingNothingIsSaidOfSkew() throws Exception {
    assertThat(measured("101.3,99.4", "--job", "job.toml", "--write")).isZero();
    assertThat(runs.out()).contains("taken to be square as drawn");
    expectOnlyTheJob(job.replace(OLD, "scale = { across = 1.013, along = 0.994 }"));
  }

  @Test
  void writesTheLinesAndNothingElse() throws Exception {
    assertThat(measured("101.3,99.4,141.40", "--job", "job.toml")).isZero();
    assertThat(runs.out()).contains("--write puts these lines into the job file");
    expectOnlyTheJob(job);
    assertThat(measured("101.3,99.4,141.40", "--job", "job.toml", "--write")).isZero();
    assertThat(runs.out()).contains("wrote these lines into job.toml", "within 0.10 mm");
    expectOnlyTheJob(job.replace(OLD, "scale = { across = 1.013, along = 0.994 }\nskew = 0.421"));
  }

  @Test
  void aSquarePrintHasNoSkew() throws Exception {
    // Independent: square, the far ends of bars of 101 and 100 are 142.13 apart.
    assertThat(measured("101.0,100.0,142.05", "--job", "job.toml", "--write")).isZero();
    assertThat(runs.out()).contains("Square within the reading's error");
    expectOnlyTheJob(job.replace(OLD, "scale = { across = 1.01, along = 1.0 }\nskew = 0.0"));
  }

  @Test
  void theJobsOwnFiguresAreMultipliedIn() throws Exception {
    String before = job.replace(OLD, "scale = { across = 1.01, along = 0.99 }");
    runs.write("job.toml", before);
    assertThat(measured("100.5,99.5", "--job", "job.toml", "--write")).isZero();
    // Independent: 1.01 * 1.005 = 1.01505, 0.99 * 0.995 = 0.98505.
    expectOnlyTheJob(job.replace(OLD, "scale = { across = 1.01505, along = 0.98505 }"));
  }

  @Test
  void aSkewOfTheJobIsKeptWhereNoneIsMeasured() throws Exception {
    String before = job.replace(OLD, OLD + "\nskew = 0.4");
    runs.write("job.toml", before);
    assertThat(measured("100.5,100.5", "--job", "job.toml", "--write")).isZero();
    expectOnlyTheJob(job.replace(OLD, "scale = { across = 1.005, along = 1.005 }\nskew = 0.4"));
  }

  @Test
  void aTruePrintIsTapedAndNothingWritten() throws Exception {
    String before = job.replace(OLD, "scale = { across = 1.013, along = 0.994 }\nskew = 0.4");
    runs.write("job.toml", before);
    assertThat(measured("100.08,99.95,141.5", "--job", "job.toml", "--write")).isZero();
    assertThat(runs.out()).contains("True: tape it").doesNotContain("[print]");
    expectOnlyTheJob(before);
    assertThat(measured("100.08,99.95,141.7", "--job", "job.toml")).isZero();
    assertThat(runs.out()).doesNotContain("True: tape it");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "96.2,96.1,136.0 | 2 | fit to page",
        "104.0,104.1 | 2 | Page scaling is on",
        "99.9,96.9 | 1 | along: 96.90 mm",
        "3.99,3.91,5.57 | 2 | Read in inches",
        "10.13,9.94 | 2 | Read in cm",
        "141.4,99.9 | 1 | cross to cross",
        "170.2,258.9,310.0 | 2 | --bars 170,260",
        "50.0,99.9 | 1 | wrong bar",
        "100.0,100.0,135.0 | 1 | 5.09 deg out of square",
      })
  void aPrinterThatCannotBeIsRefusedWithTheLikelyCause(String readings, int lines, String cause)
      throws Exception {
    assertThat(measured(readings, "--job", "job.toml", "--write")).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains(cause, "nothing was written");
    assertThat(runs.err().lines()).hasSize(lines + 1);
    assertThat(runs.out()).isEmpty();
    expectOnlyTheJob(job);
    assertThat(measured(readings, "--json")).isEqualTo(Exit.STOPPED);
    JsonNode json = runs.data();
    assertThat(json.path("verdict").asText()).isEqualTo("refused");
    assertThat(json.path("reasons")).hasSize(lines);
  }

  @Test
  void readingsAtTheLimitPass() {
    assertThat(measured("103,97")).isZero();
    assertThat(measured("103.01,97")).isEqualTo(Exit.STOPPED);
    assertThat(measured("103,96.99")).isEqualTo(Exit.STOPPED);
  }

  @Test
  void whatIsTooMuchTogetherIsRefused() throws Exception {
    String before = job.replace(OLD, "scale = { across = 1.02, along = 1.0 }\nskew = 2.5");
    runs.write("job.toml", before);
    assertThat(measured("101.5,100.0,140.0", "--job", "job.toml", "--write"))
        .isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("scale across would be 1.0353", "deg out of square");
    expectOnlyTheJob(before);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "101,3,99,8 | 4 numbers",
        "101.3 | 1 number",
        "'' | 1 number",
        "101.3,99.4,140,1,2 | 5 numbers",
        "101.3;99.4 | 1 number",
        "101.3,abc | along: abc is not a plain number",
        "101.3cm,99.4 | across: 101.3cm is not a plain number",
        "-101.3,99.4 | across: -101.3 must be more than 0",
        "101.3,0 | along: 0 must be more than 0",
        "101.3,99.4, | far ends:  is not a plain number",
        "1e2,99.4 | across: 1e2 is not a plain number",
        "nan,99.4 | across: nan is not",
        "99999999,99.4 | across: 99999999 is too much",
        "100,100,250 | far ends: 250.00 mm cannot be",
        "100,99,8 | far ends: 8.00 mm",
        "100,100,200 | far ends: 200.00 mm cannot be",
      })
  void wrongReadingsAreNamed(String readings, String words) throws Exception {
    boolean possible = readings.equals("100,99,8");
    assertThat(measured(readings, "--job", "job.toml", "--write"))
        .isEqualTo(possible ? Exit.STOPPED : Exit.WRONG_USE);
    assertThat(runs.err()).contains(words);
    assertThat(runs.out()).isEmpty();
    expectOnlyTheJob(job);
  }

  @Test
  void everyFaultIsNamedAtOnce() throws Exception {
    assertThat(
            measured(
                "a,-1", "--bars", "0,x", "--doubt", "y", "--units", "ft", "--write", "-o", "x.pdf"))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err())
        .contains("across: a", "along: -1", "--bars, across: 0", "--bars, along: x")
        .contains(
            "--uncertainty, uncertainty: y", "--units ft", "--write: which job file?", "-o: with");
    expectOnlyTheJob(job);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--bars=170,260",
        "--doubt=0.1",
        "--uncertainty=0.1",
        "--units=in",
        "--write",
        "--json"
      })
  void optionsOfReadingsNeedReadings(String option) throws Exception {
    assertThat(runs.run("ruler", option)).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("goes with --measured");
    expectOnlyTheJob(job);
  }

  @Test
  void anUncertaintyThatProvesNothingIsRefused() {
    assertThat(measured("100,100", "--doubt", "1.01")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("1.01 mm is too much");
    assertThat(measured("100,100", "--units", "mm", "--job", "job.toml")).isEqualTo(2);
    assertThat(runs.err()).contains("the job says its units");
  }

  @Test
  void inchesFollowTheJobOrTheOption() throws Exception {
    // Independent: bars of 4 in, 4.052 / 4 = 1.013 and 3.976 / 4 = 0.994.
    assertThat(measured("4.052,3.976", "--units", "in")).isZero();
    assertThat(runs.out()).contains("scale = { across = 1.013, along = 0.994 }", "4.000 in");
    String inches = Templates.text("siskin.toml");
    runs.write("job.toml", inches);
    for (String plate : Templates.names()) {
      if (plate.startsWith("plates/")) {
        Files.createDirectories(directory.resolve("plates"));
        runs.write(plate, Templates.text(plate));
      }
    }
    assertThat(measured("4.052,3.976", "--job", "job.toml", "--write"))
        .as(() -> runs.err())
        .isZero();
    assertThat(runs.read("job.toml"))
        .isEqualTo(
            inches.replace("[print]\n", "[print]\nscale = { across = 1.013, along = 0.994 }\n"));
    assertThat(measured("101.3,99.4", "--units", "in")).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("Read in mm?");
  }

  @Test
  void longerBarsAreKnownBetter() throws Exception {
    assertThat(measured("171.7,259.1,310.65", "--bars", "170,260", "--json")).isZero();
    JsonNode json = runs.data();
    // Independent: 171.7 / 170 and 259.1 / 260; 0.05 / 260.
    JsonNode found = json.path("measured");
    assertThat(found.path("across").path("figure").asDouble()).isCloseTo(1.01, within(1e-12));
    assertThat(found.path("along").path("plus_minus").asDouble())
        .isCloseTo(0.000192308, within(1e-9));
    assertThat(json.path("verdict").asText()).isEqualTo("correct");
    assertThat(json.path("print").path("along").asDouble()).isEqualTo(0.99654);
    assertThat(json.path("written").asBoolean()).isFalse();
    assertThat(json.fieldNames())
        .toIterable()
        .containsExactly(
            "format",
            "units",
            "verdict",
            "bars",
            "readings",
            "doubt",
            "measured",
            "drawn_for",
            "print",
            "notes",
            "written");
  }

  @Test
  void whatIsOddButBelievableIsSaid() {
    assertThat(measured("101.6,101.55")).isZero();
    assertThat(runs.out()).contains("LOOK: Both bars read 4 in");
    assertThat(measured("97.3,97.25")).isZero();
    assertThat(runs.out()).contains("LOOK: Both bars are short alike");
    assertThat(measured("97.2,100.0,137.5", "--job", "job.toml")).isZero();
    assertThat(runs.out()).contains("LOOK: Drawn so, the corners");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[left.print]\nskew = 1.0\n", "[right.print.scale]\nacross = 1.01\n"})
  void aPrinterOfOneSideIsRefused(String own) throws Exception {
    runs.write("job.toml", job + own);
    assertThat(measured("101.3,99.4", "--job", "job.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains(own.substring(1, own.indexOf('.')) + ".print.", "of its own");
    expectOnlyTheJob(job + own);
  }

  @Test
  void anOddlyWrittenTableIsLeftAlone() throws Exception {
    String odd = job.replace(OLD, "scale.across = 1.0");
    runs.write("job.toml", odd);
    assertThat(measured("101.3,99.4", "--job", "job.toml", "--write")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("Enter by hand", "scale = { across = 1.013, along = 0.994 }");
    expectOnlyTheJob(odd);
  }

  @Test
  void aJobThatCannotBeReadOrWrittenIsLeftWhole() throws Exception {
    assertThat(measured("101.3,99.4", "--job", "none.toml", "--write")).isEqualTo(Exit.FILES);
    for (int step = 1; step <= 4; step++) {
      for (FailingOps.Way way : List.of(FailingOps.Way.ONCE, FailingOps.Way.FROM_THEN_ON)) {
        int exit =
            runs.run(
                new FailingOps(way, step),
                "ruler",
                "--measured=101.3,99.4",
                "--job",
                "job.toml",
                "--write");
        String now = runs.read("job.toml");
        if (exit == Exit.DONE) {
          assertThat(now).contains("across = 1.013");
        } else {
          assertThat(exit).isEqualTo(Exit.FILES);
          assertThat(now).isEqualTo(job);
        }
        runs.write("job.toml", job);
      }
    }
  }
}
