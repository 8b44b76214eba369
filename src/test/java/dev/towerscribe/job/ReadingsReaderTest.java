package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.Readings;
import dev.towerscribe.drilled.Readings.Uncertainty;
import dev.towerscribe.drilled.SideReadings;
import dev.towerscribe.drilled.SpanReading;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Readings files: what is read from a sound one, and one fault for one mistake. */
class ReadingsReaderTest {
  private static final String WHOLE =
      """
      format = 1
      title = "Least, drilled"
      date = 2026-12-01
      units = "mm"
      [uncertainty]
      caliper = 0.04
      landmark = 0.4
      edge = 0.3
      [left]
      hole = [
        { name = "B", diameter = 9.3, uncertainty = 0.1 },
        { name = "A", diameter = [9.05, 9.15] },
      ]
      span = [
        { from = "A", to = "B", inside = [122.3, 122.4] },
        { from = "A", to = "hole", centres = 64.1, uncertainty = 0.2 },
        { from = "hole", to = "B", outside = 70.0 },
      ]
      edge = [{ hole = "A", gap = 14.2 }]
      """;

  private static Readings read(String text) throws JobRejected {
    return reader(Jobs.read(Jobs.LEAST)).parse(text);
  }

  private static ReadingsReader reader(Job job) {
    return new ReadingsReader(c -> c < 0x2600, note -> {}, job);
  }

  private static List<Fault> faults(String text) {
    try {
      read(text);
      return List.of();
    } catch (JobRejected e) {
      return e.faults();
    }
  }

  @Test
  void everyKeyIsRead() throws Exception {
    // Independent: as the text has it.
    Readings readings = read(WHOLE);
    assertThat(readings.title()).isEqualTo("Least, drilled");
    assertThat(readings.date().map(Object::toString)).contains("2026-12-01");
    assertThat(readings.uncertainty().landmarkMm().value()).isEqualTo(0.4);
    assertThat(readings.uncertainty().edgeMm().assumed()).isFalse();
    SideReadings left = readings.sides().get(Side.LEFT);
    // In the plate's order, whatever the file's.
    assertThat(left.holes()).extracting(SideReadings.HoleSize::name).containsExactly("A", "B");
    assertThat(left.holes().get(0).diameter()).isEqualTo(new Repeated(List.of(9.05, 9.15), 0.04));
    assertThat(left.holes().get(1).diameter()).isEqualTo(new Repeated(List.of(9.3), 0.1));
    assertThat(left.spans())
        .containsExactly(
            new SpanReading("A", "B", Edges.INSIDE, new Repeated(List.of(122.3, 122.4), 0.04)),
            new SpanReading("A", "hole", Edges.CENTRES, new Repeated(List.of(64.1), 0.2)),
            new SpanReading("hole", "B", Edges.OUTSIDE, new Repeated(List.of(70.0), 0.04)));
    assertThat(left.edges().get(0).gap()).isEqualTo(new Repeated(List.of(14.2), 0.3));
    assertThat(readings.sides()).containsOnlyKeys(Side.LEFT);
  }

  /** Independent, by hand: (122.3 + 122.4) / 2, 0.04 / root 2, and their difference. */
  @Test
  void repeatedReadingsCountAsTheirMean() throws Exception {
    Repeated r = read(WHOLE).sides().get(Side.LEFT).spans().get(0).length();
    assertThat(r.mean()).isCloseTo(122.35, within(1e-12));
    assertThat(r.meanSd()).isCloseTo(0.028284271, within(1e-9));
    assertThat(r.spread()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void whatMayBeLeftOutHasDefaults() throws Exception {
    Readings readings =
        read(
            """
            format = 1
            [right]
            hole = [{ name = "A", diameter = 9 }, { name = "B", diameter = 9 }]
            """);
    assertThat(readings.title()).isEqualTo("Least");
    assertThat(readings.date()).isEmpty();
    assertThat(readings.uncertainty()).isEqualTo(Uncertainty.ASSUMED);
    assertThat(readings.sides().get(Side.RIGHT).spans()).isEmpty();
  }

  /** Independent, by hand: 0.36 in = 9.144 mm, 0.002 in = 0.0508 mm. */
  @Test
  void inchesAreTurnedIntoMillimetres() throws Exception {
    Readings readings =
        read(
            """
            format = 1
            units = "in"
            [uncertainty]
            caliper = 0.002
            [left]
            hole = [{ name = "A", diameter = 0.36 }, { name = "B", diameter = 0.36 }]
            """);
    Repeated d = readings.sides().get(Side.LEFT).holes().get(0).diameter();
    assertThat(d.mean()).isCloseTo(9.144, within(1e-12));
    assertThat(d.sd()).isCloseTo(0.0508, within(1e-12));
  }

  @Test
  void theDemoReadingsGoWithTheDemoJob() throws Exception {
    Job job = Jobs.read(Templates.text("wren.toml"));
    String text = Templates.text("wren-drilled.toml");
    assertThat(text).contains("INVENTED");
    Readings readings = reader(job).parse(text);
    assertThat(readings.sides()).containsOnlyKeys(Side.LEFT, Side.RIGHT);
    assertThat(readings.sides().get(Side.LEFT).spans()).hasSize(12);
  }

  /** What is written, what stands in its place, under which key, and words of its line. */
  static Stream<Arguments> oneMistake() {
    return Stream.of(
        arguments("format = 1", "", "format", "missing"),
        arguments("format = 1", "format = 2", "format", "format 1 only"),
        arguments("\"mm\"", "\"cm\"", "units", "\"mm\" or \"in\""),
        arguments("2026-12-01", "\"yesterday\"", "date", "YYYY-MM-DD"),
        arguments("\"Least, drilled\"", "7", "title", "in quotes"),
        // Uncertainties.
        arguments("caliper = 0.04", "caliper = -0.04", "uncertainty.caliper", "cannot be negative"),
        arguments("caliper = 0.04", "caliper = 0", "uncertainty.caliper", "cannot be zero"),
        arguments("caliper = 0.04", "caliper = 50", "uncertainty.caliper", "0.001 to 2 mm"),
        arguments("landmark = 0.4", "landmark = nan", "uncertainty.landmark", "0.001 to 10 mm"),
        arguments("edge = 0.3\n", "edge = \"0.3\"\n", "uncertainty.edge", "without quotes"),
        arguments(
            "caliper = 0.04", "calliper = 0.04", "uncertainty.calliper", "Did you mean caliper?"),
        // Holes.
        arguments("name = \"B\", d", "name = \"Bb\", d", "left.hole[0].name", "A, B"),
        arguments("name = \"B\", d", "name = \"A\", d", "left.hole[1].name", "change one"),
        arguments(
            "{ name = \"B\", diameter = 9.3, uncertainty = 0.1 },", "", "left.hole", "add: B"),
        arguments("diameter = 9.3", "diameter = 1.0", "left.hole[0].diameter", "2 to 50 mm"),
        arguments("diameter = 9.3", "diameter = 1e9", "left.hole[0].diameter", "Too large"),
        arguments("diameter = 9.3", "diameter = []", "left.hole[0].diameter", "1 to 20 figures"),
        arguments("9.05, 9.15", "9.05, nan", "left.hole[1].diameter[1]", "2 to 50 mm"),
        arguments("diameter = 9.3, ", "", "left.hole[0].diameter", "missing"),
        arguments(
            "uncertainty = 0.1", "uncertainty = 9", "left.hole[0].uncertainty", "0.001 to 2 mm"),
        arguments(
            "uncertainty = 0.1",
            "uncertainty = [0.1]",
            "left.hole[0].uncertainty",
            "one plain number"),
        // Spans.
        arguments("from = \"A\", to = \"B\"", "from = \"A\"", "left.span[0].to", "missing"),
        arguments(
            "from = \"A\", to = \"B\"", "from = 3, to = \"B\"", "left.span[0].from", "quotes"),
        arguments("to = \"hole\"", "to = \"hale\"", "left.span[1].to", "Did you mean \"hole\"?"),
        arguments("to = \"hole\"", "to = \"drain\"", "left.span[1].to", "A, B, hole"),
        arguments("to = \"hole\"", "to = \"A\"", "left.span[1].to", "another hole or landmark"),
        arguments(", centres = 64.1", "", "left.span[1].inside", "one of centres, inside, outside"),
        arguments(
            "centres = 64.1",
            "centres = 64.1, inside = 50",
            "left.span[1].inside",
            "an entry of its own"),
        arguments(
            "centres = 64.1", "centre = 64.1", "left.span[1].centre", "Did you mean centres?"),
        arguments(
            "outside = 70.0", "outside = -70.0", "left.span[2].outside", "cannot be negative"),
        arguments("outside = 70.0", "outside = 7000", "left.span[2].outside", "1 to 800 mm"),
        arguments("outside = 70.0", "outside = inf", "left.span[2].outside", "1 to 800 mm"),
        arguments("122.3, 122.4", "122.3, 1224", "left.span[0].inside[1]", "1 to 800 mm"),
        // Edges.
        arguments("hole = \"A\", gap", "hole = \"hole\", gap", "left.edge[0].hole", "A, B"),
        arguments("gap = 14.2", "gap = -1", "left.edge[0].gap", "cannot be negative"),
        arguments(", gap = 14.2", "", "left.edge[0].gap", "missing"),
        // Sides.
        arguments("[left]", "[middle]", "middle", "unknown key"),
        arguments("edge = [{", "edges = [{", "left.edges", "Did you mean edge?"));
  }

  @ParameterizedTest
  @MethodSource("oneMistake")
  void oneMistakeGivesOneFault(String written, String instead, String key, String words) {
    assertThat(WHOLE).contains(written);
    List<Fault> faults =
        faults(WHOLE.replaceFirst(java.util.regex.Pattern.quote(written), instead));
    List<Fault> wanted = faults.stream().filter(f -> f.key().equals(key)).toList();
    assertThat(wanted).as("%s", faults).hasSize(1);
    assertThat(wanted.get(0).line()).contains(words);
  }

  @Test
  void everyMistakeIsToldAtOnce() {
    List<Fault> faults =
        faults(
            WHOLE
                .replace("caliper = 0.04", "caliper = 0")
                .replace("diameter = 9.3", "diameter = 900")
                .replace("to = \"hole\"", "to = \"hall\"")
                .replace("gap = 14.2", "gap = -2"));
    assertThat(faults)
        .extracting(Fault::key)
        .containsExactly(
            "uncertainty.caliper", "left.hole[0].diameter", "left.span[1].to", "left.edge[0].gap");
  }

  @Test
  void aSideThatTheJobDoesNotWorkOnIsAFault() throws Exception {
    Job left = Jobs.read(Jobs.with(Jobs.LEAST, "[tower]", "sides = [\"left\"]\n[tower]"));
    String both = WHOLE + WHOLE.substring(WHOLE.indexOf("[left]")).replace("[left]", "[right]");
    assertThat(read(both).sides()).hasSize(2);
    assertThat(faultsOf(left, both))
        .singleElement()
        .satisfies(f -> assertThat(f.key()).isEqualTo("right"));
  }

  @Test
  void withoutAnySideThereIsNothingToRead() {
    assertThat(faults("format = 1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("left");
              assertThat(f.line()).contains("missing", "Add [left]");
            });
  }

  @Test
  void aLandmarkNamedLikeAHoleIsNotGuessedAt() throws Exception {
    Job job = Jobs.read(Jobs.with(Jobs.LEAST, "name = \"hole\"", "name = \"B\""));
    List<Fault> faults = faultsOf(job, WHOLE.replace("\"hole\"", "\"B\""));
    assertThat(faults)
        .anySatisfy(f -> assertThat(f.line()).contains("left.span[0].to", "rename the landmark"));
  }

  @Test
  void whatIsNoTextIsOneFault() {
    assertThat(faults("format = 1\n[left")).hasSize(1);
    assertThat(faults("")).isNotEmpty();
  }

  private static List<Fault> faultsOf(Job job, String text) {
    try {
      return Optional.of(reader(job).parse(text)).map(r -> List.<Fault>of()).get();
    } catch (JobRejected e) {
      return e.faults();
    }
  }

  /**
   * Numbers anywhere may be anything: the answer is readings or faults, never another exception.
   */
  @Test
  void noFigureBreaksTheReader() {
    for (String figure :
        Arrays.asList("0", "-1", "1e308", "-inf", "nan", "[]", "{}", "\"x\"", "true", "[[1]]")) {
      for (String key : List.of("9.3", "64.1", "70.0", "14.2", "0.04", "0.2", "[9.05, 9.15]")) {
        assertThat(faults(WHOLE.replace(key, figure))).as(key + " " + figure).isNotNull();
      }
    }
  }

  @Test
  void everyKeyIsDocumentedWithItsRange() throws Exception {
    String docs = Files.readString(Path.of("docs", "drilled.md"));
    assertThat(docs)
        .contains("`format`", "`title`", "`date`", "`units`", "`hole`", "`span`", "`edge`")
        .contains(
            "`uncertainty.caliper`",
            "`uncertainty.landmark`",
            "`uncertainty.edge`",
            "`from` and `to`")
        .contains("`inside`", "`outside`", "`centres`", "gap", "diameter");
    for (AllowedRange range :
        List.of(
            Limits.CALIPER_SD,
            Limits.LANDMARK_SD,
            Limits.EDGE_SD,
            Limits.HOLE,
            Limits.SPAN,
            Limits.EDGE_GAP)) {
      assertThat(docs).contains(range.words(LengthUnit.MM));
    }
    for (double mm :
        List.of(
            Uncertainty.ASSUMED.caliperMm().value(),
            Uncertainty.ASSUMED.landmarkMm().value(),
            Uncertainty.ASSUMED.edgeMm().value())) {
      assertThat(docs).contains("| " + mm + " mm |");
    }
  }
}
