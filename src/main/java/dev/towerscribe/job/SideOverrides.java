package dev.towerscribe.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * A side's overrides over what both sides share. Tables merge key by key, lists and plain values
 * replace, and a shape replaces a shape: a traced mark given for one side takes the place of the
 * circle both sides had, not a place beside it.
 */
final class SideOverrides {
  private static final Set<String> SHAPES =
      Set.of(
          "tower.opening",
          "tower.mark",
          "tower." + Respelling.BOLTING_FACE,
          "tower.wall",
          "plate.outline");

  private SideOverrides() {}

  static TomlNode.Table over(TomlNode.Table base, TomlNode.Table own) {
    return merge(base, own, "");
  }

  /** A plate's own keys over those of its file. */
  static TomlNode.Table plateOver(TomlNode.Table file, TomlNode.Table own) {
    return merge(file, own, "plate");
  }

  private static TomlNode.Table merge(TomlNode.Table base, TomlNode.Table own, String where) {
    if (SHAPES.contains(where)
        && ShapeReader.KINDS.stream().anyMatch(kind -> own.entries().containsKey(kind))) {
      return own;
    }
    Map<String, TomlNode> merged = new LinkedHashMap<>(base.entries());
    own.entries()
        .forEach(
            (key, node) -> {
              String path = where.isEmpty() ? key : where + "." + key;
              TomlNode before = merged.get(key);
              merged.put(
                  key,
                  before instanceof TomlNode.Table b && node instanceof TomlNode.Table n
                      ? merge(b, n, path)
                      : node);
            });
    return new TomlNode.Table(base.origin(), merged);
  }
}
