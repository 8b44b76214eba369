package dev.towerscribe.writer.step;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a part's file says of it in words. Any characters but control characters; the writer encodes
 * what is not ASCII.
 *
 * @param name what the part is called, also its number in the file's product structure; not blank
 * @param description one line about it; may be empty
 * @param organisation who had the file made; may be empty
 * @param date the job's date, or empty
 */
public record PartName(
    String name, String description, String organisation, Optional<LocalDate> date) {
  private static final int LONGEST_YEAR = 9999;

  /**
   * Checks the words.
   *
   * @throws IllegalArgumentException if the name is blank, a text holds a control character or half
   *     a surrogate pair, or the year has not four digits
   */
  public PartName {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a part must have a name");
    }
    for (String text : new String[] {name, description, organisation}) {
      if (text.codePoints().anyMatch(PartName::unwritable)) {
        throw new IllegalArgumentException("not a text for a part: " + text);
      }
    }
    if (date.isPresent() && (date.get().getYear() < 0 || date.get().getYear() > LONGEST_YEAR)) {
      throw new IllegalArgumentException("not a year of four digits: " + date.get());
    }
  }

  private static boolean unwritable(int character) {
    return Character.isISOControl(character) || Character.getType(character) == Character.SURROGATE;
  }
}
