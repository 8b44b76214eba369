package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.Readings;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.survey.SurveyTower;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths in the wrong unit, in their own, and in that of their table. */
class UnitsTest {
  private static final String WREN = Templates.text("wren.toml");
  private static final Consumer<String> NO_NOTES = note -> {};

  private interface Reading {
    void read() throws JobRejected;
  }

  private static List<String> lines(Reading reading) {
    try {
      reading.read();
      return List.of();
    } catch (JobRejected e) {
      return e.faults().stream().map(Fault::line).toList();
    }
  }

  private static List<String> lines(String job) {
    return lines(() -> Jobs.read(job));
  }

  private static String swapped(String file) {
    String text = Templates.text(file);
    return text.contains("\"mm\"   ") || text.contains("= \"mm\"")
        ? text.replaceFirst("units( *)= \"mm\"", "units$1= \"in\"")
        : text.replaceFirst("units( *)= \"in\"", "units$1= \"mm\"");
  }

  // The whole file in the other unit.

  @ParameterizedTest
  @CsvSource({"wren.toml,large", "dunnock.toml,large", "siskin.toml,small"})
  void aWholeJobInTheOtherUnitIsOneLine(String file, String size) {
    assertThat(lines(swapped(file)))
        .singleElement()
        .asString()
        .startsWith("units: ")
        .contains("Every length looks 25 times too " + size + ": is units right?");
  }

  @Test
  void aJobWithoutItsUnitSaysSoToo() {
    assertThat(lines(Jobs.with(Templates.text("siskin.toml"), "units  = \"in\"\n", "")))
        .singleElement()
        .asString()
        .startsWith("units: \"mm\". Every length looks 25 times too small");
  }

  @Test
  void aPlateFileInTheOtherUnitIsNamedByItself() {
    String plate = swapped("plates/four-bolt.toml");
    assertThat(
            lines(
                () ->
                    Jobs.READER.parse(Templates.text("dunnock.toml"), name -> Optional.of(plate))))
        .singleElement()
        .asString()
        .startsWith("plates/four-bolt.toml: units: \"in\". Every length looks 25 times too large");
  }

  @Test
  void filesOfReadingsInTheOtherUnitAreOneLine() throws Exception {
    Job wren = Jobs.read(WREN);
    List<List<String>> each =
        List.of(
            lines(() -> new SurveyReader(c -> true, NO_NOTES).parse(swapped("wren-survey.toml"))),
            lines(
                () ->
                    new ReadingsReader(c -> true, NO_NOTES, wren)
                        .parse(swapped("wren-drilled.toml"))),
            lines(
                () ->
                    new VisitReader(c -> true, NO_NOTES)
                        .parse(swapped("wren-visit.toml").getBytes(StandardCharsets.UTF_8), wren)));
    assertThat(each)
        .allSatisfy(
            some ->
                assertThat(some)
                    .singleElement()
                    .asString()
                    .startsWith("units: \"in\". Every length looks 25 times too large"));
  }

  /** What is wrong in any unit stays named beside it; a note is still given once. */
  @Test
  void otherFaultsAreStillNamed() {
    String text =
        swapped("siskin.toml")
            .replace("handed = true", "handed = \"yes\"")
            .replace("lean = { inboard = 4.0", "lean = { inboard = 40.0")
            .replace("keep = 0.125", "kepe = 0.125")
            .replace("margin = 0.4", "margin = 1e9")
            .replace("flats = 0.5 },\n  { name = \"B\"", "flats = true },\n  { name = \"B\"");
    assertThat(lines(text).stream().map(l -> l.substring(0, l.indexOf(": "))))
        .containsExactlyInAnyOrder(
            "units",
            "tower.lean.inboard",
            "plate.handed",
            "plate.bolts[0].flats",
            "cut.kepe",
            "print.margin");
  }

  @Test
  void oneSlipIsNoWrongUnit() {
    assertThat(lines(Jobs.with(WREN, "sheet = 1.4", "sheet = 0.055")))
        .singleElement()
        .asString()
        .startsWith("tower.sheet: 0.055; allowed: 0.3 to 10 mm");
  }

  /** Half of a file measured in inches: each figure is named, as the unit is right for the rest. */
  @Test
  void aMixedFileNamesItsFigures() {
    String text =
        WREN.replace("sheet = 1.4", "sheet = 0.055")
            .replace("opening = { diameter = 62.0 }", "opening = { diameter = 2.44 }")
            .replace("mark = { diameter = 104.0 }", "mark = { diameter = 4.1 }");
    assertThat(lines(text)).hasSize(3).allSatisfy(l -> assertThat(l).startsWith("tower."));
  }

  // A figure with its own unit.

  @ParameterizedTest
  @ValueSource(strings = {"\"0.551 in\"", "\"0.551in\"", "'0.551 in'", "\" 0.551  in \""})
  void inchesInAMillimetreJob(String written) throws Exception {
    SideJob side =
        Jobs.side(Jobs.with(WREN, "underside = 14.0 ", "underside = " + written), Side.LEFT);
    // Published: 25.4 mm to the inch.
    assertThat(side.tower().brackets().get(0).undersideMm()).isEqualTo(0.551 * 25.4);
  }

  @Test
  void wherevereALengthOrAnAngleStands() throws Exception {
    String siskin = Templates.text("siskin.toml");
    Job plain = Jobs.read(siskin);
    String quoted =
        siskin
            .replace("at = [1.5, -2.6]", "at = [\"1.5 in\", -2.6]")
            .replace("[2.05, 0.0], [1.75, 1.15]", "[\"2.05 in\", 0.0], [1.75, \"1.15 in\"]")
            .replace("index = [-0.3, 0.0", "index = [\"-0.3 in\", \"0 in\"")
            .replace("rotation = 40.0", "rotation = \"40 deg\"")
            .replace("thickness = 0.25", "thickness = \"0.25 in\"")
            .replace("rearward = 1.5", "rearward = \"1.5 deg\"");
    assertThat(quoted).isNotEqualTo(siskin);
    // Equal to the last bit: sheets and the pack's mark see the same figure.
    assertThat(Jobs.read(quoted)).isEqualTo(plain);
    assertThat(
            Jobs.side(siskin.replace("thickness = 0.25", "thickness = \"6 mm\""), Side.LEFT)
                .plate()
                .thicknessMm())
        .isEqualTo(6.0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "keep = \"14 cm\" | cut.keep: \"14 cm\"; allowed: 0 to 50 mm | mm or in for its unit:"
            + " convert it",
        "keep = \"3 deg\" | cut.keep: \"3 deg\"; allowed: 0 to 50 mm | this is an angle",
        "keep = \"3\" | cut.keep: \"3\"; allowed: 0 to 50 mm | \"3 mm\"",
        "keep = \"3,5 mm\" | cut.keep: \"3,5 mm\" | a point, not a comma: write \"3.5 mm\"",
        "keep = \"3,5\" | cut.keep: \"3,5\" | a point, not a comma: write 3.5.",
        "keep = \"1/8 in\" | cut.keep: \"1/8 in\" | as a decimal: \"0.125 in\"",
        "keep = \"1 1/8\" | cut.keep: \"1 1/8\" | as a decimal: \"1.125 in\"",
        "keep = \"1/0 in\" | cut.keep: \"1/0 in\" | Write a number",
        "keep = \"0.125 IN\" | cut.keep: \"0.125 IN\" | mm or in",
        "keep = \"3 in\" | cut.keep: \"3 in\"; allowed: 0 to 1.9685 in | Too large",
        "keep = \"-3 mm\" | cut.keep: \"-3 mm\"; allowed: 0 to 50 mm | cannot be negative",
        "keep = \"nan mm\" | cut.keep: \"nan mm\" | Write a number",
        "keep = \"1e3 mm\" | cut.keep: \"1e3 mm\" | Write a number",
      })
  void aWrongUnitIsToldWithWhatToWrite(String written, String begins, String says) {
    assertThat(lines(Jobs.with(WREN, "keep = 3.0", written)))
        .singleElement()
        .asString()
        .startsWith(begins)
        .contains(says);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rotation = 55.0 | rotation = \"55 mm\" | mount.rotation | its unit is deg",
        "spring = 25.0 | spring = \"25 N\" | load.spring | its unit is N/mm",
        "scale = { across = 1.0 | scale = { across = \"1.0 mm\" | print.scale.across | has no unit",
      })
  void whatIsNoLengthTakesItsOwnUnit(String old, String written, String key, String says) {
    assertThat(lines(Jobs.with(WREN, old, written)))
        .singleElement()
        .asString()
        .startsWith(key)
        .contains(says);
    assertThat(lines(WREN.replace("spring = 25.0", "spring = \"25 N/mm\""))).isEmpty();
  }

  /** A millimetre figure of an inch file is no inch read as millimetres. */
  @Test
  void figuresWithTheirUnitSayNothingOfTheFiles() {
    String text =
        Templates.text("siskin.toml")
            .replace("sheet = 0.055 ", "sheet = \"140 mm\"")
            .replace("thickness = 0.25", "thickness = \"635 mm\"")
            .replace("keep = 0.125", "keep = \"317 mm\"");
    assertThat(lines(text)).hasSize(3).noneMatch(l -> l.startsWith("units"));
  }

  // Commas.

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheet = 1.4|sheet = 1,4|file: line 18: sheet = 1,4|write 1.4.",
        "opening = { diameter = 62.0 }|opening = { diameter = 62,0 }|line 20|write 62.0.",
        "sheet = 1.4|sheet = 1.4 mm|line 18|stands in quotes: write \"1.4 mm\"",
        "sheet = 1.4|sheet = 1,4 mm|line 18|write \"1.4 mm\"",
        "sheet = 1.4|sheet = .9|line 18|write 0.9",
        "sheet = 1.4|sheet = 2.|line 18|write 2.0",
        "sheet = 1.4|sheet = ___|line 18|Still blank",
        "at = [84.0, 40.0]|at = [84.0 40.0]|at = [84.0 40.0]|comma is missing between two figures:"
            + " write 84.0, 40.0",
        "[[100.0, -100.0], [100.0, 100.0]|[[100.0, -100.0] [100.0, 100.0]|bolting_face|comma is"
            + " missing",
        "at = [84.0, 40.0]|at = [84,05, 40,5]|at = [84,05, 40,5]|write 84.05",
        "slot = { from = -8.0, to|slot = { from = -8.0 to|slot|comma is missing before to",
      })
  void aCommaTooManyOrTooFew(String old, String written, String line, String says) {
    assertThat(lines(Jobs.with(WREN, old, written)))
        .singleElement()
        .asString()
        .contains(line, says);
  }

  @Test
  void theSameSlipOnEveryLineIsToldAtOnce() {
    String text =
        WREN.replace("sheet = 1.4", "sheet = 1,4")
            .replace("pivot_height = 12.0", "pivot_height = 12,0")
            .replace("rotation = 55.0", "rotation = 55,0");
    assertThat(lines(text)).hasSize(3).allMatch(l -> l.contains("a point, not a comma"));
  }

  @Test
  void aCommaMissingAtTheEndOfALine() {
    String text =
        Jobs.with(
            WREN,
            "thread = \"M8\", flats = 13.0 },\n  { name = \"B\"",
            "thread = \"M8\", flats = 13.0 }\n  { name = \"B\"");
    assertThat(lines(text))
        .singleElement()
        .asString()
        .contains("A comma is missing at the end of line 84");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[84,0, 40,5]|write [84.0, 40.5].",
        "[84,5, 40]|write [84, 5.40] or [84.5, 40].",
        "[84.5, 40,2]|write [84.5, 40.2].",
        "[-84,5, -40.5]|write [-84.5, -40.5].",
        "[84, 40, -3]|write [84.40, -3].",
      })
  void aDecimalCommaInAPointIsOneFault(String written, String says) {
    assertThat(lines(Jobs.with(WREN, "at = [84.0, 40.0]", "at = " + written)))
        .singleElement()
        .asString()
        .startsWith("tower.keepout[0].at: ")
        .contains("A decimal takes a point, not a comma: " + says);
  }

  @Test
  void aPointWithTooManyFiguresIsJustThat() {
    assertThat(lines(Jobs.with(WREN, "at = [84.0, 40.0]", "at = [84.0, 40.0, 3.0]")))
        .singleElement()
        .asString()
        .contains("Write 2 numbers in square brackets");
  }

  /** 62 and 0 are two readings to a parser; the second is out of range, and joined they are one. */
  @Test
  void aDecimalCommaInReadings() {
    String survey = Templates.text("wren-survey.toml");
    String first = survey.replaceFirst("length = \\[[^\\]]*\\]", "length = [612,0, 611,5]");
    assertThat(first).isNotEqualTo(survey);
    assertThat(lines(() -> new SurveyReader(c -> true, NO_NOTES).parse(first)))
        .singleElement()
        .asString()
        .startsWith("left.tape[0].length")
        .contains("write [612.0, 611.5].");
    assertThat(
            lines(
                Jobs.with(
                    Templates.text("dunnock.toml"),
                    "radii = [56.0, 55.5,",
                    "radii = [56,0, 55,5,")))
        .singleElement()
        .asString()
        .startsWith("tower.mark.radii")
        .contains("write [56.0, 55.5, 55");
  }

  // The unit of a table.

  @Test
  void inchCalipersAndAMillimetreTapeMeet() throws Exception {
    String survey =
        """
        format = 1
        title = "both"
        units = "mm"
        sides = ["left"]
        [left]
        tyre_radius = 290.0
        tape = [{ from = "top", to = "ball_joint", length = 24.0, unit = "in", uncertainty = 0.05 }]
        [left.tower]
        unit = "in"
        sheet = 0.055
        opening = { readings = [62.0, 62.1], uncertainty = 0.2, unit = "mm" }
        landmark = [{ name = "hole", at = ["38 mm", -2.0], uncertainty = 0.02, diameter = 0.375 }]
        """;
    var left = new SurveyReader(c -> true, NO_NOTES).parse(survey).sides().get(Side.LEFT);
    SurveyTower tower = left.tower().orElseThrow();
    // Published: 25.4 mm to the inch.
    assertThat(left.tyreRadius().orElseThrow().values()).containsExactly(290.0);
    assertThat(left.tapes().get(0).length())
        .isEqualTo(new Repeated(List.of(24 * 25.4), 0.05 * 25.4));
    assertThat(tower.sheet().orElseThrow().values()).containsExactly(0.055 * 25.4);
    assertThat(tower.opening().orElseThrow()).isEqualTo(new Repeated(List.of(62.0, 62.1), 0.2));
    SurveyTower.Mark hole = tower.landmarks().get(0);
    assertThat(hole.at().orElseThrow().fore()).isEqualTo(new Repeated(List.of(38.0), 0.02 * 25.4));
    assertThat(hole.at().orElseThrow().in().values()).containsExactly(-2 * 25.4);
    assertThat(hole.diameter().values()).containsExactly(0.375 * 25.4);
  }

  @Test
  void readingsOfInchCalipersForAMillimetreJob() throws Exception {
    Job job = Jobs.read(WREN);
    String text = Templates.text("wren-drilled.toml");
    Readings mm = new ReadingsReader(c -> true, NO_NOTES, job).parse(text);
    String both =
        text.replace(
                "hole = [\n  { name = \"A\", diameter = [9.00, 9.05] },",
                "hole = [\n  { name = \"A\", unit = \"in\", diameter = [\"9 mm\", \"9.05 mm\"] },")
            .replace("caliper  = 0.05 ", "unit = \"mm\"\ncaliper  = 0.05 ");
    assertThat(both).isNotEqualTo(text);
    assertThat(new ReadingsReader(c -> true, NO_NOTES, job).parse(both)).isEqualTo(mm);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit = \"inch\"|left.tower.unit: \"inch\"; allowed: \"mm\" or \"in\"|Did you mean \"in\"?",
        "unit = \"cm\"|left.tower.unit: \"cm\"|convert",
        "unit = 1|left.tower.unit: 1;|in quotes",
        "unit = nan|left.tower.unit: nan;|in quotes",
        "unit = -1e9|left.tower.unit: -1000000000;|in quotes",
        "units = \"in\"|left.tower.units: unknown key|Known here",
        "unit = \"in\"|left.tower.unit: \"in\". Every length looks 25 times too large|is unit"
            + " right?",
      })
  void aWrongUnitOfATable(String written, String begins, String says) {
    String text =
        Jobs.with(Templates.text("wren-survey.toml"), "[left.tower]", "[left.tower]\n" + written);
    assertThat(lines(() -> new SurveyReader(c -> true, NO_NOTES).parse(text)))
        .singleElement()
        .asString()
        .startsWith(begins)
        .contains(says);
  }

  @Test
  void aJobHasOneUnit() {
    assertThat(lines(Jobs.with(WREN, "[cut]\n", "[cut]\nunit = \"in\"\n")))
        .singleElement()
        .asString()
        .startsWith("cut.unit: unknown key");
    assertThat(lines(Jobs.with(WREN, "units  = \"mm\"", "unit  = \"mm\"")))
        .singleElement()
        .asString()
        .contains("Did you mean units?");
  }
}
