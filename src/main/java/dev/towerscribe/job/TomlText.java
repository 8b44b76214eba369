package dev.towerscribe.job;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlFactory;
import dev.towerscribe.finding.Fault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One file's text: decoded, parsed, and turned into {@link TomlNode}s.
 *
 * @param root its top table as the parser has it
 */
record TomlText(JsonNode root) {
  /** A job is some kilobytes; anything past this is not a job. */
  static final int MOST_BYTES = 1 << 20;

  /** The deepest key, right.tower.bracket[0].fasteners[0].at[0], is eight steps down. */
  private static final int DEEPEST = 12;

  /**
   * Decodes a file.
   *
   * @param bytes its content
   * @param key what faults are filed under
   * @param faults where they go
   * @return the text without a byte order mark, or empty if it is too long or not UTF-8
   */
  static Optional<String> decode(byte[] bytes, String key, Faults faults) {
    if (bytes.length > MOST_BYTES) {
      String todo = "This is not a job file: name another.";
      return faults.add(new Fault(key, "more than 1 MiB", "at most 1 MiB", todo));
    }
    ByteBuffer in = ByteBuffer.wrap(bytes);
    try {
      // A new decoder reports what it cannot read, unlike the String constructor.
      String text = StandardCharsets.UTF_8.newDecoder().decode(in).toString();
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      // The decoder stops in front of the bytes it cannot read.
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      String given = "line " + line + " holds bytes that are not UTF-8 text";
      return faults.add(new Fault(key, given, "UTF-8", "Save the file again as UTF-8."));
    }
  }

  /**
   * Parses a file's text.
   *
   * @param text TOML 1.0
   * @param key what faults are filed under
   * @param faults where they go
   * @return the parsed text, or empty after a fault
   */
  static Optional<TomlText> parse(String text, String key, Faults faults) {
    try (JsonParser parser = new TomlFactory().createParser(text)) {
      return Optional.of(new TomlText(TomlTree.of(parser)));
    } catch (JsonProcessingException e) {
      SyntaxFault.of(e, text, key).forEach(faults::add);
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot be read", e);
    }
  }

  /** A string at the top of the file, before anything else is known. */
  Optional<String> topString(String key) {
    JsonNode node = root.get(key);
    return node != null && node.isTextual() ? Optional.of(node.textValue()) : Optional.empty();
  }

  /** Whether the file has that key, within tables of those names, outermost first. */
  boolean has(String... path) {
    JsonNode node = root;
    for (String key : path) {
      node = node == null ? null : node.get(key);
    }
    return node != null;
  }

  /**
   * The file as nodes.
   *
   * @param path what its key paths begin with
   * @param unit unit of its lengths
   * @param faults told the order of the keys
   * @return the top table
   */
  TomlNode.Table table(String path, SaidUnit unit, Faults faults) {
    SourcePosition origin = new SourcePosition(path, unit);
    faults.place(origin.key());
    return table(root, origin, faults, 0);
  }

  private static TomlNode.Table table(
      JsonNode json, SourcePosition origin, Faults faults, int depth) {
    Map<String, TomlNode> entries = new LinkedHashMap<>();
    json.properties()
        .forEach(
            e ->
                entries.put(
                    e.getKey(), node(e.getValue(), origin.child(e.getKey()), faults, depth + 1)));
    return new TomlNode.Table(origin, entries);
  }

  private static TomlNode node(JsonNode json, SourcePosition origin, Faults faults, int depth) {
    faults.place(origin.path());
    if (depth > DEEPEST) {
      return new TomlNode.Unusable(origin, "tables in tables in tables");
    }
    if (json.isObject()) {
      return table(json, origin, faults, depth);
    }
    if (json.isArray()) {
      List<TomlNode> items = new ArrayList<>(json.size());
      for (int i = 0; i < json.size(); i++) {
        items.add(node(json.get(i), origin.item(i), faults, depth + 1));
      }
      return new TomlNode.Items(origin, items);
    }
    if (json.isBoolean()) {
      return new TomlNode.Flag(origin, json.booleanValue());
    }
    if (json.isDouble()) {
      // Finite floats arrive as decimals, so what is left is nan and inf.
      double value = json.doubleValue();
      if (!Double.isFinite(value)) {
        String given = Double.isNaN(value) ? "nan" : value > 0 ? "inf" : "-inf";
        return new TomlNode.Unusable(origin, given);
      }
      return new TomlNode.Number(origin, BigDecimal.valueOf(value), false);
    }
    if (json.isNumber()) {
      return new TomlNode.Number(origin, json.decimalValue(), json.isIntegralNumber());
    }
    return new TomlNode.Text(origin, json.asText());
  }
}
