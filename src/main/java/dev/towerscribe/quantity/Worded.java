package dev.towerscribe.quantity;

import java.util.Locale;

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
}
