package dev.towerscribe.drawing;

/** Which part of a line of text stands at its point. */
public enum Align {
  /** The first letter's left side. */
  START,
  /** The middle. */
  MIDDLE,
  /** The last letter's right side. */
  END
}
