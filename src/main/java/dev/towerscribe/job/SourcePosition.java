package dev.towerscribe.job;

import dev.towerscribe.quantity.LengthUnit;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where a value was written.
 *
 * @param path dotted key path; a plate file's paths begin with the file's name, a colon and a blank
 * @param unit the unit of lengths there, or empty when the file's own {@code units} is at fault
 */
record SourcePosition(String path, Optional<LengthUnit> unit) {
  private static final Pattern BARE = Pattern.compile("[A-Za-z0-9_-]{1,40}");

  SourcePosition child(String key) {
    String step = BARE.matcher(key).matches() ? key : MessageText.quoted(key);
    return new SourcePosition(
        path.isEmpty() || path.endsWith(": ") ? path + step : path + "." + step, unit);
  }

  SourcePosition item(int index) {
    return new SourcePosition(path + "[" + index + "]", unit);
  }

  /** The unit lengths are read and limits are printed in. */
  LengthUnit unitOrMm() {
    return unit.orElse(LengthUnit.MM);
  }

  /** The path as a fault's key: a plate file as a whole goes by its name alone. */
  String key() {
    return path.endsWith(": ") ? path.substring(0, path.length() - 2) : path;
  }
}
