package dev.towerscribe.record;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Require;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * How far a bay's readings may be off: one standard deviation of each, independent of the others.
 *
 * @param figures of every figure, positive
 * @param rideMm of a ride height, measured or assumed; not negative
 */
public record BayUncertainty(Map<BayFigure, Angle> figures, double rideMm) {
  /** What stands in where the visit does not say it. Common practice, no source. */
  public static final BayUncertainty USUAL =
      new BayUncertainty(
          Map.of(
              BayFigure.CASTER, Angle.ofDegrees(0.15),
              BayFigure.CAMBER, Angle.ofDegrees(0.08),
              BayFigure.TOE, Angle.ofDegrees(0.03),
              BayFigure.INCLINATION, Angle.ofDegrees(0.2)),
          2.0);

  /** Copies the map and checks that every figure has an uncertainty. */
  public BayUncertainty {
    figures = Collections.unmodifiableMap(new TreeMap<>(figures));
    for (BayFigure figure : BayFigure.values()) {
      if (!figures.containsKey(figure)) {
        throw new IllegalArgumentException("no uncertainty of " + figure.word());
      }
      Require.positive("uncertainty of " + figure.word(), figures.get(figure).radians());
    }
    Require.notNegative("uncertainty of ride", rideMm);
  }

  /**
   * That of one figure.
   *
   * @param figure which
   * @return one standard deviation
   */
  public Angle of(BayFigure figure) {
    return figures.get(figure);
  }
}
