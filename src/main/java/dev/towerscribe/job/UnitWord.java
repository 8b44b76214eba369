package dev.towerscribe.job;

import dev.towerscribe.quantity.LengthUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The words for units of length, and what people write instead. */
final class UnitWord {
  static final String ALLOWED = "\"mm\" or \"in\"";

  private UnitWord() {}

  /** The unit whose word this is. */
  static Optional<LengthUnit> of(String word) {
    return Stream.of(LengthUnit.values()).filter(u -> u.symbol().equals(word)).findFirst();
  }

  /** What to do about a word that is no unit of ours. */
  static String advice(String written) {
    String word = written.strip().toLowerCase(Locale.ROOT);
    if (word.startsWith("in") || word.equals("\"")) {
      return "Did you mean \"in\"?";
    }
    if (word.startsWith("mil") || word.startsWith("mm")) {
      return "Did you mean \"mm\"?";
    }
    return "Choose one, and convert the figures if need be.";
  }
}
