package dev.towerscribe.model;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Worded;
import java.util.Optional;

/**
 * What the owner wants.
 *
 * @param use what the car is for
 * @param casterFrom least caster aimed at, if given
 * @param casterTo most caster aimed at, if given
 * @param camber camber aimed at, if given
 * @param camberLimit camber not to pass, if given
 */
public record Aims(
    Use use,
    Optional<Angle> casterFrom,
    Optional<Angle> casterTo,
    Optional<Angle> camber,
    Optional<Angle> camberLimit) {
  /** What the car is for. */
  public enum Use implements Worded {
    /** Road only. */
    ROAD,
    /** Both. */
    ROAD_AND_TRACK,
    /** Track only. */
    TRACK;

    @Override
    public String word() {
      return Worded.super.word().replace(' ', '-');
    }
  }
}
