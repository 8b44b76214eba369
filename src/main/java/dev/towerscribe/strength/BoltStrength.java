package dev.towerscribe.strength;

import dev.towerscribe.model.BoltClass;
import dev.towerscribe.model.Thread;
import java.util.List;
import java.util.Optional;

/**
 * What a bolt is proved for, from a published row.
 *
 * @param size thread, coarse pitch: "M8"
 * @param propertyClass its class
 * @param stressAreaMm2 nominal stress area of the thread, mm2
 * @param proofN proof load in tension, N
 * @param source the standard
 */
public record BoltStrength(
    String size, BoltClass propertyClass, double stressAreaMm2, double proofN, String source) {
  /** Named beside every figure from these rows. */
  public static final String SOURCE = "ISO 898-1, coarse thread";

  /** Distortion energy: yield in shear over yield in tension (Shigley, ch. 8, prints 0.577). */
  public static final double SHEAR_OVER_TENSION = 1 / Math.sqrt(3);

  private record Row(String size, double areaMm2, double proof88N, double proof109N) {}

  private static final List<Row> ROWS =
      List.of(
          new Row("M5", 14.2, 8230, 11800),
          new Row("M6", 20.1, 11600, 16700),
          new Row("M8", 36.6, 21200, 30400),
          new Row("M10", 58.0, 33700, 48100),
          new Row("M12", 84.3, 48900, 70000),
          new Row("M14", 115, 66700, 95500),
          new Row("M16", 157, 91000, 130000));

  /**
   * Looks a bolt up.
   *
   * @param thread its size
   * @param propertyClass its class
   * @return its row; empty where no published row is held, as for inch threads
   */
  public static Optional<BoltStrength> find(Thread thread, BoltClass propertyClass) {
    return ROWS.stream()
        .filter(r -> r.size.equals(thread.name()))
        .map(
            r ->
                new BoltStrength(
                    r.size,
                    propertyClass,
                    r.areaMm2,
                    propertyClass == BoltClass.CLASS_8_8 ? r.proof88N : r.proof109N,
                    SOURCE))
        .findFirst();
  }

  /**
   * The like of a proof load in shear, thread in the shear plane: the proof load over root 3. The
   * standard has no such row.
   *
   * @return N
   */
  public double shearProofN() {
    return proofN * SHEAR_OVER_TENSION;
  }
}
