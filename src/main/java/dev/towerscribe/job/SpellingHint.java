package dev.towerscribe.job;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word somebody meant. */
final class SpellingHint {
  /** No known word is near this long; longer ones are not worth the comparison. */
  private static final int LONGEST = 40;

  private SpellingHint() {}

  /**
   * The known word nearest to a written one, letter case and the choice of dash aside.
   *
   * @param written as written
   * @param known words that would have been right
   * @return the nearest, the first of equals, if a third of its letters or fewer are wrong
   */
  static Optional<String> nearest(String written, Collection<String> known) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String word : known) {
      int distance = 2 * distance(plain(written), plain(word));
      // Of two equally near words, the one with the same letters in another order.
      int weight = sorted(written).equals(sorted(word)) ? distance - 1 : distance;
      if (weight < least && distance <= 2 * Math.max(1, word.length() / 3)) {
        least = weight;
        best = word;
      }
    }
    return Optional.ofNullable(best);
  }

  /** What to do about a word that is not among the known ones. */
  static String advice(String written, Collection<String> known, String otherwise) {
    return nearest(written, known).map(word -> "Did you mean \"" + word + "\"?").orElse(otherwise);
  }

  private static String sorted(String word) {
    char[] letters = plain(word).toCharArray();
    Arrays.sort(letters);
    return new String(letters);
  }

  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
  }

  /**
   * Letters to add, drop, change or swap with a neighbour (Damerau-Levenshtein, each pair of
   * letters swapped at most once).
   */
  static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(last[j] + 1, row[j - 1] + 1), last[j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
      beforeLast = last;
      last = row;
    }
    return last[b.length()];
  }
}
