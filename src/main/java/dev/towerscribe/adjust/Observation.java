package dev.towerscribe.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Readings of one thing, and what it is.
 *
 * @param number which of the caller's things it is: it keeps its number when others are left out
 * @param measure what it is of
 * @param reading what was read, once or several times
 * @param numbers which of the readings as written are left, from 1
 */
public record Observation(int number, Measure measure, Repeated reading, List<Integer> numbers) {
  /** Copies the list. */
  public Observation {
    numbers = List.copyOf(numbers);
  }

  /**
   * As written.
   *
   * @param number which of the caller's things it is
   * @param measure what it is of
   * @param reading what was read
   * @return with all its readings
   */
  public static Observation of(int number, Measure measure, Repeated reading) {
    return new Observation(
        number, measure, reading, IntStream.rangeClosed(1, reading.count()).boxed().toList());
  }

  /**
   * The weight of the mean: one over its variance.
   *
   * @return 1/mm2
   */
  public double weight() {
    return reading.count() / (reading.sd() * reading.sd());
  }

  /**
   * Without one of its readings, of which there are at least two.
   *
   * @param index which of those that are left, from 0
   * @return the rest, with their numbers
   */
  public Observation without(int index) {
    List<Integer> left = new ArrayList<>(numbers);
    left.remove(index);
    return new Observation(number, measure, reading.without(index), left);
  }

  /**
   * With another standard deviation.
   *
   * @param sd of one reading
   * @return the same readings
   */
  public Observation withSd(double sd) {
    return new Observation(number, measure, reading.withSd(sd), numbers);
  }
}
