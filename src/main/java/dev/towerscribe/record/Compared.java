package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import java.util.Optional;

/**
 * One figure, predicted beside measured.
 *
 * @param side which wheel; empty for left minus right
 * @param stage when
 * @param figure which figure
 * @param predicted what the job gives
 * @param plusMinus one standard deviation of that; absent for an estimate from an axis alone
 * @param measured what the bay read
 * @param uncertainty one standard deviation of that
 * @param sd one standard deviation of the difference, which is not always that of both together:
 *     errors that a figure and its partner share take each other out
 */
public record Compared(
    Optional<Side> side,
    ReadingStage stage,
    BayFigure figure,
    Angle predicted,
    Optional<Angle> plusMinus,
    Angle measured,
    Angle uncertainty,
    Angle sd) {
  /** Standard deviations that a difference may have; common practice, no source. */
  public static final double MOST_SD = 2.0;

  /** Rounding of a computed figure, in standard deviations: far below what anybody reads. */
  private static final double ROUNDING_SD = 1e-9;

  /**
   * Measured less predicted.
   *
   * @return the difference
   */
  public Angle difference() {
    return new Angle(measured.radians() - predicted.radians());
  }

  /**
   * The difference in standard deviations, without its sign.
   *
   * @return not negative
   */
  public double sds() {
    return Math.abs(difference().radians()) / sd.radians();
  }

  /**
   * The verdict.
   *
   * @return true up to two standard deviations
   */
  public boolean within() {
    return isWithin(sds());
  }

  static boolean isWithin(double sds) {
    return sds <= MOST_SD + ROUNDING_SD;
  }

  /**
   * Which figure this is, in words.
   *
   * @return for instance "left after caster", "left-right before camber"
   */
  public String name() {
    return figure.name(side, stage);
  }

  /**
   * Which wheel, in one word.
   *
   * @return "left", "right" or "left-right"
   */
  public String sideWord() {
    return side.map(Side::word).orElse("left-right");
  }
}
