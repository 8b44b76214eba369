package dev.towerscribe.store;

import dev.towerscribe.quantity.Version;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A list such as {@code pack.list}: which files of a directory one command made, so that its next
 * run there replaces those and no others. Its lines are those of sha256sum, which checks a copied
 * pack.
 *
 * @param packMark the pack's code
 * @param names its files, without this list and the report
 */
record PackList(String packMark, SortedSet<String> names) {
  private static final Pattern HEAD =
      Pattern.compile("# Towerscribe \\S+, pack mark ([0-9A-Z]{6})");
  private static final Pattern LINE = Pattern.compile("[0-9a-f]{64} {2}(\\S+)");

  /**
   * Writes a list.
   *
   * @param packMark the pack's code
   * @param files its files
   * @return the list's bytes
   */
  static byte[] text(String packMark, SortedMap<String, byte[]> files) {
    StringBuilder text = new StringBuilder();
    text.append("# Towerscribe %s, pack mark %s\n".formatted(Version.TEXT, packMark));
    files.forEach(
        (name, bytes) -> {
          String hash = HexFormat.of().formatHex(PackMark.sha256().digest(bytes));
          text.append("%s  %s\n".formatted(hash, name));
        });
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Reads a list.
   *
   * @param bytes a file of a list's name
   * @return the list, or empty if this program did not write it
   */
  static Optional<PackList> read(byte[] bytes) {
    String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n");
    Matcher head = HEAD.matcher(lines[0]);
    if (!head.matches()) {
      return Optional.empty();
    }
    SortedSet<String> names = new TreeSet<>();
    for (int i = 1; i < lines.length; i++) {
      Matcher line = LINE.matcher(lines[i]);
      // A name with a separator in it could reach outside the directory.
      if (!line.matches() || !DirectoryUpdate.PLAIN_NAME.matcher(line.group(1)).matches()) {
        return Optional.empty();
      }
      names.add(line.group(1));
    }
    return Optional.of(new PackList(head.group(1), names));
  }
}
