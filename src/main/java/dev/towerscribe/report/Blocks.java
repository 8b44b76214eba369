package dev.towerscribe.report;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers the parts of a report in reading order. */
final class Blocks {
  private final List<Block> list = new ArrayList<>();

  Blocks add(Block block) {
    list.add(block);
    return this;
  }

  Blocks add(Optional<? extends Block> block) {
    block.ifPresent(list::add);
    return this;
  }

  Blocks addAll(List<? extends Block> blocks) {
    list.addAll(blocks);
    return this;
  }

  Blocks say(String words, Object... values) {
    return add(Phrases.say(words, values));
  }

  Blocks section(String title) {
    return add(new Block.Section(title));
  }

  Blocks section(Side side, String thing) {
    return section(Phrases.capital(side.word()) + " " + thing);
  }

  Report report(String title, Lengths lengths) {
    return new Report(title, lengths, list);
  }
}
