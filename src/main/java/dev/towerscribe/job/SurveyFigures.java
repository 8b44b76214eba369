package dev.towerscribe.job;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Readings: one number, a list of repeated ones, or a table of them with an uncertainty of its own.
 */
final class SurveyFigures {
  private static final String READINGS = "readings";

  private SurveyFigures() {}

  /** The uncertainty of an entry that is a table, mm, or that of its kind. */
  static double sd(TableReader entry, double otherwiseMm) {
    return entry.length(Respelling.UNCERTAINTY, Limits.SURVEY_SD, otherwiseMm).orElse(otherwiseMm);
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
    return t.has(key) ? of(t, key, range, sd) : unmeasured(t, key, range.words(t.unit()));
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

  private static <T> Optional<T> unmeasured(TableReader t, String key, String limit) {
    return t.missing(key, limit, "Measure it and write it down.");
  }

  private static Optional<Repeated> of(
      TableReader t, String key, AllowedRange range, double otherwise) {
    return t.node(key) instanceof TomlNode.Table
        ? t.optionalTable(key).flatMap(inner -> table(inner, range, otherwise))
        : values(t, t.node(key), range).map(v -> new Repeated(v, otherwise));
  }

  private static Optional<Repeated> table(TableReader t, AllowedRange range, double otherwise) {
    Optional<List<Double>> values =
        t.has(READINGS)
            ? values(t, t.node(READINGS), range)
            : unmeasured(t, READINGS, range.words(t.unit()));
    double sd =
        range.kind() == AllowedRange.Kind.ANGLE
            ? t.optionalAngle(Respelling.UNCERTAINTY, Limits.SURVEY_ANGLE_SD)
                .map(Angle::degrees)
                .orElse(otherwise)
            : sd(t, otherwise);
    return t.closed(() -> new Repeated(values.get(), sd));
  }

  private static Optional<List<Double>> values(TableReader t, TomlNode node, AllowedRange range) {
    if (!(node instanceof TomlNode.Items list)) {
      return t.figure(node, range).map(List::of);
    }
    return counted(t, list, range) ? t.figures(list, range) : Optional.empty();
  }

  private static boolean counted(TableReader t, TomlNode.Items list, AllowedRange range) {
    int count = list.items().size();
    if (count >= 1 && count <= Limits.MOST_READINGS) {
      return true;
    }
    t.fault(
        list,
        "1 to " + Limits.MOST_READINGS + " readings, each " + range.words(t.unit()),
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
      return unmeasured(t, key, limit);
    }
    TomlNode node = t.node(key);
    if (!(node instanceof TomlNode.Items list) || list.items().isEmpty()) {
      return t.fault(node, limit, "Write two numbers in square brackets.");
    }
    boolean lists = list.items().stream().anyMatch(TomlNode.Items.class::isInstance);
    boolean repeated =
        lists && list.items().stream().allMatch(i -> i instanceof TomlNode.Items || Blanks.is(i));
    if (lists && !repeated) {
      return t.fault(node, limit, "Write two numbers, or pairs only.");
    }
    List<TomlNode> pairs = repeated ? list.items() : List.of(list);
    if (repeated && !counted(t, list, first)) {
      return Optional.empty();
    }
    Function<TomlNode, Optional<List<Double>>> read =
        pair ->
            pair instanceof TomlNode.Items two && two.items().size() == 2
                ? both(t.figure(two.items().get(0), first), t.figure(two.items().get(1), second))
                : t.fault(
                    pair,
                    limit,
                    TableReader.commas(pair, 2).orElse("Write two numbers in square brackets."));
    return TableReader.all(pairs, read).map(all -> List.of(column(all, 0, sd), column(all, 1, sd)));
  }

  private static Optional<List<Double>> both(Optional<Double> one, Optional<Double> other) {
    return one.flatMap(a -> other.map(b -> List.of(a, b)));
  }

  private static Repeated column(List<List<Double>> pairs, int place, double sd) {
    return new Repeated(pairs.stream().map(pair -> pair.get(place)).toList(), sd);
  }
}
