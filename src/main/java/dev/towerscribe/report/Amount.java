package dev.towerscribe.report;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;

/**
 * A figure that knows what it measures, so that its number text is made in one place.
 *
 * @param kind what it measures and how finely it is shown
 * @param value mm, mm2, radians or a plain number, as the kind says; finite
 */
public record Amount(Kind kind, double value) {
  /** What a figure measures. */
  public enum Kind {
    /** A length in mm, as calipers show it. */
    LENGTH,
    /** A length in mm, as a tape tells it. */
    TAPE_LENGTH,
    /** A place on a car or a plan, mm. */
    PLACE,
    /** An area in mm2. */
    AREA,
    /** An angle in radians, as an alignment bay shows it. */
    ANGLE,
    /** A small change of an angle, radians. */
    FINE_ANGLE,
    /** An angle less another, radians, with its sign. */
    DIFFERENCE,
    /** A plate's rotation, radians. */
    ROTATION,
    /** A plain number with one decimal. */
    NUMBER,
    /** A ratio near 1, or its uncertainty. */
    RATIO
  }

  /**
   * A length as calipers show it.
   *
   * @param mm millimetres
   * @return the amount
   */
  public static Amount length(double mm) {
    return new Amount(Kind.LENGTH, mm);
  }

  /**
   * An angle to a hundredth of a degree.
   *
   * @param radians the angle
   * @return the amount
   */
  public static Amount angle(double radians) {
    return new Amount(Kind.ANGLE, radians);
  }

  /**
   * An angle to a hundredth of a degree.
   *
   * @param angle the angle
   * @return the amount
   */
  public static Amount angle(Angle angle) {
    return angle(angle.radians());
  }

  /**
   * The number without its unit.
   *
   * @param lengths the unit of lengths and areas
   * @return for instance "12.50"; angles in degrees
   */
  public String text(Lengths lengths) {
    return switch (kind) {
      case LENGTH -> lengths.figure(value);
      case TAPE_LENGTH -> lengths.figure(value, Fineness.TAPE);
      case PLACE -> lengths.figure(value, Fineness.PLACE);
      case AREA -> lengths.area(value);
      case ANGLE -> Lengths.degrees(value);
      case FINE_ANGLE -> Lengths.fineDegrees(value);
      case DIFFERENCE -> {
        String text = Lengths.degrees(value);
        yield value > 0 && !text.equals("0.00") ? "+" + text : text;
      }
      case ROTATION -> Numbers.fixed(Math.toDegrees(value), 1);
      case NUMBER -> Numbers.fixed(value, 1);
      case RATIO -> Numbers.fixed(value, 4);
    };
  }
}
