package dev.towerscribe.sheet.worksheet;

/**
 * A mark on the car's middle line that both sides are taped from: the file's stations. On the
 * middle line they read the same from either side, and only one or two figures of their place have
 * to be measured.
 */
public enum WorksheetMark implements WorksheetEnd {
  /** Ahead of the wheels. */
  A("mark ahead", 1),
  /** Where the middle line crosses the line through the wheel centres. */
  B("middle mark", 0),
  /** Behind the wheels. */
  C("mark behind", -1),
  /** On the body: the one that checks the top pivots fore and aft. */
  D("front panel", 1);

  private final String words;
  private final int foreSign;

  WorksheetMark(String words, int foreSign) {
    this.words = words;
    this.foreSign = foreSign;
  }

  @Override
  public String key() {
    return name();
  }

  @Override
  public String sign() {
    return name();
  }

  @Override
  public String words() {
    return words;
  }

  /**
   * Which way it lies from the line through the wheel centres.
   *
   * @return +1 ahead, -1 behind, 0 on it
   */
  public int foreSign() {
    return foreSign;
  }

  /**
   * Whether it is on the floor.
   *
   * @return false for the mark on the body, whose height is measured too
   */
  public boolean isOnFloor() {
    return this != D;
  }
}
