package dev.towerscribe.job;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines of a TOML text, those under one plain heading marked, so that a few values can be
 * changed and every other character left as it was: comments, blank lines, line ends. It knows
 * nothing of strings over several lines or of tables in braces; whoever changes a text so reads it
 * again and compares.
 */
final class TableLines {
  private static final Pattern HEADING =
      Pattern.compile("\\s*\\[\\s*([^\\[\\]]+?)\\s*\\]\\s*(#.*)?");

  /** What a line is. */
  enum Kind {
    /** The heading that was asked for. */
    HEADING,
    /** A line between it and the next heading. */
    INSIDE,
    /** Any other. */
    OUTSIDE
  }

  /**
   * A line.
   *
   * @param words without its end
   * @param end line feed, carriage return and line feed, or nothing on the last line
   * @param kind where it stands
   */
  record Line(String words, String end, Kind kind) {
    Line with(String changed) {
      return new Line(changed, end, kind);
    }
  }

  private TableLines() {}

  /** The lines of a text; put together by {@link #text} they are the same text. */
  static List<Line> of(String text, String table) {
    List<Line> lines = new ArrayList<>();
    boolean inside = false;
    int from = 0;
    while (from < text.length()) {
      int feed = text.indexOf('\n', from);
      int to = feed < 0 ? text.length() : feed;
      int stop = to > from && text.charAt(to - 1) == '\r' ? to - 1 : to;
      int next = feed < 0 ? to : feed + 1;
      String words = text.substring(from, stop);
      Kind kind = inside ? Kind.INSIDE : Kind.OUTSIDE;
      if (words.strip().startsWith("[")) {
        Matcher heading = HEADING.matcher(words);
        inside = heading.matches() && heading.group(1).equals(table);
        kind = inside ? Kind.HEADING : Kind.OUTSIDE;
      }
      lines.add(new Line(words, text.substring(stop, next), kind));
      from = next;
    }
    return lines;
  }

  /** The text that lines make. */
  static String text(List<Line> lines) {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(line.words()).append(line.end()));
    return text.toString();
  }
}
