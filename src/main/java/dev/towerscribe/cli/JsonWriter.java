package dev.towerscribe.cli;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes JSON (RFC 8259) in the order of the calls, without spaces. Numbers carry full double
 * precision and are the same in every locale.
 */
final class JsonWriter {
  private final StringBuilder text = new StringBuilder();
  private final Deque<Boolean> needsComma = new ArrayDeque<>();
  private boolean afterKey;

  /** Begins an object. */
  JsonWriter beginObject() {
    open('{');
    return this;
  }

  /** Ends an object. */
  JsonWriter endObject() {
    close('}');
    return this;
  }

  /** Begins an array. */
  JsonWriter beginArray() {
    open('[');
    return this;
  }

  /** Ends an array. */
  JsonWriter endArray() {
    close(']');
    return this;
  }

  /**
   * The key of the value that comes next.
   *
   * @param key name
   * @return this
   */
  JsonWriter key(String key) {
    separate();
    quote(key);
    text.append(':');
    afterKey = true;
    return this;
  }

  /**
   * A text value.
   *
   * @param value words
   * @return this
   */
  JsonWriter value(String value) {
    separate();
    quote(value);
    return this;
  }

  /**
   * A number; negative zero is written as zero.
   *
   * @param value finite
   * @return this
   * @throws IllegalArgumentException if it is not finite, which JSON cannot say
   */
  JsonWriter value(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a JSON number: " + value);
    }
    separate();
    text.append(value == 0.0 ? 0.0 : value);
    return this;
  }

  /**
   * True or false.
   *
   * @param value either
   * @return this
   */
  JsonWriter value(boolean value) {
    separate();
    text.append(value);
    return this;
  }

  /**
   * A whole number.
   *
   * @param value any
   * @return this
   */
  JsonWriter value(int value) {
    separate();
    text.append(value);
    return this;
  }

  /**
   * What was written.
   *
   * @return one JSON text, complete if every begin had its end
   */
  @Override
  public String toString() {
    return text.toString();
  }

  private void open(char bracket) {
    separate();
    text.append(bracket);
    needsComma.push(false);
  }

  private void close(char bracket) {
    needsComma.pop();
    text.append(bracket);
  }

  private void separate() {
    if (afterKey) {
      afterKey = false;
    } else if (!needsComma.isEmpty()) {
      if (needsComma.pop()) {
        text.append(',');
      }
      needsComma.push(true);
    }
  }

  private void quote(String value) {
    text.append('"');
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      if (c == '"' || c == '\\') {
        text.append('\\').append(c);
      } else if (c < ' ' || c == 0x7f || Character.isSurrogate(c) && !isPaired(value, i)) {
        // Control characters must be escaped; half a surrogate pair has no UTF-8 form.
        text.append("\\u");
        for (int shift = 12; shift >= 0; shift -= 4) {
          text.append(Character.forDigit(c >> shift & 15, 16));
        }
      } else {
        text.append(c);
      }
    }
    text.append('"');
  }

  private static boolean isPaired(String value, int i) {
    return Character.isHighSurrogate(value.charAt(i))
        ? i + 1 < value.length() && Character.isLowSurrogate(value.charAt(i + 1))
        : i > 0 && Character.isHighSurrogate(value.charAt(i - 1));
  }
}
