package dev.towerscribe.job;

import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.survey.SurveyPoint;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whom a name of a survey means: a station, a point of the side it stands under, or one of the
 * other side by that side's name, a point and its own.
 *
 * @param stations names of the stations
 * @param sides the sides that are surveyed
 */
record SurveyNames(Set<String> stations, List<Side> sides) {
  private static final List<String> STANDARD =
      Stream.of(StrutPoint.values()).map(StrutPoint::word).toList();

  /** A slip is one letter in a short word and at most two in a long one. */
  private static final int LONG_WORD = 6;

  /** Whether a name may be a station's. */
  static boolean maySay(TableReader t, String name) {
    if (STANDARD.contains(name)) {
      t.fault("name", "no strut point's name", "A station is a mark of your own: rename it.");
      return false;
    }
    return plain(t, "name", name);
  }

  private static boolean plain(TableReader t, String key, String name) {
    if (name.indexOf('.') >= 0) {
      t.fault(
          key, "a name without a point", "A point only follows left or right: right.ball_joint.");
      return false;
    }
    return true;
  }

  Optional<SurveyPoint> point(TableReader t, String key, Side own) {
    Optional<String> label = t.label(key, Limits.NAME);
    if (label.isEmpty()) {
      return Optional.empty();
    }
    Optional<Side> named =
        Stream.of(Side.values()).filter(s -> label.get().startsWith(s.word() + ".")).findFirst();
    String name = named.map(s -> label.get().substring(s.word().length() + 1)).orElse(label.get());
    Side side = named.orElse(own);
    if (!plain(t, key, name)) {
      return Optional.empty();
    }
    if (name.isBlank()) {
      return t.fault(key, "a point's name after the side", "Name the point: right.ball_joint.");
    }
    if (!sides.contains(side)) {
      return t.fault(
          key, "a point of a side in sides", "Add the side to sides, or drop this reading.");
    }
    if (named.isEmpty() && stations.contains(name)) {
      return Optional.of(SurveyPoint.station(name));
    }
    Optional<String> meant = meant(name);
    if (meant.isPresent()) {
      return t.fault(
          key,
          "a strut point, a station or a name of your own unlike them",
          "Did you mean \"" + meant.get() + "\"?");
    }
    return Optional.of(SurveyPoint.of(side, name));
  }

  private Optional<String> meant(String name) {
    if (STANDARD.contains(name)) {
      return Optional.empty();
    }
    return Stream.concat(
            stations.stream().filter(s -> s.equalsIgnoreCase(name)),
            STANDARD.stream()
                .filter(
                    s ->
                        SpellingHint.distance(s, name.replace('-', '_').replace(' ', '_'))
                            <= (s.length() < LONG_WORD ? 1 : 2)))
        .findFirst();
  }
}
