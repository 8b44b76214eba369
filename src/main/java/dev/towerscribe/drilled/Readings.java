package dev.towerscribe.drilled;

import dev.towerscribe.model.Side;
import dev.towerscribe.model.Stated;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Require;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Caliper readings of the drilled holes of one car.
 *
 * @param title what the file calls itself
 * @param date when the readings were taken, if the file says it
 * @param units the unit the file is written in
 * @param uncertainty how sure one reading is
 * @param sides the towers that were measured, at least one
 */
public record Readings(
    String title,
    Optional<LocalDate> date,
    LengthUnit units,
    Uncertainty uncertainty,
    Map<Side, SideReadings> sides) {
  /** Copies the map in the order of {@link Side}. */
  public Readings {
    if (sides.isEmpty()) {
      throw new IllegalArgumentException("readings are of at least one side");
    }
    sides = Collections.unmodifiableMap(new EnumMap<>(sides));
  }

  /**
   * One standard deviation of one reading; an entry of the file may have its own.
   *
   * @param caliperMm between two edges, or across a hole
   * @param landmarkMm of each coordinate of a landmark in the job, each landmark by itself
   * @param edgeMm from a hole's edge to the edge as cut
   * @param line of the fore-aft line drawn on the tower, that all its places were measured by: it
   *     turns all landmarks of the job about the strut rod centre together
   * @param centreMm of each coordinate of that centre: it shifts all of them together
   */
  public record Uncertainty(
      Stated<Double> caliperMm,
      Stated<Double> landmarkMm,
      Stated<Double> edgeMm,
      Stated<Angle> line,
      Stated<Double> centreMm) {
    /**
     * Common practice, no source: vernier calipers, a landmark by tape, an edge by rule, a line by
     * a straightedge that is off by a millimetre in three hundred, a centre by dividers.
     */
    public static final Uncertainty ASSUMED =
        new Uncertainty(
            Stated.assumed(0.05),
            Stated.assumed(0.3),
            Stated.assumed(0.2),
            Stated.assumed(Angle.ofDegrees(0.2)),
            Stated.assumed(0.3));

    /** Checks the figures. */
    public Uncertainty {
      Require.positive("caliper uncertainty", caliperMm.value());
      Require.positive("landmark uncertainty", landmarkMm.value());
      Require.positive("edge uncertainty", edgeMm.value());
      Require.notNegative("line uncertainty", line.value().radians());
      Require.notNegative("centre uncertainty", centreMm.value());
    }
  }
}
