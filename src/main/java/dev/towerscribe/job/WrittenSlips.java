package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Slips of the pen that make a file no TOML, found in its lines as written. A parser stops at the
 * first and names it by its own grammar; a person makes the same slip on every line.
 */
final class WrittenSlips {
  private static final String FIGURE = "[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)";

  /** What is looked for in a line whose strings and remarks are blotted out, and what to say. */
  private static final Map<Pattern, Function<MatchResult, String>> SLIPS = slips();

  private WrittenSlips() {}

  private static Map<Pattern, Function<MatchResult, String>> slips() {
    Map<Pattern, Function<MatchResult, String>> slips = new LinkedHashMap<>();
    Function<MatchResult, String> point =
        m -> "A decimal takes a point, not a comma: write %s.%s.".formatted(m.group(1), m.group(2));
    slips.put(
        Pattern.compile("[=,\\[]\\s*_{3,}"),
        m -> "Still blank: put a figure for the ___, or a hash before the line.");
    slips.put(
        Pattern.compile("=\\s*([+-]?[0-9]+),([0-9]+)\\s*(mm|in|deg)\\b"),
        m ->
            ("A decimal takes a point, and a figure with a unit stands in quotes: write \"%s.%s"
                    + " %s\".")
                .formatted(m.group(1), m.group(2), m.group(3)));
    slips.put(Pattern.compile("=\\s*([+-]?[0-9]+),([0-9]+)\\s*(?=$|[,}])"), point);
    slips.put(Pattern.compile("(?<=[\\[,\\s])([+-]?[0-9]+),(0[0-9]+)"), point);
    slips.put(
        Pattern.compile("(" + FIGURE + ")\\s*(mm|in|deg)\\b"),
        m ->
            "A figure with a unit stands in quotes: write \"%s %s\"."
                .formatted(m.group(1), m.group(2)));
    slips.put(
        Pattern.compile("(" + FIGURE + ")\\s+(" + FIGURE + ")(?=[\\s,\\]])"),
        m ->
            "A comma is missing between two figures: write %s, %s."
                .formatted(m.group(1), m.group(2)));
    slips.put(
        Pattern.compile("([\\]}])\\s*([\\[{])"),
        m -> "A comma is missing: write %s, %s.".formatted(m.group(1), m.group(2)));
    slips.put(
        Pattern.compile("([^\\s,{\\[=])\\s+([A-Za-z_]+)\\s*="),
        m -> "A comma is missing before %s.".formatted(m.group(2)));
    slips.put(
        Pattern.compile("(?<![0-9.])([+-]?)(\\.[0-9]+)"),
        m -> "A zero stands before the point: write %s0%s.".formatted(m.group(1), m.group(2)));
    slips.put(
        Pattern.compile("([0-9]+)\\.(?![0-9])"),
        m -> "A digit stands after the point: write %s.0.".formatted(m.group(1)));
    return slips;
  }

  /**
   * Every slip of a text, if the line that the parser stopped at has one.
   *
   * @param text the file
   * @param stopped that line, counted from 1
   * @param key what faults are filed under
   * @return a fault for each line with a slip; none if the line is broken in another way
   */
  static List<Fault> of(String text, int stopped, String key) {
    List<Fault> faults = new ArrayList<>();
    boolean explained = false;
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      Optional<String> todo = slip(lines, i);
      if (todo.isPresent()) {
        explained |= i + 1 == stopped;
        String given = "line " + (i + 1) + ": " + MessageText.shown(lines.get(i).strip());
        faults.add(new Fault(key, given, "", todo.get()));
      }
    }
    return explained ? faults : List.of();
  }

  private static Optional<String> slip(List<String> lines, int at) {
    String line = bare(lines.get(at));
    if (line.isBlank() || line.strip().matches("\\[\\[?[^\\[\\],]+\\]\\]?")) {
      return Optional.empty();
    }
    for (Map.Entry<Pattern, Function<MatchResult, String>> slip : SLIPS.entrySet()) {
      Matcher m = slip.getKey().matcher(line);
      if (m.find()) {
        return Optional.of(slip.getValue().apply(m.toMatchResult()));
      }
    }
    return endOfLine(lines, at, line.strip());
  }

  /** A list that goes on in the next line without a comma. */
  private static Optional<String> endOfLine(List<String> lines, int at, String line) {
    if (!line.matches("(\\[\\s*[-+0-9.\\[]|[{\\-+0-9.]).*")) {
      return Optional.empty();
    }
    for (int i = at - 1; i >= 0; i--) {
      String before = bare(lines.get(i)).strip();
      if (!before.isEmpty()) {
        return before.matches(".*[\\]}0-9]") && !before.matches("\\[\\[?[^\\[\\],]+\\]\\]?")
            ? Optional.of("A comma is missing at the end of line " + (i + 1) + ".")
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** The line with its strings blotted out letter by letter, and without its remark. */
  private static String bare(String line) {
    StringBuilder bare = new StringBuilder();
    char quote = 0;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (quote != 0) {
        bare.append('"');
        if (c == '\\' && quote == '"' && i + 1 < line.length()) {
          bare.append('"');
          i++;
        } else if (c == quote) {
          quote = 0;
        }
      } else if (c == '#') {
        break;
      } else {
        quote = c == '"' || c == '\'' ? c : 0;
        bare.append(quote == 0 ? c : '"');
      }
    }
    return bare.toString();
  }
}
