package dev.towerscribe.quantity;

/** Every tolerance the program decides by, each with the reason for its size. */
public final class Tolerances {
  /**
   * Two points closer than this are one point, mm. A job file rarely carries more than 1e-3 mm and
   * double arithmetic on lengths up to 1e3 mm keeps 1e-13, so 1e-6 separates the two worlds.
   */
  public static final double SAME_POINT_MM = 1e-6;

  /**
   * What geometry computed in two ways must agree to, mm: about 1e4 roundings of 1e-13 mm each, the
   * error of one operation on a length of some hundred millimetres.
   */
  public static final double COMPUTED_MM = 1e-9;

  /**
   * How far a circle or a bar read back from a written file may lie from the model, mm. A tenth of
   * the finest caliper division in common use (0.02 mm rounded up to 0.1) and a hundred times the
   * rounding of the numbers that the files carry.
   */
  public static final double READ_BACK_MM = 0.01;

  /** Largest departure of a flattened curve from the true curve, mm: a fifth of the above. */
  public static final double FLATTEN_MM = 0.002;

  private Tolerances() {}
}
