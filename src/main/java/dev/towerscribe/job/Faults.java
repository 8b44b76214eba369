package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
  private final UnitTally lengths = new UnitTally();
  private final Blanks blanks = new Blanks();
  private final Set<String> doubtedUnits = new HashSet<>();

  /** Notes that a key path stands next in the file. */
  void place(String path) {
    places.putIfAbsent(path, places.size());
  }

  /** Files a fault, and gives nothing, for a question to answer with. */
  <T> Optional<T> add(Fault fault) {
    found.add(fault);
    return Optional.empty();
  }

  /** The same of what stands at a node; a blank has been noted already. */
  <T> Optional<T> add(TomlNode node, String limit, String todo) {
    if (Blanks.is(node)) {
      return Optional.empty();
    }
    return add(new Fault(node.origin().path(), node.given(), limit, todo));
  }

  /** Reads a file that may have faults. */
  interface Reading<T, E extends Exception> {
    T read(Faults faults) throws E, JobRejected;
  }

  /**
   * Reads a file, and once more if nearly every length speaks against the unit that they are in.
   * That unit then counts as uncertain, as one whose word is at fault does: no length is judged by
   * it, and one fault of the unit stands for all of theirs.
   */
  static <T, E extends Exception> T of(Reading<T, E> reading) throws E, JobRejected {
    Faults first = new Faults();
    try {
      return reading.read(first);
    } catch (JobRejected e) {
      List<Fault> units = first.lengths.doubtful();
      if (units.isEmpty()) {
        throw e;
      }
      Faults second = new Faults();
      units.forEach(second::add);
      units.forEach(unit -> second.doubtedUnits.add(unit.key()));
      return reading.read(second);
    }
  }

  /** Counts a plain length for or against the unit that it is in. */
  void count(SourcePosition at, AllowedRange range, double written) {
    lengths.count(at, range, written);
  }

  /** Notes what a table that counts leaves blank. */
  void noteBlanks(TomlNode.Table table) {
    blanks.note(table);
  }

  /** Whether this is the second look at a file. */
  boolean isSecondLook() {
    return !doubtedUnits.isEmpty();
  }

  /** A unit as a key says it, unless nearly every length spoke against it. */
  SaidUnit trusted(String key, Optional<LengthUnit> unit) {
    return new SaidUnit(key, unit.filter(u -> !doubtedUnits.contains(key)));
  }

  boolean isEmpty() {
    return found.isEmpty() && blanks.faults().isEmpty();
  }

  void throwIfAny() throws JobRejected {
    List<Fault> unfilled = blanks.faults();
    if (found.isEmpty() && unfilled.isEmpty()) {
      return;
    }
    Comparator<Fault> order = Comparator.comparingInt(fault -> placeOf(fault.key()));
    List<Fault> first = new ArrayList<>(found.stream().sorted(order).limit(MOST).toList());
    if (found.size() > MOST) {
      String more = (found.size() - MOST) + " more faults";
      first.add(new Fault("", more, "", "Fix these first."));
    }
    first.addAll(unfilled);
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
