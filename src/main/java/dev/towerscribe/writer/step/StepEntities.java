package dev.towerscribe.writer.step;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/** The numbered entities of a data section as they are written, in the order they were added. */
final class StepEntities {
  private static final int LAST_ASCII = 0x7E;
  private static final int LAST_OF_PLANE_0 = 0xFFFF;

  private final List<String> texts = new ArrayList<>();
  private final Map<String, String> shared = new HashMap<>();

  /** Adds an entity and returns the reference to it, "#7". */
  String add(String text) {
    texts.add(text);
    return "#" + texts.size();
  }

  /** Adds an entity without a name. */
  String add(String keyword, String... parameters) {
    return add(keyword + "(''," + String.join(",", parameters) + ")");
  }

  /** The reference to an entity of this text, which is added the first time only. */
  private String once(String text) {
    return shared.computeIfAbsent(text, this::add);
  }

  String point(Vec3 p) {
    return once("CARTESIAN_POINT(''," + triple(p) + ")");
  }

  String direction(Vec3 unit) {
    return once("DIRECTION(''," + triple(unit) + ")");
  }

  /** A right-handed frame: its origin, its z axis, its x axis. */
  String placement(Vec3 origin, Vec3 axis, Vec3 reference) {
    return add("AXIS2_PLACEMENT_3D", point(origin), direction(axis), direction(reference));
  }

  private static String triple(Vec3 v) {
    return "(" + real(v.x()) + "," + real(v.y()) + "," + real(v.z()) + ")";
  }

  static String list(List<String> items) {
    return "(" + String.join(",", items) + ")";
  }

  static String real(double value) {
    return Numbers.exact(value);
  }

  static String logical(boolean value) {
    return value ? ".T." : ".F.";
  }

  /**
   * A string: apostrophes and backslashes doubled, what is not printable ASCII in hexadecimal of
   * two or four bytes between control directives.
   */
  static String string(String text) {
    StringBuilder out = new StringBuilder("'");
    String open = "";
    for (int character : text.codePoints().toArray()) {
      String directive =
          character <= LAST_ASCII ? "" : character <= LAST_OF_PLANE_0 ? "\\X2\\" : "\\X4\\";
      if (!directive.equals(open)) {
        out.append(open.isEmpty() ? "" : "\\X0\\").append(directive);
        open = directive;
      }
      if (directive.isEmpty()) {
        char plain = (char) character;
        out.append(plain);
        if (plain == '\'' || plain == '\\') {
          out.append(plain);
        }
      } else {
        int width = directive.equals("\\X2\\") ? 4 : 8;
        out.append(HexFormat.of().withUpperCase().toHexDigits(character, width));
      }
    }
    return out.append(open.isEmpty() ? "" : "\\X0\\").append('\'').toString();
  }

  /** The lines of the data section. */
  String lines() {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < texts.size(); i++) {
      out.append('#').append(i + 1).append('=').append(texts.get(i)).append(";\n");
    }
    return out.toString();
  }
}
