package dev.towerscribe.job;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Gathers what a parser tells into one tree. The library's own mapper would do the same, but it
 * brings along the hundreds of classes that map objects, which take longer to load than a job takes
 * to read.
 */
final class TomlTree {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private TomlTree() {}

  /**
   * The whole of a text.
   *
   * @param parser at its start
   * @return the top table; finite floats are decimals without trailing zeros
   * @throws IOException if the text is broken
   */
  static JsonNode of(JsonParser parser) throws IOException {
    JsonNode root = NODES.missingNode();
    // Not kept on the call stack: dotted keys may nest as deep as a text is long.
    Deque<JsonNode> open = new ArrayDeque<>();
    String name = "";
    for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
      if (token == JsonToken.FIELD_NAME) {
        name = parser.currentName();
      } else if (token.isStructEnd()) {
        open.pop();
      } else {
        JsonNode node = node(parser, token);
        if (open.isEmpty()) {
          root = node;
        } else if (open.peek() instanceof ObjectNode table) {
          table.set(name, node);
        } else if (open.peek() instanceof ArrayNode list) {
          list.add(node);
        }
        if (token.isStructStart()) {
          open.push(node);
        }
      }
    }
    return root;
  }

  private static JsonNode node(JsonParser parser, JsonToken token) throws IOException {
    return switch (token) {
      case START_OBJECT -> NODES.objectNode();
      case START_ARRAY -> NODES.arrayNode();
      case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(token == JsonToken.VALUE_TRUE);
      case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
      case VALUE_NUMBER_FLOAT ->
          parser.isNaN()
              ? NODES.numberNode(parser.getDoubleValue())
              : NODES.numberNode(shortened(parser.getDecimalValue()));
      default -> NODES.textNode(parser.getText());
    };
  }

  /** Without trailing zeros, save where the exponent would run out of its range. */
  private static BigDecimal shortened(BigDecimal value) {
    try {
      return value.stripTrailingZeros();
    } catch (ArithmeticException e) {
      return value;
    }
  }
}
