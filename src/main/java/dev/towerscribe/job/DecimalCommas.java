package dev.towerscribe.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Decimal commas in a list: [1,5, 2,5] is four whole figures to a parser, and two to a person. */
final class DecimalCommas {
  private static final String SAY = "A decimal takes a point, not a comma: ";

  private DecimalCommas() {}

  /**
   * What to say of a list that has more items than it should.
   *
   * @param list the list
   * @param count how many it should have
   * @return advice, if some of the items can be halves of decimals
   */
  static Optional<String> advice(TomlNode.Items list, int count) {
    int size = list.items().size();
    if (size <= count || size > 2 * count) {
      return Optional.empty();
    }
    List<String> meant = new ArrayList<>();
    join(list.items(), 0, count, List.of(), meant);
    return meant.isEmpty()
        ? Optional.empty()
        : Optional.of(SAY + "write " + String.join(" or ", meant) + ".");
  }

  private static void join(
      List<TomlNode> items, int from, int left, List<String> sofar, List<String> meant) {
    if (left == 0 || from >= items.size()) {
      if (left == 0 && from == items.size()) {
        meant.add(sofar.stream().collect(Collectors.joining(", ", "[", "]")));
      }
      return;
    }
    join(items, from + 1, left - 1, with(sofar, items.get(from).given()), meant);
    if (joinable(items, from)) {
      join(items, from + 2, left - 1, with(sofar, joined(items, from)), meant);
    }
  }

  private static List<String> with(List<String> sofar, String next) {
    List<String> more = new ArrayList<>(sofar);
    more.add(next);
    return more;
  }

  /**
   * What to say of a list of figures of which some are out of their range.
   *
   * @param list the list
   * @param fits whether a figure is in its range
   * @return advice, if halves put together make every figure fit
   */
  static Optional<String> advice(TomlNode.Items list, Predicate<Double> fits) {
    if (list.items().stream().allMatch(item -> fits(item, fits))) {
      return Optional.empty();
    }
    return joined(list.items(), fits, true)
        .or(() -> joined(list.items(), fits, false))
        .map(meant -> SAY + "write [" + String.join(", ", meant) + "].");
  }

  /** The list with halves put together: wherever they may be, or only where one alone is wrong. */
  private static Optional<List<String>> joined(
      List<TomlNode> items, Predicate<Double> fits, boolean wherever) {
    List<String> meant = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      boolean alone =
          fits(items.get(i), fits) && (i + 1 >= items.size() || fits(items.get(i + 1), fits));
      if (joinable(items, i) && (wherever ? isShort(items.get(i + 1)) : !alone)) {
        String one = joined(items, i++);
        if (!fits.test(Double.parseDouble(one))) {
          return Optional.empty();
        }
        meant.add(one);
      } else if (fits(items.get(i), fits)) {
        meant.add(items.get(i).given());
      } else {
        return Optional.empty();
      }
    }
    return Optional.of(meant);
  }

  /** Whether a figure has no more digits than calipers show after a point. */
  private static boolean isShort(TomlNode item) {
    return item.given().length() <= 2;
  }

  private static boolean fits(TomlNode node, Predicate<Double> fits) {
    return node instanceof TomlNode.Number n && fits.test(n.value().doubleValue());
  }

  private static boolean joinable(List<TomlNode> items, int at) {
    return at + 1 < items.size()
        && items.get(at) instanceof TomlNode.Number before
        && items.get(at + 1) instanceof TomlNode.Number after
        && before.whole()
        && after.whole()
        && after.value().signum() >= 0;
  }

  private static String joined(List<TomlNode> items, int at) {
    return items.get(at).given() + "." + items.get(at + 1).given();
  }
}
