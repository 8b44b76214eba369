package dev.towerscribe.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

class LetteringTest {
  private static TrueTypeFont font() throws IOException {
    try (InputStream in =
        PDDocument.class.getResourceAsStream(
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
      return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
    }
  }

  /** Published: cmap and hmtx tables of Liberation Sans Regular. */
  @Test
  void everyWidthIsTheFonts() throws IOException {
    try (TrueTypeFont font = font()) {
      CmapLookup glyphs = font.getUnicodeCmapLookup();
      int written = 0;
      for (int codePoint = 0; codePoint <= 0x10FFFF; codePoint++) {
        if (Lettering.canWrite(codePoint)) {
          int glyph = glyphs.getGlyphId(codePoint);
          assertThat(glyph).as("glyph of U+%04X", codePoint).isPositive();
          assertThat(GlyphWidths.of(codePoint))
              .as("advance of U+%04X", codePoint)
              .isEqualTo(font.getAdvanceWidth(glyph));
          written++;
        }
      }
      // Independent: counted when reading the font file's cmap table by hand.
      assertThat(written).isEqualTo(1283);
    }
  }

  /**
   * Published: of Liberation Sans Regular, unitsPerEm of the head table, sCapHeight of OS/2,
   * ascender and descender of hhea.
   */
  @Test
  void proportionsAreTheFonts() throws IOException {
    try (TrueTypeFont font = font()) {
      double unitsPerEm = font.getUnitsPerEm();
      double capHeight = font.getOS2Windows().getCapHeight();
      assertThat(Lettering.emMm(3.5)).isCloseTo(3.5 * unitsPerEm / capHeight, within(1e-12));
      assertThat(Lettering.ascentMm(3.5))
          .isCloseTo(3.5 * font.getHorizontalHeader().getAscender() / capHeight, within(1e-12));
      assertThat(Lettering.descentMm(3.5))
          .isCloseTo(-3.5 * font.getHorizontalHeader().getDescender() / capHeight, within(1e-12));
    }
  }

  /** Published: the bounds of each glyph in the glyf table of Liberation Sans Regular. */
  @Test
  void lettersStayWithinTheRoomTheyAreGiven() throws IOException {
    try (TrueTypeFont font = font()) {
      CmapLookup glyphs = font.getUnicodeCmapLookup();
      double capHeight = font.getOS2Windows().getCapHeight();
      for (int c = 0x21; c < 0x180; c++) {
        if (!Lettering.canWrite(c) || c == 0xA0) {
          continue;
        }
        String text = Character.toString(c);
        GlyphData glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(c));
        assertThat(Lettering.aboveMm(text, 1.0))
            .as("above, U+%04X", c)
            .isGreaterThanOrEqualTo(glyph.getYMaximum() / capHeight);
        assertThat(Lettering.belowMm(text, 1.0))
            .as("below, U+%04X", c)
            .isGreaterThanOrEqualTo(-glyph.getYMinimum() / capHeight);
      }
      // Independent: a figure has no tail, so a row of them needs little more than its height.
      assertThat(Lettering.aboveMm("38.0", 1.0) + Lettering.belowMm("38.0", 1.0)).isLessThan(1.15);
    }
  }

  @Test
  void wholeBlocksCanBeWritten() {
    int[][] blocks = {
      {0x20, 0x7E},
      {0xA0, 0xAC},
      {0xAE, 0x17F},
      {0x391, 0x3A1},
      {0x3B1, 0x3C9},
      {0x400, 0x482},
      {0x2012, 0x2015},
      {0x2018, 0x201E},
      {0x2190, 0x2195},
      {0x2264, 0x2265}
    };
    for (int[] block : blocks) {
      for (int codePoint = block[0]; codePoint <= block[1]; codePoint++) {
        assertThat(Lettering.canWrite(codePoint)).as("U+%04X", codePoint).isTrue();
      }
    }
    for (int codePoint : new int[] {0x2022, 0x2026, 0x20AC, 0x2212, 0x2248}) {
      assertThat(Lettering.canWrite(codePoint)).as("U+%04X", codePoint).isTrue();
    }
  }

  @Test
  void controlsCombiningMarksAndRightToLeftCannotBeWritten() {
    int[] codePoints = {
      -1,
      0,
      9,
      10,
      0x7F,
      0x85,
      0xAD,
      0x301,
      0x483,
      0x5D0,
      0x627,
      0x200B,
      0x202E,
      0x4E2D,
      0xFFFD,
      0x1F600,
      Integer.MAX_VALUE
    };
    for (int codePoint : codePoints) {
      assertThat(Lettering.canWrite(codePoint)).as("code point %d", codePoint).isFalse();
    }
  }

  @Test
  void widthGrowsWithHeightAndAddsUp() {
    // Independent: advances of A (1366) and V (1366) in the font's hmtx table, no kerning.
    assertThat(Lettering.width("AV", 1409)).isCloseTo(2732, within(1e-9));
    assertThat(Lettering.width("AV", 1409 * 2)).isCloseTo(2732 * 2, within(1e-9));
    assertThat(Lettering.width("", 10)).isZero();
  }

  @Test
  void namesWhatItCannotWrite() {
    assertThatThrownBy(() -> Lettering.width("bolt \u4E2D", 3.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("U+4E2D");
    assertThatThrownBy(() -> Lettering.width("ok \uD83D\uDE00", 3.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("U+1F600");
  }

  @Test
  void wrapsAtSpacesAndBreaksWhatIsTooLong() {
    double room = Lettering.width("drill to size", 3.5);
    assertThat(Lettering.wrap("drill to size slowly", 3.5, room))
        .containsExactly("drill to size", "slowly");
    assertThat(Lettering.wrap("a\n\nb  c ", 3.5, 100)).containsExactly("a", "", "b c");
    assertThat(Lettering.wrap("", 3.5, 100)).containsExactly("");
    List<String> broken = Lettering.wrap("x Donaudampfschiff", 3.5, 8.0);
    assertThat(String.join("", broken)).isEqualTo("xDonaudampfschiff");
    assertThat(broken)
        .hasSizeGreaterThan(3)
        .allSatisfy(line -> assertThat(Lettering.width(line, 3.5)).isLessThanOrEqualTo(8.0));
    assertThatThrownBy(() -> Lettering.wrap("WWW", 3.5, 1.0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void fitsToItsRoom() {
    double height = Lettering.capHeightToFit("LEFT TOWER", 40, 20);
    assertThat(Lettering.width("LEFT TOWER", height)).isCloseTo(40, within(1e-9));
    assertThat(Lettering.capHeightToFit("A", 40, 10)).isEqualTo(10);
    assertThat(Lettering.capHeightToFit("", 40, 10)).isEqualTo(10);
  }
}
