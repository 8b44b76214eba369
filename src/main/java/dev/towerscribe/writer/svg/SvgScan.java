package dev.towerscribe.writer.svg;

import dev.towerscribe.drawing.Unreadable;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;

/** Takes an SVG attribute apart: its numbers and letters one after another, or its maps. */
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
  char letter() throws Unreadable {
    Unreadable.must(hasMore(), "\"" + text + "\" breaks off");
    return text.charAt(at++);
  }

  /** The next number. */
  double number() throws Unreadable {
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
  boolean flag() throws Unreadable {
    char c = letter();
    Unreadable.must(c == '0' || c == '1', "an arc's flag is " + c);
    return c == '1';
  }

  /** A name up to a character, which is passed over. */
  String until(char end) throws Unreadable {
    int stop = text.indexOf(end, at);
    Unreadable.must(stop >= 0, "\"" + text + "\" breaks off");
    String taken = text.substring(at, stop).strip();
    at = stop + 1;
    return taken;
  }

  /** A whole text as a number. */
  static double parse(String text) throws Unreadable {
    try {
      double value = Double.parseDouble(text);
      if (Math.abs(value) <= MOST) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Said below, as for numbers past all sense.
    }
    throw new Unreadable("\"" + text + "\" is not a number");
  }

  /** All numbers of a text. */
  static double[] numbers(String text) throws Unreadable {
    SvgScan scan = new SvgScan(text);
    List<Double> numbers = new ArrayList<>();
    while (scan.hasMore()) {
      numbers.add(scan.number());
    }
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Reads a transform attribute. */
  static AffineTransform transform(String attribute) throws Unreadable {
    AffineTransform whole = new AffineTransform();
    SvgScan scan = new SvgScan(attribute);
    while (scan.hasMore()) {
      whole.concatenate(one(scan.until('('), numbers(scan.until(')'))));
    }
    return whole;
  }

  private static AffineTransform one(String name, double[] n) throws Unreadable {
    return switch (name + n.length) {
      case "matrix6" -> new AffineTransform(n);
      case "translate1" -> AffineTransform.getTranslateInstance(n[0], 0);
      case "translate2" -> AffineTransform.getTranslateInstance(n[0], n[1]);
      case "scale1" -> AffineTransform.getScaleInstance(n[0], n[0]);
      case "scale2" -> AffineTransform.getScaleInstance(n[0], n[1]);
      case "rotate1" -> AffineTransform.getRotateInstance(Math.toRadians(n[0]));
      case "rotate3" -> AffineTransform.getRotateInstance(Math.toRadians(n[0]), n[1], n[2]);
      default -> throw new Unreadable("the transform " + name + " of " + n.length + " numbers");
    };
  }
}
