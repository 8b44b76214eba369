package dev.towerscribe.survey;

import dev.towerscribe.model.Side;
import java.util.Objects;
import java.util.Optional;

/**
 * What a tape, a plumb line or a rule was held to.
 *
 * @param side the side it belongs to; empty for a station, which both sides share
 * @param name its name
 */
public record SurveyPoint(Optional<Side> side, String name) {
  /** Checks that nothing is missing. */
  public SurveyPoint {
    Objects.requireNonNull(side);
    Objects.requireNonNull(name);
  }

  /**
   * A point of one side.
   *
   * @param side its side
   * @param name its name
   * @return the point
   */
  public static SurveyPoint of(Side side, String name) {
    return new SurveyPoint(Optional.of(side), name);
  }

  /**
   * A station.
   *
   * @param name its name
   * @return the point
   */
  public static SurveyPoint station(String name) {
    return new SurveyPoint(Optional.empty(), name);
  }

  /**
   * The point in words, with its side.
   *
   * @return for instance "left ball_joint", or "station C"
   */
  public String words() {
    return side.map(Side::word).orElse("station") + " " + name;
  }
}
