package dev.towerscribe.survey;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Ids of a survey's readings, no two alike: accepting one must never accept another. */
final class Ids {
  private final Set<String> taken = new HashSet<>();
  private final Map<String, Integer> counts = new HashMap<>();

  /** A name as part of an id: letters and digits kept, the rest hyphens. */
  static String slug(String name) {
    String slug = name.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
    return slug.isEmpty() ? "unnamed" : slug;
  }

  /**
   * An id that was not given yet.
   *
   * @param side "left", "right" or "both"
   * @param words what it is about; the second of the same gets a number
   */
  String next(String side, String... words) {
    StringBuilder plain = new StringBuilder(side).append('.');
    for (int i = 0; i < words.length; i++) {
      plain.append(i == 0 ? "" : "-").append(slug(words[i]));
    }
    String id = plain.toString();
    while (!taken.add(id)) {
      id = plain + "-" + (counts.merge(plain.toString(), 1, Integer::sum) + 1);
    }
    return id;
  }
}
