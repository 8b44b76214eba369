package dev.towerscribe.writer.svg;

/** Takes numbers and letters one after another from an SVG attribute. */
final class SvgScan {
  /** No number of a drawing in mm is larger; keeps products of such numbers finite. */
  private static final double MOST = 1e9;

  private final String text;
  private int at;

  SvgScan(String text) {
    this.text = text;
  }

  private void skipSeparators() {
    while (at < text.length() && (text.charAt(at) <= ' ' || text.charAt(at) == ',')) {
      at++;
    }
  }

  /** Whether anything but separators is left. */
  boolean hasMore() {
    skipSeparators();
    return at < text.length();
  }

  /** Whether a number comes next. */
  boolean atNumber() {
    return hasMore() && "+-.0123456789".indexOf(text.charAt(at)) >= 0;
  }

  /** The next character that is no separator. */
  char letter() throws SvgUnreadable {
    if (!hasMore()) {
      throw new SvgUnreadable("\"" + text + "\" breaks off");
    }
    return text.charAt(at++);
  }

  /** The next number. */
  double number() throws SvgUnreadable {
    skipSeparators();
    int start = at;
    boolean point = false;
    boolean exponent = false;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '.' && !point && !exponent) {
        point = true;
      } else if ((c == 'e' || c == 'E') && !exponent && at > start) {
        exponent = true;
      } else if (c == '+' || c == '-') {
        if (at > start && "eE".indexOf(text.charAt(at - 1)) < 0) {
          break;
        }
      } else if (c < '0' || c > '9') {
        break;
      }
      at++;
    }
    return parse(text.substring(start, at));
  }

  /** A flag of an arc: one digit, 0 or 1, which may touch what follows. */
  boolean flag() throws SvgUnreadable {
    char c = letter();
    if (c != '0' && c != '1') {
      throw new SvgUnreadable("an arc's flag is " + c);
    }
    return c == '1';
  }

  /** A name up to a character, which is passed over. */
  String until(char end) throws SvgUnreadable {
    int stop = text.indexOf(end, at);
    if (stop < 0) {
      throw new SvgUnreadable("\"" + text + "\" breaks off");
    }
    String taken = text.substring(at, stop).strip();
    at = stop + 1;
    return taken;
  }

  /** A whole text as a number. */
  static double parse(String text) throws SvgUnreadable {
    try {
      double value = Double.parseDouble(text);
      if (Math.abs(value) <= MOST) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Said below, as for numbers past all sense.
    }
    throw new SvgUnreadable("\"" + text + "\" is not a number");
  }
}
