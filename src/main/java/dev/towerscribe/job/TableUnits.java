package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.quantity.LengthUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * {@code unit} in a table of a file of readings: what its plain lengths are in, and those of tables
 * and lists within it, uncertainties among them. Inch calipers and a millimetre tape so meet in one
 * file.
 *
 * @param faults told of words that are no unit
 */
record TableUnits(Faults faults) {
  static final String KEY = "unit";

  /**
   * A file's top table, every place in the unit that its innermost table says.
   *
   * @param top the top table; {@code unit} is no key of its own, as {@code units} says it there
   * @return the table without the keys that were used up
   */
  TomlNode.Table applied(TomlNode.Table top) {
    Map<String, TomlNode> entries = new LinkedHashMap<>();
    top.entries().forEach((key, node) -> entries.put(key, in(node, top.origin().said())));
    return new TomlNode.Table(top.origin(), entries);
  }

  private TomlNode in(TomlNode node, SaidUnit said) {
    SourcePosition at = node.origin().in(said);
    if (node instanceof TomlNode.Table table) {
      return table(table, said);
    }
    if (node instanceof TomlNode.Items list) {
      return new TomlNode.Items(at, list.items().stream().map(item -> in(item, said)).toList());
    }
    return node instanceof TomlNode.Number number
        ? new TomlNode.Number(at, number.value(), number.whole())
        : node instanceof TomlNode.Text text ? new TomlNode.Text(at, text.value()) : node;
  }

  private TomlNode.Table table(TomlNode.Table table, SaidUnit outer) {
    TomlNode word = table.entries().get(KEY);
    SaidUnit said = word == null ? outer : said(word);
    Map<String, TomlNode> entries = new LinkedHashMap<>();
    table
        .entries()
        .forEach(
            (key, node) -> {
              if (!key.equals(KEY)) {
                entries.put(key, in(node, said));
              }
            });
    return new TomlNode.Table(table.origin().in(said), entries);
  }

  private SaidUnit said(TomlNode word) {
    String key = word.origin().path();
    Optional<LengthUnit> unit =
        word instanceof TomlNode.Text text ? UnitWord.of(text.value()) : Optional.empty();
    if (unit.isEmpty()) {
      String todo =
          word instanceof TomlNode.Text text
              ? UnitWord.advice(text.value())
              : "Write it in quotes.";
      faults.add(new Fault(key, word.given(), UnitWord.ALLOWED, todo));
    }
    return faults.trusted(key, unit);
  }
}
