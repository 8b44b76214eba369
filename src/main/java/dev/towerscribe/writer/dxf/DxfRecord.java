package dev.towerscribe.writer.dxf;

import static dev.towerscribe.drawing.Unreadable.must;

import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One thing as read: what stands between one group 0 and the next.
 *
 * @param type value of its group 0
 * @param groups the groups after that
 */
record DxfRecord(String type, List<Group> groups) {
  private static final Pattern REAL = Pattern.compile("[+-]?[0-9]+(\\.[0-9]*)?([eE][+-]?[0-9]+)?");
  private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,9}");

  /** No length of a drawing in mm is larger. */
  private static final double MOST = 1e9;

  /**
   * A code and its value.
   *
   * @param code group code
   * @param value the line after it
   */
  record Group(int code, String value) {}

  DxfRecord {
    groups = List.copyOf(groups);
  }

  /** Whether it has a group. */
  boolean has(int code) {
    return groups.stream().anyMatch(g -> g.code == code);
  }

  /** Values of all groups of a code, in order. */
  List<String> all(int code) {
    return groups.stream().filter(g -> g.code == code).map(Group::value).toList();
  }

  /** Value of the only group of a code. */
  String text(int code) throws Unreadable {
    List<String> values = all(code);
    if (values.size() != 1) {
      throw new Unreadable(
          "a " + type + " with " + values.size() + " groups of code " + code + " instead of one");
    }
    return values.get(0);
  }

  double real(int code) throws Unreadable {
    String value = text(code).strip();
    if (REAL.matcher(value).matches()) {
      double number = Double.parseDouble(value);
      if (Math.abs(number) <= MOST) {
        return number;
      }
    }
    throw new Unreadable("a " + type + " whose group " + code + " is \"" + value + "\"");
  }

  int whole(int code) throws Unreadable {
    String value = text(code).strip();
    if (!WHOLE.matcher(value).matches()) {
      throw new Unreadable("a " + type + " whose group " + code + " is \"" + value + "\"");
    }
    return Integer.parseInt(value);
  }

  /** A point; where it has a height, that must be zero. */
  Vec2 point(int code) throws Unreadable {
    must(
        !has(code + 20) || real(code + 20) == 0,
        "a " + type + " that lies off the plane of the drawing");
    return new Vec2(real(code), real(code + 10));
  }
}
