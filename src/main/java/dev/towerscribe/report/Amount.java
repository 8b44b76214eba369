package dev.towerscribe.report;

import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;
import java.util.function.BiFunction;

/** What a figure measures, so that its number text is made in one place. */
public enum Amount {
  /** A length in mm, as calipers show it. */
  LENGTH(Lengths::figure),
  /** A length in mm, as a tape tells it. */
  TAPE_LENGTH((lengths, mm) -> lengths.figure(mm, Fineness.TAPE)),
  /** A place on a car or a plan, mm. */
  PLACE((lengths, mm) -> lengths.figure(mm, Fineness.PLACE)),
  /** An area in mm2. */
  AREA(Lengths::area),
  /** An angle in radians, as an alignment bay shows it. */
  ANGLE((lengths, radians) -> Lengths.degrees(radians)),
  /** A small change of an angle, radians. */
  FINE_ANGLE((lengths, radians) -> Lengths.fineDegrees(radians)),
  /** An angle less another, radians, with its sign. */
  DIFFERENCE((lengths, radians) -> signed(Lengths.degrees(radians))),
  /** A plate's rotation, radians. */
  ROTATION((lengths, radians) -> Numbers.fixed(Math.toDegrees(radians), 1)),
  /** A plain number with one decimal. */
  NUMBER((lengths, number) -> Numbers.fixed(number, 1)),
  /** A ratio near 1, or its uncertainty. */
  RATIO((lengths, ratio) -> Numbers.fixed(ratio, 4));

  private final BiFunction<Lengths, Double, String> text;

  Amount(BiFunction<Lengths, Double, String> text) {
    this.text = text;
  }

  /**
   * The number without its unit.
   *
   * @param value mm, mm2, radians or a plain number; finite
   * @param lengths the unit of lengths and areas
   * @return for instance "12.50"; angles in degrees
   */
  public String text(double value, Lengths lengths) {
    return text.apply(lengths, value);
  }

  private static String signed(String degrees) {
    return degrees.startsWith("-") || degrees.equals("0.00") ? degrees : "+" + degrees;
  }
}
