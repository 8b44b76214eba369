package dev.towerscribe.record;

import dev.towerscribe.model.StrutPoints;

/** What an alignment bay reads at one wheel. Signs as in {@link StrutPoints}. */
public enum BayFigure {
  /** Caster, positive when the steering axis's top is rearward. */
  CASTER("caster"),
  /** Camber, positive when the wheel's top leans outward. */
  CAMBER("camber"),
  /** Toe of this wheel alone, positive for toe-in. */
  TOE("toe"),
  /** Kingpin inclination, positive when the steering axis's top is inboard. */
  INCLINATION("inclination");

  private final String word;

  BayFigure(String word) {
    this.word = word;
  }

  /**
   * The word used in visit files, records and reports.
   *
   * @return lower-case word
   */
  public String word() {
    return word;
  }

  /**
   * Whether the work is meant to change it. Toe is set anew each time, so that its change says
   * nothing.
   *
   * @return false for toe
   */
  public boolean changesByTheWork() {
    return this != TOE;
  }
}
