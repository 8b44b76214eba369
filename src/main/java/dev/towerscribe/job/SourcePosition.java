package dev.towerscribe.job;

import dev.towerscribe.quantity.LengthUnit;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where a value was written.
 *
 * @param path dotted key path; a plate file's paths begin with the file's name, a colon and a blank
 * @param said the unit of lengths there, and which key says so
 */
record SourcePosition(String path, SaidUnit said) {
  private static final Pattern BARE = Pattern.compile("[A-Za-z0-9_-]{1,40}");

  SourcePosition child(String key) {
    String step = BARE.matcher(key).matches() ? key : MessageText.quoted(key);
    return new SourcePosition(
        path.isEmpty() || path.endsWith(": ") ? path + step : path + "." + step, said);
  }

  SourcePosition item(int index) {
    return new SourcePosition(path + "[" + index + "]", said);
  }

  /** The same place with another unit. */
  SourcePosition in(SaidUnit other) {
    return new SourcePosition(path, other);
  }

  /** The unit of lengths there, or empty while it is not certain. */
  Optional<LengthUnit> unit() {
    return said.unit();
  }

  /** The unit lengths are read and limits are printed in. */
  LengthUnit unitOrMm() {
    return unit().orElse(LengthUnit.MM);
  }

  /** The path as a fault's key: a plate file as a whole goes by its name alone. */
  String key() {
    return path.endsWith(": ") ? path.substring(0, path.length() - 2) : path;
  }
}
