package dev.towerscribe.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A key that was called otherwise before. Its old spelling still works, with a note; a table that
 * gives both is at fault.
 *
 * @param table the key of the tables that it stands in; empty for any table of the file
 * @param old its old spelling
 * @param now its spelling
 */
record Respelling(String table, String old, String now) {
  /** How far a figure may be off, in survey, readings and visit files. */
  static final String UNCERTAINTY = "uncertainty";

  /** Where a tower's metal is flat and sound. */
  static final String BOLTING_FACE = "bolting_face";

  static final Respelling OF_JOBS = new Respelling("tower", "land", BOLTING_FACE);
  static final Respelling OF_READINGS = new Respelling("", "doubt", UNCERTAINTY);

  /**
   * A file's top table with every old spelling put right. Values keep the path they were written
   * under, so that faults name what the file says.
   *
   * @param top the top table
   * @param faults told of tables that give both
   * @param notes told once if the file uses the old spelling
   * @return the table, the same keys in the same order
   */
  TomlNode.Table renewed(TomlNode.Table top, Faults faults, Consumer<String> notes) {
    List<SourcePosition> olds = new ArrayList<>();
    TomlNode.Table renewed = renewed(top, table.isEmpty(), faults, olds);
    if (!olds.isEmpty()) {
      notes.accept(
          "%s: the key %s is called %s now; the old spelling works in this release only"
              .formatted(olds.get(0).path(), old, now));
    }
    return renewed;
  }

  private TomlNode.Table renewed(
      TomlNode.Table in, boolean here, Faults faults, List<SourcePosition> olds) {
    Map<String, TomlNode> entries = new LinkedHashMap<>();
    in.entries()
        .forEach(
            (key, node) -> {
              TomlNode inner = renewed(node, table.isEmpty() || key.equals(table), faults, olds);
              if (!here || !key.equals(old)) {
                entries.put(key, inner);
              } else if (in.entries().containsKey(now)) {
                String limit = "either %s or %s".formatted(now, old);
                String todo = "Drop this one: %s is the same key.".formatted(now);
                faults.add(node, limit, todo);
              } else {
                olds.add(node.origin());
                entries.put(now, inner);
              }
            });
    return new TomlNode.Table(in.origin(), entries);
  }

  private TomlNode renewed(TomlNode node, boolean here, Faults faults, List<SourcePosition> olds) {
    if (node instanceof TomlNode.Table inner) {
      return renewed(inner, here, faults, olds);
    }
    return node instanceof TomlNode.Items list
        ? new TomlNode.Items(
            list.origin(),
            list.items().stream().map(item -> renewed(item, here, faults, olds)).toList())
        : node;
  }
}
