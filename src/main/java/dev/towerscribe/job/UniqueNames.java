package dev.towerscribe.job;

import java.util.Optional;
import java.util.Set;

/** UniqueNames that tell things of one kind apart. */
final class UniqueNames {
  private UniqueNames() {}

  /** A name that no other thing of its kind has. */
  static Optional<String> unique(TableReader t, Set<String> taken) {
    return unique(t, t.label("name", Limits.NAME), taken);
  }

  static Optional<String> unique(TableReader t, Optional<String> name, Set<String> taken) {
    if (name.isPresent() && !taken.add(name.get())) {
      return t.fault("name", "a name of its own", "Another has this name: change one.");
    }
    return name;
  }
}
