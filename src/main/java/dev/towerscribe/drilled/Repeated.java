package dev.towerscribe.drilled;

import dev.towerscribe.quantity.Require;
import java.util.List;

/**
 * One length, read once or several times.
 *
 * @param readingsMm the readings, at least one
 * @param doubtMm standard deviation of one reading, positive
 */
public record Repeated(List<Double> readingsMm, double doubtMm) {
  /** Checks the figures and copies the list. */
  public Repeated {
    readingsMm = List.copyOf(readingsMm);
    if (readingsMm.isEmpty()) {
      throw new IllegalArgumentException("a reading has at least one figure");
    }
    readingsMm.forEach(mm -> Require.finite("reading", mm));
    Require.positive("doubt", doubtMm);
  }

  /**
   * What the readings come to.
   *
   * @return their mean, mm
   */
  public double meanMm() {
    return readingsMm.stream().mapToDouble(Double::doubleValue).sum() / readingsMm.size();
  }

  /**
   * How sure that is: the doubt of one reading over the root of their number, the readings taken to
   * be independent.
   *
   * @return one standard deviation, mm
   */
  public double plusMinusMm() {
    return doubtMm / Math.sqrt(readingsMm.size());
  }

  /**
   * How far the readings lie from each other.
   *
   * @return greatest minus least, mm
   */
  public double spreadMm() {
    double least = readingsMm.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double most = readingsMm.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    return most - least;
  }
}
