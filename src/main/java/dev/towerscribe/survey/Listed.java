package dev.towerscribe.survey;

import java.util.List;

/** Names in a row, as they are spoken. */
final class Listed {
  private Listed() {}

  /** "a, b and c". */
  static String and(List<String> names) {
    return joined(names, " and ");
  }

  /** "a, b or c". */
  static String or(List<String> names) {
    return joined(names, " or ");
  }

  private static String joined(List<String> names, String last) {
    int n = names.size();
    return n < 2
        ? String.join("", names)
        : String.join(", ", names.subList(0, n - 1)) + last + names.get(n - 1);
  }
}
