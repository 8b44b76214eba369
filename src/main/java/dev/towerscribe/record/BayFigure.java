package dev.towerscribe.record;

import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Worded;

/** What an alignment bay reads at one wheel. Signs as in {@link StrutPoints}. */
public enum BayFigure implements Worded {
  /** Caster, positive when the steering axis's top is rearward. */
  CASTER,
  /** Camber, positive when the wheel's top leans outward. */
  CAMBER,
  /** Toe of this wheel alone, positive for toe-in. */
  TOE,
  /** Kingpin inclination, positive when the steering axis's top is inboard. */
  INCLINATION;

  /**
   * Whether the work is meant to change it. Toe is set again each time, so that its change says
   * nothing.
   *
   * @return false for toe
   */
  public boolean changesByTheWork() {
    return this != TOE;
  }
}
