package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How much room text takes in the sheet font, Liberation Sans Regular. Sizes are given by the
 * height of a capital letter, as drawing standards do (ISO 3098). Letters are set one beside the
 * other, without kerning or ligatures, from left to right.
 */
public final class Lettering {
  /** Units of the font's design square; source: its head table. */
  private static final double UNITS_PER_EM = 2048;

  /** Height of a capital in those units; source: sCapHeight of its OS/2 table. */
  private static final double CAP_HEIGHT_UNITS = 1409;

  /** What accented capitals reach above the base line; source: ascender of its hhea table. */
  private static final double ASCENT_UNITS = 1854;

  /** What letters reach below the base line; source: descender of its hhea table. */
  private static final double DESCENT_UNITS = 434;

  /**
   * What plain letters, signs and brackets reach above the base line, in heights of a capital; a
   * test compares it with the font.
   */
  private static final double PLAIN_ABOVE = 1.08;

  /** What round figures and capitals reach below the base line, in heights of a capital. */
  private static final double PLAIN_BELOW = 0.06;

  /** Plain characters that reach further below. */
  private static final String TAILS = "gjpqyQ,;()[]{}|@$_/\\";

  /** Other characters that stay within the reach of plain ones. */
  private static final String ALSO_PLAIN = "\u00B0\u00B1\u00D7\u00D8\u2013";

  private static final String ELLIPSIS = "\u2026";

  private Lettering() {}

  /**
   * Whether the sheet font has a character that can be set on its own.
   *
   * @param codePoint Unicode code point
   * @return false for controls, combining marks, right-to-left scripts and whatever the font lacks
   */
  public static boolean canWrite(int codePoint) {
    return GlyphWidths.of(codePoint) > 0;
  }

  /**
   * Width of a line of text.
   *
   * @param text any characters that {@link #canWrite} allows
   * @param capHeightMm height of a capital, mm
   * @return sum of the characters' advances, mm
   * @throws IllegalArgumentException naming the first character that cannot be written
   */
  public static double width(String text, double capHeightMm) {
    return units(text, 0, text.length()) / UNITS_PER_EM * emMm(capHeightMm);
  }

  private static int units(String text, int from, int to) {
    int sum = 0;
    for (int i = from; i < to; ) {
      int codePoint = text.codePointAt(i);
      int advance = GlyphWidths.of(codePoint);
      if (advance == 0) {
        throw new IllegalArgumentException(
            "the sheet font cannot write " + name(codePoint) + " in \"" + text + "\"");
      }
      sum += advance;
      i += Character.charCount(codePoint);
    }
    return sum;
  }

  private static String name(int codePoint) {
    String hex = Integer.toHexString(codePoint).toUpperCase(Locale.ROOT);
    String named = Character.getName(codePoint);
    return "U+"
        + "0".repeat(Math.max(0, 4 - hex.length()))
        + hex
        + (named == null ? "" : " " + named);
  }

  /**
   * The font size, the side of the font's design square, that gives a height of capitals.
   *
   * @param capHeightMm height of a capital, mm
   * @return em, mm
   */
  public static double emMm(double capHeightMm) {
    return capHeightMm * (UNITS_PER_EM / CAP_HEIGHT_UNITS);
  }

  /**
   * How far the tallest characters reach above the base line.
   *
   * @param capHeightMm height of a capital, mm
   * @return mm, positive
   */
  public static double ascentMm(double capHeightMm) {
    return capHeightMm * (ASCENT_UNITS / CAP_HEIGHT_UNITS);
  }

  /**
   * How far the lowest characters reach below the base line.
   *
   * @param capHeightMm height of a capital, mm
   * @return mm, positive
   */
  public static double descentMm(double capHeightMm) {
    return capHeightMm * (DESCENT_UNITS / CAP_HEIGHT_UNITS);
  }

  /**
   * How far a line of text reaches above its base line.
   *
   * @param text the line
   * @param capHeightMm height of a capital, mm
   * @return mm, positive; the font's ascent if there are accents or rare signs in it
   */
  public static double aboveMm(String text, double capHeightMm) {
    return isPlain(text) ? PLAIN_ABOVE * capHeightMm : ascentMm(capHeightMm);
  }

  /**
   * How far a line of text reaches below its base line.
   *
   * @param text the line
   * @param capHeightMm height of a capital, mm
   * @return mm, positive; the font's descent if there are tails, brackets or rare signs in it
   */
  public static double belowMm(String text, double capHeightMm) {
    boolean flat = isPlain(text) && text.chars().noneMatch(c -> TAILS.indexOf(c) >= 0);
    return flat ? PLAIN_BELOW * capHeightMm : descentMm(capHeightMm);
  }

  private static boolean isPlain(String text) {
    return text.chars().allMatch(c -> c < 0x7F || ALSO_PLAIN.indexOf(c) >= 0);
  }

  /**
   * Where a line of text begins, whichever part of it stands at its point.
   *
   * @param text the line
   * @return the start of its base line, page mm
   * @throws IllegalArgumentException naming the first character that cannot be written
   */
  public static Vec2 start(Item.Text text) {
    double wide = width(text.content(), text.capHeightMm());
    double back = text.align() == Align.START ? 0 : text.align() == Align.END ? wide : wide / 2;
    return text.at().minus(Vec2.polar(1.0, text.turn()).times(back));
  }

  /**
   * The room that a line of text takes on its page.
   *
   * @param text the line
   * @return a box round its letters
   */
  public static TurnedBox room(Item.Text text) {
    double wide = width(text.content(), text.capHeightMm());
    double above = aboveMm(text.content(), text.capHeightMm());
    double below = belowMm(text.content(), text.capHeightMm());
    Vec2 along = Vec2.polar(1.0, text.turn());
    double middle =
        text.align() == Align.START ? wide / 2 : text.align() == Align.END ? -wide / 2 : 0;
    Vec2 centre =
        text.at().plus(along.times(middle)).plus(along.quarterTurn().times((above - below) / 2));
    return new TurnedBox(centre, wide / 2, (above + below) / 2, along);
  }

  /**
   * The largest height of capitals at which a line of text is no wider than its room.
   *
   * @param text the line
   * @param widthMm room, mm, positive
   * @param mostMm largest height wanted, mm
   * @return height of a capital, mm, at most {@code mostMm}
   * @throws IllegalArgumentException naming the first character that cannot be written
   */
  public static double capHeightToFit(String text, double widthMm, double mostMm) {
    double wide = width(text, mostMm);
    return wide <= widthMm ? mostMm : mostMm * (widthMm / wide);
  }

  /**
   * A line of text cut short with an ellipsis where it is wider than its room.
   *
   * @param text the line
   * @param capHeightMm height of a capital, mm
   * @param widthMm room, mm, positive
   * @return the text, or its start and an ellipsis
   * @throws IllegalArgumentException naming the first character that cannot be written
   */
  public static String shortened(String text, double capHeightMm, double widthMm) {
    if (width(text, capHeightMm) <= widthMm) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(text.substring(0, end) + ELLIPSIS, capHeightMm) > widthMm) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + ELLIPSIS;
  }

  /**
   * Breaks text into lines at its spaces. A line feed always breaks. A word wider than the room is
   * broken where the room ends, so that nothing ever sticks out.
   *
   * @param text words, with plain spaces between them; no-break spaces do not break
   * @param capHeightMm height of a capital, mm
   * @param widthMm room for a line, mm
   * @return lines, at least one, without spaces at their ends
   * @throws IllegalArgumentException naming the first character that cannot be written, or if the
   *     room is too narrow for a single character
   */
  public static List<String> wrap(String text, double capHeightMm, double widthMm) {
    // A hair more than the room, so that text measured to fit is not broken by rounding.
    double room = widthMm / emMm(capHeightMm) * UNITS_PER_EM * (1 + 1e-9);
    List<String> lines = new ArrayList<>();
    int start = 0;
    while (start <= text.length()) {
      int end = text.indexOf('\n', start);
      if (end < 0) {
        end = text.length();
      }
      wrapParagraph(text.substring(start, end), room, lines);
      start = end + 1;
    }
    return lines;
  }

  private static void wrapParagraph(String paragraph, double room, List<String> lines) {
    int space = GlyphWidths.of(' ');
    StringBuilder line = new StringBuilder();
    double used = 0;
    int from = 0;
    while (from < paragraph.length()) {
      int to = paragraph.indexOf(' ', from);
      if (to < 0) {
        to = paragraph.length();
      }
      if (to > from) {
        double wide = units(paragraph, from, to);
        if (line.length() > 0 && used + space + wide > room) {
          lines.add(line.toString());
          line.setLength(0);
        }
        if (line.length() > 0) {
          line.append(' ');
          used += space + wide;
        } else {
          int cut = from;
          while (wide > room) {
            int next = breakAt(paragraph, cut, room);
            lines.add(paragraph.substring(cut, next));
            cut = next;
            wide = units(paragraph, cut, to);
          }
          from = cut;
          used = wide;
        }
        line.append(paragraph, from, to);
      }
      from = to + 1;
    }
    lines.add(line.toString());
  }

  /** Where a word too wide for its room has to be broken. */
  private static int breakAt(String word, int from, double room) {
    int at = from;
    double used = 0;
    while (true) {
      int codePoint = word.codePointAt(at);
      used += GlyphWidths.of(codePoint);
      if (used > room) {
        break;
      }
      at += Character.charCount(codePoint);
    }
    if (at == from) {
      throw new IllegalArgumentException("no room for a single character of \"" + word + "\"");
    }
    return at;
  }
}
