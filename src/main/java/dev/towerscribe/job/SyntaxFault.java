package dev.towerscribe.job;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import dev.towerscribe.finding.Fault;
import java.util.List;
import java.util.Map;

/** Broken TOML in words for somebody who does not know the word TOML. */
final class SyntaxFault {
  /** The parser's words, and ours. The first that fits is taken. */
  private static final List<Map.Entry<String, String>> WORDS =
      List.of(
          Map.entry("Duplicate key", "This key was given before: keep one of the two."),
          Map.entry("redefined", "This table was given before: put its keys under one heading."),
          Map.entry("existing non-object", "This heading names something that is not a table."),
          Map.entry("already finished", "This list was given before: keep one of the two."),
          Map.entry(
              "Premature end", "The file ends too soon: a quote, bracket or brace is left open."),
          Map.entry(
              "Newline not permitted",
              "The line ends too soon: a value is missing, or a { } table runs over lines."),
          Map.entry(
              "More data after value",
              "Something follows the value: one key a line, and a decimal point, not a comma."),
          Map.entry("Trailing comma", "Drop the comma before the closing brace."),
          Map.entry("Zero-prefixed", "A number does not begin with a zero: drop it."),
          Map.entry("control character", "A control character is in the text: delete it."),
          Map.entry("escape sequence", "Write a backslash in quotes as two backslashes."),
          Map.entry("code point", "Write a backslash in quotes as two backslashes."),
          Map.entry("nesting depth", "Tables are nested too deep for a job file."),
          Map.entry("number", "This number is too long."));

  private SyntaxFault() {}

  /** What is wrong: slips on as many lines as have one, or what the parser stopped at. */
  static List<Fault> of(JsonProcessingException e, String text, String key) {
    JsonLocation at = e.getLocation();
    List<Fault> slips = at == null ? List.of() : WrittenSlips.of(text, at.getLineNr(), key);
    return slips.isEmpty() ? List.of(stopped(e, text, key)) : slips;
  }

  private static Fault stopped(JsonProcessingException e, String text, String key) {
    String said = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
    String todo =
        WORDS.stream()
            .filter(entry -> said.contains(entry.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(
                "This cannot be read: look for a missing quote, equals sign or bracket here or just"
                    + " before.");
    JsonLocation at = e.getLocation();
    if (at == null || at.getLineNr() < 1) {
      return new Fault(key, "not readable as TOML", "", todo);
    }
    int number = at.getLineNr();
    String given = "line " + number + ", column " + Math.max(1, at.getColumnNr());
    if (said.contains("Duplicate key") && at.getColumnNr() <= 1 && number > 1) {
      // The parser only sees it once past the line's end, and past remarks and empty lines.
      do {
        number--;
      } while (number > 1 && (line(text, number).isEmpty() || line(text, number).startsWith("#")));
      given = "line " + number;
    }
    String line = line(text, number);
    return new Fault(
        key, line.isEmpty() ? given : given + ": " + MessageText.shown(line), "", todo);
  }

  private static String line(String text, int number) {
    return text.lines().skip(number - 1L).findFirst().orElse("").strip();
  }
}
