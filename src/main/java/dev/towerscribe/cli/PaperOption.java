package dev.towerscribe.cli;

import dev.towerscribe.model.Paper;
import java.util.Arrays;
import java.util.List;

/** A paper size as it is named on the command line. */
final class PaperOption {
  private PaperOption() {}

  static Paper paper(String word) throws Refusal {
    return Arrays.stream(Paper.values())
        .filter(p -> p.word().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    Exit.WRONG_USE,
                    "--paper " + word + ": not one of " + String.join(", ", words())));
  }

  static List<String> words() {
    return Arrays.stream(Paper.values()).map(Paper::word).toList();
  }
}
