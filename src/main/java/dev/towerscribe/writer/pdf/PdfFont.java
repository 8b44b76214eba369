package dev.towerscribe.writer.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HexFormat;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The sheet font inside one document, cut down to the characters used. Always embedded: the fonts
 * that every reader is said to have would be looked for in the system, and would differ.
 */
final class PdfFont {
  /** Its name among a page's resources. */
  static final String NAME = "F1";

  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  private final PDType0Font font;

  PdfFont(PDDocument document) throws IOException {
    try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IOException("the sheet font is missing: " + FILE);
      }
      TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      // Ligatures are not wanted, and reading their tables takes longer than all the rest.
      file.setEnableGsub(false);
      document.registerTrueTypeFontForClosing(file);
      font = PDType0Font.load(document, file, true);
    }
  }

  PDFont resource() {
    return font;
  }

  /**
   * The codes of a text, and a note that its characters are needed.
   *
   * @param text characters that the font has
   * @return hexadecimal digits
   */
  String encode(String text) {
    try {
      text.codePoints().forEach(font::addToSubset);
      return HEX.formatHex(font.encode(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Cuts the font down; to be called once, after the last text. */
  void finish() throws IOException {
    font.subset();
  }
}
