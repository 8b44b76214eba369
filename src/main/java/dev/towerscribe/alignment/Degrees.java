package dev.towerscribe.alignment;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;

/** Angles in words. */
final class Degrees {
  private Degrees() {}

  /** To a hundredth, trailing zeros dropped. */
  static String plain(Angle angle) {
    return Numbers.plain(angle.degrees(), 2);
  }

  /** To a hundredth, with the unit. */
  static String with(Angle angle) {
    return Numbers.fixed(angle.degrees(), 2) + " deg";
  }
}
