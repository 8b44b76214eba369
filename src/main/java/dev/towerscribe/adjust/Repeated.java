package dev.towerscribe.adjust;

import dev.towerscribe.quantity.Require;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One thing read once or several times, each reading in error independently of the others.
 *
 * @param values the readings in the order in which they were written, at least one; mm, or radians
 *     where an angle was read
 * @param sd standard deviation of one reading, positive, in the same unit
 */
public record Repeated(List<Double> values, double sd) {
  /** Checks the figures and copies the list. */
  public Repeated {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException("a reading has at least one figure");
    }
    values.forEach(v -> Require.finite("reading", v));
    Require.positive("standard deviation", sd);
  }

  /**
   * A single reading.
   *
   * @param value what was read
   * @param sd its standard deviation
   * @return the reading
   */
  public static Repeated once(double value, double sd) {
    return new Repeated(List.of(value), sd);
  }

  /**
   * How many readings there are.
   *
   * @return at least one
   */
  public int count() {
    return values.size();
  }

  /**
   * What the readings come to.
   *
   * @return their mean
   */
  public double mean() {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    return sum / count();
  }

  /**
   * Standard deviation of the mean: that of one reading over the root of their number.
   *
   * @return positive
   */
  public double meanSd() {
    return sd / Math.sqrt(count());
  }

  /**
   * Sum of squared departures from the mean, each over the standard deviation: chi-square with one
   * degree of freedom fewer than there are readings.
   *
   * @return no unit, not negative
   */
  public double scatter() {
    double mean = mean();
    return values.stream().mapToDouble(v -> Math.pow((v - mean) / sd, 2)).sum();
  }

  /**
   * The standard deviation that the readings themselves show.
   *
   * @return that of one reading, from the departures from the mean; NaN for a single one
   */
  public double shownSd() {
    return sd * Math.sqrt(scatter() / (count() - 1));
  }

  /**
   * How far the readings lie from each other.
   *
   * @return greatest less least, not negative
   */
  public double spread() {
    return Collections.max(values) - Collections.min(values);
  }

  /**
   * Without one of at least two readings.
   *
   * @param index which, from 0
   * @return the rest
   */
  public Repeated without(int index) {
    List<Double> rest = new ArrayList<>(values);
    rest.remove(index);
    return new Repeated(rest, sd);
  }

  /**
   * With another standard deviation.
   *
   * @param other of one reading
   * @return the same readings
   */
  public Repeated withSd(double other) {
    return new Repeated(values, other);
  }
}
