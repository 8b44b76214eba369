package dev.towerscribe.survey;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Gathers the findings of a survey, and has the words for its figures. */
final class Found {
  /** The mark on a limit that rests on no published source. */
  static final String PRACTICE = "common practice, no source";

  static final String STATED = "doubts as stated";

  private final LengthUnit unit;
  private final Ids ids = new Ids();
  private final List<Finding> list = new ArrayList<>();

  Found(LengthUnit unit) {
    this.unit = unit;
  }

  /** Figure and limit of a finding, in the unit that findings use. */
  record Size(double figure, double limit, String unit, String source) {
    static Size mm(double figure, double limit, String source) {
      return new Size(figure, limit, "mm", source);
    }

    static Size degrees(double figure, double limit, String source) {
      return new Size(Math.toDegrees(figure), Math.toDegrees(limit), "deg", source);
    }

    static Size none() {
      return new Size(0, 0, "", "");
    }
  }

  /**
   * Adds a finding.
   *
   * @param severity how grave
   * @param where what it is about, in words
   * @param size its figure
   * @param say a plain sentence, with what to do
   * @param side "left", "right" or "both"
   * @param thing the rest of its id
   */
  void add(Severity severity, String where, Size size, String say, String side, String... thing) {
    String check = thing[0];
    String[] rest = Arrays.copyOfRange(thing, 1, thing.length);
    String id = rest.length == 0 ? ids.next(side, check) : ids.next(side + "." + check, rest);
    list.add(
        new Finding(
            id, severity, where, size.figure(), size.limit(), size.unit(), size.source(), say));
  }

  /** A length in the survey's unit: "6.0 mm". */
  String length(double mm) {
    return Numbers.fixed(unit.fromMm(mm), unit == LengthUnit.MM ? 1 : 2) + " " + unit.symbol();
  }

  /** A fine length in the survey's unit: "0.12 mm". */
  String fine(double mm) {
    return Numbers.fixed(unit.fromMm(mm), unit == LengthUnit.MM ? 2 : 3) + " " + unit.symbol();
  }

  /** An angle: "0.40 deg". */
  static String angle(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), 2) + " deg";
  }

  /** "a, b and c". */
  static String and(List<String> names) {
    return joined(names, " and ");
  }

  static String joined(List<String> names, String last) {
    int n = names.size();
    return n < 2
        ? String.join("", names)
        : String.join(", ", names.subList(0, n - 1)) + last + names.get(n - 1);
  }

  List<Finding> gravestFirst() {
    List<Finding> sorted = new ArrayList<>(list);
    sorted.sort(Comparator.comparing(Finding::severity));
    return sorted;
  }
}
