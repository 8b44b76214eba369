package dev.towerscribe.writer.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DxfProofTest {
  private static final Item HOLE =
      new Item.Circle(Layer.HOLES, new Vec2(50, 170), 4.5, Pen.OUTLINE, Ink.NONE);
  private static final Item BAR =
      new Item.Line(Layer.CHECK_BARS, new Vec2(20, 20), new Vec2(120, 20), Pen.OUTLINE);

  /** Small enough to have each of its lines left out in turn. */
  private static final Page SMALL =
      DxfPages.page(
          List.of(
              HOLE,
              BAR,
              DxfPages.text(60, 10, Align.END, 30, "100 MM", Ink.BLACK),
              DxfPages.filled(Ink.BLACK, 0, 0, 4, 0, 0, 3),
              new Item.Figure(
                  Layer.CUTOUTS,
                  List.of(DxfPages.keyhole(new Vec2(100, 100), -1)),
                  Pen.ROUGH_CUT,
                  Ink.NONE)),
          List.of(
              new Proof.RoundHole("hole A", new Vec2(50, 170), 4.5),
              new Proof.Bar("bar", new Vec2(120, 20), new Vec2(20, 20))));

  private static String write(DxfVersion version) {
    return new String(DxfPages.write(SMALL, version), StandardCharsets.US_ASCII);
  }

  private static List<String> check(String dxf, DxfVersion version) {
    return DxfPages.check(dxf.getBytes(StandardCharsets.ISO_8859_1), SMALL, version);
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void provesWhatWasWritten(DxfVersion version) {
    assertThat(check(write(version), version)).isEmpty();
    Page page = DxfPages.everything();
    assertThat(page.proofs()).hasSizeGreaterThan(4);
    assertThat(DxfPages.check(DxfPages.write(page, version), page, version)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void readsLinesThatEndInALineFeedAlone(DxfVersion version) {
    assertThat(check(write(version).replace("\r", ""), version)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void catchesTheOtherVersion(DxfVersion version) {
    DxfVersion other = version == DxfVersion.R12 ? DxfVersion.R2000 : DxfVersion.R12;
    assertThat(check(write(version), other)).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void catchesAnyLineLeftOut(DxfVersion version) {
    List<String> lines = List.of(write(version).split("\r\n"));
    for (int i = 0; i < lines.size(); i++) {
      List<String> fewer = new ArrayList<>(lines);
      String left = fewer.remove(i);
      assertThat(check(String.join("\r\n", fewer) + "\r\n", version))
          .as("line %s: %s", i + 1, left)
          .isNotEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void catchesAFileThatBreaksOff(DxfVersion version) {
    byte[] whole = write(version).getBytes(StandardCharsets.US_ASCII);
    // By steps that share no factor with the lengths of pairs, and all of the last bytes.
    for (int length = 0; length < whole.length; length += length < whole.length - 60 ? 29 : 1) {
      assertThat(DxfPages.check(Arrays.copyOf(whole, length), SMALL, version))
          .as("%s bytes", length)
          .isNotEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(DxfVersion.class)
  void catchesARecordsBeginningOrHandleLeftOut(DxfVersion version) {
    List<String> lines = List.of(write(version).split("\r\n"));
    int tried = 0;
    for (int i = 0; i < lines.size(); i += 2) {
      String code = lines.get(i).strip();
      String value = lines.get(i + 1);
      // Which classes are declared is not proved.
      if (List.of("0", "5", "105").contains(code) && !value.equals("CLASS")) {
        List<String> fewer = new ArrayList<>(lines);
        fewer.subList(i, i + 2).clear();
        assertThat(check(String.join("\r\n", fewer) + "\r\n", version))
            .as("pair at line %s: %s %s", i + 1, code, value)
            .isNotEmpty();
        tried++;
      }
    }
    // Independent: six layers, four line types, four edges, four other entities.
    assertThat(tried).isGreaterThan(17);
  }

  @ParameterizedTest
  @CsvSource({
    // A value within an entity, a table, the header; expected words of the complaint.
    "'4.5', '4.500002', hole A",
    "'170.0', '170.000002', hole A",
    "'120.0', '120.000002', bar",
    "CIRCLE, ARC, ARC",
    "CIRCLE, ELLIPSE, ELLIPSE",
    "CHECK-BARS, CHECK BARS, CHECK BARS",
    "DASHED, DASHDOT, ",
    "ENDSEC, ENDSECT, ",
    "ENDTAB, ENDTABLE, ",
    "EOF, END, ",
    "STANDARD, Standart, ",
    "ENTITIES, ENTITY, ",
    "'297.0', '297.00001', extents",
    "AC1009, AC1012, version",
    "' 49', ' 48', dashes",
    "' 62', ' 63', ",
  })
  void catchesAChangedValue(String from, String to, String words) {
    String dxf = write(DxfVersion.R12);
    int at = dxf.lastIndexOf(from + "\r\n");
    assertThat(at).isPositive();
    String changed = dxf.substring(0, at) + to + dxf.substring(at + from.length());
    List<String> found = check(changed, DxfVersion.R12);
    assertThat(found).isNotEmpty();
    if (words != null) {
      assertThat(String.join("\n", found)).contains(words);
    }
  }

  private static List<String> afterTampering(String from, String to) {
    String dxf = write(DxfVersion.R2000);
    String changed = dxf.replaceFirst(from, to);
    assertThat(changed).as(from).isNotEqualTo(dxf);
    return check(changed, DxfVersion.R2000);
  }

  @Test
  void catchesWhatHidesOrMovesAnEntity() {
    // Groups of the DXF reference: 60 invisible, 67 on paper, 230 extrusion, 39 thickness, 62 off.
    String mark = "100\r\nAcDbCircle\r\n";
    assertThat(afterTampering(mark, " 60\r\n1\r\n" + mark)).isNotEmpty();
    assertThat(afterTampering(mark, " 67\r\n1\r\n" + mark)).isNotEmpty();
    assertThat(afterTampering(mark, mark + "230\r\n-1.0\r\n")).isNotEmpty();
    assertThat(afterTampering(mark, mark + " 39\r\n5.0\r\n")).isNotEmpty();
    assertThat(afterTampering(mark, mark + " 10\r\n50.0\r\n")).isNotEmpty();
    assertThat(afterTampering("HOLES\r\n 70\r\n0\r\n 62\r\n", "HOLES\r\n 70\r\n0\r\n 62\r\n-"))
        .singleElement()
        .asString()
        .contains("HOLES", "off");
    assertThat(afterTampering("HOLES\r\n 70\r\n0", "HOLES\r\n 70\r\n1"))
        .singleElement()
        .asString()
        .contains("HOLES", "frozen");
    assertThat(afterTampering("170.0\r\n 30\r\n0.0", "170.0\r\n 30\r\n1.0")).isNotEmpty();
    assertThat(afterTampering("AcDbCircle", "AcDbEllipse")).isNotEmpty();
  }

  @Test
  void catchesAUnitThatIsNotTheMillimetre() {
    assertThat(afterTampering("INSUNITS\r\n 70\r\n4", "INSUNITS\r\n 70\r\n1"))
        .singleElement()
        .asString()
        .contains("mm");
    assertThat(afterTampering("MEASUREMENT\r\n 70\r\n1", "MEASUREMENT\r\n 70\r\n0")).hasSize(1);
    String unitless = write(DxfVersion.R12);
    assertThat(
            check(
                unitless.replaceFirst("  9\r\n\\$LTSCALE", "  9\r\n\\$INSUNITS\r\n 70\r\n4\r\n$0"),
                DxfVersion.R12))
        .singleElement()
        .asString()
        .contains("unit");
    assertThat(afterTampering("ANGDIR\r\n 70\r\n0", "ANGDIR\r\n 70\r\n1")).hasSize(1);
    assertThat(afterTampering("ANGBASE\r\n 50\r\n0.0", "ANGBASE\r\n 50\r\n90.0")).hasSize(1);
    assertThat(afterTampering("LTSCALE\r\n 40\r\n1.0", "LTSCALE\r\n 40\r\n25.4")).hasSize(1);
  }

  @Test
  void catchesUnsoundHandles() {
    // The circle's handle given to the line after it, an owner that is none, one that is another.
    String dxf = write(DxfVersion.R2000);
    String circle = handleAfter(dxf, "CIRCLE");
    assertThat(afterTampering("ARC\r\n  5\r\n[0-9A-F]+", "ARC\r\n  5\r\n" + circle))
        .anySatisfy(line -> assertThat(line).contains("not unique"));
    assertThat(afterTampering("(CIRCLE\r\n  5\r\n[0-9A-F]+\r\n330\r\n)8", "$1FFF")).isNotEmpty();
    assertThat(afterTampering("(CIRCLE\r\n  5\r\n[0-9A-F]+\r\n330\r\n)8", "$19")).isNotEmpty();
    assertThat(afterTampering("(CIRCLE\r\n  5\r\n)[0-9A-F]+", "$10")).isNotEmpty();
    assertThat(afterTampering("(CIRCLE\r\n  5\r\n)[0-9A-F]+", "$1G1")).isNotEmpty();
    assertThat(afterTampering("(HANDSEED\r\n  5\r\n)[0-9A-F]+", "$1" + circle)).hasSize(1);
    assertThat(afterTampering("(LAYOUT\r\n  5\r\n[0-9A-F]+\r\n330\r\n)3", "$11")).isNotEmpty();
    assertThat(afterTampering("ACAD_LAYOUT\r\n350\r\n3", "ACAD_LAYOUT\r\n350\r\n2")).isNotEmpty();
    assertThat(afterTampering("340\r\n[0-9A-F]+", "340\r\nFFFF")).isNotEmpty();
    assertThat(afterTampering("  2\r\n\\*Model_Space", "  2\r\nModel")).isNotEmpty();
  }

  private static String handleAfter(String dxf, String type) {
    String key = "  0\r\n" + type + "\r\n  5\r\n";
    int at = dxf.indexOf(key) + key.length();
    return dxf.substring(at, dxf.indexOf('\r', at));
  }

  @Test
  void sparesNoRoundingBeyondAMillionthOfAMillimetre() {
    for (DxfVersion version : DxfVersion.values()) {
      byte[] dxf = DxfPages.write(SMALL, version);
      for (double off : new double[] {0.9e-6, 1.1e-6}) {
        Page moved =
            DxfPages.withProofs(
                SMALL,
                List.of(
                    new Proof.RoundHole("hole A", new Vec2(50, 170 - off), 4.5),
                    new Proof.RoundHole("hole B", new Vec2(50, 170), 4.5 + off),
                    new Proof.Bar("bar", new Vec2(120 + off, 20), new Vec2(20, 20))));
        assertThat(DxfPages.check(dxf, moved, version)).hasSize(off < 1e-6 ? 0 : 3);
      }
    }
  }

  @Test
  void aHoleInPiecesIsNoCircleAndABarInPiecesNoLine() {
    Page page =
        DxfPages.page(
            List.of(
                new Item.ArcLine(Layer.HOLES, new Arc(new Vec2(50, 170), 4.5, 0, 6), Pen.OUTLINE),
                new Item.Line(Layer.CHECK_BARS, new Vec2(20, 20), new Vec2(70, 20), Pen.OUTLINE),
                new Item.Line(Layer.CHECK_BARS, new Vec2(70, 20), new Vec2(120, 20), Pen.OUTLINE)),
            SMALL.proofs());
    for (DxfVersion version : DxfVersion.values()) {
      assertThat(DxfPages.check(DxfPages.write(page, version), page, version))
          .hasSize(2)
          .anySatisfy(line -> assertThat(line).contains("hole A", "nothing of the kind"))
          .anySatisfy(line -> assertThat(line).contains("bar", "the nearest", "(70.0000000, "));
    }
  }

  @Test
  void catchesWhatIsNoSuchFile() {
    for (String text :
        List.of("", "\n", "not a drawing", "  0\r\nEOF\r\n", "0\n", "a\nb\n", "  0\n\u00D8\n")) {
      for (DxfVersion version : DxfVersion.values()) {
        assertThat(check(text, version)).as(text).isNotEmpty();
      }
    }
  }
}
