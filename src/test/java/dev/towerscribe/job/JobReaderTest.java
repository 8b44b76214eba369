package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Aims;
import dev.towerscribe.model.EdgeRule;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.LengthUnit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobReaderTest {
  /** Room for the rounding of a few operations on lengths of some hundred mm. */
  private static final double ROUNDING = 1e-9;

  private static final String WREN = Templates.text("wren.toml");
  private static final String SISKIN = Templates.text("siskin.toml");

  @Test
  void readsTheDemoAsWritten() throws Exception {
    // Independent: as templates/wren.toml has it.
    Job job = Jobs.read(WREN);
    assertThat(job.title()).isEqualTo("Wren hatch, road and track days");
    assertThat(job.date()).contains(LocalDate.of(2026, 11, 25));
    assertThat(job.units()).isEqualTo(LengthUnit.MM);
    SideJob left = job.sides().get(Side.LEFT);
    assertThat(left.tower().opening()).isEqualTo(Contour.circle(Vec2.ZERO, 31.0));
    assertThat(left.tower().lean().inboard().degrees()).isCloseTo(5.0, within(ROUNDING));
    assertThat(left.tower().crown().orElseThrow().riseMm()).isEqualTo(3.0);
    assertThat(left.tower().landmarks().get(0))
        .isEqualTo(new Landmark("drain hole", new Vec2(38, -52), 9.0));
    assertThat(left.tower().keepOuts()).hasSize(2);
    assertThat(left.tower().brackets().get(0).fasteners()).hasSize(1);
    assertThat(left.plate().slot().indexMm()).containsExactly(-8.0, 4.0, 16.0);
    assertThat(left.plate().bolts().get(1).at()).isEqualTo(new Vec2(-38.0, 65.8));
    assertThat(left.mount().rotation().degrees()).isCloseTo(55.0, within(ROUNDING));
    assertThat(left.mount().inboardMm()).isEqualTo(-3.0);
    assertThat(left.tools().assumed()).isFalse();
    assertThat(left.aims().orElseThrow().casterTo().orElseThrow().degrees())
        .isCloseTo(6.0, within(ROUNDING));
  }

  /** Frozen: the defaults. The washer's is published: ISO 7089, M8. */
  @Test
  void whatIsLeftOutHasItsDefault() throws Exception {
    Job job = Jobs.read(Jobs.LEAST);
    assertThat(job.date()).isEmpty();
    assertThat(job.units()).isEqualTo(LengthUnit.MM);
    assertThat(job.sides().keySet()).containsExactly(Side.LEFT, Side.RIGHT);
    SideJob left = job.sides().get(Side.LEFT);
    assertThat(left.tower().lean()).isEqualTo(Lean.LEVEL);
    assertThat(left.tower().crown()).isEmpty();
    assertThat(left.tower().pivotHeightMm()).isZero();
    assertThat(left.tower().boltingFace()).isEmpty();
    assertThat(left.tower().wall()).isEmpty();
    assertThat(left.tower().straightedges()).isEmpty();
    assertThat(left.plate().slot().indexMm()).isEmpty();
    assertThat(left.plate().movingClearanceMm()).isEqualTo(2.0);
    assertThat(left.plate().coverMm()).isEqualTo(5.0);
    assertThat(left.plate().wallGapMm()).isEqualTo(2.0);
    assertThat(left.plate().bolts().get(0).washerMm()).isEqualTo(16.0);
    assertThat(left.holes().fit()).isEqualTo(Fit.MEDIUM);
    assertThat(left.holes().edgeRule()).isEqualTo(EdgeRule.STRICT);
    assertThat(left.cut().keepMm()).isEqualTo(3.0);
    assertThat(left.cut().roughMm()).isEqualTo(2.5);
    assertThat(left.cut().cornerMm()).isEqualTo(8.0);
    assertThat(left.cut().starterMm()).isEqualTo(10.0);
    assertThat(left.tools().roomMm()).isEqualTo(2.0);
    assertThat(left.tools().depthMm()).isEqualTo(60.0);
    assertThat(left.tools().assumed()).isTrue();
    // Published, from memory: a 13 mm socket is 18.5, its 3/8 drive end 20.
    assertThat(left.tools().socketMm()).isEqualTo(20.0);
    assertThat(left.print().paper()).isEqualTo(Paper.A4);
    assertThat(left.print().marginMm()).isEqualTo(10.0);
    assertThat(left.print().scaleAcross()).isEqualTo(1.0);
    assertThat(left.print().scaleAlong()).isEqualTo(1.0);
    assertThat(left.print().skew().radians()).isZero();
    assertThat(left.strut()).isEmpty();
    assertThat(left.axis()).isEmpty();
    assertThat(left.aims()).isEmpty();
    Aims aims = Jobs.side(Jobs.LEAST + "[aims]\n", Side.LEFT).aims().orElseThrow();
    assertThat(aims.use()).isEqualTo(Aims.Use.ROAD_AND_TRACK);
    assertThat(aims.camber()).isEmpty();
  }

  /** Published, from memory: 16 mm flats take a socket of 22.2; 15.5 need the 16 one. */
  @Test
  void theAssumedSocketFitsTheLargestBolt() throws Exception {
    String text =
        Jobs.with(
            Jobs.LEAST,
            "\"B\", at = [-38.0, 65.8], thread = \"M8\", flats = 13.0",
            "\"B\", at = [-38.0, 65.8], thread = \"M10\", flats = 15.5");
    assertThat(Jobs.side(text, Side.LEFT).tools().socketMm()).isEqualTo(22.2);
  }

  @Test
  void aDefaultStatedInMillimetresStaysSoInAnInchJob() throws Exception {
    // Frozen: the defaults of whatIsLeftOutHasItsDefault.
    SideJob left = Jobs.side(SISKIN, Side.LEFT);
    assertThat(left.plate().coverMm()).isEqualTo(5.0);
    assertThat(left.cut().starterMm()).isEqualTo(10.0);
  }

  /** Independent: each product by 25.4 done by hand. */
  @Test
  void everyLengthOfAnInchJobIsConverted() throws Exception {
    String text =
        SISKIN
            + """
            [right]
            mount = { inboard = -0.2 }
            [right.tower]
            keepout = [{ name = "hole", at = [-3.0, 1.0], diameter = 0.25 }]
            """;
    Job job = Jobs.read(text);
    assertThat(job.units()).isEqualTo(LengthUnit.INCH);
    SideJob left = job.sides().get(Side.LEFT);
    SideJob right = job.sides().get(Side.RIGHT);
    assertThat(left.tower().sheetMm()).isCloseTo(1.397, within(ROUNDING));
    assertThat(left.tower().opening().asCircle().orElseThrow().radius())
        .isCloseTo(30.988, within(ROUNDING));
    assertThat(left.tower().pivotHeightMm()).isCloseTo(12.7, within(ROUNDING));
    assertThat(left.tower().straightedges().get(0).from().x()).isCloseTo(-86.36, within(ROUNDING));
    assertThat(left.tower().keepOuts().get(0).marginMm()).isCloseTo(0.12 * 25.4, within(ROUNDING));
    assertThat(left.plate().bearingHeightMm()).isCloseTo(17.78, within(ROUNDING));
    assertThat(left.plate().slot().indexMm().get(3)).isCloseTo(15.24, within(ROUNDING));
    assertThat(left.plate().bolts().get(0).flatsMm()).isCloseTo(12.7, within(ROUNDING));
    assertThat(left.plate().bolts().get(2).at().y()).isCloseTo(-66.04, within(ROUNDING));
    assertThat(left.mount().rearwardMm()).isCloseTo(6.35, within(ROUNDING));
    assertThat(left.cut().keepMm()).isCloseTo(3.175, within(ROUNDING));
    assertThat(left.tools().depthMm()).isCloseTo(60.96, within(ROUNDING));
    assertThat(left.print().marginMm()).isCloseTo(10.16, within(ROUNDING));
    assertThat(left.axis().orElseThrow().lengthMm()).isCloseTo(596.9, within(ROUNDING));
    assertThat(left.axis().orElseThrow().caster().degrees()).isCloseTo(3.1, within(ROUNDING));
    assertThat(right.mount().inboardMm()).isCloseTo(-5.08, within(ROUNDING));
    assertThat(right.mount().rearwardMm()).isCloseTo(6.35, within(ROUNDING));
    assertThat(right.tower().keepOuts().get(0).outline().asCircle().orElseThrow().centre().x())
        .isCloseTo(-76.2, within(ROUNDING));
  }

  @Test
  void aPlateFileHasItsOwnUnitOrElseTheJobs() throws Exception {
    // Independent: 18 mm of the plate file; 0.5 in = 12.7 mm, 0.7 in = 17.78 mm.
    int from = SISKIN.indexOf("[plate]");
    int to = SISKIN.indexOf("[mount]");
    String text =
        SISKIN.substring(0, from)
            + "[plate]\nfile = \"p.toml\"\nthickness = 0.5\n"
            + SISKIN.substring(to);
    String mm = Templates.text("plates/three-bolt.toml");
    Job own = Jobs.READER.parse(text, name -> Optional.of(mm));
    assertThat(own.sides().get(Side.LEFT).plate().bearingHeightMm()).isEqualTo(18.0);
    assertThat(own.sides().get(Side.LEFT).plate().thicknessMm()).isCloseTo(12.7, within(ROUNDING));
    String bare = "format = 1\n" + SISKIN.substring(from + "[plate]\n".length(), to);
    Job inherited = Jobs.READER.parse(text, name -> Optional.of(bare));
    assertThat(inherited.sides().get(Side.LEFT).plate().bearingHeightMm())
        .isCloseTo(17.78, within(ROUNDING));
  }

  @Test
  void tablesMergeListsReplaceShapesReplace() throws Exception {
    // Independent: as the text has it, over those of the least job.
    String text =
        Jobs.LEAST
            + """
            [cut]
            keep = 4.0
            [left.cut]
            rough = 2.0
            [right.tower]
            opening = { points = [[30, 30], [-30, 30], [-30, -30], [30, -30]] }
            mark = { radii = [60, 60, 60, 60, 60, 60], at = [1, 0] }
            landmark = [
              { name = "one", at = [60, 60], diameter = 8 },
              { name = "two", at = [-60, 60], diameter = 8 },
            ]
            [right.plate]
            moving = { clearance = 3.0 }
            """;
    Job job = Jobs.read(text);
    SideJob left = job.sides().get(Side.LEFT);
    SideJob right = job.sides().get(Side.RIGHT);
    assertThat(left.cut().keepMm()).isEqualTo(4.0);
    assertThat(left.cut().roughMm()).isEqualTo(2.0);
    assertThat(right.cut().keepMm()).isEqualTo(4.0);
    assertThat(right.cut().roughMm()).isEqualTo(2.5);
    assertThat(left.tower().opening().asCircle()).isPresent();
    assertThat(right.tower().opening().corners()).hasSize(4);
    assertThat(right.tower().mark().corners()).hasSize(6).contains(new Vec2(61, 0));
    assertThat(left.tower().landmarks()).hasSize(1);
    assertThat(right.tower().landmarks()).extracting(Landmark::name).containsExactly("one", "two");
    assertThat(right.tower().sheetMm()).isEqualTo(1.4);
    assertThat(right.plate().movingDiameterMm()).isEqualTo(22.0);
    assertThat(right.plate().movingClearanceMm()).isEqualTo(3.0);
  }

  /** A circle of the base must not lend its place to an override's circle. */
  @Test
  void anOverriddenCircleDoesNotKeepTheOldCentre() throws Exception {
    String text =
        Jobs.with(Jobs.LEAST, "{ diameter = 62.0 }", "{ diameter = 62.0, at = [2, 0] }")
            + "[right.tower]\n"
            + "opening = { diameter = 63.0 }\n"
            + "[left.tower]\n"
            + "opening = { at = [3, 0] }";
    Job job = Jobs.read(text);
    assertThat(job.sides().get(Side.RIGHT).tower().opening())
        .isEqualTo(Contour.circle(Vec2.ZERO, 31.5));
    assertThat(job.sides().get(Side.LEFT).tower().opening())
        .isEqualTo(Contour.circle(new Vec2(3, 0), 31));
  }

  @Test
  void aSideMayCarryWhatTheOtherLacks() throws Exception {
    // Independent: as the text has it.
    String text = Jobs.with(Jobs.LEAST, "rotation = 55.0\n", "");
    assertThat(Jobs.faults(text + "[left.mount]\nrotation = 50.0\n"))
        .extracting(Fault::key)
        .containsExactly("mount.rotation");
    assertThat(
            Jobs.read(text + "[left.mount]\nrotation = 50.0\n[right.mount]\nrotation = 60.0\n")
                .sides()
                .get(Side.RIGHT)
                .mount()
                .rotation()
                .degrees())
        .isCloseTo(60.0, within(ROUNDING));
  }

  @Test
  void aSideWithAPlateFileOfItsOwnSharesNothingWithTheOther() throws Exception {
    // Independent: as the text and the plate file have it.
    String text =
        Jobs.with(Jobs.LEAST, "setting = 16.0", "setting = 0.0")
            + "[right.plate]\nfile = \"plates/four-bolt.toml\"\nthickness = 9.0\n";
    Job job = Jobs.read(text);
    assertThat(job.sides().get(Side.LEFT).plate().bolts()).hasSize(2);
    assertThat(job.sides().get(Side.RIGHT).plate().bolts()).hasSize(4);
    assertThat(job.sides().get(Side.RIGHT).plate().thicknessMm()).isEqualTo(9.0);
    assertThat(job.sides().get(Side.RIGHT).plate().handed()).isFalse();
  }

  @Test
  void oneSideOnlyLeavesTheOtherUnread() throws Exception {
    String text = Jobs.LEAST.replace("title", "sides = [\"right\"]\ntitle");
    Job job = Jobs.read(text + "[left.mount]\nrotation = 999.0\n");
    assertThat(job.sides().keySet()).containsExactly(Side.RIGHT);
  }

  /** Independent: cosines and sines of 0, 60, ... 300 degrees, from the half and root three. */
  @Test
  void radiiGoFromForwardTowardInboardAndRound() throws Exception {
    String text =
        Jobs.with(
            Jobs.LEAST,
            "mark = { diameter = 104.0 }",
            "mark = { radii = [50, 52, 54, 56, 58, 60] }");
    double h = Math.sqrt(3) / 2;
    List<Vec2> expected =
        List.of(
            new Vec2(50, 0),
            new Vec2(26, 52 * h),
            new Vec2(-27, 54 * h),
            new Vec2(-56, 0),
            new Vec2(-29, -58 * h),
            new Vec2(30, -60 * h));
    List<Vec2> corners = Jobs.side(text, Side.LEFT).tower().mark().corners();
    assertThat(corners).hasSameSizeAs(expected);
    for (Vec2 point : expected) {
      assertThat(corners).anySatisfy(c -> assertThat(c.distanceTo(point)).isLessThan(ROUNDING));
    }
  }

  @Test
  void theRightStrutIsTheMirrorOfTheLeftOverridesIncluded() throws Exception {
    String text = WREN + "[right.strut]\nball_joint = [7.0, 654.0, 191.0]\n";
    Job job = Jobs.read(text);
    StrutPoints left = job.sides().get(Side.LEFT).strut().orElseThrow();
    StrutPoints right = job.sides().get(Side.RIGHT).strut().orElseThrow();
    assertThat(left.top()).isEqualTo(new Vec3(-20, 545, 790));
    assertThat(right.top()).isEqualTo(new Vec3(-20, -545, 790));
    assertThat(left.ballJoint()).isEqualTo(new Vec3(8, 655, 190));
    assertThat(right.ballJoint()).isEqualTo(new Vec3(7, -654, 191));
    assertThat(right.knuckleBolt().orElseThrow().pivot()).isEqualTo(new Vec3(-6, -610, 300));
    assertThat(right.camber()).isEqualTo(left.camber());
    assertThat(right.armRear()).isEqualTo(left.armRear().mirroredAcross());
    assertThat(right.wheelCentre()).isEqualTo(left.wheelCentre().mirroredAcross());
  }

  @Test
  void wholeNumbersAreLengthsAndHexIsANumber() throws Exception {
    String text = Jobs.with(Jobs.LEAST, "diameter = 62.0", "diameter = 0x3E");
    assertThat(Jobs.side(text, Side.LEFT).tower().opening())
        .isEqualTo(Contour.circle(Vec2.ZERO, 31.0));
  }

  @Test
  void aFigureBelowAllRoundingIsZero() throws Exception {
    // Independent: 1e-320 of a mm is nothing.
    String text = Jobs.with(Jobs.LEAST, "inboard = -3.0", "inboard = -1e-320");
    assertThat(Jobs.side(text, Side.LEFT).mount().inboardMm()).isEqualTo(0.0);
    String minusZero = Jobs.with(Jobs.LEAST, "inboard = -3.0", "inboard = -0.0");
    assertThat(Jobs.side(minusZero, Side.LEFT).mount().inboardMm()).isEqualTo(0.0);
  }

  @Test
  void aDateInQuotesIsADateToo() throws Exception {
    assertThat(Jobs.read("date = \"2024-02-29\"\n" + Jobs.LEAST).date())
        .contains(LocalDate.of(2024, 2, 29));
  }

  @Test
  void theLocaleChangesNothing() throws Exception {
    Locale before = Locale.getDefault();
    String wrong = Jobs.with(WREN, "sheet = 1.4", "sheet = 1234.5");
    Job job = Jobs.read(WREN);
    List<Fault> faults = Jobs.faults(wrong);
    try {
      for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Jobs.read(WREN)).isEqualTo(job);
        assertThat(Jobs.faults(wrong)).isEqualTo(faults);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void lineEndsAndAByteOrderMarkDoNotMatter(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("job.toml");
    Files.writeString(file, "\uFEFF" + WREN.replace("\n", "\r\n"));
    assertThat(Jobs.READER.read(file)).isEqualTo(Jobs.read(WREN));
  }

  @Test
  void whatCannotBeReadSaysWhichFileAndWhy(@TempDir Path folder) throws Exception {
    assertThatThrownBy(() -> Jobs.READER.read(folder.resolve("none.toml")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("none.toml: there is no such file");
    assertThatThrownBy(() -> Jobs.READER.read(folder))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("it is a folder");
    Path job = folder.resolve("dunnock.toml");
    Files.writeString(job, Templates.text("dunnock.toml"));
    assertThatThrownBy(() -> Jobs.READER.read(job))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("four-bolt.toml: there is no such file");
  }

  @Test
  void whatIsNotTextOrTooLongIsAFault(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("job.toml");
    Files.write(file, "format = 1\ntitle = \"caf\u00e9\"\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(() -> Jobs.READER.read(file))
        .isInstanceOf(JobRejected.class)
        .hasMessageContaining("line 2 holds bytes that are not UTF-8");
    byte[] filler =
        "#".repeat(TomlText.MOST_BYTES - Jobs.LEAST.length()).getBytes(StandardCharsets.UTF_8);
    String full = Jobs.LEAST + new String(filler, StandardCharsets.UTF_8);
    Files.writeString(file, full);
    assertThat(Jobs.READER.read(file).title()).isEqualTo("Least");
    Files.writeString(file, full + "#");
    assertThatThrownBy(() -> Jobs.READER.read(file))
        .isInstanceOf(JobRejected.class)
        .hasMessageContaining("more than 1 MiB");
  }
}
