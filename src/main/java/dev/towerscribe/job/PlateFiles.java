package dev.towerscribe.job;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the content of a plate's own file in the place of its {@code file} key. */
final class PlateFiles {
  /** Where plate files come from. */
  interface Source {
    /**
     * A file's bytes.
     *
     * @param name path relative to the job file
     * @return the bytes, at most one more than a file may have, or empty if there is no such file
     * @throws IOException if it cannot be read
     */
    Optional<byte[]> bytes(String name) throws IOException;
  }

  private static final String KEY = "file";
  private static final int LONGEST_NAME = 200;

  private final Source source;
  private final SaidUnit jobUnit;
  private final Faults faults;
  private final Map<String, Optional<TomlNode.Table>> read = new HashMap<>();

  PlateFiles(Source source, SaidUnit jobUnit, Faults faults) {
    this.source = source;
    this.jobUnit = jobUnit;
    this.faults = faults;
  }

  static boolean namesFile(TomlNode plate) {
    return plate instanceof TomlNode.Table table && table.entries().containsKey(KEY);
  }

  /**
   * A plate with its file's keys under its own.
   *
   * @param plate the plate as the job gives it
   * @return the whole plate, or empty after a fault of the file
   */
  Optional<TomlNode> expanded(TomlNode plate) throws IOException {
    if (!namesFile(plate)) {
      return Optional.of(plate);
    }
    TomlNode.Table own = (TomlNode.Table) plate;
    TomlNode named = own.entries().get(KEY);
    Optional<String> name = name(named);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (!read.containsKey(name.get())) {
      read.put(name.get(), read(name.get(), named));
    }
    return read.get(name.get())
        .map(file -> SideOverrides.plateOver(file, own.without(List.of(KEY))));
  }

  private Optional<String> name(TomlNode node) {
    String limit = "a path beside the job file, such as \"plates/three-bolt.toml\"";
    if (!(node instanceof TomlNode.Text text) || Blanks.is(node)) {
      return faults.add(node, limit, "Write it in quotes.");
    }
    String name = text.value();
    boolean odd =
        name.codePoints().anyMatch(c -> MessageText.isShapeless(c) || c == '\\' || c == ':');
    boolean outside = name.startsWith("/") || List.of(name.split("/", -1)).contains("..");
    if (name.isBlank() || name.length() > LONGEST_NAME || odd || outside) {
      return faults.add(
          node,
          limit,
          "Keep plate files beside or below the job file, and separate folders with /.");
    }
    return Optional.of(name);
  }

  private Optional<TomlNode.Table> read(String name, TomlNode named) throws IOException {
    Optional<byte[]> bytes = source.bytes(name);
    if (bytes.isEmpty()) {
      return faults.add(named, "a file that exists", "Check its name.");
    }
    Optional<TomlText> text =
        TomlText.decode(bytes.get(), name, faults).flatMap(t -> TomlText.parse(t, name, faults));
    if (text.isEmpty()) {
      return Optional.empty();
    }
    boolean ownUnit = text.get().has(FileHead.UNITS);
    SaidUnit unit =
        ownUnit ? faults.trusted(name + ": " + FileHead.UNITS, FileHead.unit(text.get())) : jobUnit;
    TomlNode.Table table = text.get().table(name + ": ", unit, faults);
    faults.noteBlanks(table.only(FileHead.KEYS_OF_ANY_FILE));
    TableReader head = new TableReader(table, faults, c -> true);
    boolean readable = FileHead.readFormat(head);
    if (ownUnit) {
      FileHead.readUnits(head);
    }
    head.reportMissing();
    return readable ? Optional.of(table.without(FileHead.KEYS_OF_ANY_FILE)) : Optional.empty();
  }
}
