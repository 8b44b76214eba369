package dev.towerscribe.record;

import java.time.LocalDate;
import java.util.Objects;

/**
 * What takes an entry out of a record without taking it away: it stays readable and counts no more.
 *
 * @param date the day of the striking, as its user gave it
 * @param reason why, in the user's words
 */
public record Strike(LocalDate date, String reason) {
  /** Checks that both are there. */
  public Strike {
    Objects.requireNonNull(date);
    Objects.requireNonNull(reason);
  }

  /**
   * The line that strikes an entry, to be appended to the record.
   *
   * @param number the entry's running number
   * @return the line, ended by a line feed
   */
  public String line(int number) {
    return RecordLines.struck(number, words()) + "\n";
  }

  /**
   * The striking in words.
   *
   * @return for instance "struck on 2026-12-05: wrong car on the lift"
   */
  public String words() {
    return "struck on " + date + ": " + reason;
  }
}
