package dev.towerscribe.strength;

import dev.towerscribe.model.BoltClass;
import dev.towerscribe.model.Thread;
import dev.towerscribe.quantity.Require;
import java.util.List;
import java.util.Optional;

/**
 * How hard a bolt clamps when tightened to nine tenths of its yield, and the torque that does it. A
 * figure of the plate's maker or of an engineer wins; the vehicle maker's are for strut and wheel
 * nuts.
 *
 * @param propertyClass its class
 * @param friction friction taken both in the thread and under the head
 * @param preloadN clamping force, N
 * @param torqueNm torque, N m
 */
public record Tightening(
    BoltClass propertyClass, double friction, double preloadN, double torqueNm) {
  /** Named beside every figure; the edition was not in hand. */
  public static final String SOURCE =
      "formula of VDI 2230 Part 1 (edition 2015, from memory), 90 % of yield after ISO 898-1";

  /** Share of the yield that tension and torsion together may take (VDI 2230). */
  private static final double OF_YIELD = 0.9;

  /**
   * Thread and head.
   *
   * @param size coarse thread
   * @param pitchMm pitch
   * @param faceMm least outside diameter of a hexagon's bearing face (nuts of ISO 4032, from
   *     memory)
   */
  private record Row(String size, double pitchMm, double faceMm) {}

  private static final List<Row> ROWS =
      List.of(
          new Row("M6", 1.0, 8.9),
          new Row("M8", 1.25, 11.6),
          new Row("M10", 1.5, 14.6),
          new Row("M12", 1.75, 16.6));

  /**
   * Works the figures out.
   *
   * @param thread the bolt's size
   * @param propertyClass its class
   * @param friction coefficient in thread and under head, 0.04 to 0.4
   * @param holeMm clearance hole under the head, mm
   * @return the figures; empty for sizes whose figures were not compared with a table
   * @throws IllegalArgumentException if the friction is not believable
   */
  public static Optional<Tightening> of(
      Thread thread, BoltClass propertyClass, double friction, double holeMm) {
    if (!(friction >= 0.04 && friction <= 0.4)) {
      throw new IllegalArgumentException("friction must be 0.04 to 0.4, not " + friction);
    }
    Require.positive("hole", holeMm);
    return ROWS.stream()
        .filter(r -> r.size.equals(thread.name()))
        .findFirst()
        .flatMap(
            r ->
                BoltStrength.find(thread, propertyClass)
                    .map(s -> of(thread, r, s, friction, holeMm)));
  }

  private static Tightening of(
      Thread thread, Row row, BoltStrength strength, double friction, double holeMm) {
    // ISO metric profile: pitch diameter and core diameter of the bolt.
    double pitchDiameter = thread.nominalMm() - 0.649519 * row.pitchMm;
    double core = thread.nominalMm() - 1.226869 * row.pitchMm;
    double stressDiameter = (pitchDiameter + core) / 2;
    double turn = row.pitchMm / (Math.PI * pitchDiameter) + 1.155 * friction;
    double twist = 1.5 * pitchDiameter / stressDiameter * turn;
    double preload =
        OF_YIELD
            * strength.propertyClass().yieldMPa()
            * strength.stressAreaMm2()
            / Math.sqrt(1 + 3 * twist * twist);
    double underHead = (row.faceMm + holeMm) / 2;
    double arm = 0.159 * row.pitchMm + friction * (0.577 * pitchDiameter + underHead / 2);
    return new Tightening(strength.propertyClass(), friction, preload, preload * arm / 1000);
  }
}
