package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  /** Files a fault, and gives nothing, for a question to answer with. */
  <T> Optional<T> add(Fault fault) {
    found.add(fault);
    return Optional.empty();
  }

  /** The same of what stands at a node. */
  <T> Optional<T> add(TomlNode node, String limit, String todo) {
    return add(new Fault(node.origin().path(), node.given(), limit, todo));
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  void throwIfAny() throws JobRejected {
    if (found.isEmpty()) {
      return;
    }
    Comparator<Fault> order = Comparator.comparingInt(fault -> placeOf(fault.key()));
    List<Fault> first = new ArrayList<>(found.stream().sorted(order).limit(MOST).toList());
    if (found.size() > MOST) {
      String more = (found.size() - MOST) + " more faults";
      first.add(new Fault("", more, "", "Fix these first."));
    }
    throw new JobRejected(first);
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
