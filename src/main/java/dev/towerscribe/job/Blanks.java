package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a starting file leaves for its user to fill in: {@code "___"} wherever a figure or a word of
 * the car belongs. A blank is no fault of its own key, and nothing that depends on it is judged;
 * all that are left are told together.
 */
final class Blanks {
  private static final Pattern WRITTEN = Pattern.compile("[+-]?_{3,}( ?[a-z]+)?");
  private static final Pattern LAST_PLACES = Pattern.compile("(\\[[0-9]+\\])+$");
  private static final Pattern FIRST_PLACE = Pattern.compile("^(.*?)\\[([0-9]+)\\](.*)$");

  private static final String WHAT_TO_DO =
      "Put a figure or word of yours for each ___, and delete what your car has not.";

  private final Set<String> paths = new LinkedHashSet<>();

  static boolean is(TomlNode node) {
    return node instanceof TomlNode.Text text && WRITTEN.matcher(text.value().strip()).matches();
  }

  /** Notes every blank of a table that counts. */
  void note(TomlNode node) {
    if (is(node)) {
      paths.add(node.origin().path());
    } else if (node instanceof TomlNode.Table table) {
      table.entries().values().forEach(this::note);
    } else if (node instanceof TomlNode.Items list) {
      list.items().forEach(this::note);
    }
  }

  /** All of them, a line for each table of the file. */
  List<Fault> faults() {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (String path : paths) {
      int file = path.indexOf(": ") < 0 ? 0 : path.indexOf(": ") + 2;
      int dot = path.indexOf('.', file);
      String key = file > 0 ? path.substring(0, file - 2) : dot < 0 ? path : path.substring(0, dot);
      String rest = file > 0 ? path.substring(file) : dot < 0 ? "" : path.substring(dot + 1);
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(rest);
    }
    List<Fault> faults = new ArrayList<>();
    groups.forEach(
        (key, rests) -> {
          String names = String.join(", ", together(rests));
          String todo = faults.size() + 1 == groups.size() ? WHAT_TO_DO : "";
          faults.add(
              new Fault(key, "still blank" + (names.isEmpty() ? "" : ": " + names), "", todo));
        });
    return faults;
  }

  /** Keys of alike entries as one: landmark[0, 1].at. The figures of one list are its key's. */
  private static List<String> together(List<String> rests) {
    Map<String, Set<Integer>> places = new LinkedHashMap<>();
    for (String rest : rests) {
      String key = LAST_PLACES.matcher(rest).replaceFirst("");
      Matcher place = FIRST_PLACE.matcher(key);
      if (place.matches()) {
        String alike = place.group(1) + "[#]" + place.group(3);
        places.computeIfAbsent(alike, k -> new TreeSet<>()).add(Integer.parseInt(place.group(2)));
      } else {
        places.computeIfAbsent(key, k -> new TreeSet<>());
      }
    }
    return places.entrySet().stream()
        .map(e -> e.getKey().replace("[#]", "[" + ranges(List.copyOf(e.getValue())) + "]"))
        .toList();
  }

  private static String ranges(List<Integer> numbers) {
    List<String> parts = new ArrayList<>();
    for (int from = 0, to; from < numbers.size(); from = to + 1) {
      to = from;
      while (to + 1 < numbers.size() && numbers.get(to + 1) == numbers.get(to) + 1) {
        to++;
      }
      String last = to == from ? "" : (to == from + 1 ? ", " : " to ") + numbers.get(to);
      parts.add(numbers.get(from) + last);
    }
    return String.join(", ", parts);
  }
}
