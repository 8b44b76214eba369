package dev.towerscribe.writer.step;

import static dev.towerscribe.drawing.Unreadable.must;

import dev.towerscribe.drawing.Unreadable;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a file apart by the clear text encoding of ISO 10303-21, as far as it is used here. */
final class StepParser {
  private static final Pattern REAL = Pattern.compile("[+-]?\\d+\\.\\d*(E[+-]?\\d+)?");
  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
  private static final Pattern ID = Pattern.compile("#\\d{1,9}");
  private static final Pattern KEYWORD = Pattern.compile("[A-Z_][A-Z0-9_]*");
  private static final Pattern WORD = Pattern.compile("\\.[A-Z_][A-Z0-9_]*\\.");
  private static final Pattern STRING = Pattern.compile("'(?:[^']++|'')*+'");
  private static final Pattern SPACE = Pattern.compile("[ \\r\\n]*");
  private static final Pattern ESCAPE =
      Pattern.compile(
          "''|\\\\\\\\|\\\\X2\\\\((?:[0-9A-F]{4})+)\\\\X0\\\\"
              + "|\\\\X4\\\\((?:[0-9A-F]{8})+)\\\\X0\\\\|[^'\\\\]");

  private final String text;
  private int at;

  private StepParser(String text) {
    this.text = text;
  }

  /**
   * A file taken apart.
   *
   * @param header its header's entities in order
   * @param data its numbered entities; one of several parts is a list of them, without keyword
   */
  record Sections(List<StepValue.Items> header, TreeMap<Integer, StepValue.Items> data) {}

  static Sections parse(byte[] file) throws Unreadable {
    for (byte b : file) {
      if (b != '\n' && b != '\r' && (b < 0x20 || b > 0x7E)) {
        throw new Unreadable("a byte that is not printable ASCII: " + (b & 0xFF));
      }
    }
    return new StepParser(new String(file, StandardCharsets.US_ASCII)).sections();
  }

  private Sections sections() throws Unreadable {
    expect("ISO-10303-21;");
    expect("HEADER;");
    List<StepValue.Items> header = new ArrayList<>();
    while (!take("ENDSEC;")) {
      header.add(record());
      expect(";");
    }
    expect("DATA;");
    TreeMap<Integer, StepValue.Items> data = new TreeMap<>();
    while (!take("ENDSEC;")) {
      int id = id(match(ID, "the number of an entity"));
      expect("=");
      StepValue.Items entity = text.startsWith("(", at) ? complex() : record();
      expect(";");
      if (data.put(id, entity) != null) {
        throw new Unreadable("two entities #" + id);
      }
    }
    expect("END-ISO-10303-21;");
    must(at == text.length(), "text after the end");
    return new Sections(header, data);
  }

  private StepValue.Items record() throws Unreadable {
    return list(match(KEYWORD, "a keyword"));
  }

  private StepValue.Items complex() throws Unreadable {
    expect("(");
    List<StepValue> parts = new ArrayList<>();
    while (!take(")")) {
      parts.add(record());
    }
    return new StepValue.Items("", parts);
  }

  private StepValue.Items list(String keyword) throws Unreadable {
    List<StepValue> values = new ArrayList<>();
    expect("(");
    if (take(")")) {
      return new StepValue.Items(keyword, values);
    }
    do {
      values.add(value());
    } while (take(","));
    expect(")");
    return new StepValue.Items(keyword, values);
  }

  private StepValue value() throws Unreadable {
    if (take("$") || take("*")) {
      return new StepValue.Open();
    }
    if (at < text.length()) {
      char next = text.charAt(at);
      if (next == '(') {
        return list("");
      }
      if (next == '\'') {
        return new StepValue.Text(decoded(match(STRING, "a string")));
      }
      if (next == '#') {
        return new StepValue.Ref(id(match(ID, "a reference")));
      }
      if (next == '.') {
        String word = match(WORD, "a word");
        return new StepValue.Word(word.substring(1, word.length() - 1));
      }
      if (Character.isUpperCase(next)) {
        return record();
      }
    }
    String real = optional(REAL);
    if (real != null) {
      return new StepValue.Real(Double.parseDouble(real));
    }
    return new StepValue.Whole(Integer.parseInt(match(WHOLE, "a value")));
  }

  private static int id(String reference) {
    return Integer.parseInt(reference.substring(1));
  }

  private static String decoded(String quoted) throws Unreadable {
    Matcher escape = ESCAPE.matcher(quoted);
    StringBuilder out = new StringBuilder();
    int i = 1;
    while (i < quoted.length() - 1) {
      if (!escape.region(i, quoted.length() - 1).lookingAt()) {
        throw new Unreadable("not an encoded string: " + quoted);
      }
      String found = escape.group();
      if (escape.group(1) != null) {
        append(out, escape.group(1), 4);
      } else if (escape.group(2) != null) {
        append(out, escape.group(2), 8);
      } else {
        out.append(found.charAt(0));
      }
      i = escape.end();
    }
    return out.toString();
  }

  private static void append(StringBuilder out, String hex, int width) throws Unreadable {
    for (int i = 0; i < hex.length(); i += width) {
      long character = Long.parseLong(hex.substring(i, i + width), 16);
      must(character <= Character.MAX_CODE_POINT, "not a character: " + hex);
      out.appendCodePoint((int) character);
    }
  }

  private void space() {
    optional(SPACE);
  }

  private boolean take(String token) {
    if (!text.startsWith(token, at)) {
      return false;
    }
    at += token.length();
    space();
    return true;
  }

  private void expect(String token) throws Unreadable {
    must(take(token), "no " + token + " at character " + at);
  }

  private String optional(Pattern pattern) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    if (!matcher.lookingAt()) {
      return null;
    }
    at = matcher.end();
    if (pattern != SPACE) {
      space();
    }
    return matcher.group();
  }

  private String match(Pattern pattern, String what) throws Unreadable {
    String found = optional(pattern);
    must(found != null, "no " + what + " at character " + at);
    return found;
  }
}
