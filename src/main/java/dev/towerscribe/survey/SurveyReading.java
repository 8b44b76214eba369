package dev.towerscribe.survey;

import dev.towerscribe.quantity.Require;
import java.util.List;

/**
 * One thing read once or several times.
 *
 * @param values the readings in the order in which they were written, at least one; mm, or radians
 *     where an angle was read
 * @param doubt one standard deviation of one reading, positive, in the same unit
 */
public record SurveyReading(List<Double> values, double doubt) {
  /** Checks the figures and copies the list. */
  public SurveyReading {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException("a reading has at least one figure");
    }
    values.forEach(v -> Require.finite("reading", v));
    Require.positive("doubt", doubt);
  }

  /**
   * The mean.
   *
   * @return in the unit of the readings
   */
  public double mean() {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    return sum / values.size();
  }

  /**
   * One standard deviation of the mean of readings that err apart from each other: doubt over the
   * root of their number.
   *
   * @return in the unit of the readings
   */
  public double meanDoubt() {
    return doubt / Math.sqrt(values.size());
  }

  /**
   * Sum of squared departures from the mean, each over the doubt: a chi-square figure with one
   * degree of freedom fewer than there are readings.
   *
   * @return no unit, not negative
   */
  public double scatter() {
    double mean = mean();
    double sum = 0;
    for (double v : values) {
      sum += (v - mean) * (v - mean) / (doubt * doubt);
    }
    return sum;
  }

  /**
   * The greatest difference between two of the readings.
   *
   * @return in the unit of the readings, not negative
   */
  public double spread() {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double v : values) {
      least = Math.min(least, v);
      most = Math.max(most, v);
    }
    return most - least;
  }
}
