package dev.towerscribe.job;

import dev.towerscribe.model.Stated;
import dev.towerscribe.quantity.Worded;
import java.util.Optional;

/**
 * What a table says, told apart from what it leaves to a default. A value that is at fault counts
 * as left out: its table is no longer sound, so no caller uses it.
 */
final class StatedValues {
  private StatedValues() {}

  /** A length that may be left out, mm. */
  static Optional<Double> length(TableReader t, String key, AllowedRange mm) {
    return t.has(key) ? t.length(key, mm) : Optional.empty();
  }

  static Stated<Double> length(
      TableReader t, String key, AllowedRange mm, Stated<Double> otherwise) {
    return Stated.or(length(t, key, mm), otherwise.value());
  }

  /** A line of text that may be left out. */
  static Optional<String> label(TableReader t, String key, int most) {
    return t.has(key) ? t.label(key, most) : Optional.empty();
  }

  static Stated<String> label(TableReader t, String key, int most, Stated<String> otherwise) {
    return Stated.or(label(t, key, most), otherwise.value());
  }

  /** One of a few words. */
  static <E extends Enum<E> & Worded> Stated<E> word(TableReader t, String key, E otherwise) {
    Optional<E> said = t.has(key) ? t.word(key, otherwise.getDeclaringClass()) : Optional.empty();
    return Stated.or(said, otherwise);
  }

  /** A figure that is no length and has a default. */
  static Stated<Double> figure(TableReader t, String key, AllowedRange range, double otherwise) {
    return Stated.or(
        t.has(key) ? t.ratio(key, range, otherwise, advice(t, range)) : Optional.empty(),
        otherwise);
  }

  /** A figure that is no length and must be there. */
  static Optional<Double> figure(TableReader t, String key, AllowedRange range) {
    if (!t.has(key)) {
      return t.missing(key, range.words(t.unit()), "Find out and write it down.");
    }
    return t.ratio(key, range, range.least(), advice(t, range));
  }

  private static String advice(TableReader t, AllowedRange range) {
    return "Check the figure and its unit: " + range.words(t.unit()) + " is believable.";
  }
}
