package dev.towerscribe.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * A side's overrides over what both sides share. Tables merge key by key, lists and plain values
 * replace, and a shape replaces a shape: a traced mark given for one side takes the place of the
 * circle both sides had, not a place beside it.
 */
final class Merge {
  private static final Set<String> SHAPES =
      Set.of(
          "tower.opening",
          "tower.mark",
          "tower." + Respelling.BOLTING_FACE,
          "tower.wall",
          "plate.outline");

  private Merge() {}

  static Node.Table over(Node.Table base, Node.Table own) {
    return merge(base, own, "");
  }

  /** A plate's own keys over those of its file. */
  static Node.Table plateOver(Node.Table file, Node.Table own) {
    return merge(file, own, "plate");
  }

  private static Node.Table merge(Node.Table base, Node.Table own, String where) {
    if (SHAPES.contains(where)
        && ShapeReader.KINDS.stream().anyMatch(kind -> own.entries().containsKey(kind))) {
      return own;
    }
    Map<String, Node> merged = new LinkedHashMap<>(base.entries());
    own.entries()
        .forEach(
            (key, node) -> {
              String path = where.isEmpty() ? key : where + "." + key;
              Node before = merged.get(key);
              merged.put(
                  key,
                  before instanceof Node.Table b && node instanceof Node.Table n
                      ? merge(b, n, path)
                      : node);
            });
    return new Node.Table(base.origin(), merged);
  }
}
