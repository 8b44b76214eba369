package dev.towerscribe.finding;

import dev.towerscribe.quantity.Tolerances;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a finding is about: its place, its figure against its limit, and what the limit rests on.
 *
 * @param where the things it is about, in words: "bolt B, final cut"
 * @param figure the value found, in {@code unit}; finite
 * @param limit the least or greatest value allowed, in {@code unit}; finite
 * @param unit "mm", "deg", "%" or "" for a count and for words alone
 * @param source the standard, book or practice behind the limit, or the job key that set it
 * @param impossible a figure as low as this stops the work whatever anybody accepts, in {@code
 *     unit}; negative infinity where judgement may always lift it
 * @param spot where it is on the tower; empty where it passes or has no place
 */
public record About(
    String where,
    double figure,
    double limit,
    String unit,
    String source,
    double impossible,
    Optional<Spot> spot) {
  /**
   * Something that a person may judge otherwise.
   *
   * @param where the things it is about, in words
   * @param figure the value found, in {@code unit}
   * @param limit the least or greatest value allowed, in {@code unit}
   * @param unit "mm", "deg", "%" or "" for a count and for words alone
   * @param source what the limit rests on
   */
  public About(String where, double figure, double limit, String unit, String source) {
    this(where, figure, limit, unit, source, Double.NEGATIVE_INFINITY, Optional.empty());
  }

  /**
   * The same, not to be lifted where the figure is this or less: no metal is left.
   *
   * @param figure the figure at which two things touch, in the unit
   * @return the same with that floor; rounding alone does not lift it
   */
  public About impossibleAt(double figure) {
    return impossible(figure + Tolerances.COMPUTED_MM);
  }

  /**
   * The same, not to be lifted where the figure is less than this: two things run into each other.
   *
   * @param figure the least figure that judgement may answer for, in the unit
   * @return the same with that floor; a figure that is less by rounding alone may be lifted
   */
  public About impossibleBelow(double figure) {
    return impossible(figure - Tolerances.COMPUTED_MM);
  }

  private About impossible(double floor) {
    return new About(where, figure, limit, unit, source, floor, spot);
  }

  /**
   * The same with its place on the tower.
   *
   * @param place finds it; asked only where the figure is less than its limit, or impossible
   * @return the same with its place, or as it is where it passes
   */
  public About at(Supplier<Spot> place) {
    return figure < limit - Tolerances.COMPUTED_MM || isImpossible()
        ? new About(where, figure, limit, unit, source, impossible, Optional.of(place.get()))
        : this;
  }

  /** Whether no switch lifts it. */
  boolean isImpossible() {
    return figure <= impossible;
  }

  /**
   * A length against its limit.
   *
   * @param where the things it is about, in words
   * @param mm the length found, mm
   * @param limitMm its limit, mm
   * @param source what the limit rests on
   * @return the same, in mm
   */
  public static About mm(String where, double mm, double limitMm, String source) {
    return new About(where, mm, limitMm, "mm", source);
  }

  /**
   * An angle against its limit.
   *
   * @param where the things it is about, in words
   * @param radians the angle found, radians
   * @param limitRadians its limit, radians
   * @param source what the limit rests on
   * @return the same, in degrees
   */
  public static About degrees(String where, double radians, double limitRadians, String source) {
    return new About(where, Math.toDegrees(radians), Math.toDegrees(limitRadians), "deg", source);
  }

  /**
   * A matter of words alone.
   *
   * @param where the things it is about, in words
   * @param source what it rests on
   * @return no figure and no limit
   */
  public static About words(String where, String source) {
    return new About(where, 0, 0, "", source);
  }
}
