package dev.towerscribe.job;

import dev.towerscribe.quantity.LengthUnit;
import java.util.Optional;

/**
 * The unit that plain figures of a file, or of a table in it, are lengths in.
 *
 * @param key key path of the word that says so
 * @param unit the unit, or empty while it is not certain: its word is at fault, or nearly every
 *     length speaks against it
 */
record SaidUnit(String key, Optional<LengthUnit> unit) {}
