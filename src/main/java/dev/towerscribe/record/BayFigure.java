package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Worded;
import java.util.Optional;

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

  /** Which figure of a visit it is: "left after caster", "left-right before camber". */
  String name(Optional<Side> side, ReadingStage stage) {
    return "%s %s %s".formatted(side.map(Side::word).orElse("left-right"), stage.word(), word());
  }

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
