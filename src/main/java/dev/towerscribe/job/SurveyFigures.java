package dev.towerscribe.job;

import dev.towerscribe.adjust.Repeated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Readings: one number, a list of repeated ones, or a table of them with an uncertainty of its own.
 */
final class SurveyFigures {
  private static final String READINGS = "readings";

  private SurveyFigures() {}

  /** The uncertainty of an entry that is a table, mm, or that of its kind. */
  static double sd(TableReader entry, double otherwiseMm) {
    return entry.length(Respelling.UNCERTAINTY, SurveyLimits.SD, otherwiseMm).orElse(otherwiseMm);
  }

  /**
   * Lengths that must be there, within an entry that has its own uncertainty.
   *
   * @param t the entry
   * @param key its key
   * @param range of each, mm
   * @param sd of each, mm
   */
  static Optional<Repeated> lengths(TableReader t, String key, AllowedRange range, double sd) {
    return needed(t, key, range) ? of(t, key, range, sd) : Optional.empty();
  }

  /** Lengths that may be left out. */
  static Optional<Repeated> optional(TableReader t, String key, AllowedRange range, double sd) {
    return t.has(key) ? of(t, key, range, sd) : Optional.empty();
  }

  /** Angles that may be left out; a range in degrees, an uncertainty and a result in radians. */
  static Optional<Repeated> angles(TableReader t, String key, AllowedRange range, double sd) {
    return t.has(key)
        ? of(t, key, range, Math.toDegrees(sd)).map(SurveyFigures::inRadians)
        : Optional.empty();
  }

  private static Repeated inRadians(Repeated degrees) {
    return new Repeated(
        degrees.values().stream().map(Math::toRadians).toList(), Math.toRadians(degrees.sd()));
  }

  private static boolean needed(TableReader t, String key, AllowedRange range) {
    if (!t.has(key)) {
      t.missing(key, range.words(t.unit()), "Measure it and write it down.");
      return false;
    }
    return true;
  }

  private static Optional<Repeated> of(
      TableReader t, String key, AllowedRange range, double otherwise) {
    if (!(t.node(key) instanceof TomlNode.Table)) {
      return values(t, t.node(key), range).map(v -> new Repeated(v, otherwise));
    }
    return t.optionalTable(key)
        .flatMap(
            inner -> {
              Optional<List<Double>> values =
                  needed(inner, READINGS, range)
                      ? values(inner, inner.node(READINGS), range)
                      : Optional.empty();
              boolean angle = range.kind() == AllowedRange.Kind.ANGLE;
              double sd =
                  angle
                      ? inner
                          .optionalAngle(Respelling.UNCERTAINTY, SurveyLimits.ANGLE_SD)
                          .map(a -> a.degrees())
                          .orElse(otherwise)
                      : sd(inner, otherwise);
              inner.close();
              return inner.sound()
                  ? values.map(v -> new Repeated(v, sd))
                  : Optional.<Repeated>empty();
            });
  }

  private static Optional<List<Double>> values(TableReader t, TomlNode node, AllowedRange range) {
    if (!(node instanceof TomlNode.Items list)) {
      return t.figure(node, range).map(List::of);
    }
    if (!counted(t, list, range)) {
      return Optional.empty();
    }
    List<Double> values = new ArrayList<>();
    for (TomlNode item : list.items()) {
      t.figure(item, range).ifPresent(values::add);
    }
    return values.size() == list.items().size() ? Optional.of(values) : Optional.empty();
  }

  private static boolean counted(TableReader t, TomlNode.Items list, AllowedRange range) {
    int count = list.items().size();
    if (count >= 1 && count <= SurveyLimits.MOST_READINGS) {
      return true;
    }
    t.fault(
        list,
        "1 to " + SurveyLimits.MOST_READINGS + " readings, each " + range.words(t.unit()),
        count == 0 ? "Measure it, or take the whole entry out." : "Take some out.");
    return false;
  }

  /**
   * A pair of figures that must be there: [a, b], or a list of such pairs.
   *
   * @param t the entry
   * @param key its key
   * @param first range of the first of each pair, mm
   * @param second range of the second, mm
   * @param sd of each figure, mm
   * @return both, or nothing after a fault
   */
  static Optional<List<Repeated>> pairs(
      TableReader t, String key, AllowedRange first, AllowedRange second, double sd) {
    String limit =
        "two numbers, %s and %s, or a list of such pairs"
            .formatted(first.words(t.unit()), second.words(t.unit()));
    if (!t.has(key)) {
      t.missing(key, limit, "Measure it and write it down.");
      return Optional.empty();
    }
    TomlNode node = t.node(key);
    if (!(node instanceof TomlNode.Items list) || list.items().isEmpty()) {
      t.fault(node, limit, "Write two numbers in square brackets.");
      return Optional.empty();
    }
    boolean repeated = list.items().stream().allMatch(TomlNode.Items.class::isInstance);
    List<TomlNode> pairs = repeated ? list.items() : List.of(list);
    if (repeated && !counted(t, list, first)) {
      return Optional.empty();
    }
    List<Double> firsts = new ArrayList<>();
    List<Double> seconds = new ArrayList<>();
    for (TomlNode pair : pairs) {
      if (pair instanceof TomlNode.Items two && two.items().size() == 2) {
        t.figure(two.items().get(0), first).ifPresent(firsts::add);
        t.figure(two.items().get(1), second).ifPresent(seconds::add);
      } else {
        t.fault(pair, limit, "Write two numbers in square brackets.");
      }
    }
    return firsts.size() == pairs.size() && seconds.size() == pairs.size()
        ? Optional.of(List.of(new Repeated(firsts, sd), new Repeated(seconds, sd)))
        : Optional.empty();
  }
}
