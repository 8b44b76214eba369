package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import java.util.Arrays;
import java.util.List;

/** Sizes of the text pages' lettering (heights of capitals, mm) and how its lines are set. */
public final class TextStyle {
  /** Page titles. */
  public static final double TITLE = 7.0;

  /** The side of the car. */
  static final double SIDE = 10.0;

  /** Section headings and first lines of steps. */
  public static final double HEADING = 3.8;

  /** Running text. */
  public static final double BODY = 3.0;

  /** Tables. */
  static final double TABLE = 3.0;

  /** Sources and second units; nothing on a page is smaller. */
  public static final double SMALL = 2.5;

  /** Distance of base lines over the height of a capital. */
  private static final double PITCH = 1.75;

  /** Upper edge of a line to its base line, over the height of a capital. */
  private static final double DROP = 1.37;

  private TextStyle() {}

  /**
   * Height that a line takes.
   *
   * @param cap height of capitals, mm
   * @return from one base line to the next, mm
   */
  public static double lineMm(double cap) {
    return PITCH * cap;
  }

  /**
   * Base line of a line whose upper edge is given.
   *
   * @param topMm its upper edge, page mm
   * @param cap height of capitals, mm
   * @return the base line, page mm
   */
  public static double baseMm(double topMm, double cap) {
    return topMm - DROP * cap;
  }

  /**
   * Draws lines of text under one another.
   *
   * @param pen draws them
   * @param x where they stand, page mm
   * @param topMm upper edge of the first, page mm
   * @param cap height of capitals, mm
   * @param lines their words; an empty one leaves its place blank
   * @return lower edge of the last, page mm
   */
  public static double lines(LayerPen pen, double x, double topMm, double cap, List<String> lines) {
    return lines(pen, x, topMm, cap, lines, Ink.BLACK);
  }

  /** The same in an ink. */
  static double lines(
      LayerPen pen, double x, double topMm, double cap, List<String> lines, Ink ink) {
    double y = topMm;
    for (String line : lines) {
      if (!line.isEmpty()) {
        pen.text(x, baseMm(y, cap), cap, Align.START, line, ink);
      }
      y -= lineMm(cap);
    }
    return y;
  }

  /**
   * Words broken to a width.
   *
   * @param words what they say, perhaps nothing
   * @param cap height of capitals, mm
   * @param widthMm the width
   * @return its lines; none for empty words
   */
  public static List<String> wrap(String words, double cap, double widthMm) {
    return words.isEmpty() ? List.of() : Lettering.wrap(words, cap, widthMm);
  }

  /** The least width that words can be broken to, mm. */
  static double longestWordMm(String words, double cap) {
    return Arrays.stream(words.split("\\s+"))
        .mapToDouble(word -> Lettering.width(word, cap))
        .max()
        .orElse(0);
  }
}
