package dev.towerscribe.job;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Typical outside diameters of sockets on a 3/8 inch drive, for jobs that do not give the socket's
 * size. From memory, no standard table seen: to be measured, which is what {@code Tools.assumed}
 * tells whoever uses the figure.
 */
final class Sockets {
  /** The end that takes the drive, mm: from memory. A small socket is no slimmer than this. */
  private static final double DRIVE_END_MM = 20.0;

  /** Width across flats, mm, to outside diameter, mm: from memory. */
  private static final TreeMap<Double, Double> OUTSIDE_MM =
      new TreeMap<>(
          Map.of(
              10.0, 14.7, 12.0, 17.2, 13.0, 18.5, 14.0, 19.7, 15.0, 21.0, 16.0, 22.2, 17.0, 23.5,
              19.0, 26.0));

  private Sockets() {}

  /**
   * The room a typical socket takes.
   *
   * @param flatsMm width across the flats of the largest fastener
   * @return mm, for the next size of socket that goes on, or empty past the largest on the list
   */
  static Optional<Double> typicalMm(double flatsMm) {
    return Optional.ofNullable(OUTSIDE_MM.ceilingEntry(flatsMm))
        .map(entry -> Math.max(entry.getValue(), DRIVE_END_MM));
  }

  /** The largest width across flats a typical size is known for, mm. */
  static double largestFlatsMm() {
    return OUTSIDE_MM.lastKey();
  }
}
