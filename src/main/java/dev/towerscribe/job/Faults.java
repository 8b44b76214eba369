package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gathers faults, each once, and puts them in the order in which a file's keys were written. */
final class Faults {
  /** No one mends more at one sitting; a file of nothing but unknown keys stays readable. */
  static final int MOST = 200;

  private final Set<Fault> found = new LinkedHashSet<>();
  private final Map<String, Integer> places = new HashMap<>();

  /** Notes that a key path stands next in the file. */
  void place(String path) {
    places.putIfAbsent(path, places.size());
  }

  void add(Fault fault) {
    found.add(fault);
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  void throwIfAny() throws JobRejected {
    if (found.isEmpty()) {
      return;
    }
    List<Fault> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingInt(fault -> placeOf(fault.key())));
    if (sorted.size() > MOST) {
      int left = sorted.size() - MOST;
      sorted = new ArrayList<>(sorted.subList(0, MOST));
      sorted.add(new Fault("", left + " more faults", "", "Fix these first."));
    }
    throw new JobRejected(sorted);
  }

  /** A key that is not in the file takes the place of the table it is missing from. */
  private int placeOf(String key) {
    String path = key;
    while (!path.isEmpty()) {
      Integer place = places.get(path);
      if (place != null) {
        return place;
      }
      int cut = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
      int file = path.lastIndexOf(": ");
      path = cut > file ? path.substring(0, cut) : file > 0 ? path.substring(0, file) : "";
    }
    return -1;
  }
}
