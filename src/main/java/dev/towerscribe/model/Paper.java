package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** A sheet of paper held upright: ISO 216:2007 and the inch sizes of ANSI/ASME Y14.1. */
public enum Paper implements Worded {
  /** ISO 216 A4. */
  A4("A4", 210, 297),
  /** ISO 216 A3. */
  A3("A3", 297, 420),
  /** 8.5 by 11 in. */
  LETTER("Letter", 215.9, 279.4),
  /** 8.5 by 14 in. */
  LEGAL("Legal", 215.9, 355.6),
  /** 11 by 17 in. */
  TABLOID("Tabloid", 279.4, 431.8);

  private final String word;
  private final double widthMm;
  private final double heightMm;

  Paper(String word, double widthMm, double heightMm) {
    this.word = word;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  @Override
  public String word() {
    return word;
  }

  /**
   * Short side.
   *
   * @return mm
   */
  public double widthMm() {
    return widthMm;
  }

  /**
   * Long side.
   *
   * @return mm
   */
  public double heightMm() {
    return heightMm;
  }
}
