package dev.towerscribe.job;

import java.math.BigDecimal;
import java.util.Locale;

/** Values as a person wrote them, made safe to print in a message. */
final class MessageText {
  /** Longer values are cut: a message is one line. */
  private static final int MOST_SHOWN = 60;

  /** Plain notation up to this many digits before or after the point; beyond, an exponent. */
  private static final int MOST_DIGITS = 20;

  private MessageText() {}

  static String quoted(String text) {
    return "\"" + shown(text) + "\"";
  }

  /** The text on one line, control characters and lone surrogates as escapes, cut when long. */
  static String shown(String text) {
    StringBuilder out = new StringBuilder();
    int count = 0;
    for (int i = 0; i < text.length(); ) {
      if (count++ == MOST_SHOWN) {
        return out.append("...").toString();
      }
      int c = text.codePointAt(i);
      if (isShapeless(c)) {
        out.append(String.format(Locale.ROOT, "\\u%04X", c));
      } else {
        out.appendCodePoint(c);
      }
      i += Character.charCount(c);
    }
    return out.toString();
  }

  /** Whether a character has no shape: controls, format marks, line separators, surrogates. */
  static boolean isShapeless(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          true;
      default -> false;
    };
  }

  static String number(BigDecimal value) {
    boolean plain = Math.abs(value.scale()) <= MOST_DIGITS && value.precision() <= MOST_DIGITS;
    return shown(plain ? value.toPlainString() : value.toString());
  }

  static String codePoint(int c) {
    return String.format(Locale.ROOT, "U+%04X", c);
  }
}
