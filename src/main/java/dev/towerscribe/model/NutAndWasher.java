package dev.towerscribe.model;

import java.util.Map;

/**
 * What a nut and its washers take up along a bolt. Plain washers after ISO 7089 and, for inch
 * sizes, narrow ones of ASME B18.21.1; nuts at their greatest height after ISO 4032 and ASME
 * B18.2.2; coarse pitches after ISO 261 and ASME B1.1. Washers of metric sizes but M14 were seen in
 * tables; the rest is from memory.
 *
 * @param washerMm thickness of one washer
 * @param nutMm height of the nut
 * @param pitchMm of the coarse thread
 */
public record NutAndWasher(double washerMm, double nutMm, double pitchMm) {
  private static final double INCH = 25.4;

  private static final Map<String, NutAndWasher> BY_THREAD =
      Map.ofEntries(
          Map.entry("M5", new NutAndWasher(1.0, 4.7, 0.8)),
          Map.entry("M6", new NutAndWasher(1.6, 5.2, 1.0)),
          Map.entry("M8", new NutAndWasher(1.6, 6.8, 1.25)),
          Map.entry("M10", new NutAndWasher(2.0, 8.4, 1.5)),
          Map.entry("M12", new NutAndWasher(2.5, 10.8, 1.75)),
          Map.entry("M14", new NutAndWasher(2.5, 12.8, 2.0)),
          Map.entry("M16", new NutAndWasher(3.0, 14.8, 2.0)),
          Map.entry("1/4", inch(0.065, 0.226, 20)),
          Map.entry("5/16", inch(0.065, 0.273, 18)),
          Map.entry("3/8", inch(0.065, 0.337, 16)),
          Map.entry("7/16", inch(0.065, 0.385, 14)),
          Map.entry("1/2", inch(0.095, 0.448, 13)));

  private static NutAndWasher inch(double washer, double nut, double threadsPerInch) {
    return new NutAndWasher(washer * INCH, nut * INCH, INCH / threadsPerInch);
  }

  /**
   * Those of a size.
   *
   * @param thread one of {@link Thread#KNOWN}
   * @return its nut and washer
   */
  public static NutAndWasher of(Thread thread) {
    return BY_THREAD.get(thread.name());
  }
}
