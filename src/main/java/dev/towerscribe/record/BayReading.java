package dev.towerscribe.record;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One reading of one wheel on an alignment bay. Any figure may be missing.
 *
 * @param figures what was read
 * @param rideMm how far the wheel centre stood up from where the job's points were measured,
 *     relative to the body; absent if nobody measured it
 */
public record BayReading(Map<BayFigure, Angle> figures, Optional<Double> rideMm) {
  /** Nothing was read. */
  public static final BayReading NONE = new BayReading(Map.of(), Optional.empty());

  /** Copies the map in the order of {@link BayFigure} and checks the ride height. */
  public BayReading {
    figures = Collections.unmodifiableMap(new TreeMap<>(figures));
    rideMm.ifPresent(mm -> Require.finite("ride", mm));
  }

  /**
   * One figure.
   *
   * @param figure which
   * @return what was read, if it was
   */
  public Optional<Angle> of(BayFigure figure) {
    return Optional.ofNullable(figures.get(figure));
  }
}
