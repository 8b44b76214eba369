package dev.towerscribe.model;

import dev.towerscribe.quantity.Require;
import java.util.Optional;

/**
 * How the drilling jig is made. Its defaults are common practice, no source.
 *
 * @param thicknessMm thickness of its plate
 * @param marginMm metal round each bushing and sight hole
 * @param boreMm bore of the bushings: the drill they guide
 * @param outsideMm outside diameter of the bushings, where the job says it
 * @param fit tolerance of the holes that they are pressed into
 */
public record JigRules(
    Stated<Double> thicknessMm,
    Stated<Double> marginMm,
    Stated<Double> boreMm,
    Optional<Double> outsideMm,
    Stated<HoleFit> fit) {
  /** What holds where a job says nothing: a 10 mm plate with bushings for the 3 mm pilot drill. */
  public static final JigRules ASSUMED =
      new JigRules(
          Stated.assumed(10.0),
          Stated.assumed(12.0),
          Stated.assumed(3.0),
          Optional.empty(),
          Stated.assumed(HoleFit.H7));

  /** Checks the figures. */
  public JigRules {
    Require.positive("jig thickness", thicknessMm.value());
    Require.positive("jig margin", marginMm.value());
    Require.positive("bushing bore", boreMm.value());
    outsideMm.ifPresent(mm -> Require.positive("bushing outside", mm));
    if (outsideMm.isPresent() && outsideMm.get() <= boreMm.value()) {
      throw new IllegalArgumentException("a bushing is wider than its bore");
    }
  }
}
