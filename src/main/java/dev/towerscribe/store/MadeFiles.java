package dev.towerscribe.store;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Files for one directory, made in memory; they take their place there as one, or none does. */
public final class MadeFiles {
  private final SortedMap<String, MadeFile> files = new TreeMap<>();

  /**
   * Adds a file.
   *
   * @param name without any folder
   * @param file its content
   * @return this
   * @throws IllegalStateException if there is one of that name
   */
  public MadeFiles put(String name, MadeFile file) {
    if (files.putIfAbsent(name, file) != null) {
      throw new IllegalStateException("two files called " + name);
    }
    return this;
  }

  /**
   * Their names.
   *
   * @return sorted
   */
  public SortedSet<String> names() {
    return new TreeSet<>(files.keySet());
  }

  /**
   * Their contents, to be written.
   *
   * @return bytes by name
   * @throws Refused if one does not show what it was made from; says each thing that is wrong
   */
  SortedMap<String, byte[]> proved() throws Refused {
    List<String> mismatches = new ArrayList<>();
    SortedMap<String, byte[]> proved = new TreeMap<>();
    files.forEach(
        (name, file) -> {
          file.mismatches().forEach(m -> mismatches.add(name + ": " + m));
          proved.put(name, file.bytes());
        });
    MadeFile.refuse(mismatches);
    return proved;
  }
}
