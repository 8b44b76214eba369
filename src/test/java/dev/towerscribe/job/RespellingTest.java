package dev.towerscribe.job;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Keys that were called otherwise before: both spellings work, the old one with a note. */
class RespellingTest {
  private static final String FACE = "bolting_face = { diameter = 230.0 }";
  private static final String JOB = Jobs.LEAST.replace("[plate]", FACE + "\n[plate]");

  private static final String SURVEY =
      """
      format = 1
      title = "Survey"
      sides = ["left"]
      [uncertainty]
      caliper = 0.2
      [left]
      height = [{ point = "top", up = 790.0, uncertainty = 3.0 }]
      [left.tower]
      sheet = 1.4
      opening = { readings = [62.0, 62.1], uncertainty = 0.3 }
      """;

  private static final String READINGS =
      """
      format = 1
      [uncertainty]
      caliper = 0.04
      [left]
      hole = [{ name = "A", diameter = 9.1, uncertainty = 0.1 }, { name = "B", diameter = 9.1 }]
      span = [
        { from = "A", to = "B", centres = 131.0 },
        { from = "A", to = "hole", centres = 64.4 },
        { from = "B", to = "hole", centres = 140.1 },
      ]
      """;

  private static final String VISIT =
      """
      format = 1
      date = 2026-12-03
      [uncertainty]
      caster = 0.2
      [left.after]
      caster = 5.0
      """;

  private final List<String> notes = new ArrayList<>();

  private Job job(String text) throws JobRejected {
    return new JobReader(c -> true, notes::add).parse(text, Jobs::plateFile);
  }

  /** A file of a kind, read. */
  private Object read(String kind, String text) throws JobRejected {
    return switch (kind) {
      case "survey" -> new SurveyReader(c -> true, notes::add).parse(text);
      case "readings" ->
          new ReadingsReader(c -> true, notes::add, Jobs.read(Jobs.LEAST)).parse(text);
      default ->
          new VisitReader(c -> true, notes::add).parse(text.getBytes(UTF_8), Jobs.read(Jobs.LEAST));
    };
  }

  private static String text(String kind) {
    return switch (kind) {
      case "survey" -> SURVEY;
      case "readings" -> READINGS;
      default -> VISIT;
    };
  }

  @Test
  void theBoltingFaceIsReadUnderEitherName() throws JobRejected {
    Job now = job(JOB);
    assertThat(notes).isEmpty();
    assertThat(now.sides().get(Side.LEFT).tower().boltingFace()).isPresent();
    assertThat(job(JOB.replace("bolting_face", "land"))).isEqualTo(now);
    assertThat(notes)
        .containsExactly(
            "tower.land: the key land is called bolting_face now; the old spelling works in this"
                + " release only");
  }

  @Test
  void aSideReplacesWhatBothShareWhicheverNameEachUses() throws JobRejected {
    String ring = "{ points = [[90, -90], [90, 90], [-90, 90], [-90, -90]] }";
    Job job = job(JOB + "[left.tower]\nland = " + ring + "\n");
    assertThat(notes).singleElement().asString().startsWith("left.tower.land: ");
    assertThat(job.sides().get(Side.LEFT).tower().boltingFace().orElseThrow().edges()).hasSize(4);
    assertThat(job.sides().get(Side.RIGHT).tower().boltingFace().orElseThrow().edges()).hasSize(1);
    assertThat(job(JOB.replace("bolting_face", "land") + "[left.tower]\nbolting_face = " + ring))
        .isEqualTo(job);
  }

  @Test
  void landElsewhereIsNoKey() {
    String text = JOB.replace("[mount]", "[mount]\nland = 3.0");
    assertThat(Jobs.faults(text)).extracting(Fault::key).containsExactly("mount.land");
    assertThat(Jobs.faults(text)).extracting(Fault::given).containsExactly("unknown key");
  }

  static Stream<Arguments> wrongFaces() {
    return Stream.of(
        arguments("{}", "KEY.diameter", "one of diameter, points, radii"),
        arguments("230.0", "KEY", "a table"),
        arguments("\"230\"", "KEY", "a table"),
        arguments("{ diameter = \"230\" }", "KEY.diameter", "without quotes"),
        arguments("{ diameter = -230.0 }", "KEY.diameter", "cannot be negative"),
        arguments("{ diameter = 0 }", "KEY.diameter", "cannot be zero"),
        arguments("{ diameter = 1e300 }", "KEY.diameter", "Too large"),
        arguments("{ diameter = 1e999 }", "KEY.diameter", "1E+999"),
        arguments("{ diameter = nan }", "KEY.diameter", "nan"),
        arguments("{ diameter = 230.0, at = [inf, 0] }", "KEY.at[0]", "inf"),
        arguments("{ diametre = 230.0 }", "KEY.diametre", "Did you mean diameter?"));
  }

  @ParameterizedTest
  @MethodSource("wrongFaces")
  void aFaceAtFaultIsNamedAsTheFileSpellsIt(String face, String path, String words) {
    for (String key : List.of("bolting_face", "land")) {
      List<Fault> faults = Jobs.faults(JOB.replace(FACE, key + " = " + face));
      assertThat(faults).as(key).hasSize(1);
      assertThat(faults.get(0).key()).isEqualTo(path.replace("KEY", "tower." + key));
      assertThat(faults.get(0).line()).contains(words);
    }
  }

  @Test
  void bothNamesInOneTableAreAFault() {
    List<Fault> faults = Jobs.faults(JOB.replace(FACE, FACE + "\n" + "land = { diameter = 1 }"));
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).line())
        .isEqualTo(
            "tower.land: a table; allowed: either bolting_face or land. Drop this one: bolting_face"
                + " is the same key.");
  }

  @ParameterizedTest
  @CsvSource({
    "survey, doubt: the key doubt",
    "readings, doubt: the key doubt",
    "visit, doubt: the key doubt"
  })
  void uncertaintyIsReadUnderEitherNameWithOneNote(String kind, String note) throws JobRejected {
    Object now = read(kind, text(kind));
    assertThat(notes).isEmpty();
    assertThat(read(kind, text(kind).replace("uncertainty", "doubt"))).isEqualTo(now);
    assertThat(notes)
        .singleElement()
        .asString()
        .startsWith(note)
        .contains("called uncertainty now");
    // The figures were read, not left to their defaults.
    assertThat(read(kind, text(kind).replaceAll("(?m)^(caliper|caster) = 0.*$", "")))
        .isNotEqualTo(now);
  }

  @ParameterizedTest
  @CsvSource({
    "survey, '[uncertainty]', '[doubt]\ncaliper = 0.2\n[uncertainty]', doubt",
    "survey, 'uncertainty = 3.0', 'uncertainty = 3.0, doubt = 3.0', left.height[0].doubt",
    "survey, 'uncertainty = 0.3', 'doubt = 1, uncertainty = 0.3', left.tower.opening.doubt",
    "readings, '[uncertainty]', '[doubt]\ncaliper = 0.1\n[uncertainty]', doubt",
    "readings, 'uncertainty = 0.1', 'uncertainty = 0.1, doubt = 0.1', left.hole[0].doubt",
    "visit, '[uncertainty]', '[doubt]\ncaster = 0.1\n[uncertainty]', doubt"
  })
  void bothUncertaintiesAreAFault(String kind, String old, String changed, String path) {
    assertThatThrownBy(() -> read(kind, Jobs.with(text(kind), old, changed)))
        .isInstanceOfSatisfying(
            JobRejected.class,
            e -> {
              assertThat(e.faults()).extracting(Fault::key).containsExactly(path);
              assertThat(e.faults().get(0).line()).contains("either uncertainty or doubt");
            });
    assertThat(notes).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "survey, caliper",
    "readings, caliper",
    "visit, caster",
  })
  void anUncertaintyAtFaultIsNamedAsTheFileSpellsIt(String kind, String figure) {
    String good = figure + " = " + (kind.equals("readings") ? "0.04" : "0.2");
    for (String wrong : List.of("-1", "0", "1e300", "nan", "inf", "\"1\"", "[]", "true")) {
      for (String key : List.of("uncertainty", "doubt")) {
        String text = Jobs.with(text(kind), good + "\n", figure + " = " + wrong + "\n");
        assertThatThrownBy(() -> read(kind, text.replace("uncertainty", key)))
            .as(key + "." + figure + " = " + wrong)
            .isInstanceOfSatisfying(
                JobRejected.class,
                e ->
                    assertThat(e.faults())
                        .extracting(Fault::key)
                        .containsExactly(key + "." + figure));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"survey", "readings", "visit"})
  void aTableOfAnotherKindIsAFaultAndNoTableIsNone(String kind) throws JobRejected {
    assertThat(read(kind, text(kind).replaceFirst("\\[uncertainty]\n.*\n", ""))).isNotNull();
    String text = text(kind).replaceFirst("\\[uncertainty]\n.*\n", "uncertainty = 3\n");
    assertThatThrownBy(() -> read(kind, text))
        .isInstanceOfSatisfying(
            JobRejected.class,
            e -> assertThat(e.faults()).extracting(Fault::key).containsExactly("uncertainty"));
  }
}
