package dev.towerscribe.writer.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.writer.SamplePages;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DxfWriterTest {
  private static String ascii(Page page, DxfVersion version) {
    return new String(DxfPages.write(page, version), StandardCharsets.US_ASCII);
  }

  private static List<String> entities(DxfVersion version, Item... items) {
    return Pairs.of(DxfPages.write(DxfPages.of(items), version)).entities().stream()
        .map(Pairs::toString)
        .toList();
  }

  private static List<String> r12(Item... items) {
    return entities(DxfVersion.R12, items);
  }

  /** Kinds of the entities in order. */
  private static List<String> kinds(Item... items) {
    return Pairs.of(DxfPages.write(DxfPages.of(items), DxfVersion.R12)).entities().stream()
        .map(e -> e.text(0))
        .toList();
  }

  private static Item.ArcLine arc(double x, double y, double r, double fromDeg, double sweepDeg) {
    return new Item.ArcLine(
        Layer.MARK,
        new Arc(new Vec2(x, y), r, Math.toRadians(fromDeg), Math.toRadians(sweepDeg)),
        Pen.THIN);
  }

  @Test
  void onlyRelease2000StatesItsUnit() {
    Page page = DxfPages.everything();
    // Published: DXF reference, header variables; $INSUNITS 4 is the mm.
    assertThat(ascii(page, DxfVersion.R12))
        .contains("$ACADVER\r\n  1\r\nAC1009\r\n")
        .doesNotContain("$INSUNITS")
        .doesNotContain("AcDb");
    assertThat(ascii(page, DxfVersion.R2000))
        .contains("$ACADVER\r\n  1\r\nAC1015\r\n")
        .contains("$INSUNITS\r\n 70\r\n4\r\n")
        .contains("$MEASUREMENT\r\n 70\r\n1\r\n");
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void extentsAndLimitsAreThePaper(DxfVersion version) {
    assertThat(ascii(DxfPages.of(), version))
        .contains("$EXTMIN\r\n 10\r\n0.0\r\n 20\r\n0.0\r\n 30\r\n0.0\r\n")
        .contains("$EXTMAX\r\n 10\r\n297.0\r\n 20\r\n210.0\r\n 30\r\n0.0\r\n")
        .contains("$LIMMIN\r\n 10\r\n0.0\r\n 20\r\n0.0\r\n")
        .contains("$LIMMAX\r\n 10\r\n297.0\r\n 20\r\n210.0\r\n");
  }

  @Test
  void refusesWhatWouldNotBeTrueOrWhole() {
    Page page = DxfPages.everything();
    Page scaled =
        new Page(
            "s",
            "S",
            "s",
            210,
            297,
            true,
            new PrintScale(1.0, 1.001),
            page.items(),
            Optional.empty(),
            List.of());
    assertThatThrownBy(() -> DxfPages.write(scaled, DxfVersion.R12))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("scale");
    Page windowed = SamplePages.everything(PrintScale.TRUE);
    assertThatThrownBy(() -> DxfPages.write(windowed, DxfVersion.R2000))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("window");
    for (double radius : new double[] {0, -1, Double.NaN}) {
      Page page0 = DxfPages.of(new Item.Circle(Layer.HOLES, Vec2.ZERO, radius, Pen.THIN, Ink.NONE));
      assertThatThrownBy(() -> DxfPages.write(page0, DxfVersion.R12))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("radius");
    }
    for (String content :
        List.of("bolt \u4E2D", "smile \uD83D\uDE00", "line\nbreak", "bell\u0007")) {
      Page page1 = DxfPages.of(DxfPages.text(9, 9, Align.START, 0, content, Ink.BLACK));
      assertThatThrownBy(() -> DxfPages.write(page1, DxfVersion.R12))
          .as(content)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("cannot write");
    }
  }

  // Expected in the next four tests: independent, by hand from the groups of the DXF reference.

  @Test
  void worksOutLinesCirclesAndArcs() {
    assertThat(
            r12(
                new Item.Line(Layer.HOLES, new Vec2(1, 2), new Vec2(-3.25, 1.0 / 3), Pen.CENTRE),
                new Item.Circle(Layer.HOLES, new Vec2(50, 170), 4.5, Pen.OUTLINE, Ink.WHITE)))
        .containsExactly(
            "0=LINE 8=HOLES 6=CENTER 10=1.0 20=2.0 30=0.0 11=-3.25 21=0.3333333333 31=0.0",
            "0=CIRCLE 8=HOLES 10=50.0 20=170.0 30=0.0 40=4.5");
    // A clockwise arc begins, for the format, where it ends for us.
    assertThat(r12(arc(1, 2, 10, 30, 60), arc(1, 2, 10, 30, -60), arc(1, 2, 10, 350, 20)))
        .containsExactly(
            "0=ARC 8=MARK 10=1.0 20=2.0 30=0.0 40=10.0 50=30.0 51=90.0",
            "0=ARC 8=MARK 10=1.0 20=2.0 30=0.0 40=10.0 50=330.0 51=30.0",
            "0=ARC 8=MARK 10=1.0 20=2.0 30=0.0 40=10.0 50=350.0 51=10.0");
    assertThat(
            entities(
                DxfVersion.R2000,
                new Item.Line(Layer.ROUGH_CUT, new Vec2(1, 2), new Vec2(3, 4), Pen.ROUGH_CUT)))
        .singleElement()
        .asString()
        .matches(
            "0=LINE 5=[0-9A-F]+ 330=8 100=AcDbEntity 8=ROUGH-CUT 6=DASHED 370=50 100=AcDbLine"
                + " 10=1.0 20=2.0 30=0.0 11=3.0 21=4.0 31=0.0");
  }

  @Test
  void wholeCirclesAreCirclesHoweverTheyAreHeld() {
    Vec2 at = new Vec2(20, 30);
    Arc half = new Arc(at, 7, 1.0, -Math.PI);
    Arc rest = new Arc(at, 7, 1.0 - Math.PI, -Math.PI);
    for (Item item :
        List.of(
            new Item.ArcLine(Layer.HOLES, new Arc(at, 7, 2.0, -2 * Math.PI), Pen.THIN),
            new Item.Figure(Layer.HOLES, List.of(Contour.circle(at, 7)), Pen.THIN, Ink.PALE),
            new Item.Figure(
                Layer.HOLES, List.of(Contour.of(List.of(half, rest))), Pen.THIN, Ink.NONE))) {
      assertThat(r12(item)).containsExactly("0=CIRCLE 8=HOLES 10=20.0 20=30.0 30=0.0 40=7.0");
    }
  }

  @Test
  void aContourIsItsLinesAndArcsInOrder() {
    Contour slot = Contour.sweptDisc(new Vec2(0, 0), new Vec2(10, 0), 2);
    assertThat(r12(new Item.Figure(Layer.CUTOUTS, List.of(slot), Pen.OUTLINE, Ink.NONE)))
        .containsExactly(
            "0=ARC 8=CUTOUTS 10=10.0 20=0.0 30=0.0 40=2.0 50=270.0 51=90.0",
            "0=LINE 8=CUTOUTS 10=10.0 20=2.0 30=0.0 11=0.0 21=2.0 31=0.0",
            "0=ARC 8=CUTOUTS 10=0.0 20=0.0 30=0.0 40=2.0 50=90.0 51=270.0",
            "0=LINE 8=CUTOUTS 10=0.0 20=-2.0 30=0.0 11=10.0 21=-2.0 31=0.0");
  }

  @Test
  void blackTrianglesAndQuadranglesAreSolids() {
    assertThat(r12(DxfPages.filled(Ink.BLACK, 0, 0, 4, 0, 0, 3)))
        .containsExactly(
            "0=SOLID 8=DIMENSIONS 10=0.0 20=0.0 30=0.0 11=4.0 21=0.0 31=0.0"
                + " 12=0.0 22=3.0 32=0.0 13=0.0 23=3.0 33=0.0");
    // Third and fourth corner change places, else it would come out as a bow tie.
    assertThat(r12(DxfPages.filled(Ink.BLACK, 0, 0, 4, 0, 4, 3, 0, 3)))
        .containsExactly(
            "0=SOLID 8=DIMENSIONS 10=0.0 20=0.0 30=0.0 11=4.0 21=0.0 31=0.0"
                + " 12=0.0 22=3.0 32=0.0 13=4.0 23=3.0 33=0.0");
  }

  @Test
  void otherBlackAreasAreOutlined() {
    // A dent, a bow tie, and five corners.
    assertThat(kinds(DxfPages.filled(Ink.BLACK, 0, 0, 4, 0, 1, 1, 0, 4)))
        .containsExactly("LINE", "LINE", "LINE", "LINE");
    assertThat(kinds(DxfPages.filled(Ink.BLACK, 0, 0, 4, 3, 4, 0, 0, 3)))
        .containsExactly("LINE", "LINE", "LINE", "LINE");
    assertThat(kinds(DxfPages.filled(Ink.BLACK, 0, 0, 4, 0, 5, 2, 4, 3, 0, 3))).hasSize(5);
    assertThat(kinds(new Item.Circle(Layer.NOTES, Vec2.ZERO, 2, Pen.NONE, Ink.BLACK)))
        .containsExactly("CIRCLE");
  }

  @Test
  void whiteTextIsWrittenAndItsGroundIsNotFilled() {
    Item ground = DxfPages.filled(Ink.BLACK, 10, 10, 90, 10, 90, 30, 10, 30);
    Item word = DxfPages.text(50, 15, Align.MIDDLE, 0, "LEFT", Ink.WHITE);
    assertThat(kinds(ground)).containsExactly("SOLID");
    assertThat(kinds(ground, word)).containsExactly("LINE", "LINE", "LINE", "LINE", "TEXT");
    // Lettering elsewhere does not matter.
    Item far = DxfPages.text(50, 35, Align.MIDDLE, 0, "LEFT", Ink.WHITE);
    assertThat(kinds(ground, far)).containsExactly("SOLID", "TEXT");
    assertThat(kinds(DxfPages.text(50, 15, Align.MIDDLE, 0, "LEFT", Ink.NONE))).isEmpty();
  }

  @Test
  void whiteAndPaleAreasWithoutALineAreLeftOut() {
    for (Ink fill : List.of(Ink.NONE, Ink.WHITE, Ink.PALE)) {
      Contour slot = Contour.sweptDisc(new Vec2(0, 0), new Vec2(10, 0), 2);
      assertThat(
              kinds(
                  DxfPages.filled(fill, 0, 0, 4, 0, 4, 3, 0, 3),
                  new Item.Circle(Layer.NOTES, Vec2.ZERO, 2, Pen.NONE, fill),
                  new Item.Figure(Layer.NOTES, List.of(slot), Pen.NONE, fill)))
          .isEmpty();
    }
  }

  @Test
  void nothingOfNoLengthIsWritten() {
    Vec2 p = new Vec2(5, 5);
    assertThat(
            kinds(
                new Item.Line(Layer.NOTES, p, p, Pen.THIN),
                // Less than the last decimal of an angle: equal ends would mean a whole circle.
                new Item.ArcLine(Layer.NOTES, new Arc(p, 3, 1, 1e-15), Pen.THIN),
                DxfPages.text(5, 5, Align.START, 0, "", Ink.BLACK),
                DxfPages.text(5, 5, Align.START, 0, "  ", Ink.BLACK)))
        .isEmpty();
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void textStandsByItsHeightAlignmentAndTurn(DxfVersion version) {
    // Independent: reading upward, so the width lies along y.
    double width = Lettering.width("HxH", 3.5);
    for (Align align : Align.values()) {
      Page page = DxfPages.of(DxfPages.text(40, 50, align, 90, "HxH", Ink.BLACK));
      Pairs text = Pairs.of(DxfPages.write(page, version)).entities().get(0);
      assertThat(text.text(0)).isEqualTo("TEXT");
      assertThat(text.real(40)).isEqualTo(3.5);
      assertThat(text.real(50)).isEqualTo(90);
      assertThat(text.text(7)).isEqualTo("STANDARD");
      double below =
          switch (align) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
          };
      assertThat(text.real(10)).isCloseTo(40, within(1e-9));
      assertThat(text.real(20)).isCloseTo(50 - below, within(1e-9));
      // Published: DXF reference, TEXT: 72 is 0 left, 1 centre, 2 right; 73 is 0 on the base line.
      assertThat(text.text(72)).isEqualTo(Integer.toString(align.ordinal()));
      assertThat(text.text(73)).isEqualTo("0");
      assertThat(text.has(11)).isEqualTo(align != Align.START);
      if (align != Align.START) {
        assertThat(text.real(11)).isEqualTo(40);
        assertThat(text.real(21)).isEqualTo(50);
      }
    }
  }

  // Published: DXF reference, control codes in TEXT: %%d degree, %%p plus-minus, %%c diameter, %%%
  // a percent sign, \U+nnnn a character by number.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "it's \"quoted\" & <tagged>     | it's \"quoted\" & <tagged>",
        "\u00D88.4 \u23008.4 \u00F8     | %%c8.4 %%c8.4 \\U+00F8",
        "45\u00B0\u00B10.5\u00B0        | 45%%d%%p0.5%%d",
        "back\\slash                    | back\\U+005Cslash",
        "\\U+00D8                       | \\U+005CU+00D8",
        "10 % of 5%                     | 10 % of 5%",
        "%%d                            | %%%%d",
        "%%%                            | %%%%%%%",
        "5%\u00B0                       | 5%%%%%d",
        "\u017E\u2192\u20AC\u0416       | \\U+017E\\U+2192\\U+20AC\\U+0416",
        "~                              | ~",
      })
  void encodesText(String text, String encoded) {
    assertThat(DxfText.encode(text)).isEqualTo(encoded);
  }

  @Test
  void layersHaveNamesThatRelease12AllowsAndColoursOfTheirOwn() {
    Set<Integer> colours = new HashSet<>();
    for (Layer layer : Layer.values()) {
      assertThat(DxfLayers.name(layer)).matches("[A-Z0-9_$-]{1,31}");
      assertThat(DxfLayers.colour(layer)).isBetween(1, 255);
      assertThat(colours.add(DxfLayers.colour(layer))).as(layer.id()).isTrue();
    }
    assertThat(DxfLayers.name(Layer.CHECK_BARS)).isEqualTo("CHECK-BARS");
  }

  @Test
  void penWidthsAreOnesThatTheFormatHas() {
    // From memory: the widths that group 370 may state, hundredths of a mm.
    Set<Integer> known =
        Set.of(
            0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140,
            158, 200, 211);
    for (Pen pen : Pen.values()) {
      if (pen != Pen.NONE) {
        String line =
            entities(DxfVersion.R2000, new Item.Line(Layer.NOTES, Vec2.ZERO, new Vec2(1, 0), pen))
                .get(0);
        int width = (int) Math.round(pen.widthMm() * 100);
        assertThat(known).contains(width);
        assertThat(line).contains(" 370=" + width + " ");
      }
    }
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void dashesAreThePensOwn(DxfVersion version) {
    Pairs file = Pairs.of(DxfPages.write(DxfPages.everything(), version));
    String all = file.toString().replace(" 74=0", "");
    // Independent: the sums of the pens' dashes and gaps, 12 + 2 + 1 + 2 and so on.
    assertThat(all)
        .contains("2=CENTER 70=0 3=Long chain 72=65 73=4 40=17.0 49=12.0 49=-2.0 49=1.0 49=-2.0")
        .contains("2=DASHED 70=0 3=Dashes 72=65 73=2 40=7.0 49=5.0 49=-2.0")
        .contains("2=HIDDEN 70=0 3=Short dashes 72=65 73=2 40=4.5 49=3.0 49=-1.5")
        .contains("2=CONTINUOUS 70=0 3=Solid line 72=65 73=0 40=0.0");
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void entitiesStandInTheOrderOfLayers(DxfVersion version) {
    List<String> order = Arrays.stream(Layer.values()).map(DxfLayers::name).toList();
    List<Integer> places =
        Pairs.of(DxfPages.write(DxfPages.everything(), version)).entities().stream()
            .map(e -> order.indexOf(e.text(8)))
            .toList();
    assertThat(places).isSorted().hasSizeGreaterThan(80);
    assertThat(new HashSet<>(places)).hasSizeGreaterThan(12);
  }

  @Test
  void theBarIsALineOfAHundredOnItsOwnLayer() {
    // Independent: the bars are 100 mm.
    List<Pairs> bars =
        Pairs.of(DxfPages.write(DxfPages.everything(), DxfVersion.R12)).entities("LINE").stream()
            .filter(line -> line.text(8).equals("CHECK-BARS"))
            .toList();
    assertThat(bars)
        .anySatisfy(
            line ->
                assertThat(line.real(11) - line.real(10))
                    .isEqualTo(100.0)
                    .isEqualTo(100 + line.real(21) - line.real(20)));
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void isPlainAsciiInLinesOfOneKind(DxfVersion version) {
    String text = ascii(DxfPages.everything(), version);
    assertThat(text.chars().filter(c -> c > '~' || c < ' ').boxed().collect(Collectors.toSet()))
        .containsExactlyInAnyOrder((int) '\r', (int) '\n');
    assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
    assertThat(text).startsWith("  0\r\nSECTION\r\n").endsWith("  0\r\nEOF\r\n");
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void writesTheSameBytesWhereverAndWhenever(DxfVersion version) {
    byte[] first = DxfPages.write(DxfPages.everything(), version);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertThat(DxfPages.write(DxfPages.everything(), version)).as(tag).isEqualTo(first);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void anglesStayBelowAFullTurn() {
    for (double degrees : new double[] {0, -1e-15, 360, -360, 720, 359.9999999999999}) {
      assertThat(DxfGroups.angleText(Math.toRadians(degrees))).as("" + degrees).isEqualTo("0.0");
    }
    assertThat(DxfGroups.angleText(Angle.ofDegrees(-90).radians())).isEqualTo("270.0");
    assertThat(DxfGroups.angleText(Angle.ofDegrees(450).radians())).isEqualTo("90.0");
  }
}
