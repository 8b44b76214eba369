package dev.towerscribe.survey;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Require;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Readings of a car, as they were taken. Points of either side are written as on the left: X
 * forward, out from the car's middle plane, up.
 *
 * @param title what the survey is called
 * @param date its day, if said
 * @param units the unit it was written in
 * @param stations marks that both sides share, each with a name of its own
 * @param sides at least one
 */
public record Survey(
    String title,
    Optional<LocalDate> date,
    LengthUnit units,
    List<Station> stations,
    Map<Side, SurveySide> sides) {
  /** Copies lists and maps and checks that every point that is named can be one. */
  public Survey {
    stations = List.copyOf(stations);
    sides = Collections.unmodifiableMap(new EnumMap<>(sides));
    if (sides.isEmpty()) {
      throw new IllegalArgumentException("a survey has at least one side");
    }
    List<String> names = stations.stream().map(Station::name).toList();
    for (SurveyPoint point : sides.values().stream().flatMap(s -> s.points().stream()).toList()) {
      if (!point.side().map(sides::containsKey).orElse(names.contains(point.name()))) {
        throw new IllegalArgumentException("a reading of " + point.words() + ", which is unknown");
      }
    }
  }

  /**
   * A mark on floor or body.
   *
   * @param name what a person calls it
   * @param at its place in vehicle axes, if it is known
   * @param uncertaintyMm one standard deviation of each coordinate of that place; empty where it is
   *     exact by definition
   */
  public record Station(String name, Optional<Vec3> at, Optional<Double> uncertaintyMm) {
    /** Checks the figures. */
    public Station {
      uncertaintyMm.ifPresent(d -> Require.positive("uncertainty", d));
      if (uncertaintyMm.isPresent() && at.isEmpty()) {
        throw new IllegalArgumentException("an uncertainty of a place that is not known");
      }
    }
  }
}
