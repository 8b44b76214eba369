package dev.towerscribe.writer.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepWriterTest {
  private static final FlatSolid WORKED = SampleSolids.worked();

  private static String text(FlatSolid solid, PartName name) {
    return new String(StepWriter.write(solid, name), StandardCharsets.US_ASCII);
  }

  private static List<String> mismatches(FlatSolid written, FlatSolid wanted) {
    return StepProof.check(StepWriter.write(written, SampleSolids.NAME), wanted, SampleSolids.NAME);
  }

  private static double readVolume(FlatSolid solid) throws Unreadable {
    List<String> faults = new ArrayList<>();
    double triple = 0;
    for (StepShape.Face face :
        StepReader.read(StepWriter.write(solid, SampleSolids.NAME)).faces()) {
      triple += StepFaces.tripleVolume(face, Tolerances.SAME_POINT_MM, faults);
    }
    assertThat(faults).isEmpty();
    return triple / 3;
  }

  @Test
  void holdsTheVolumeCalculatedByHand() throws Unreadable {
    // Independent, by hand, in mm3. Outline 10 (100 x 60 - 4 x 100 + 100 pi) = 56000 + 1000 pi;
    // slot 10 (16 x 10 + 25 pi) = 1600 + 250 pi; hole 9: 202.5 pi; hole 6.6: 108.9 pi and its
    // counterbore (30.25 - 10.89) x 6 = 116.16 pi; hole 5.5: 75.625 pi and its countersink, 2.75
    // deep: 2.75/3 (30.25 + 15.125 + 7.5625) - 7.5625 x 2.75 = 27.729166... pi.
    double pis = 1000 - 250 - 202.5 - 108.9 - 116.16 - 75.625 - 2.75 * (52.9375 / 3 - 7.5625);
    double volume = 54400 + pis * Math.PI;
    assertThat(WORKED.volumeMm3()).isCloseTo(volume, within(1e-9 * volume));
    assertThat(readVolume(WORKED)).isCloseTo(volume, within(1e-9 * volume));
    assertThat(mismatches(WORKED, WORKED)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    // Independent: a disc of radius 20, 8 thick, is 3200 pi; a hole 6 takes 72 pi; a counterbore 14
    // x 3 takes (49 - 9) x 3 = 120 pi more; a countersink 12 at 90 degrees is 3 deep and takes 3/3
    // (36 + 18 + 9) - 27 = 36 pi more.
    "none, true, 3128",
    "bore, true, 3008",
    "bore, false, 3008",
    "sink, true, 3092",
    "sink, false, 3092",
  })
  void holdsEveryRecess(String kind, boolean fromTop, double pis) throws Unreadable {
    Optional<Recess> recess =
        switch (kind) {
          case "bore" -> Optional.of(new Recess.Counterbore(14, 3, fromTop));
          case "sink" -> Optional.of(new Recess.Countersink(12, Angle.ofDegrees(90), fromTop));
          default -> Optional.empty();
        };
    FlatSolid disc =
        new FlatSolid(
            Contour.circle(new Vec2(5, -3), 20),
            8,
            List.of(),
            List.of(new Bore(new Vec2(8, 1), 6, recess)));
    assertThat(readVolume(disc)).isCloseTo(pis * Math.PI, within(1e-9 * pis));
    assertThat(mismatches(disc, disc)).isEmpty();
  }

  @Test
  void writesBoxesAndCounts() {
    String square =
        text(
            new FlatSolid(
                Contour.polygon(
                    List.of(new Vec2(0, 0), new Vec2(2, 0), new Vec2(2, 3), new Vec2(0, 3))),
                4,
                List.of(),
                List.of()),
            SampleSolids.NAME);
    // Independent: a box has 6 faces, 12 edges, 8 corners, and 24 uses of edges.
    assertThat(square.split("ADVANCED_FACE\\(", -1)).hasSize(1 + 6);
    assertThat(square.split("EDGE_CURVE\\(", -1)).hasSize(1 + 12);
    assertThat(square.split("VERTEX_POINT\\(", -1)).hasSize(1 + 8);
    assertThat(square.split("ORIENTED_EDGE\\(", -1)).hasSize(1 + 24);
    // Published: the schema's name and object identifier, ISO 10303-214.
    assertThat(square)
        .startsWith("ISO-10303-21;\nHEADER;\n")
        .contains("FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));")
        .endsWith("ENDSEC;\nEND-ISO-10303-21;\n");
  }

  @Test
  void namesThePart() {
    PartName name = new PartName("O'Dell \\ Größe 5 \uD83D\uDE97!", "", "", Optional.empty());
    String file = text(WORKED, name);
    // Published: apostrophe and backslash doubled, \X2\ with four and \X4\ with eight hexadecimal
    // digits each (ISO 10303-21, strings). The code points are from the Unicode charts.
    assertThat(file)
        .contains("'O''Dell \\\\ Gr\\X2\\00F600DF\\X0\\e 5 \\X4\\0001F697\\X0\\!'")
        .contains("'1970-01-01T00:00:00'")
        .matches("[\\n -~]+");
    assertThat(StepProof.check(file.getBytes(StandardCharsets.US_ASCII), WORKED, name)).isEmpty();
    assertThat(StepProof.check(file.getBytes(StandardCharsets.US_ASCII), WORKED, SampleSolids.NAME))
        .singleElement()
        .asString()
        .contains("named O'Dell");
    assertThat(text(WORKED, SampleSolids.NAME)).contains("'2026-03-14T00:00:00'");
  }

  @Test
  void refusesWhatIsNoName() {
    for (String bad : List.of("", " ", "a\nb", "a\u0007", "\uD800")) {
      assertThatThrownBy(() -> new PartName(bad, "", "", Optional.empty()))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void refusesAnEdgeWithoutLength() {
    Vec2 a = new Vec2(0, 0);
    Vec2 b = new Vec2(9, 0);
    Vec2 c = new Vec2(0, 9);
    Contour doubled =
        Contour.of(
            List.of(new Segment(a, b), new Segment(b, b), new Segment(b, c), new Segment(c, a)));
    FlatSolid solid = new FlatSolid(doubled, 3, List.of(), List.of());
    assertThatThrownBy(() -> StepWriter.write(solid, SampleSolids.NAME))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("without length");
  }

  @Test
  void tellsAPartFromItsMirrorImageAndFromAThickerOne() {
    FlatSolid mirrored = WORKED.mapped(new Frame2(Vec2.ZERO, new Vec2(-1, 0), new Vec2(0, 1)));
    assertThat(mismatches(mirrored, mirrored)).isEmpty();
    assertThat(mismatches(mirrored, WORKED)).isNotEmpty();
    FlatSolid thicker =
        new FlatSolid(
            WORKED.outline(), WORKED.thicknessMm() + 1e-8, WORKED.cutouts(), WORKED.bores());
    assertThat(mismatches(WORKED, thicker)).isNotEmpty();
  }

  @Test
  void tellsWhichFaceARecessOpensIn() {
    List<Bore> over = new ArrayList<>(WORKED.bores());
    over.set(1, new Bore(new Vec2(30, 10), 6.6, Optional.of(new Recess.Counterbore(11, 6, false))));
    FlatSolid other = new FlatSolid(WORKED.outline(), 10, WORKED.cutouts(), over);
    // Volume and box are alike: only the faces tell.
    assertThat(other.volumeMm3()).isEqualTo(WORKED.volumeMm3());
    assertThat(mismatches(other, WORKED)).isNotEmpty().noneMatch(m -> m.contains("volume"));
  }

  @Test
  void tellsWhatIsNoSuchFile() {
    byte[] file = StepWriter.write(WORKED, SampleSolids.NAME);
    for (byte[] bad :
        List.of(
            new byte[0],
            "not a solid".getBytes(StandardCharsets.US_ASCII),
            Arrays.copyOf(file, file.length / 2),
            Arrays.copyOf(file, file.length + 1))) {
      assertThat(StepProof.check(bad, WORKED, SampleSolids.NAME)).hasSize(1);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ".MILLI.,.METRE. | .CENTI.,.METRE.",
        "SI_UNIT($,.RADIAN.) | SI_UNIT(.MILLI.,.RADIAN.)",
        "LENGTH_MEASURE(0.000001) | LENGTH_MEASURE(0.01)",
        "AUTOMOTIVE_DESIGN | CONFIG_CONTROL_DESIGN",
        "CLOSED_SHELL | OPEN_SHELL",
        "FACE_BOUND( | FACE_OUTER_BOUND(",
        "CYLINDRICAL_SURFACE(' | CONICAL_SURFACE('",
        "END-ISO-10303-21; | END-ISO-10303-21;x",
      })
  void tellsChangedWords(String from, String to) {
    String file = text(WORKED, SampleSolids.NAME);
    assertThat(file).contains(from);
    byte[] changed = file.replace(from, to).getBytes(StandardCharsets.US_ASCII);
    assertThat(StepProof.check(changed, WORKED, SampleSolids.NAME)).isNotEmpty();
  }

  @Test
  void writesTheSameBytesWherever() {
    byte[] first = StepWriter.write(WORKED, SampleSolids.NAME);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertThat(StepWriter.write(WORKED, SampleSolids.NAME)).as(tag).isEqualTo(first);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
