package dev.towerscribe.writer.dxf;

import java.util.HexFormat;

/**
 * A line of text as a TEXT entity holds it, in ASCII. Degree sign, plus-minus sign and diameter
 * sign have codes of their own, known since before release 12; other characters are written by
 * their number, which readers since release 13 understand whatever the file's version.
 */
final class DxfText {
  private DxfText() {}

  /**
   * Encodes a text.
   *
   * @param text characters of the basic plane, no controls
   * @return ASCII
   */
  static String encode(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      String code = code(c);
      if (code != null) {
        out.append(code);
      } else if (c == '%' && i + 1 < text.length() && startsCode(text.charAt(i + 1))) {
        // Else it and what follows would be taken for a code.
        out.append("%%%");
      } else if (c >= 0x7F || c == '\\') {
        // A backslash of its own could begin such a number.
        out.append("\\U+").append(HexFormat.of().withUpperCase().toHexDigits(c));
      } else {
        out.append(c);
      }
    }
    return out.toString();
  }

  private static boolean startsCode(char c) {
    return c == '%' || code(c) != null;
  }

  private static String code(char c) {
    return switch (c) {
      case '\u00B0' -> "%%d";
      case '\u00B1' -> "%%p";
      case '\u00D8', '\u2300' -> "%%c";
      default -> null;
    };
  }
}
