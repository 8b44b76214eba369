package dev.towerscribe.model;

import java.util.Objects;
import java.util.Optional;

/**
 * A figure or word with where it comes from, so that a drawing can say which of its statements
 * nobody made.
 *
 * @param <T> what is stated
 * @param value the figure or word
 * @param assumed true when the job does not say it and a default stands in
 */
public record Stated<T>(T value, boolean assumed) {
  /** Checks that there is a value. */
  public Stated {
    Objects.requireNonNull(value);
  }

  /**
   * What the job says.
   *
   * @param <T> what is stated
   * @param value the figure or word
   * @return it, as given
   */
  public static <T> Stated<T> given(T value) {
    return new Stated<>(value, false);
  }

  /**
   * What stands in where the job says nothing.
   *
   * @param <T> what is stated
   * @param value the default
   * @return it, as assumed
   */
  public static <T> Stated<T> assumed(T value) {
    return new Stated<>(value, true);
  }

  /**
   * What the job says, or a default.
   *
   * @param <T> what is stated
   * @param said what the job says, if anything
   * @param otherwise the default
   * @return one of the two, marked accordingly
   */
  public static <T> Stated<T> or(Optional<T> said, T otherwise) {
    return said.map(Stated::given).orElseGet(() -> assumed(otherwise));
  }
}
