package dev.towerscribe.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Kinds that files, tables and file names call by a word: the constant's own name in lower case,
 * with blanks for underscores. Renaming such a constant changes what users write and read.
 */
public interface Worded {
  /**
   * The constant's name, which every enum has.
   *
   * @return for instance "BOLT_HOLE"
   */
  String name();

  /**
   * The word.
   *
   * @return for instance "bolt hole"
   */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * The word as data has it.
   *
   * @return for instance "bolt-hole"
   */
  default String hyphened() {
    return word().replace(' ', '-');
  }

  /**
   * The constant of a word.
   *
   * @param kinds all constants
   * @param word a word, perhaps of none
   * @param <E> the enum
   * @return the constant, if one has that word
   */
  static <E extends Worded> Optional<E> find(E[] kinds, String word) {
    return Stream.of(kinds).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
